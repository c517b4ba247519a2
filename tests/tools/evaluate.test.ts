import { describe, expect, it } from "vitest";
import { started } from "../support/terminal.ts";

// The command itself, as another program sees it. Expected answers: ASME B36.10M bores, and what the form of the lines says.

const BORE = '{"call":"BORE","args":["6in sch40"]}';

describe("the evaluator", () => {
  it("answers a program that writes one line and waits, before the next is written", async () => {
    const run = started("evaluate");
    run.write(`${BORE}\n`);
    expect(await run.lines(1)).toEqual(['{"value":6.065}']);
    run.write(`{"call":"BORE","args":["8in sch40"]}\n`);
    expect(await run.lines(2)).toEqual(['{"value":6.065}', '{"value":7.981}']);
    run.end();
    expect((await run.ended).code).toBe(0);
  });

  it("keeps the order of the lines over many, whatever each takes", async () => {
    const run = started("evaluate");
    const lines = Array.from({ length: 3000 }, (_, i) =>
      i % 500 === 0
        ? `{"call":"LINEHEAD","args":[${100 + i},[["6in sch40",${100 + i},"1 exit"]]]}`
        : `{"call":"ZZ${i}"}`,
    );
    run.end(lines.join("\n"));
    const { lines: answers, code } = await run.ended;
    expect(code).toBe(1);
    expect(answers).toHaveLength(3000);
    answers.forEach((answer, i) => {
      expect(answer, `line ${i}`).toContain(i % 500 === 0 ? '"value":' : `“ZZ${i}”`);
    });
  });

  it("takes CRLF, a lone CR, a byte order mark, blank lines, and a last line without its end", async () => {
    const run = started("evaluate");
    run.end(`\uFEFF${BORE}\r\n\r\n   \n${BORE}\r${BORE}\n\n${BORE}`);
    expect((await run.ended).lines).toEqual(Array(4).fill('{"value":6.065}'));
  });

  it.each(["utf16le", "utf-16be without a mark", "utf8"])("reads lines written in %s", async (encoding) => {
    const run = started("evaluate");
    const text = `${BORE}\r\n{"call":"NOSUCH"}\r\n${BORE}\r\n`;
    const little = Buffer.from(`\uFEFF${text}`, "utf16le");
    const bytes =
      encoding === "utf16le" ? little : encoding === "utf8" ? Buffer.from(text) : little.swap16().subarray(2);
    // In pieces that cut a letter, and the byte-order mark, in two.
    run.process.stdin.write(bytes.subarray(0, 1));
    run.process.stdin.write(bytes.subarray(1, 41));
    run.process.stdin.end(bytes.subarray(41));
    const { lines, code } = await run.ended;
    expect(lines[0]).toBe('{"value":6.065}');
    expect(JSON.parse(lines[1] ?? "")).toMatchObject({ error: "#NAME?", line: 2 });
    expect(lines[2]).toBe('{"value":6.065}');
    expect(code).toBe(1);
  });

  it("says where there is no line to answer", async () => {
    const run = started("evaluate");
    run.end("\n  \n");
    const { lines, code, errors } = await run.ended;
    expect(lines).toEqual([]);
    expect(code).toBe(2);
    expect(errors).toMatch(/holds no line/);
  });

  it("counts the lines on through CR, CRLF and blank ones", async () => {
    const run = started("evaluate");
    run.end(`${BORE}\r\n\r\nx\r${BORE}\n\ny`);
    const { lines } = await run.ended;
    expect(lines.map((line) => JSON.parse(line).line)).toEqual([undefined, 3, undefined, 6]);
  });

  it("answers a line that cannot be read with an error, and goes on", async () => {
    const run = started("evaluate");
    run.end(`not JSON\n[1]\n{"args":[]}\n{"call":"BORE","args":[{}]}\n\u0000\n${BORE}\n`);
    const { lines, code } = await run.ended;
    expect(lines.map((line) => JSON.parse(line).message ?? JSON.parse(line).value)).toEqual([
      "The line is not JSON.",
      "The line is not a JSON object.",
      '“call” is missing; give a function name such as "FRICTIONHEAD".',
      "Argument 1 must be a number, a text, true, false, null, or rows of cells.",
      "The line is not JSON.",
      6.065,
    ]);
    expect(lines.map((line) => JSON.parse(line).line)).toEqual([1, 2, 3, 4, 5, undefined]);
    expect(code).toBe(1);
  });

  it("refuses a line beyond its maximum length and keeps nothing of it", async () => {
    const run = started("evaluate");
    run.end(`${"x".repeat(9_000_000)}\n${BORE}\n`);
    expect((await run.ended).lines).toEqual([
      '{"error":"#VALUE!","message":"The line is longer than 8 million characters.","line":1}',
      '{"value":6.065}',
    ]);
  });

  it("refuses a name of a million letters in a short sentence", async () => {
    const run = started("evaluate");
    run.end(`{"call":"${"X".repeat(1_000_000)}"}\n${BORE}\n`);
    expect((await run.ended).lines).toEqual([
      '{"error":"#NAME?","message":"“call” is a text of 1000000 letters; give a function name such as \\"FRICTIONHEAD\\".","line":1}',
      '{"value":6.065}',
    ]);
  });

  it("ends quietly when its reader has seen enough", async () => {
    const run = started("evaluate");
    run.process.stdin.on("error", () => undefined);
    run.write(`${BORE}\n`.repeat(50_000));
    await run.lines(1);
    run.process.stdout.destroy();
    run.end(`${BORE}\n`.repeat(50_000));
    const { code, errors } = await run.ended;
    expect(errors).toBe("");
    expect(code).toBe(0);
  });
});
