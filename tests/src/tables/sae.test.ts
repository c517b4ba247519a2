import { describe, expect, it } from "vitest";
import { unitOf } from "../../../src/basis/units.ts";
import { FLYWHEEL_HOUSINGS, flywheel, flywheelHousing } from "../../../src/drive/flywheel-housing.ts";
import { SAE_FLYWHEELS } from "../../../src/tables/sae-flywheels.ts";
import { SAE_HOUSING_PAIRS } from "../../../src/tables/sae-housing-pairs.ts";
import { SAE_HOUSINGS } from "../../../src/tables/sae-housings.ts";
import { figureIn, publishedTable } from "../../support/published-table.ts";

const MM = unitOf("mm").factor;

// Source: SAE J617; marks of how each row was verified in the file.
describe("SAE J617 housings", () => {
  const rows = publishedTable("sae-housings");

  it("has every housing with its figures", () => {
    expect(rows).toHaveLength(9);
    expect(FLYWHEEL_HOUSINGS.map(({ number }) => number)).toEqual(rows.map((row) => row["housing_no"]));
    for (const [i, row] of rows.entries()) {
      const found = flywheelHousing(row["housing_no"] as string);
      if (!found.ok) throw new Error(row["housing_no"]);
      const { value } = found;
      expect(value.pilot / MM).toBeCloseTo(figureIn(row, "pilot_mm"), 9);
      expect(value.boltCircle / MM).toBeCloseTo(figureIn(row, "bolt_circle_mm"), 9);
      expect(value.flangeDiameter / MM).toBeCloseTo(figureIn(row, "flange_od_mm"), 9);
      expect(value.holes).toBe(figureIn(row, "n_holes"));
      expect(value.inchThread).toBe(row["thread_inch"]);
      expect(row["thread_metric"]).toContain(value.metricThread);
      const depth = row["crank_face_to_housing_face_mm"];
      expect(value.crankFaceToHousingFace / MM).toBeCloseTo(Number(depth), 9);
      expect(SAE_HOUSINGS[i]?.pilotInches).toBe(figureIn(row, "pilot_in"));
      expect(SAE_HOUSINGS[i]?.boltCircleInches).toBe(figureIn(row, "bolt_circle_in"));
      expect(SAE_HOUSINGS[i]?.flangeInches).toBe(figureIn(row, "flange_od_in"));
    }
  });

  it("prints the same size in millimetres and inches, pilot inside circle inside flange, largest first", () => {
    for (const { pilot, pilotInches, boltCircle, boltCircleInches, flange } of SAE_HOUSINGS) {
      expect(Math.abs(pilot - pilotInches * 25.4)).toBeLessThanOrEqual(0.01);
      expect(Math.abs(boltCircle - boltCircleInches * 25.4)).toBeLessThanOrEqual(0.01);
      expect(pilot).toBeLessThan(boltCircle);
      expect(boltCircle).toBeLessThan(flange);
    }
    const circles = SAE_HOUSINGS.map(({ boltCircle }) => boltCircle);
    expect(circles).toEqual(circles.toSorted((a, b) => b - a));
  });

  // Source: engine service manual, run-out table of housing bores.
  it.each([
    ["00", 787.4],
    ["0", 647.7],
    ["1/2", 584.2],
    ["1", 511.18],
    ["2", 447.68],
    ["3", 409.58],
  ])("No. %s is bored %f mm", (number, bore) => {
    const found = flywheelHousing(`SAE No. ${number}`);
    expect(found.ok && found.value.pilot / MM).toBeCloseTo(bore, 9);
  });
});

// Source: clutch maker's manual of 2012, p. 148, housing dimensions in inches; depth from crankshaft flange to housing face.
it.each([
  ["00", 31, 33 + 1 / 2, 34 + 3 / 4, 16, "1/2-13", 3 + 15 / 16],
  ["0", 25.5, 26 + 3 / 4, 28, 16, "1/2-13", 3 + 15 / 16],
  ["1/2", 23, 24 + 3 / 8, 25 + 1 / 2, 12, "1/2-13", 3 + 15 / 16],
  ["1", 20.125, 20 + 7 / 8, 21 + 3 / 4, 12, "7/16-14", 3 + 15 / 16],
  ["2", 17.625, 18 + 3 / 8, 19 + 1 / 4, 12, "3/8-16", 3 + 15 / 16],
  ["3", 16.125, 16 + 7 / 8, 17 + 3 / 4, 12, "3/8-16", 3 + 15 / 16],
  ["4", 14.25, 15, 15 + 7 / 8, 12, "3/8-16", 3 + 15 / 16],
  ["5", 12.375, 13 + 1 / 8, 14, 8, "3/8-16", 2 + 13 / 16],
  ["6", 10.5, 11 + 1 / 4, 12 + 1 / 8, 8, "3/8-16", 2 + 13 / 16],
] as const)("housing No. %s is as a second source prints it", (number, pilot, circle, flange, holes, thread, depth) => {
  const row = SAE_HOUSINGS.find((one) => one.number === number);
  expect(row).toMatchObject({ pilotInches: pilot, boltCircleInches: circle, holes, inchThread: thread });
  // Printed to two places of the inch, and to 0.1 mm.
  expect(Math.abs((row?.flangeInches ?? 0) - flange)).toBeLessThan(0.0051);
  expect(Math.abs((row?.depth ?? 0) - depth * 25.4)).toBeLessThan(0.1);
});

