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
      "greatest stress allowed, ksi",
      "load of one bolt, lbf",
      "torque, lbf·ft",
      "reference torque, lbf·ft",
      "gasket stress, ksi",
    ]);
    // Hand calculation of tests/src/pressure/flange-joint.test.ts, in inches and pounds.
    expect(values).toEqual([
      8,
      "3/4 in",
      expect.closeTo(34_433.8, 0),
      expect.closeTo(40_738.7, 0),
      expect.closeTo(40_738.7, 0),
      expect.closeTo(15.2237, 3),
      expect.closeTo(21, 9),
      expect.closeTo(31.5, 9),
      expect.closeTo(7024.5, 3),
      expect.closeTo(87.806, 2),
      expect.closeTo(97.72, 1),
      expect.closeTo(1.8594, 3),
    ]);
    expect(torqueRecord("8", 150, 250, FIBRE, "ductile iron", "A193 B7", 0.2)).toEqual([header, values]);
  });

  it("answers in newtons and newton-metres for the same joint", () => {
    const [, values] = torqueRecord("DN200", 150, "250 psi", FIBRE, null, null, null, "SI");
    // 7024.5 lbf × 4.448222 N = 31 246.5 N; 87.806 lbf·ft × 1.355818 = 119.05 N·m; 21 ksi = 144.79 MPa.
    expect(values?.[6]).toBeCloseTo(144.79, 2);
    expect(values?.[8]).toBeCloseTo(31_246.5, 0);
    expect(values?.[9]).toBeCloseTo(119.05, 2);
  });

  it("pulls in proportion to the nut factor and takes the grade", () => {
    const torque = (nutFactor: number): number =>
      torqueRecord("8", 150, 250, FIBRE, "WCB", null, nutFactor)[1]?.[9] as number;
    expect(torque(0.3) / torque(0.15)).toBeCloseTo(2, 9);
    // A307 B in steel: 20 ksi × 0.3345 in² × 0.2 × 0.75/12 = 83.6 lbf·ft.
    expect(torqueRecord("8", 150, 250, FIBRE, "WCB", "a307 b")[1]?.[9]).toBeCloseTo(83.625, 2);
  });

  it.each([
    ["NPS 22", ["22", 150, 250, FIBRE], "#VALUE! NPS 22 is no flange size; the sizes are NPS 1/2,"],
    ["PN16", ["6", "PN16", 250, FIBRE], "#VALUE! Dimensions of PN16 flanges are not included"],
    ["a low K", ["6", 150, 250, FIBRE, null, null, 0.07], "#VALUE! Nut factor must be at least 0.08; 0.07 was given."],
    ["a high K", ["6", 150, 250, FIBRE, null, null, 0.41], "#VALUE! Nut factor must be at most 0.4; 0.41 was given."],
    ["an unknown gasket", ["6", 150, 250, "cork"], "Gasket “cork” is not one of the choices"],
    ["no gasket", ["6", 150, 250, ""], "#VALUE! Gasket is left out or blank"],
    ["an unknown grade", ["6", 150, 250, FIBRE, null, "B8"], "Bolt grade “B8” is not one of the choices"],
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
      "scatters by 30 % either way",
      // 21 ksi less 30 % is 14.7; 15.22 are needed.
      "leaves a bolt stress of 14.7 ksi, less than the 15.22 ksi needed",
      "crosswise at 30, 70 and 100 %",
      "never on a hot joint",
      "raised face of 10.62 in",
      "never clamp a raised face against flat-faced grey iron",
      "not yet verified against the standard",
      "makers’ torque governs",
    ]) {
      expect(text).toContain(said);
    }
  });

  it("sends grey iron to a full-face gasket and weak bolts", () => {
    const text = notes("6", 125, 100, FIBRE, "grey iron");
    for (const said of ["full-face soft gasket", "A307 B", "stop where the gasket seats"]) expect(text).toContain(said);
    const values = torqueRecord("6", 125, 100, FIBRE, "grey iron")[1];
    expect(values?.[6]).toBe(values?.[5]);
  });

  it("warns of a spiral-wound gasket on iron and of a crushed one", () => {
    expect(notes("6", 150, 250, "spiral wound")).toContain("too high for most ductile iron flanges");
    // Class 300 at 600 psi on soft rubber needs more than 900 psi of it.
    expect(notes("6", 300, 600, "rubber below 75 A")).toContain("that crushes the gasket");
  });
});

describe("FLANGEDIMENSIONS", () => {
  // ASME B16.5, read in a data book: Class 150 NPS 10 has twelve bolts of 7/8 in, Class 300 NPS 12 sixteen of 1-1/8 in.
  it.each([
    ["10", 150, "US", 12, "7/8 in"],
    ["DN300", 300, "SI", 16, "1-1/8 in"],
  ] as const)("names the bolts of %s Class %d in inches in %s", (size, flangeClass, units, bolts, boltSize) => {
    const [header, values] = cell("FLANGEDIMENSIONS", size, flangeClass, units) as Rows;
    expect(values?.[2]).toBe(bolts);
    expect([header?.at(-1), values?.at(-1)]).toEqual(["bolt size", boltSize]);
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
