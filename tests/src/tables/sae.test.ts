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
      if (depth === "") expect(value.crankFaceToHousingFace).toBeUndefined();
      else expect((value.crankFaceToHousingFace ?? 0) / MM).toBeCloseTo(Number(depth), 9);
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

// Source: SAE J620D, published extract; 21 and 24 from memory.
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
