import { describe, expect, it } from "vitest";
import type { Result } from "../../../src/basis/result.ts";
import { pumpCurve } from "../../../src/pump/pump-curve.ts";
import type { PumpCurvePoint } from "../../../src/pump/pump-curve-point.ts";
import { efficiencyAtFlow, headAtFlow, npshRequiredAtFlow, shaftPowerAtFlow } from "../../../src/pump/pump-reading.ts";
import { asGiven } from "../../../src/pump/running-pump.ts";
import { curveOf, FALLING } from "../../support/pumps.ts";

function findingsOf(points: readonly PumpCurvePoint[]): readonly string[] {
  const labels = points.map((_, i) => `row ${i + 2}`);
  return pumpCurve({ points, subject: "curve", labels }).findings.map(
    ({ kind, code, subject }) => `${kind} ${code}: ${subject}`,
  );
}

function codesOf(read: Result<number>): readonly string[] {
  return read.findings.map(({ kind, code }) => `${kind} ${code}`);
}

const GOOD: readonly PumpCurvePoint[] = [
  { flow: 0, head: 40 },
  { flow: 0.01, head: 38 },
  { flow: 0.02, head: 30 },
];

describe("the points of a pump curve", () => {
  it.each([
    { why: "all in order", points: GOOD, findings: [] },
    { why: "two points", points: GOOD.slice(1), findings: ["error curve-too-few-points: curve"] },
    {
      why: "flows that fall",
      points: [...GOOD].reverse(),
      findings: ["error curve-flow-not-ascending: row 3: flow", "error curve-flow-not-ascending: row 4: flow"],
    },
    {
      why: "a flow twice",
      points: [...GOOD, { flow: 0.02, head: 29 }],
      findings: ["error curve-flow-not-ascending: row 5: flow"],
    },
    {
      why: "a head below zero",
      points: [...GOOD, { flow: 0.03, head: -1 }],
      findings: ["error out-of-range: row 5: head"],
    },
    { why: "a head of zero at the end", points: [...GOOD, { flow: 0.03, head: 0 }], findings: [] },
    {
      why: "an efficiency above 1",
      points: GOOD.map((point, i) => (i === 1 ? { ...point, efficiency: 1.2 } : point)),
      findings: ["error out-of-range: row 3: efficiency"],
    },
    {
      why: "an efficiency at no flow",
      points: GOOD.map((point) => ({ ...point, efficiency: 0.5 })),
      findings: ["error out-of-range: row 2: efficiency"],
    },
    {
      why: "a head that is no number",
      points: [...GOOD, { flow: 0.03, head: Number.NaN }],
      findings: ["error not-a-number: row 5: head"],
    },
    {
      why: "no shutoff head",
      points: [{ flow: 0.005, head: 39 }, ...GOOD.slice(1)],
      findings: ["check curve-shutoff-missing: curve"],
    },
    {
      why: "a hump",
      points: GOOD.map((point, i) => (i === 1 ? { ...point, head: 41 } : point)),
      findings: ["check curve-droops: curve"],
    },
    {
      why: "a head that only rises: flow and head swapped",
      points: GOOD.map(({ flow }, i) => ({ flow, head: 10 + i })),
      findings: ["error curve-does-not-fall: curve"],
    },
    {
      why: "a single efficiency, drawn through two points",
      points: GOOD.map((point, i) => (i === 1 ? { ...point, efficiency: 0.6 } : point)),
      findings: ["error curve-too-few-points: curve column “efficiency”"],
    },
    {
      why: "two NPSHR",
      points: GOOD.map((point, i) => (i > 0 ? { ...point, npshRequired: 3 } : point)),
      findings: ["error curve-too-few-points: curve column “NPSHR”"],
    },
    {
      // 998.2 · 9.80665 · 0.01 · 38 = 3720 W carried off.
      why: "a power below what the water carries off",
      points: GOOD.map((point, i) => ({ ...point, power: [2000, 3700, 6000][i] as number })),
      findings: ["error power-below-hydraulic: row 3: power"],
    },
    {
      // 3720 / 6000 = 0.620 and 5873 / 8390 = 0.700: within 0.02 of 0.64 and 0.70.
      why: "efficiency and power that agree within 0.02",
      points: GOOD.map((point, i) => ({
        ...point,
        power: [2000, 6000, 8390][i] as number,
        ...(i === 0 ? {} : { efficiency: [0, 0.639, 0.7][i] as number }),
      })),
      findings: [],
    },
    {
      why: "efficiency and power 0.03 apart",
      points: GOOD.map((point, i) => ({
        ...point,
        power: [2000, 6000, 8390][i] as number,
        ...(i === 0 ? {} : { efficiency: [0, 0.65, 0.7][i] as number }),
      })),
      findings: ["check efficiency-disagrees-with-power: row 3"],
    },
  ])("$why", ({ points, findings }) => {
    expect(findingsOf(points)).toEqual(findings);
  });

  it("takes a figure of 0 as not given, as a blank cell may arrive", () => {
    const zeros = GOOD.map((point) => ({ ...point, efficiency: 0, npshRequired: 0, power: 0 }));
    expect(findingsOf(zeros)).toEqual([]);
    expect(curveOf(zeros).efficiency).toBeUndefined();
    expect(curveOf(zeros).bestEfficiency).toBeUndefined();
  });
});

