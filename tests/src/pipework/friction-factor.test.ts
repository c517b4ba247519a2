import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { frictionFactor, fullyRoughFactor } from "../../../src/pipework/friction-factor.ts";

function factor(reynolds: number, relativeRoughness: number): number {
  const found = frictionFactor({ reynolds, relativeRoughness });
  if (!found.ok) throw new Error(JSON.stringify(found.findings));
  return found.value;
}

function remarks(reynolds: number, relativeRoughness: number): readonly string[] {
  const { findings } = frictionFactor({ reynolds, relativeRoughness });
  return findings.map(({ kind, code, subject }) => `${kind} ${code} ${subject}`);
}

const turbulent = fc.double({ min: 4000, max: 1e9, noNaN: true });
const wall = fc.double({ min: 0, max: 0.05, noNaN: true });

describe("friction factor", () => {
  it("solves Colebrook's equation", () => {
    fc.assert(
      fc.property(turbulent, wall, (reynolds, roughness) => {
        const inverse = 1 / Math.sqrt(factor(reynolds, roughness));
        const right = -2 * Math.log10(roughness / 3.7 + (2.51 / reynolds) * inverse);
        expect(Math.abs(inverse - right) / inverse).toBeLessThan(1e-14);
      }),
    );
  });

  it("is 64/Re of a laminar flow, whatever the wall", () => {
    expect(factor(1600, 0)).toBe(0.04);
    expect(factor(1600, 0.04)).toBe(0.04);
    expect(factor(2000, 0)).toBe(0.032);
  });

  // House rule: straight from 0.032 at 2000 to Colebrook at 4000.
  it("runs straight through the critical zone, without a step at its ends", () => {
    for (const roughness of [0, 1e-3, 0.05]) {
      const end = factor(4000, roughness);
      expect(factor(3000, roughness)).toBeCloseTo((0.032 + end) / 2, 14);
      expect(factor(2050, roughness)).toBeCloseTo(0.032 + (end - 0.032) / 40, 14);
      expect(factor(2000.000001, roughness)).toBeCloseTo(0.032, 9);
      expect(factor(3999.999999, roughness)).toBeCloseTo(end, 9);
    }
  });

  // To the rounding of a double.
  it("rises with the roughness and falls with the Reynolds number of turbulent flow", () => {
    const times = fc.double({ min: 1.001, max: 10, noNaN: true });
    fc.assert(
      fc.property(turbulent, wall, times, (reynolds, roughness, more) => {
        const here = factor(reynolds, roughness);
        expect(factor(reynolds, Math.min(0.05, roughness * more))).toBeGreaterThanOrEqual(here * (1 - 1e-14));
        expect(factor(Math.min(1e9, reynolds * more), roughness)).toBeLessThanOrEqual(here * (1 + 1e-14));
      }),
    );
    expect(factor(1e6, 0.01)).toBeGreaterThan(factor(1e6, 0.001));
    expect(factor(1e6, 0)).toBeLessThan(factor(1e5, 0));
  });

  it.each([
    { why: "a Reynolds number of nothing", reynolds: 0, roughness: 0, say: ["error out-of-range Reynolds number"] },
    { why: "an absurd Reynolds number", reynolds: 2e15, roughness: 0, say: ["error out-of-range Reynolds number"] },
    {
      why: "the maximum Reynolds number",
      reynolds: 1e15,
      roughness: 0,
      say: ["check outside-usual-range Reynolds number"],
    },
    { why: "a negative roughness", reynolds: 1e5, roughness: -1e-9, say: ["error out-of-range relative roughness"] },
    { why: "walls that meet", reynolds: 1e5, roughness: 0.5, say: ["error out-of-range relative roughness"] },
    {
      why: "walls beyond the chart",
      reynolds: 1e5,
      roughness: 0.051,
      say: ["limit outside-usual-range relative roughness"],
    },
    { why: "the roughest wall of the chart", reynolds: 1e5, roughness: 0.05, say: [] },
    { why: "the end of laminar flow", reynolds: 2000, roughness: 0, say: [] },
    { why: "the start of the critical zone", reynolds: 2001, roughness: 0, say: ["check critical-zone flow"] },
    { why: "the end of the critical zone", reynolds: 3999, roughness: 0, say: ["check critical-zone flow"] },
    { why: "the start of turbulent flow", reynolds: 4000, roughness: 0, say: [] },
    { why: "not a number", reynolds: Number.NaN, roughness: 0, say: ["error not-a-number Reynolds number"] },
  ])("has its say on $why", ({ reynolds, roughness, say }) => {
    expect(remarks(reynolds, roughness)).toEqual(say);
  });
});

describe("fully rough factor", () => {
  it("is what Colebrook tends to in clean steel", () => {
    for (const bore of [0.02, 0.1, 0.6]) {
      expect(factor(1e14, 4.572e-5 / bore) / fullyRoughFactor(bore) - 1).toBeLessThan(1e-6);
    }
  });
});
