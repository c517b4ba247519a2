import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Result } from "../../../src/basis/result.ts";
import { unitOf } from "../../../src/basis/units.ts";
import { greatestPower } from "../../../src/pump/greatest-power.ts";
import { type PumpCurve, pumpCurve } from "../../../src/pump/pump-curve.ts";
import type { PumpCurvePoint } from "../../../src/pump/pump-curve-point.ts";
import { shaftPowerAtFlow } from "../../../src/pump/pump-reading.ts";
import { runningPump } from "../../../src/pump/running-pump.ts";

const GPM = unitOf("US gpm").factor;
const FT = unitOf("ft").factor;
const HP = unitOf("hp").factor;

function value<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(JSON.stringify(result.findings));
  return result.value;
}

function codes(result: Result<unknown>): readonly string[] {
  return result.findings.map(({ kind, code }) => `${kind} ${code}`);
}

/** Rows of US gpm, ft and efficiency in percent. */
function curveOf(rows: readonly (readonly [gpm: number, feet: number, percent?: number])[]): PumpCurve {
  const points = rows.map(
    ([gpm, feet, percent]): PumpCurvePoint => ({
      flow: gpm * GPM,
      head: feet * FT,
      ...(percent !== undefined && { efficiency: percent / 100 }),
    }),
  );
  return value(pumpCurve({ points, subject: "curve", labels: rows.map((_, i) => `row ${i + 1}`) }));
}

const of = (curve: PumpCurve, more: { upTo?: number; speedRatio?: number; trimRatio?: number; SG?: number } = {}) => {
  const { upTo, speedRatio = 1, trimRatio = 1, SG: specificGravity = 1 } = more;
  const pump = value(runningPump({ curve, speedRatio, trimRatio }));
  return greatestPower({ pump, specificGravity, ...(upTo !== undefined && { upTo: upTo * GPM }) });
};

const WHOLE = curveOf([
  [0, 300],
  [250, 295, 50],
  [500, 280, 68],
  [750, 250, 75],
  [1000, 200, 70],
]);

describe("maximum power of a pump", () => {
  // By hand, 998.2 kg/m³: 1000 × 200 / (3961.4 × 0.70) = 72.12 hp at the end of the curve.
  it("is that at the end where power rises to it, and says so", () => {
    const found = of(WHOLE);
    expect(value(found).power / HP).toBeCloseTo(72.12, 1);
    expect(value(found).flow / GPM).toBeCloseTo(1000, 6);
    expect(value(found).endPower).toBe(value(found).power);
    expect(codes(found)).toEqual(["check power-rising-at-end"]);
  });

  // By hand: 500 × 280/(3961.4 × 0.68) = 51.97 hp.
  it("is that of the flows reached", () => {
    const found = of(WHOLE, { upTo: 500 });
    expect(value(found).power / HP).toBeCloseTo(51.97, 1);
    expect(codes(found)).toEqual([]);
    expect(codes(of(WHOLE, { upTo: 1001 }))).toEqual(["error flow-beyond-curve"]);
    expect(codes(of(WHOLE, { upTo: 200 }))).toEqual(["error flow-below-curve"]);
  });

  // By hand: 250 × 295/(3961.4 × 0.50) = 37.23, 500 × 280/(3961.4 × 0.68) = 51.97; on by 14.74 hp for each 250 gpm:
  // 81.45 hp at 1000 gpm, where the whole curve takes 72.1.
  it("is extended on the careful side where efficiency ends early, and says so", () => {
    const short = curveOf([
      [0, 300],
      [250, 295, 50],
      [500, 280, 68],
      [750, 250],
      [1000, 200],
    ]);
    const found = of(short);
    expect(value(found).power / HP).toBeCloseTo(81.45, 1);
    expect(value(found).givenPower / HP).toBeCloseTo(51.97, 1);
    expect(codes(found)).toEqual(["check power-extended", "check power-rising-at-end"]);
    expect(codes(of(short, { upTo: 500 }))).toEqual([]);
  });

  it("does not fall beyond the last efficiency given", () => {
    // By hand: 500 × 100/(3961.4 × 0.5) = 25.24, 1000 × 40/(3961.4 × 0.6) = 16.83 hp, which holds to 1200 gpm.
    const falling = curveOf([
      [0, 150],
      [500, 100, 50],
      [1000, 40, 60],
      [1200, 20],
    ]);
    const found = value(of(falling));
    expect(found.endPower / HP).toBeCloseTo(16.83, 1);
    expect(found.power / HP).toBeGreaterThanOrEqual(25.24);
    expect(codes(of(falling))).toContain("check power-extended");
  });

  it("may be greater still below the first flow given", () => {
    const axial = curveOf([
      [0, 60],
      [500, 40, 50],
      [1000, 20, 70],
      [1500, 5, 30],
    ]);
    expect(codes(of(axial))).toEqual(["check power-rising-to-shutoff"]);
  });

  // P ∝ n³ and D³, and in proportion to SG.
  it("goes with the cube of speed and the weight of the liquid", () => {
    const base = value(of(WHOLE)).power;
    expect(value(of(WHOLE, { speedRatio: 1.1 })).power / base).toBeCloseTo(1.331, 9);
    expect(value(of(WHOLE, { trimRatio: 0.95 })).power / base).toBeCloseTo(0.857375, 9);
    expect(value(of(WHOLE, { SG: 1.3 })).power / base).toBeCloseTo(1.3, 12);
  });

  it("is nowhere passed on the curve", () => {
    const flows = fc.double({ min: 250, max: 1000, noNaN: true });
    const efficiency = fc.integer({ min: 40, max: 80 });
    fc.assert(
      fc.property(fc.tuple(efficiency, efficiency, efficiency, efficiency), flows, ([a, b, c, d], at) => {
        const curve = curveOf([
          [0, 300],
          [250, 295, a],
          [500, 280, b],
          [750, 250, c],
          [1000, 200, d],
        ]);
        const read = value(
          shaftPowerAtFlow(value(runningPump({ curve, speedRatio: 1, trimRatio: 1 })), at * GPM, 998.2),
        );
        expect(read).toBeLessThanOrEqual(value(of(curve)).power * (1 + 1e-4));
      }),
    );
  });

  it("needs efficiency or power", () => {
    expect(
      codes(
        of(
          curveOf([
            [0, 100],
            [100, 90],
            [200, 50],
          ]),
        ),
      ),
    ).toEqual(["error curve-column-missing"]);
  });
});
