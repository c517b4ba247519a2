import { describe, expect, it } from "vitest";
import { cell, numberIn, refusal, remarks } from "../../support/cells.ts";

type Rows = readonly (readonly (number | string)[])[];

const FIBRE = "fibre 1/16 in";

function torqueRecord(...args: Parameters<typeof cell> extends [string, ...infer A] ? A : never): Rows {
  return cell("BOLTTORQUE", ...args) as Rows;
}

function notes(...args: Parameters<typeof cell> extends [string, ...infer A] ? A : never): string {
  return String(cell("NOTES", "BOLTTORQUE", ...args));
}

describe("BOLTTORQUE", () => {
  it("gives a record of bolts, loads, stresses and torque, ductile iron where no material is given", () => {
    const [header, values] = torqueRecord("8", 150, 250, FIBRE);
    expect(header).toEqual([
      "bolts",
      "bolt size",
      "load to hold the pressure, lbf",
      "load to seat the gasket, lbf",
      "load needed, lbf",
      "bolt stress needed, ksi",
      "bolt stress taken, ksi",
      "maximum stress allowed, ksi",
      "load of one bolt, lbf",
      "torque, lbf·ft",
      "reference torque, lbf·ft",
      "gasket stress, ksi",
      "bolt grade",
      "test pressure, psig",
      "load needed at test, lbf",
      "load on the low side, lbf",
      "seals to, psig",
      "seals to, minimum nut factor, psig",
      "bolt stress, minimum nut factor, ksi",
      "why no torque",
    ]);
    // Hand calculation of tests/src/pressure/flange-joint.test.ts, in inches and pounds.
    expect(values).toEqual([
      8,
      "3/4 in",
      expect.closeTo(34_433.8, 0),
      expect.closeTo(40_738.7, 0),
      expect.closeTo(40_738.7, 0),
      expect.closeTo(15.2237, 3),
      // At 375 psi 51 650.6 lb; over 0.7 and 8 × 0.3345 in² 27.574 ksi, 9223.3 lb a bolt, K D F 115.29 lbf·ft.
      expect.closeTo(27.574, 2),
      expect.closeTo(31.5, 9),
      expect.closeTo(9223.3, 0),
      expect.closeTo(115.29, 1),
      // 9223.3/0.3019 = 30 551 psi on the root; 210 × 30.551/50.
      expect.closeTo(128.31, 1),
      // 8 × 9223.3/30.2221 in².
      expect.closeTo(2.4415, 3),
      "A193 B7",
      expect.closeTo(375, 9),
      expect.closeTo(51_650.6, 0),
      // Nobody stated K: 0.7 × 8 × 9223.3 × 0.2/0.25, over 137.735 lb a psi; and at 0.16.
      expect.closeTo(41_320.4, 0),
      expect.closeTo(300, 1),
      expect.closeTo(468.75, 1),
      expect.closeTo(34.467, 2),
      "",
    ]);
    const same = torqueRecord("8", 150, 250, FIBRE, "ductile iron", "A193 B7", 0.2, 375, 30, "ring", "both raised");
    expect(same[1]?.slice(0, 14)).toEqual(values?.slice(0, 14));
    expect(same[1]?.[16]).toBeCloseTo(375, 6);
  });

  it("answers in newtons and newton-metres for the same joint", () => {
    const blanks = Array.from({ length: 9 }, () => null);
    const [, values] = torqueRecord("DN200", 150, "240 psi", FIBRE, ...blanks, "SI");
    // At 360 psi 49 584.6 lb over 0.7 and 8 × 0.3345 in²: 26.471 ksi = 182.51 MPa; 8854.4 lbf × 4.448222 N = 39 386 N;
    // 0.2 × 0.75 × 8854.4/12 = 110.68 lbf·ft × 1.355818 = 150.06 N·m.
    expect(values?.[6]).toBeCloseTo(182.51, 1);
    expect(Math.abs((values?.[8] as number) - 39_386)).toBeLessThan(2);
    expect(values?.[9]).toBeCloseTo(150.06, 1);
  });

  it("pulls in proportion to the nut factor and takes the grade", () => {
    const torque = (nutFactor: number): number =>
      torqueRecord("8", 150, 250, FIBRE, "WCB", null, nutFactor)[1]?.[9] as number;
    expect(torque(0.3) / torque(0.15)).toBeCloseTo(2, 9);
    // A307 B in steel, at most 25 ksi × 0.3345 in² × 0.2 × 0.75/12 = 104.5 lbf·ft; 27.6 ksi would hold the test.
    expect(torqueRecord("8", 150, 250, FIBRE, "WCB", "a307 b")[1]?.[9]).toBeCloseTo(104.531, 2);
  });

  it.each([
    ["NPS 22", ["22", 150, 250, FIBRE], "#VALUE! NPS 22 is no flange size; the sizes are NPS 1/2,"],
    ["a low K", ["6", 150, 250, FIBRE, null, null, 0.07], "#VALUE! Nut factor must be at least 0.08; 0.07 was given."],
    ["a high K", ["6", 150, 250, FIBRE, null, null, 0.41], "#VALUE! Nut factor must be at most 0.4; 0.41 was given."],
    ["an unknown gasket", ["6", 150, 250, "cork"], "#N/A Gasket “cork” is not known"],
    ["no gasket", ["6", 150, 250, ""], "#VALUE! Gasket is left out or blank"],
    ["an unknown grade", ["6", 150, 250, FIBRE, null, "B16"], "#N/A Bolt grade “B16” is not known"],
    [
      "an unknown finish",
      ["6", 150, 250, FIBRE, null, null, null, null, null, null, null, "soap"],
      "Bolt finish “soap” is not one of the choices",
    ],
    [
      "a scatter of 61 %",
      ["6", 150, 250, FIBRE, null, null, null, null, 61],
      "#VALUE! Torque scatter must be at most 60 %",
    ],
    ["full face in Class 300", ["6", 300, 250, FIBRE, null, null, null, null, null, "full face"], "take a ring"],
    ["an unknown material", ["6", 150, 250, FIBRE, "cheese"], "#N/A Flange material “cheese” is not known"],
    ["a pressure below 0", ["6", 150, -5, FIBRE], "#VALUE! Pressure must be at least 0"],
    [
      "grey iron in Class 150",
      ["6", 150, 100, FIBRE, "grey iron"],
      "#VALUE! Class 150 is no class of grey iron flanges in ASME B16.1; use “Class 125” or “Class 250”.",
    ],
    ["Class 125 without a material", ["6", 125, 100, FIBRE], "#VALUE! Class 125 is no class of ductile iron flanges"],
  ] as const)("refuses %s in words", (_, args, message) => {
    expect(refusal("BOLTTORQUE", ...args)).toContain(message);
  });

  it("doubts a pressure of 0", () => {
    expect(remarks("BOLTTORQUE", "6", 150, 0, FIBRE)).toContain("check zero-may-be-blank");
  });

  it("says how to tighten, what it rests on and who governs", () => {
    const text = notes("8", 150, 250, FIBRE);
    for (const said of [
      "up to 30 % low or high",
      // K may be 0.25: 41 320 lb, 300 psi.
      "seals to 300 psig, less than the 375 psig of its test",
      "it may be 0.16 to 0.25",
      "of the iron flange are not stated and taken as raised",
      "crosswise at 30, 70 and 100 %",
      "never on a hot joint",
      "not yet verified against the standard",
      "makers’ torque governs",
    ]) {
      expect(text).toContain(said);
    }
  });

  it("gives grey iron with a ring and B7 no torque, and says what would do", () => {
    const values = torqueRecord("6", 125, 100, FIBRE, "grey iron", "B7", 0.2)[1];
    expect([values?.[6], values?.[9], values?.at(-1)]).toEqual(["", "", "grey iron, ring gasket, A193 B7 bolts"]);
    const text = notes("6", 125, 100, FIBRE, "grey iron", "B7", 0.2);
    for (const said of ["full-face gasket between flat faces", "A307 B"]) expect(text).toContain(said);
    expect(torqueRecord("6", 125, 100, FIBRE, "grey iron")[1]?.[12]).toBe("A307 B");
  });

  it("gives no torque where the class fails", () => {
    // EN 1092-2: PN16 holds 16 bar, 232 psi.
    const values = torqueRecord("6", "PN16", 250, FIBRE)[1];
    expect([values?.[1], values?.[9], values?.at(-1)]).toEqual(["M20", "", "the class does not hold the pressure"]);
    expect(notes("6", "PN16", 250, FIBRE)).toContain("above the EN 1092-2 rating of PN16");
  });

  it("warns of a spiral-wound gasket on iron and of rubber that cannot hold", () => {
    expect(notes("6", 150, 250, "spiral wound")).toContain("too high for most ductile iron flanges");
    // Class 300 at 600 psi on soft rubber needs more than 900 psi of it.
    expect(notes("6", 300, 600, "rubber below 75 A")).toContain("fiber, or rubber with a steel core");
  });
});

