import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type LifeCycleCostInputs, lifeCycleCost } from "../../../src/estimate/life-cycle-cost.ts";

const base: LifeCycleCostInputs = { firstCost: 1000, yearlyCost: 100, years: 10, discountRate: 0.05, inflation: 0 };

function costOf(change: Partial<LifeCycleCostInputs> = {}): number {
  const cost = lifeCycleCost({ ...base, ...change });
  if (!cost.ok) throw new Error(JSON.stringify(cost.findings));
  return cost.value;
}

describe("life-cycle cost", () => {
  // Present-value factors of uniform series as interest tables print them (from memory).
  it.each([
    [0.05, 10, 7.7217],
    [0.08, 20, 9.8181],
    [0.1, 5, 3.7908],
    [0.12, 15, 6.8109],
  ])("at %d over %d years has the factor of the tables", (discountRate, years, factor) => {
    expect(costOf({ firstCost: 0, yearlyCost: 1, discountRate, years })).toBeCloseTo(factor, 4);
  });

  it("is the plain sum where money bears no interest", () => {
    expect(costOf({ discountRate: 0 })).toBe(2000);
    expect(costOf({ discountRate: 0.03, inflation: 0.03 })).toBe(2000);
    expect(costOf({ discountRate: 1e-12 })).toBeCloseTo(2000, 6);
  });

  it("is the sum of the years, each brought to the start", () => {
    const rate = fc.double({ min: -0.05, max: 0.3, noNaN: true });
    fc.assert(
      fc.property(rate, rate, fc.integer({ min: 1, max: 40 }), (discountRate, inflation, years) => {
        let sum = base.firstCost;
        for (let year = 1; year <= years; year += 1) {
          sum += base.yearlyCost * ((1 + inflation) / (1 + discountRate)) ** year;
        }
        expect(costOf({ discountRate, inflation, years }) / sum).toBeCloseTo(1, 9);
      }),
    );
  });

  it.each([
    ["firstCost", -1],
    ["yearlyCost", -1],
    ["years", 0],
    ["years", 201],
    ["discountRate", -1],
    ["discountRate", 5],
    ["inflation", -1],
    ["inflation", 2],
  ] as const)("refuses %s of %d", (input, value) => {
    expect(lifeCycleCost({ ...base, [input]: value }).findings.map(({ code }) => code)).toEqual(["out-of-range"]);
  });
});
