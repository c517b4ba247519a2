import { beforeAll, describe, expect, it } from "vitest";
import { registerFunctions } from "../../functions/register.ts";
import { call } from "../../shared/catalogue/call.ts";
import { CATALOGUE } from "../../shared/catalogue/catalogue.ts";
import type { Entry } from "../../shared/catalogue/entry.ts";
import { type Cell, isRange } from "../../shared/cells/cell.ts";
import { succeed } from "../../src/basis/result.ts";
import { type CalcAnswer, CalcHost, errorCell, errorDataType } from "../support/calc-host.ts";
import { REPEATING, SAMPLES } from "../support/sample-entries.ts";

let host: CalcHost;

const blank: Entry = { ...SAMPLES[2], id: "BLANK", parameters: [], run: () => succeed(null) };

beforeAll(() => {
  host = new CalcHost();
  registerFunctions(host.functions, [...SAMPLES, REPEATING, blank]);
});

async function answerTo(name: string, ...args: readonly unknown[]): Promise<CalcAnswer> {
  const [answer] = await host.calculate([[name, args]]);
  return answer as CalcAnswer;
}

/** Excel's numbers for the error values, as the library's own dispatcher gives them. */
const NOT_AVAILABLE = 1;
const DIVISION_BY_ZERO = 5;
const VALUE = 7;

// At once, since the library gathers results for half a second before it sends them.
describe.concurrent("a function called the way Excel calls it", () => {
  it.each([
    { why: "plain numbers", args: [1, 2, null], value: [[3]] },
    { why: "cells as 1 × 1 ranges", args: [[[1]], [[2]], [["US"]]], value: [[3]] },
    { why: "a text with its own unit", args: ["12 in", 2, null], value: [[3]] },
    { why: "an argument left out", args: [1, null, null], value: [[11]] },
    { why: "an empty text for an argument left out", args: [1, "", ""], value: [[11]] },
    { why: "a blank cell as a data type", args: [1, { type: "Empty", basicValue: "" }, null], value: [[11]] },
    {
      why: "a number with a format of its own",
      args: [{ type: "FormattedNumber", basicValue: 1 }, 2, null],
      value: [[3]],
    },
    {
      why: "an entity with a number in it",
      args: [[[{ type: "Entity", basicType: "Double", basicValue: 1 }]], 2, null],
      value: [[3]],
    },
    { why: "a column against a single value", args: [[[1], [2], [3]], 2, null], value: [[3], [4], [5]] },
    { why: "two columns", args: [[[1], [2]], [[10], [20]], null], value: [[11], [22]] },
    {
      why: "a block",
      args: [
        [
          [1, 2],
          [3, 4],
        ],
        1,
        null,
      ],
      value: [
        [2, 3],
        [4, 5],
      ],
    },
  ])("answers $why", async ({ args, value }) => {
    const answer = await answerTo("SUMOFHEADS", ...args);
    expect(answer.ok).toBe(true);
    const rows = answer.value as number[][];
    expect(rows).toHaveLength(value.length);
    rows.forEach((row, i) => {
      expect(row).toHaveLength(value[i]?.length ?? 0);
      for (const [j, cell] of row.entries()) expect(cell).toBeCloseTo(value[i]?.[j] as number, 12);
    });
  });

  it("refuses with #VALUE! and words in the reader's units", async () => {
    expect(await answerTo("SUMOFHEADS", -1, 2, null)).toEqual({
      ok: false,
      code: VALUE,
      value: "First head must be at least 0 ft; -1 ft was given.",
    });
    expect((await answerTo("SUMOFHEADS", -1, 2, "SI")).value).toContain("-1 m was given");
  });

  it("refuses an unknown name with #N/A and the nearest names", async () => {
    const answer = await answerTo("LIQUIDOF", "watr");
    expect(answer).toMatchObject({ ok: false, code: NOT_AVAILABLE });
    expect(answer.value).toContain("nearest");
  });

  it("gives an error in an input back as itself", async () => {
    expect(await answerTo("SUMOFHEADS", errorCell("#N/A"), 2, null)).toMatchObject({ ok: false, code: NOT_AVAILABLE });
    expect(await answerTo("SUMOFHEADS", errorDataType("#N/A"), 2, null)).toMatchObject({
      ok: false,
      code: NOT_AVAILABLE,
    });
    expect(await answerTo("SUMOFHEADS", [[errorDataType("#DIV/0!")]], 2, null)).toMatchObject({
      ok: false,
      code: DIVISION_BY_ZERO,
    });
    expect(await answerTo("SUMOFHEADS", 1, 2, [[errorCell("#N/A")]])).toMatchObject({ ok: false, code: NOT_AVAILABLE });
  });

  it("names an input error that a function may not answer with", async () => {
    expect(await answerTo("SUMOFHEADS", errorCell("#REF!"), 2, null)).toEqual({
      ok: false,
      code: VALUE,
      value: "An input holds the error #REF!.",
    });
  });

  it("keeps an error in a column to its own row", async () => {
    const { ok, value } = await answerTo("SUMOFHEADS", [[1], [errorCell("#DIV/0!")], [-5], ["abc"]], 2, null);
    expect(ok).toBe(true);
    const [first, second, third, fourth] = value as readonly (readonly unknown[])[];
    expect(first?.[0]).toBeCloseTo(3, 12);
    expect(second?.[0]).toMatchObject({ code: "#DIV/0!" });
    expect(third?.[0]).toMatchObject({ code: "#VALUE!", message: expect.stringContaining("at least 0 ft") });
    expect(fourth?.[0]).toMatchObject({ code: "#VALUE!", message: expect.stringContaining("abc") });
  });

  it("spills full rows, blanks as empty text", async () => {
    expect((await answerTo("HOLED", null, "SI")).value).toEqual([
      ["length, m", "note"],
      [0.3048, ""],
      [0.6096, "two feet"],
    ]);
  });

  it("answers a blank with an empty text, where Excel would show null as 0", async () => {
    expect((await answerTo("BLANK")).value).toEqual([[""]]);
  });

  it("hands a range over whole", async () => {
    expect(
      (
        await answerTo("SHAPEOF", [
          [1, null, "a"],
          [2, 3, true],
        ])
      ).value,
    ).toEqual([
      ["rows", "columns"],
      [2, 3],
    ]);
    expect((await answerTo("SHAPEOF", 5)).value).toEqual([
      ["rows", "columns"],
      [1, 1],
    ]);
  });

  it("answers a text", async () => {
    expect(await answerTo("LIQUIDOF", [["water"]])).toEqual({ ok: true, value: [["water"]] });
  });

  it("takes repeated arguments one by one", async () => {
    expect((await answerTo("COUNTARGS", [["water"]], [[[1, 2, 3]], [["SI"]]])).value).toEqual([["water: 2"]]);
  });

  it("owns up to a fault of its own in the cell, and spares the others of the batch", async () => {
    const [faulty, sound] = await host.calculate([
      ["FAULTY", []],
      ["SUMOFHEADS", [1, 2, null]],
    ]);
    expect(faulty).toMatchObject({ ok: false, code: VALUE });
    expect(faulty?.value).toContain("DUTY.FAULTY has a fault of its own");
    expect(sound?.ok).toBe(true);
  });

  it("refuses a data type that has neither number nor text", async () => {
    const answer = await answerTo("SUMOFHEADS", { type: "Entity", basicType: "Error", basicValue: "#VALUE!" }, 2, null);
    expect(answer).toMatchObject({ ok: false, code: VALUE });
    expect(answer.value).toContain("neither a number nor a text");
  });
});