describe("FLANGEDIMENSIONS", () => {
  // ASME B16.5, read in a data book: Class 150 NPS 10 has twelve bolts of 7/8 in, Class 300 NPS 12 sixteen of 1-1/8 in.
  it.each([
    ["10", 150, "US", 12, "7/8 in"],
    ["DN300", 300, "SI", 16, "1-1/8 in"],
    // EN 1092-1, read in three tables: PN 16 DN 200 has twelve of M20.
    ["DN200", "PN16", "METRIC", 12, "M20"],
    // AS 2129, read in a chart: Table E of DN 250 has twelve of M20.
    ["250", "Table E", "SI", 12, "M20"],
  ] as const)("names the bolts of %s in %s as they are ordered in %s", (size, flangeClass, units, bolts, boltSize) => {
    const [header, values] = cell("FLANGEDIMENSIONS", size, flangeClass, null, units) as Rows;
    expect(values?.[2]).toBe(bolts);
    expect([header?.[12], values?.[12]]).toEqual(["bolt size", boltSize]);
  });
});

describe("STUDLENGTH", () => {
  it("adds up the parts and rounds up to a quarter inch", () => {
    // Ductile NPS 8 (1.12) on steel (1.06 + 0.06 face), 1/8 in gasket: 1.12 + 1.12 + 0.125 + 1.5 + 0.4 + 0.06 = 4.325.
    expect(numberIn("STUDLENGTH", 1.12, 1.12, 0.75)).toBeCloseTo(4.5, 9);
    // A wafer valve of 2.5 in and its second gasket: 4.325 + 2.5 + 0.125 = 6.95.
    expect(numberIn("STUDLENGTH", 1.12, 1.12, 0.75, 0.25, 2.5)).toBeCloseTo(7, 9);
  });

  it("takes a stated pitch, and a metric bolt in steps of 5 mm", () => {
    // 28 + 28 + 3 + 2 × 20 + 4 × 2.5 + 1.524 = 110.524 mm.
    expect(numberIn("STUDLENGTH", 28, 28, 20, 3, null, null, "SI")).toBeCloseTo(115, 9);
    // Fine thread of 1.5 mm: 4 mm less, 106.524.
    expect(numberIn("STUDLENGTH", 28, 28, 20, 3, null, 1.5, "SI")).toBeCloseTo(110, 9);
    // A bolt no table holds, 1.75 in of five threads an inch: 2 + 2 + 0.125 + 3.5 + 0.8 + 0.06 = 8.485.
    expect(numberIn("STUDLENGTH", 2, 2, 1.75, null, null, 0.2)).toBeCloseTo(8.5, 9);
  });

  it("answers a whole column", () => {
    const column = cell("STUDLENGTH", [[1.12], [1.38]], 1.12, 0.75) as readonly (readonly number[])[];
    expect(column.flat()).toEqual([expect.closeTo(4.5, 9), expect.closeTo(4.75, 9)]);
  });

  it.each([
    ["a diameter no table holds", [1, 1, 1.75], "is no bolt of the tables; give its thread pitch too"],
    ["a thickness of 0", [0, 1, 0.75], "Thickness of one flange must be above 0"],
    ["a gasket below 0", [1, 1, 0.75, -0.1], "Gasket thickness must be at least 0"],
    ["a pitch of 0", [1, 1, 0.75, 0.125, 0, 0], "Thread pitch must be above 0"],
  ] as const)("refuses %s", (_, args, message) => {
    expect(refusal("STUDLENGTH", ...args)).toContain(message);
  });

  it("says that the lengths are from parts", () => {
    expect(remarks("STUDLENGTH", 1, 1, 0.75)).toEqual(["check stud-length-by-parts"]);
    expect(remarks("STUDLENGTH", 1, 1, 0.75, 0)).toContain("check zero-may-be-blank");
  });
});
