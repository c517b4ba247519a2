import { readFileSync } from "node:fs";
import Papa from "papaparse";
import { describe, expect, it } from "vitest";
import { numberIn, refusal, remarks } from "../../support/cells.ts";

interface Row {
  readonly inputs: Readonly<Record<string, number>>;
  readonly expected: Readonly<Record<string, number>>;
  /** Fraction. */
  readonly within: number;
}

function publishedRow(id: string): Row {
  const file = new URL("../../published/mechanical-energy-and-life-cycle.csv", import.meta.url);
  const { data } = Papa.parse<Record<string, string>>(readFileSync(file, "utf8"), { header: true, delimiter: "," });
  const row = data.find((each) => each["case_id"] === id);
  if (row === undefined) throw new Error(`no case ${id}`);
  return {
    inputs: JSON.parse(row["inputs"] as string),
    expected: JSON.parse(row["expected"] as string),
    within: Number.parseFloat(row["tolerance"] as string) / 100,
  };
}

function expectClose(actual: number, due: number, within: number): void {
  expect(Math.abs(actual / due - 1), `${actual} for ${due}`).toBeLessThanOrEqual(within);
}

describe("costs in cells", () => {
  it("O-E04, energy", () => {
    const { inputs, expected, within } = publishedRow("O-E04");
    const of = (name: string) => inputs[name] as number;
    const power = `${of("shaft_kW") * of("load_factor")} kW`;
    const cost = numberIn("ENERGYCOST", power, of("hours"), of("rate_per_kWh"), of("motor_eff"));
    expectClose(cost, expected["cost"] as number, within);
    expectClose(cost, 30638.298, 1e-7);
  });

  it("O-E05, life cycle", () => {
    const { inputs, expected, within } = publishedRow("O-E05");
    const of = (name: string) => inputs[name] as number;
    const years = of("years");
    const rate = of("real_rate");
    const first = of("Cic") + of("Cin") + of("Cenv") + of("Cd") / (1 + rate) ** years;
    const yearly = of("Ce_yr") + of("Co_yr") + of("Cm_yr") + of("Cs_yr");
    expectClose(numberIn("LIFECYCLECOST", first, yearly, years, rate), expected["LCC"] as number, within);
    expectClose(numberIn("LIFECYCLECOST", 0, 1, years, rate), expected["pv_factor"] as number, 1e-5);
  });

  it("takes power in the unit set and hours as texts", () => {
    const kilowatt = numberIn("ENERGYCOST", 100, 2000, 0.1, 0.95, null, "SI");
    expect(numberIn("ENERGYCOST", "100 kW", "2000 h", 0.1, "95 %")).toBeCloseTo(kilowatt, 9);
    // NIST SP 811: 1 hp = 745.69987 W.
    expect(numberIn("ENERGYCOST", 100, 2000, 0.1, 0.95) / kilowatt).toBeCloseTo(0.74569987, 8);
  });

  it("takes a rate as a fraction or in percent", () => {
    expect(numberIn("LIFECYCLECOST", 1, 1, 10, "5 %", "2 %")).toBe(numberIn("LIFECYCLECOST", 1, 1, 10, 0.05, 0.02));
    expect(numberIn("LIFECYCLECOST", 1, 1, 10, 5, 2)).toBeCloseTo(numberIn("LIFECYCLECOST", 1, 1, 10, 0.05, 0.02), 9);
    expect(numberIn("ENERGYCOST", 10, 100, 0.1, 94)).toBeCloseTo(numberIn("ENERGYCOST", 10, 100, 0.1, 0.94), 9);
    expect(refusal("LIFECYCLECOST", 1, 1, 10, 101)).toMatch(/Discount rate must be at most 100 %; 101 % was given/);
    expect(refusal("ENERGYCOST", 10, 100, 0.1, 101)).toMatch(/Motor efficiency must be at most 100 %/);
  });

  it("doubts a 0 that a blank cell may be", () => {
    expect(remarks("LIFECYCLECOST", 1, 1, 10, 0)).toEqual(["check zero-may-be-blank"]);
    expect(remarks("ENERGYCOST", 10, 0, 0.1, 0.9)).toEqual(["check zero-may-be-blank"]);
    expect(remarks("ENERGYCOST", 10, 5, 0.1)).toEqual(["assumed motor-efficiency-assumed"]);
  });
});