describe("the catalogue in Excel's runtime", () => {
  it("answers every example as the catalogue itself does", async () => {
    const own = new CalcHost();
    registerFunctions(own.functions);
    const examples = CATALOGUE.flatMap((entry) => entry.examples.map((example) => ({ entry, example })));
    const answers = await own.calculate(
      examples.map(({ entry, example }) => {
        const declared = entry.parameters.length + (entry.unitless ? 0 : 1);
        const args = example.args.map((arg) => (Array.isArray(arg) ? arg : [[arg]]));
        const padded = Array.from({ length: Math.max(declared, args.length) }, (_, i) => args[i] ?? null);
        const last = declared - 1;
        return [entry.id, entry.repeating ? [...padded.slice(0, last), padded.slice(last)] : padded] as const;
      }),
    );
    for (const [i, { entry, example }] of examples.entries()) {
      const direct = call(entry, example.args);
      if (!direct.ok) throw new Error(`${entry.id}: ${direct.error.message ?? direct.error.error}`);
      const rows: readonly (readonly Cell[])[] = isRange(direct.value) ? direct.value : [[direct.value]];
      const seen = answers[i];
      expect(seen?.ok, `${entry.id}: ${JSON.stringify(seen)}`).toBe(true);
      expect(seen?.value, entry.id).toEqual(rows.map((row) => row.map((cell) => cell ?? "")));
    }
  });
});
