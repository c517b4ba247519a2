import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type SlurryFrictionInputs, slurryFriction } from "../../../src/slurry/slurry-friction.ts";
import { expectPublished, inputAmount } from "../../support/expect-published.ts";
import { pipeOf } from "../../support/pipes.ts";
import { numberOf, publishedCases } from "../../support/published-cases.ts";

const WATER = { density: 998.2, dynamicViscosity: 1.0034e-6 * 998.2 };
const AREA = Math.PI / 100;
const base: SlurryFrictionInputs = {
  flow: 4 * AREA,
  pipe: pipeOf(0.2, 4.5e-5),
  particleSize: 4e-4,
  coarseSize: null,
  solidsSG: 2.65,
  solidsByVolume: 0.15,
  liquid: WATER,
};

function frictionOf(change: Partial<SlurryFrictionInputs> = {}) {
  const friction = slurryFriction({ ...base, ...change });
  if (!friction.ok) throw new Error(JSON.stringify(friction.findings));
  return friction.value;
}

function codesOf(change: Partial<SlurryFrictionInputs>): readonly string[] {
  return slurryFriction({ ...base, ...change }).findings.map(({ code, kind }) => `${kind} ${code}`);
}

describe("friction of a settling slurry", () => {
  it.each(publishedCases("9-slurry-velocity").filter(({ expected }) => expected["V50"]))("$id", (of) => {
    const bore = inputAmount(of, "D").value;
    const friction = frictionOf({
      flow: inputAmount(of, "V").value * (Math.PI / 4) * bore * bore,
      pipe: pipeOf(bore, inputAmount(of, "eps").value),
      particleSize: inputAmount(of, "d50").value * 1e-3,
      solidsSG: numberOf(of, "S_s"),
      solidsByVolume: numberOf(of, "Cv"),
      liquid: { density: 998.2, dynamicViscosity: inputAmount(of, "nu").value * 998.2 },
    });
    expect(friction.exponent).toBe(numberOf(of, "M"));
    expectPublished(friction.v50, "V50", of);
    expectPublished(friction.carrierGradient, "i_water", of);
    expectPublished(friction.waterGradient, "i_mixture", of);
    // S_m = 1 + 0.15 × 1.65 = 1.2475.
    expect(friction.waterGradient / friction.slurryGradient).toBeCloseTo(1.2475, 12);
  });

  // From the figures of 9-slurry-velocity-007: V50 = 2.85176377056 m/s, i_l = 0.0617557562479 m/m at 4 m/s.
  it("finds V50 for heavier solids and thicker liquids", () => {
    const thick = { ...WATER, dynamicViscosity: 2 * WATER.dynamicViscosity };
    expect(frictionOf({ solidsSG: 4.2, flow: 6 * AREA }).v50).toBeCloseTo(2.85176377056 * (3.2 / 1.65) ** 0.45, 6);
    expect(frictionOf({ liquid: thick }).v50).toBeCloseTo(2.85176377056 / 2 ** 0.25, 6);
  });

  it("counts in metres of water whatever the liquid weighs", () => {
    const brine = { density: 1.2 * WATER.density, dynamicViscosity: 1.2 * WATER.dynamicViscosity };
    const { carrierGradient, waterGradient, slurryGradient } = frictionOf({ liquid: brine });
    expect(carrierGradient).toBeCloseTo(1.2 * 0.0617557562479, 8);
    // S_m = 1.2 + 0.15 × 1.45 = 1.4175
    expect(waterGradient - carrierGradient).toBeCloseTo(0.22 * 0.15 * 1.45 * (4 / 2.85176377056) ** -1.7, 8);
    expect(waterGradient / slurryGradient).toBeCloseTo(1.4175, 12);
  });

  it("is never below that of the liquid, and more with more solids", () => {
    const velocity = fc.double({ min: 2.6, max: 6, noNaN: true });
    fc.assert(
      fc.property(velocity, fc.double({ min: 0.02, max: 0.2, noNaN: true }), (v, solidsByVolume) => {
        const at = frictionOf({ flow: v * AREA, solidsByVolume });
        expect(at.waterGradient).toBeGreaterThan(at.carrierGradient);
        const more = frictionOf({ flow: v * AREA, solidsByVolume: solidsByVolume + 0.01 });
        expect(more.waterGradient).toBeGreaterThan(at.waterGradient);
      }),
    );
  });

  it("takes the exponent from the grading, between 0.25 and 1.7", () => {
    // 1/ln(4) = 0.72134752
    expect(frictionOf({ coarseSize: 16e-4 }).exponent).toBeCloseTo(0.72134752, 8);
    expect(codesOf({ coarseSize: 16e-4 })).toEqual([]);
    // ln(d85/d50) under 1/1.7 and over 4
    expect(frictionOf({ coarseSize: 5e-4 }).exponent).toBe(1.7);
    expect(codesOf({ coarseSize: 5e-4 })).toEqual(["check grading-exponent-held"]);
    expect(frictionOf({ coarseSize: 0.03 }).exponent).toBe(0.25);
    expect(codesOf({ coarseSize: 0.03 })).toEqual(["check grading-exponent-held"]);
    expect(frictionOf({ coarseSize: 4e-4 }).exponent).toBe(1.7);
    expect(codesOf({ coarseSize: 3.9e-4 })).toEqual(["error out-of-range"]);
  });

  it("never counts more than all solids as sliding", () => {
    // Half of them slide at V50; all of them at V50 × 2^(−1/1.7), 0.665 of it, and below.
    const { v50 } = frictionOf();
    const excess = (velocity: number): number => {
      const at = frictionOf({ flow: velocity * AREA });
      return (at.waterGradient - at.carrierGradient) / (0.15 * 1.65);
    };
    expect(excess(v50)).toBeCloseTo(0.22, 9);
    expect(excess(v50 * 0.5 ** (1 / 1.7))).toBeCloseTo(0.44, 9);
    expect(excess(v50 / 4)).toBeCloseTo(0.44, 9);
  });

  it.each([
    ["a negative flow", { flow: -1 }, ["error out-of-range"]],
    ["a particle of nothing", { particleSize: 0 }, ["error out-of-range"]],
  ] as const)("refuses %s", (_, change, codes) => {
    expect(codesOf(change)).toEqual(codes);
  });
});
