import { describe, expect, it } from "vitest";
import { findingText } from "../../../shared/text/finding-text.ts";
import { driveWords } from "../../../shared/text/words/drive.ts";
import type { DriveFindings } from "../../../src/basis/finding-code.ts";
import type { Finding } from "../../../src/basis/result.ts";
import { cell, numberIn, refusal, remarks } from "../../support/cells.ts";

type Table = readonly (readonly (string | number)[])[];

/** Of DRIVEARRANGEMENT, from the liquid on. */
const LEFT_OUT = [null, null, null, null, null, null, null, null] as const;

const KILOWATTS_OF_A_HORSEPOWER = 0.745699871582;

describe("MOTORSIZE", () => {
  // Source: NEMA MG 1 Table 10-4; IEC 60072-1.
  it("takes horsepower in US units and kilowatts elsewhere, unless the list is named", () => {
    expect(numberIn("MOTORSIZE", 60.6)).toBeCloseTo(75, 9);
    expect(numberIn("MOTORSIZE", 45.2, null, null, "SI")).toBeCloseTo(55, 9);
    expect(numberIn("MOTORSIZE", 45.2, null, null, "METRIC")).toBeCloseTo(55, 9);
    expect(numberIn("MOTORSIZE", 45.2, null, "nema", "SI")).toBeCloseTo(75 * KILOWATTS_OF_A_HORSEPOWER, 6);
    expect(numberIn("MOTORSIZE", "45.2 kW", null, "IEC")).toBeCloseTo(55 / KILOWATTS_OF_A_HORSEPOWER, 6);
    expect(numberIn("MOTORSIZE", "60 hp")).toBeCloseTo(60, 9);
  });

  it("asks for more motor by the service factor, never less", () => {
    expect(numberIn("MOTORSIZE", 53)).toBeCloseTo(60, 9);
    expect(numberIn("MOTORSIZE", 53, 1.15)).toBeCloseTo(75, 9);
    expect(numberIn("MOTORSIZE", 53, "115 %")).toBeCloseTo(75, 9);
    expect(refusal("MOTORSIZE", 53, 0.87)).toMatch(/^#VALUE! Service factor must be at least 1/);
    expect(refusal("MOTORSIZE", 53, 15)).toMatch(/at most 3; 15 was given/);
  });

  it("refuses what is no power or too much of it", () => {
    expect(refusal("MOTORSIZE", 0)).toMatch(/^#VALUE! Shaft power must be above 0 hp/);
    expect(refusal("MOTORSIZE", 1001)).toBe(
      "#VALUE! Shaft power with its margin comes to 1,001 hp, above the maximum NEMA rating, 1,000 hp; share the duty between pumps or ask the maker.",
    );
    expect(refusal("MOTORSIZE", 50, 1, "JIS")).toMatch(/“JIS” is not one of the choices; use "NEMA" or "IEC"/);
  });

  it("spills over a column, and remarks on a tight fit", () => {
    expect(cell("MOTORSIZE", [[8], [11], [26]])).toEqual(
      [[10], [15], [30]].map(([hp]) => [expect.closeTo(hp ?? 0, 9)]),
    );
    expect(remarks("MOTORSIZE", 59)).toEqual(["check motor-margin-small"]);
    // IEC 60072-1: 150 kW is of the secondary series.
    expect(numberIn("MOTORSIZE", 140, 1, "IEC", "SI")).toBeCloseTo(160, 9);
  });
});

describe("ENGINESITEPOWER", () => {
  // By hand, ISO 3046-1 with 298 K and T = 273 + t: 4500 ft is 85.92 kPa.
  // Excess air: (85.92 − 0.95)/(100 − 0.95) = 0.8579; α = 0.8579 − 0.7 × 0.1421 × 0.25 = 0.8330.
  it("follows ISO 3046-1", () => {
    expect(numberIn("ENGINESITEPOWER", 225, 4500, 77, "natural")).toBeCloseTo(187.4, 0);
    expect(numberIn("ENGINESITEPOWER", 225, 4500)).toBeCloseTo(187.4, 0);
    // Turbocharged, coolant as warm as the air: (0.8592)^0.7 = 0.8992; α = 0.8992 − 0.7 × 0.1008 × 0.25 = 0.8816.
    expect(numberIn("ENGINESITEPOWER", 225, 4500, 77, "turbo")).toBeCloseTo(198.4, 0);
    expect(numberIn("ENGINESITEPOWER", 150, null, null, "turbo", "SI")).toBe(150);
  });

  // Source: textbook of agricultural engineering, 225 hp at 4500 ft: 198 hp.
  it("notes the quick rule beside it, and what it took for granted", () => {
    const notes = cell("NOTES", "ENGINESITEPOWER", 225, 4500);
    expect(notes).toMatch(/3 % for each 1000 ft above 500 ft leaves 198 hp/);
    expect(notes).toMatch(/naturally aspirated is assumed/);
    expect(notes).toMatch(/continuous net rating/);
  });

  it("reads the words of the trade", () => {
    for (const [trade, word] of [
      ["turbocharged", "turbo"],
      ["Naturally aspirated", "natural"],
    ] as const) {
      expect(numberIn("ENGINESITEPOWER", 225, 4500, 77, trade)).toBe(numberIn("ENGINESITEPOWER", 225, 4500, 77, word));
    }
    expect(cell("DRIVEARRANGEMENT", "diesel", 150, 1800)).toEqual(cell("DRIVEARRANGEMENT", "engine", 150, 1800));
  });

  it("doubts an air temperature of 0 and refuses sites it does not hold for", () => {
    expect(remarks("ENGINESITEPOWER", 100, 0, 0, "turbo")).toContain("check zero-may-be-blank");
    expect(refusal("ENGINESITEPOWER", 100, 17_000)).toMatch(/^#VALUE! Altitude must be at most 16,404\.2 ft/);
    expect(refusal("ENGINESITEPOWER", 100, 0, 150)).toMatch(/^#VALUE! Air temperature must be at most 140 °F/);
    expect(refusal("ENGINESITEPOWER", 100, 0, 77, "diesel")).toMatch(/use "natural" or "turbo"/);
  });
});

describe("DRIVEARRANGEMENT", () => {
  const table = (...args: Parameters<typeof cell> extends [string, ...infer A] ? A : never): Table =>
    cell("DRIVEARRANGEMENT", ...args) as Table;

  it("spills ranked rows under plain headers", () => {
    const rows = table("motor", 20, 1770);
    expect(rows[0]).toEqual(["rank", "arrangement", "verdict", "for", "against", "checks"]);
    expect(rows.slice(1).map(([rank]) => rank)).toEqual([1, 2, 3, 4]);
    expect(rows.flat().every((text) => text !== "")).toBe(true);
  });

  // Source: SAE J617 and T = P/(2πn), by hand: 150 kW at 1800 rpm is 795.8 N·m, 586.9 lbf·ft.
  it("says torque, housings and bolt circles in the reader's units", () => {
    const [, best] = table("engine", "150 kW", 1800);
    expect(best?.[1]).toBe("flywheel housing");
    expect(best?.[5]).toContain("shaft torque 587 lbf·ft");
    expect(best?.[5]).toContain("SAE J617 housing No. 3 (bolt circle 428.62 mm (16.875 in), J620 flywheel 10 or 11.5)");
    expect(table("engine", 150, 1800, ...LEFT_OUT, "SI")[1]?.[5]).toContain("shaft torque 796 N·m");
  });

  it("names the motor chosen, and none of its own", () => {
    const named = table("motor", 200, 1785, null, null, 0, 30, 200, 4, "447TS");
    expect(named[1]?.[5]).toContain("motor 200 hp, 4 poles, frame 447TS");
    const unnamed = table("motor", 200, 1785).flat().join(" ");
    expect(unnamed).toContain("motor with its poles and frame by MOTORDATA");
    expect(unnamed).not.toMatch(/\d kW|frame \d/);
  });

  // Common practice, no source.
  it("counts solids and suction pressure, and says where they are not stated", () => {
    expect(table("motor", 40, 1770)[1]?.[5]).toMatch(/suction pressure not stated.*solids not stated/);
    const slurry = table("motor", 40, 1770, null, null, "30 %", 30);
    expect(slurry[1]?.[1]).toBe("bearing frame and flexible coupling on a base");
    expect(slurry.flat().join(" ")).not.toMatch(/not stated|not known/);
    expect(slurry.find(([, name]) => name === "close-coupled motor")?.slice(2, 5)).toEqual([
      "not advised",
      expect.anything(),
      expect.stringContaining("30 % solids by weight, above 2 %"),
    ]);
    expect(table("motor", 40, 1770, null, null, 0, 120).find(([, name]) => name === "close-coupled motor")?.[2]).toBe(
      "not advised",
    );
    expect(refusal("DRIVEARRANGEMENT", "motor", 40, 1770, null, null, "100 %")).toMatch(
      /Solids by weight must be below 100 %/,
    );
  });

  it("looks at the temperature of the liquid and the limits of power", () => {
    const hot = table("motor", 20, 1770, "water", 230);
    expect(hot[1]?.[1]).toBe("bearing frame and flexible coupling on a base");
    expect(hot.find(([, name]) => name === "close-coupled motor")?.[4]).toContain("liquid above 212 °F");
    expect(table("motor", 120, 1780).find(([, name]) => name === "close-coupled motor")?.[2]).toBe("not advised");
  });

  it("refuses an unknown driver, liquid or speed", () => {
    expect(refusal("DRIVEARRANGEMENT", "turbine", 20, 1770)).toMatch(/“turbine” is not one of the choices/);
    expect(refusal("DRIVEARRANGEMENT", "motor", 20, 1770, "watre")).toMatch(/^#N\/A Liquid “watre” is not known/);
    expect(refusal("DRIVEARRANGEMENT", "motor", 20, 0)).toMatch(/^#VALUE! Speed must be above 0 rpm/);
    expect(refusal("DRIVEARRANGEMENT", "motor", 20)).toMatch(/^#VALUE! Speed is left out/);
  });

  it("owns up to its ranking", () => {
    expect(cell("NOTES", "DRIVEARRANGEMENT", "engine", 100, 1800)).toMatch(/Dutybook's own choice/);
  });
});

describe("the words of the drive", () => {
  // What a finding of each kind may carry; no source, this product's own sentences.
  it("say every fact they name, in one sentence", () => {
    const power = { quantity: "power", value: 1000 } as const;
    const facts = new Proxy({}, { get: (_, name) => ({ ...power, toString: () => `<${String(name)}>` }) });
    for (const code of Object.keys(driveWords) as readonly (keyof DriveFindings)[]) {
      const limit = { ...power, side: "at most" } as const;
      const finding = { code, kind: "error", subject: "it", given: "NEMA", found: power, limit, facts } as Finding;
      const text = findingText(finding, "SI");
      expect(text, code).toMatch(/^[^a-z].{20,}[^.]\.$/);
      expect(text, code).not.toMatch(/undefined|not known to the reader|\[object| {2}/);
    }
  });
});

describe("FUELRATE", () => {
  // By hand: 100 kW × 215 g/kWh / 840 g/L = 25.595 L/h; 100 hp × 0.36 lb/hp-h / 7.0102 lb/US gal = 5.1354 US gal/h.
  it("is power times consumption over density", () => {
    expect(numberIn("FUELRATE", 100, 215, "SI")).toBeCloseTo(25.595, 3);
    expect(numberIn("FUELRATE", 100, "215 g/kWh", "METRIC")).toBeCloseTo(25.595, 3);
    expect(numberIn("FUELRATE", 100, 0.36)).toBeCloseTo(5.1354, 3);
    expect(numberIn("FUELRATE", "100 kW", "215 g/kWh")).toBeCloseTo(25.595 / 3.785412, 3);
  });

  it("assumes the usual consumption with a caution and refuses an impossible one", () => {
    // Common practice, no source: 265 g/kWh to 30 kW.
    expect(numberIn("FUELRATE", 20, null, "SI")).toBeCloseTo((20 * 265) / 840, 6);
    expect(remarks("FUELRATE", 20)).toEqual(["assumed fuel-consumption-assumed"]);
    expect(remarks("FUELRATE", 20, 0.4)).toEqual([]);
    expect(refusal("FUELRATE", 100, 170, "SI")).toMatch(/at least 180 g\/kWh; 170 g\/kWh was given/);
    expect(refusal("FUELRATE", 100, 215)).toMatch(/at most 0.658 lb\/hp-h/);
    expect(refusal("FUELRATE", 0)).toMatch(/^#VALUE! Shaft power must be above 0 hp/);
  });
});