describe("best efficiency", () => {
  it("is the highest efficiency given", () => {
    expect(FALLING.bestEfficiency).toEqual({ flow: 0.05, head: 31, efficiency: 0.8, isAtEnd: false });
  });

  it("is midway between two equal highest", () => {
    const flat = curveOf(GOOD.map((point, i) => (i === 0 ? point : { ...point, efficiency: 0.6 })));
    expect(flat.bestEfficiency?.flow).toBeCloseTo(0.015, 15);
    expect(flat.bestEfficiency?.isAtEnd).toBe(true);
  });

  it("by power is where ρ g Q H / P is highest", () => {
    // H = 40 − 20 000 Q² and P = 4000 + 400 000 Q. By hand, d/dQ of Q H / P vanishes where
    // (40 − 60 000 Q²)(4000 + 400 000 Q) = 400 000 (40 Q − 20 000 Q³), that is 1 − 1500 Q² − 10⁵ Q³ = 0: Q = 0.017532.
    const steps = Array.from({ length: 41 }, (_, i) => i * 0.001);
    const curve = curveOf(
      steps.map((flow) => ({ flow, head: 40 - 20_000 * flow * flow, power: 4000 + 400_000 * flow })),
    );
    const best = curve.bestEfficiency?.flow as number;
    expect(Math.abs(best - 0.017532)).toBeLessThanOrEqual(2e-5);
  });
});

describe("reading a curve", () => {
  const pump = asGiven(FALLING);

  it("gives back what was put in", () => {
    for (const { flow, head, efficiency, npshRequired, power } of FALLING.points.slice(1)) {
      const read = [
        headAtFlow(pump, flow),
        efficiencyAtFlow(pump, flow),
        npshRequiredAtFlow(pump, flow),
        shaftPowerAtFlow(pump, flow, 998.2),
      ].map((result) => (result.ok ? result.value : undefined));
      expect(read).toEqual([head, efficiency, npshRequired, power]);
    }
  });

  it("never reads beyond the last point, nor below a first point that is not the shutoff", () => {
    expect(codesOf(headAtFlow(pump, 0.07))).toEqual([]);
    expect(codesOf(headAtFlow(pump, 0.0701))).toEqual(["error flow-beyond-curve"]);
    expect(codesOf(headAtFlow(pump, -0.01))).toEqual(["error out-of-range"]);
    expect(codesOf(headAtFlow(pump, Number.NaN))).toEqual(["error not-a-number"]);
    const open = asGiven(curveOf(FALLING.points.slice(1)));
    expect(codesOf(headAtFlow(open, 0.01))).toEqual([]);
    expect(codesOf(headAtFlow(open, 0.0099))).toEqual(["error flow-below-curve"]);
  });

  it("forgives rounding at the ends and nothing more", () => {
    expect(headAtFlow(pump, 0.07 * (1 + 5e-13))).toEqual({ ok: true, value: 20, findings: [] });
    expect(headAtFlow(pump, 0.07 * (1 + 1e-11)).ok).toBe(false);
  });

  it("reads a column only where it is given", () => {
    expect(codesOf(npshRequiredAtFlow(pump, 0.009))).toEqual(["error flow-outside-column"]);
    expect(codesOf(npshRequiredAtFlow(asGiven(curveOf(GOOD)), 0.01))).toEqual(["error curve-column-missing"]);
    expect(codesOf(efficiencyAtFlow(asGiven(curveOf(GOOD)), 0.01))).toEqual(["error curve-column-missing"]);
    expect(codesOf(shaftPowerAtFlow(asGiven(curveOf(GOOD)), 0.01, 998.2))).toEqual(["error curve-column-missing"]);
  });

  it("works out power from efficiency, not at shutoff and with a caution near it", () => {
    const byEfficiency = asGiven(
      curveOf(FALLING.points.map(({ flow, head, efficiency }) => ({ flow, head, ...(efficiency && { efficiency }) }))),
    );
    // 998.2 · 9.80665 · 0.05 · 31 / 0.8 W, and 1.2 times that at 1197.84 kg/m³.
    const power = shaftPowerAtFlow(byEfficiency, 0.05, 998.2);
    expect(power.ok && power.value).toBeCloseTo(18_966.18, 1);
    const heavy = shaftPowerAtFlow(byEfficiency, 0.05, 1.2 * 998.2);
    expect(heavy.ok && heavy.value).toBeCloseTo(1.2 * 18_966.18, 1);
    expect(codesOf(power)).toEqual([]);
    expect(codesOf(shaftPowerAtFlow(byEfficiency, 0.009, 998.2))).toEqual(["check power-near-shutoff"]);
    expect(codesOf(shaftPowerAtFlow(byEfficiency, 0, 998.2))).toEqual(["error power-at-shutoff-unknown"]);
    expect(shaftPowerAtFlow(pump, 0, 998.2)).toEqual({ ok: true, value: 8000, findings: [] });
  });

  it("works out efficiency from power", () => {
    const byPower = asGiven(curveOf(FALLING.points.map(({ flow, head, power = 0 }) => ({ flow, head, power }))));
    const efficiency = efficiencyAtFlow(byPower, 0.05);
    expect(efficiency.ok && efficiency.value).toBeCloseTo((998.2 * 9.80665 * 0.05 * 31) / 18_970, 12);
    expect(efficiencyAtFlow(byPower, 0)).toEqual({ ok: true, value: 0, findings: [] });
  });
});
