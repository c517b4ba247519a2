import { readFileSync } from "node:fs";
import Papa from "papaparse";
import { describe, expect, it } from "vitest";
import { cell, numberIn, refusal } from "../../support/cells.ts";

type Rows = readonly (readonly unknown[])[];

const text = readFileSync(new URL("../../published/mechanical-materials.csv", import.meta.url), "utf8");
const CASES = Papa.parse<Record<string, string>>(text, { header: true, skipEmptyLines: true }).data.map((row) => ({
  id: row["case_id"] as string,
  inputs: JSON.parse(row["inputs"] as string) as Readonly<Record<string, number | string>>,
  expected: JSON.parse(row["expected"] as string) as Readonly<Record<string, number | string>>,
  source: row["source"] as string,
}));
const caseOf = (id: string) => {
  const found = CASES.find((one) => one.id === id);
  if (found === undefined) throw new Error(id);
  return found;
};

const firstChoice = (inputs: Readonly<Record<string, number | string>>): Rows => {
  const keys = ["pH", "temp_C", "chloride_mg_L", "solids_wt_pct", "particle"];
  return cell("WETTEDPARTS", ...keys.map((key) => inputs[key] ?? null), null, null, null, null, "SI") as Rows;
};

describe("published material cases", () => {
  it("are five, all of them here", () => {
    expect(CASES.map(({ id }) => id)).toEqual(["O-M01", "O-M02", "O-M03", "O-M04", "O-M05"]);
  });

  it("O-M01: pitting resistance", () => {
    const { inputs, expected } = caseOf("O-M01");
    const composition = `Cr ${inputs["Cr"]}, Mo ${inputs["Mo"]}, N ${inputs["N"]}`;
    expect(Math.abs(numberIn("CASTINGPROPERTY", composition, "PREN") - Number(expected["pren"]))).toBeLessThan(0.1);
  });

  it("O-M02: hardness by condition", () => {
    const { inputs, expected } = caseOf("O-M02");
    const asked = `hardness ${inputs["condition"]}`;
    expect(cell("CASTINGPROPERTY", String(inputs["spec"]), asked)).toBe(expected["HB_min"]);
  });

  it("O-M03: few soft solids", () => {
    const { inputs, expected } = caseOf("O-M03");
    expect(firstChoice(inputs)[1]?.[2]).toBe(expected["first_choice"]);
  });

  it("O-M04: many hard solids", () => {
    const { inputs, expected } = caseOf("O-M04");
    const [, , material, verdict, parts] = firstChoice(inputs)[1] ?? [];
    expect(`${material} (${String(parts).split(":")[0]})`).toBe(expected["first_choice"]);
    // The case does not say what else is in the water.
    expect(verdict).toBe("suits with care");
    const said = String(firstChoice(inputs)[1]?.[6]).toLowerCase();
    for (const part of String(expected["note"]).split("; ")) expect(said).toContain(part);
  });

  it("O-M05: strength", () => {
    const { inputs, expected } = caseOf("O-M05");
    const of = (property: string) => cell("CASTINGPROPERTY", String(inputs["spec"]), property);
    expect([of("tensile"), of("yield"), of("elongation")]).toEqual([
      expected["tensile_ksi"],
      expected["yield_ksi"],
      expected["elong_pct"],
    ]);
  });
});

describe("CASTINGPROPERTY", () => {
  it("reads the column of the unit set, and density in its unit", () => {
    expect(cell("CASTINGPROPERTY", "DI", "yield")).toBe(45);
    expect(cell("CASTINGPROPERTY", "DI", "yield", "SI")).toBe(310);
    expect(cell("CASTINGPROPERTY", "DI", "yield", "METRIC")).toBe(310);
    expect(cell("CASTINGPROPERTY", "DI", "density", "SI")).toBe(7100);
    // By hand: 7100 kg/m³ × 0.0624279606 = 443.239 lb/ft³.
    expect(numberIn("CASTINGPROPERTY", "DI", "density")).toBeCloseTo(443.239, 3);
  });

  it("spills over a column of materials, numbers and texts alike", () => {
    expect(cell("CASTINGPROPERTY", [["DI"], ["CA6NM"]], "permeability")).toEqual([
      ["2100 at most (annealed, ferritic)"],
      ["ferromagnetic"],
    ]);
  });

  it.each([
    ["an unknown material", ["unobtainium", "yield"], /#N\/A Casting “unobtainium” is not known/],
    ["an unknown property", ["DI", "colour"], /#VALUE! Property “colour” is not one of the choices/],
    ["what is not stated", ["HCWI", "yield"], /#VALUE! Yield strength of high-chrome white iron is not stated/],
    ["a strength of a composition", ["Cr 25", "yield"], /#VALUE! Property “yield strength” is not one/],
  ])("refuses %s", (_, args, words) => {
    expect(refusal("CASTINGPROPERTY", ...args)).toMatch(words);
  });
});

describe("CASTINGS", () => {
  it("spills every casting with source and how verified", () => {
    const rows = cell("CASTINGS") as Rows;
    expect(rows).toHaveLength(11);
    expect(rows[0]?.slice(3, 5)).toEqual(["tensile strength, ksi", "yield strength, ksi"]);
    for (const row of rows.slice(1)) {
      expect(String(row[11])).toContain("ASTM");
      expect(String(row[12])).toMatch(/looked up|not yet verified/);
    }
  });

  // Published list, CF8M: 70 / 30 ksi, 485 / 205 MPa.
  it("takes each strength from its own column", () => {
    const row = (units: string) => (cell("CASTINGS", units) as Rows)[5] as readonly number[];
    expect(row("US")[3]).toBeCloseTo(70, 9);
    expect(row("SI")[3]).toBeCloseTo(485, 9);
    expect(row("SI")[4]).toBeCloseTo(205, 9);
  });
});
