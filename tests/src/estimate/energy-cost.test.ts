import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type EnergyCostInputs, energyCost } from "../../../src/estimate/energy-cost.ts";

const base: EnergyCostInputs = {
  shaftPower: 30_000,
  hours: 1000 * 3600,
  tariff: 0.2,
  motorEfficiency: 0.9,
  driveEfficiency: 0.96,
};

function costOf(change: Partial<EnergyCostInputs> = {}): number {
  const cost = energyCost({ ...base, ...change });
  if (!cost.ok) throw new Error(JSON.stringify(cost.findings));
  return cost.value;
}

describe("cost of electricity", () => {
  it("is energy from the grid times the tariff", () => {
    // By hand: 30 kW × 1000 h / (0.9 × 0.96) × 0.2 = 6944.4444.
    expect(costOf()).toBeCloseTo(6944.4444, 4);
  });

  it("grows in step with power, time and tariff, and as efficiency falls", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 10, noNaN: true }), (times) => {
        for (const input of ["shaftPower", "hours", "tariff"] as const) {
          expect(costOf({ [input]: base[input] * times }) / costOf()).toBeCloseTo(times, 9);
        }
        expect(costOf({ motorEfficiency: 0.09 * times }) * times).toBeCloseTo(costOf({ motorEfficiency: 0.09 }), 6);
      }),
    );
  });

  it("takes 0.93 for a motor it does not know, with a caution", () => {
    const unknown = energyCost({ ...base, motorEfficiency: null });
    expect(unknown.ok && unknown.value).toBeCloseTo(30_000 / (0.93 * 0.96) / 5, 8);
    expect(unknown.findings).toMatchObject([{ code: "motor-efficiency-assumed", kind: "assumed" }]);
    expect(energyCost(base).findings).toEqual([]);
  });

  it.each([
    ["shaftPower", -1],
    ["hours", -1],
    ["tariff", -0.01],
    ["motorEfficiency", 0],
    ["motorEfficiency", 1.01],
    ["driveEfficiency", 0],
    ["driveEfficiency", 1.01],
  ] as const)("refuses %s of %d", (input, value) => {
    expect(energyCost({ ...base, [input]: value }).findings.map(({ code }) => code)).toEqual(["out-of-range"]);
  });

  it.each(["motorEfficiency", "driveEfficiency"] as const)("takes a %s of 1", (input) => {
    expect(energyCost({ ...base, [input]: 1 }).ok).toBe(true);
  });
});