// Source: reprint of SAE J620, pilot and bolt circle in millimetres.
it.each([
  [6.5, 215.9, 200.02],
  [7.5, 241.3, 222.25],
  [8, 263.52, 244.48],
  [10, 314.32, 295.28],
  [11.5, 352.42, 333.38],
  [14, 466.72, 438.15],
  [16, 517.52, 488.95],
  [18, 571.5, 542.92],
  [21, 673.1, 641.35],
  [24, 733.42, 692.15],
] as const)("flywheel %s is as a second source prints it", (size, pilot, boltCircle) => {
  expect(SAE_FLYWHEELS.find((one) => one.size === size)).toMatchObject({ pilot, boltCircle });
});

// Source: SAE J620D, published extract; bolt circles and pilots of 21 and 24 a reprint, their holes and recess from memory.
describe("SAE J620 flywheels", () => {
  it("has every size with its figures", () => {
    const rows = publishedTable("sae-flywheels");
    expect(rows).toHaveLength(10);
    expect(SAE_FLYWHEELS).toHaveLength(10);
    for (const [i, row] of rows.entries()) {
      const found = flywheel(row["flywheel_size"] as string);
      if (!found.ok) throw new Error(row["flywheel_size"]);
      expect(found.value.pilot / MM).toBeCloseTo(figureIn(row, "pilot_mm"), 9);
      expect(found.value.boltCircle / MM).toBeCloseTo(figureIn(row, "bolt_circle_mm"), 9);
      expect(found.value.holes).toBe(figureIn(row, "n_holes"));
      expect(found.value.thread).toBe(row["thread"]);
      expect(found.value.recess / MM).toBeCloseTo(figureIn(row, "recess_G_mm"), 9);
      expect(SAE_FLYWHEELS[i]?.pilotInches).toBe(figureIn(row, "pilot_in"));
      expect(SAE_FLYWHEELS[i]?.boltCircleInches).toBe(figureIn(row, "bolt_circle_in"));
    }
  });

  it("prints the same size in millimetres and inches, bolts inside the ring", () => {
    for (const { pilot, pilotInches, boltCircle, boltCircleInches } of SAE_FLYWHEELS) {
      expect(Math.abs(pilot - pilotInches * 25.4)).toBeLessThanOrEqual(0.02);
      expect(Math.abs(boltCircle - boltCircleInches * 25.4)).toBeLessThanOrEqual(0.02);
      expect(boltCircle).toBeLessThan(pilot);
    }
  });
});

describe("usual pairs", () => {
  // Common practice, no source.
  it("has every housing once, with listed flywheels and bands that rise with size", () => {
    expect(SAE_HOUSING_PAIRS.map(([number]) => number)).toEqual(SAE_HOUSINGS.map(({ number }) => number));
    const sizes = SAE_FLYWHEELS.map(({ size }) => size);
    for (const [, flywheels, from, to] of SAE_HOUSING_PAIRS) {
      expect(flywheels.length).toBeGreaterThan(0);
      for (const size of flywheels) expect(sizes).toContain(size);
      expect(from).toBeLessThan(to);
    }
    const torques = SAE_HOUSING_PAIRS.map(([, , , , torque]) => torque ?? Number.POSITIVE_INFINITY);
    expect(torques).toEqual(torques.toSorted((a, b) => b - a));
    expect(SAE_HOUSING_PAIRS).toContainEqual(["3", [10, 11.5], 45, 170, 900]);
  });

  it("puts no flywheel into a housing it does not pass", () => {
    for (const [number, flywheels] of SAE_HOUSING_PAIRS) {
      const pilot = SAE_HOUSINGS.find((row) => row.number === number)?.pilot ?? 0;
      for (const size of flywheels) {
        expect(SAE_FLYWHEELS.find((row) => row.size === size)?.pilot, `${size} in ${number}`).toBeLessThan(pilot);
      }
    }
  });
});
