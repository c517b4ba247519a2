import { describe, expect, it } from "vitest";
import { dutySheet } from "../../../shared/calc-sheet/duty-sheet.ts";
import { LONGEST_CASE_NAME } from "../../../shared/duty/decode-cases.ts";
import { type CaseText, type DutyText, MOST_CASES } from "../../../shared/duty/duty-text.ts";
import { SAMPLE_DUTIES } from "../../../shared/duty/samples.ts";

/** "Length of formula contents: 8,192 characters": Microsoft, "Excel specifications and limits", calculation. */
const LONGEST = 8192;

/** As many cases as there may be, each with a liquid, levels and pumps of its own and the longest name, of letters that a formula doubles. */
const CASES = Array.from(
  { length: MOST_CASES },
  (_, i): CaseText => ({
    name: `case ${i + 1}, low sump in summer `.padEnd(LONGEST_CASE_NAME, '"'),
    hours: `${100 + i}`,
    fields: {
      flow: `${900 + 10 * i}`,
      sourceLevel: `${96 + i / 2}`,
      temperature: `${60 + i}`,
      deliveryPressure: `${1 + i / 2}`,
    },
  }),
);

const RUNS: DutyText["dischargeLine"] = [112, 140, 125, 150, 174].map((level, i, { length }) => ({
  pipe: "10in sch40",
  length: "300",
  fittings: i === length - 1 ? "1 exit" : "",
  level: `${level}`,
}));

describe("the formulas of a sheet", () => {
  const quarry = SAMPLE_DUTIES[0]?.duty;
  if (quarry === undefined) throw new Error("no sample");

  it("fit their cells with as many cases as there may be, on a line with levels", () => {
    const sheet = dutySheet({ ...quarry, dischargeLine: RUNS, cases: CASES });
    if (!sheet.ok) throw new Error(JSON.stringify(sheet.findings));
    const tooLong = sheet.value.cells.filter(({ f = "" }) => f.length > LONGEST);
    expect(tooLong.map(({ at, f = "" }) => [at, f.length, f.slice(0, 60)])).toEqual([]);
    expect(sheet.value.cells.some(({ f = "" }) => f.includes("low sump in summer"))).toBe(true);
  });
});
