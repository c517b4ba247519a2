import { describe, expect, it } from "vitest";
import { LONGEST_CASE_NAME } from "../../../shared/duty/decode-cases.ts";
import { type CaseText, type DutyText, MOST_CASES } from "../../../shared/duty/duty-text.ts";
import { SAMPLE_DUTIES } from "../../../shared/duty/samples.ts";
import { sheetsOf } from "../../support/laid-out.ts";

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
    // A tag as long as the names of the sheets allow, which stand in every reference to another of them.
    const fields = { ...quarry.fields, item: "Dewatering pump set number 4" };
    const cells = sheetsOf({ ...quarry, fields, dischargeLine: RUNS, cases: CASES }).all.flatMap(
      (sheet) => sheet.cells,
    );
    const tooLong = cells.filter(({ f = "" }) => f.length > LONGEST);
    expect(tooLong.map(({ at, f = "" }) => [at, f.length, f.slice(0, 60)])).toEqual([]);
    expect(cells.some(({ f = "" }) => f.includes("low sump in summer"))).toBe(true);
  });
});
