import { describe, expect, it } from "vitest";
import { call } from "../../../shared/catalogue/call.ts";
import { CATALOGUE } from "../../../shared/catalogue/catalogue.ts";
import type { Entry } from "../../../shared/catalogue/entry.ts";
import type { Argument, Cell } from "../../../shared/cells/cell.ts";
import { LONGEST_TEXT } from "../../../shared/cells/long-text.ts";
import { indexPage } from "../../../shared/help/index-page.ts";

/** Texts on which the patterns of readers went back over themselves for seconds, at any length. */
const SLOW: readonly ((letters: number) => string)[] = [
  (n) => "1".repeat(n),
  (n) => `${"0".repeat(n - 2)}ft`,
  (n) => "1,".repeat(n / 2),
  (n) => "K ".repeat(n / 2),
  (n) => "(".repeat(n),
  (n) => `1${" ".repeat(n - 3)}ft`,
];

function withAt(args: readonly Argument[], at: number, argument: Argument): readonly Argument[] {
  return args.map((one, i) => (i === at ? argument : one));
}

function message(entry: Entry, at: number, argument: Argument): string {
  const [example] = entry.examples;
  const place = at < entry.unitsAt ? at : at + 1;
  const count = Math.max(place + 1, example.args.length);
  const args = Array.from({ length: count }, (_, i) => example.args[i] ?? null);
  const outcome = call(entry, withAt(args, place, argument));
  const told = outcome.ok ? (outcome.value as Cell[][])[1]?.[0] : outcome.error;
  return (told as { message?: string } | undefined)?.message ?? "";
}

/** Tables whose texts are handed on. */
const HANDED_ON = ["VERDICTS criteria", "FINDINGS notes"];

/** What is read, but the arguments that NOTES hands on. */
const PLACES = CATALOGUE.flatMap((entry) =>
  entry.parameters
    .slice(0, entry.repeating ? -1 : undefined)
    .map(([key, parameter], at) => ({ name: `${entry.id} ${key}`, entry, at, parameter })),
);

describe("a text too long to be read", () => {
  it("is every argument of every function", () => {
    expect(PLACES.length).toBeGreaterThan(300);
  });

  it("is refused in words before any reader sees it, whatever it holds", () => {
    for (const { name, entry, at, parameter } of PLACES) {
      if (HANDED_ON.includes(name)) continue;
      for (const make of SLOW) {
        const text = make(32_766).slice(0, 32_766);
        const given: Argument = parameter.takes === "range" ? [["pipe"], [text]] : text;
        expect(message(entry, at, given), name).toMatch(/is a text of 32766 letters; at most 500 are read/);
      }
    }
  });

  it("is handed on where a table holds what calls said, at once and whole", () => {
    expect(PLACES.filter(({ parameter }) => "handsTextsOn" in parameter).map(({ name }) => name)).toEqual(HANDED_ON);
    const [findings, verdicts] = ["FINDINGS", "VERDICTS"].map((of) => CATALOGUE.find(({ id }) => id === of) as Entry);
    const started = performance.now();
    for (const make of SLOW) {
      const text = make(32_766).slice(0, 32_766).trim();
      const listed = call(findings as Entry, [
        [
          ["where", "notes"],
          ["here", `Check: ${text}`],
        ],
      ]);
      expect(JSON.stringify(listed)).toContain(text.slice(0, 600));
      const judged = call(verdicts as Entry, [
        [
          ["verdict", "what", "state"],
          ["head", text, "check"],
        ],
      ]);
      expect(JSON.stringify(judged)).toContain(text.slice(0, 600));
    }
    // As long as all of them may take on a slow machine; one reader that goes back over itself takes longer.
    expect(performance.now() - started).toBeLessThan(10_000);
  });

  it("is refused in its own row of a column, and told by row and column of a range", () => {
    const column: Argument = [["100 gpm"], ["1".repeat(LONGEST_TEXT + 1)]];
    const entry = CATALOGUE.find(({ id }) => id === "FRICTIONHEAD") as Entry;
    const outcome = call(entry, [column, "6in sch40", 100]);
    expect(outcome).toMatchObject({
      ok: true,
      value: [[expect.any(Number)], [{ error: "#VALUE!", message: expect.stringMatching(/text of 501 letters/) }]],
    });
    const line = CATALOGUE.find(({ id }) => id === "LINEHEAD") as Entry;
    const refused = call(line, [100, [["6in sch40", 100, "1".repeat(32_766)]]]);
    expect(refused).toMatchObject({
      ok: false,
      error: { message: expect.stringMatching(/row 1, column 3 is a text/) },
    });
  });

  it("begins one letter after the longest that is read", () => {
    const entry = CATALOGUE.find(({ id }) => id === "FRICTIONHEAD") as Entry;
    const said = (letters: number): string => {
      const outcome = call(entry, [`${" ".repeat(letters - 7)}100 gpm`, "6in sch40", 100]);
      return outcome.ok ? "read" : (outcome.error.message ?? "");
    };
    expect(said(LONGEST_TEXT)).toBe("read");
    expect(said(LONGEST_TEXT + 1)).toMatch(/at most 500/);
  });

  it("is told of in the help", () => {
    expect(indexPage(CATALOGUE, []).main).toContain("at most 500 letters");
  });
});
