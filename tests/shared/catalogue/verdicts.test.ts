import { describe, expect, it } from "vitest";
import { call } from "../../../shared/catalogue/call.ts";
import { VERDICTS } from "../../../shared/catalogue/entries/verdicts.ts";
import type { Cell } from "../../../shared/cells/cell.ts";

const HEADINGS = ["verdict", "what", "found", "at best", "limit", "unit", "must be", "if broken", "if kept", "assumed"];

function verdict(...cells: readonly Cell[]): readonly Cell[] {
  const outcome = call(VERDICTS, [[HEADINGS, cells]]);
  if (!outcome.ok) throw new Error(outcome.error.message);
  return (outcome.value as readonly (readonly Cell[])[])[2] ?? [];
}

const ROW = ["pressure", "flange", 168.7, null, 150, "psig", "at most"];

describe("VERDICTS", () => {
  // The words follow from the figures; lift of 7.62 m is 25 ft, the limit of practice.
  it.each([
    ["a figure beyond its limit", ROW, "fail", "Fails: flange, 168.7 of 150 psig."],
    [
      "digits enough to tell them apart",
      ["priming", "lift", 7.6201, null, 7.62, "m", "at most"],
      "fail",
      "Fails: lift, 7.6201 of 7.62 m.",
    ],
    [
      "a figure at its limit",
      ["priming", "lift", 7.62, null, 7.62, "m", "at most"],
      "pass",
      "Passes: lift, 7.62 m, at the limit.",
    ],
    ["0 as a figure", ["npsh", "margin", 0, null, 1, "ft", "at least"], "fail", "Fails: margin, 0 of 1 ft."],
    ["0 as a limit", ["npsh", "margin", -1, null, 0, "ft", "at least"], "fail", "Fails: margin, -1 of 0 ft."],
    [
      "an assumption that decides",
      ["pressure", "flange", 279.5, 231, 250, "psig", "at most", "fail", "pass", "high idle"],
      "check",
      "Check: flange, 279.5 of 250 psig, 231 at best (assumed: high idle).",
    ],
    [
      "a blank favourable end that arrives as 0",
      [...ROW.slice(0, 3), 0, ...ROW.slice(4)],
      "fail",
      "Fails: flange, 168.7 of 150 psig.",
    ],
    ["no figure", [...ROW.slice(0, 2), "not worked out", ...ROW.slice(3)], "open", "Open: flange: not worked out."],
    ["no limit", [...ROW.slice(0, 4), "not given", ...ROW.slice(5)], "open", "Open: flange: not given."],
  ] as const)("says %s", (_, cells, state, words) => {
    expect(verdict(...cells).slice(1, 3)).toEqual([state, words]);
  });

  it("counts all in its first row, the worst first", () => {
    const row = (of: string, found: number) => [of, "x", found, null, 1, "", "at most"];
    const outcome = call(VERDICTS, [[HEADINGS, row("head", 2), row("npsh", 0.5), row("pipe", 2)]]);
    expect(outcome.ok && (outcome.value as Cell[][])[1]?.slice(0, 3)).toEqual(["all", "fail", "2 fail, 1 pass"]);
  });

  it("names what it cannot read and what would do", () => {
    const refused = (cells: readonly Cell[]) => {
      const outcome = call(VERDICTS, [[HEADINGS, cells]]);
      return outcome.ok ? "" : outcome.error.message;
    };
    expect(refused(["pumps", ...ROW.slice(1)])).toMatch(/“pumps”.*"head"/);
    expect(refused([...ROW.slice(0, 6), "less than"])).toMatch(/“less than”.*"at most"/);
    expect(refused(["pressure", "flange", 1])).toMatch(/limit/);
  });
});
