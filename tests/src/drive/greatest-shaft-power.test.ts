import { describe, expect, it } from "vitest";
import { STANDARD_GRAVITY } from "../../../src/basis/constants.ts";
import type { Result } from "../../../src/basis/result.ts";
import { greatestShaftPower } from "../../../src/drive/greatest-shaft-power.ts";
import { pumpCurve } from "../../../src/pump/pump-curve.ts";
import type { PumpCurvePoint } from "../../../src/pump/pump-curve-point.ts";
import { asGiven, type RunningPump } from "../../../src/pump/running-pump.ts";

function value<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(JSON.stringify(result.findings));
  return result.value;
}

function pump(points: readonly PumpCurvePoint[]): RunningPump {
  const labels = points.map((_, i) => `curve row ${i + 1}`);
  return asGiven(value(pumpCurve({ points, subject: "curve", labels })));
}

// Invented curves; the powers are ρ g Q H/η by hand.
const RISING = pump([
  { flow: 0, head: 50, power: 6000 },
  { flow: 0.01, head: 48, power: 9000 },
  { flow: 0.02, head: 42, power: 11_500 },
  { flow: 0.03, head: 32, power: 13_000 },
]);
const HUMPED = pump([
  { flow: 0.01, head: 48, efficiency: 0.6 },
  { flow: 0.02, head: 42, efficiency: 0.75 },
  { flow: 0.03, head: 26, efficiency: 0.7 },
  { flow: 0.04, head: 8, efficiency: 0.4 },
]);
const AXIAL = pump([
  { flow: 0, head: 12, power: 30_000 },
  { flow: 0.1, head: 9, power: 22_000 },
  { flow: 0.2, head: 5, power: 18_000 },
]);

describe("greatest shaft power", () => {
  it("stands at the end of a curve that rises, and says that run-out takes more", () => {
    const found = greatestShaftPower({ pump: RISING, density: 998.2, dutyFlow: 0.02 });
    expect(value(found)).toEqual({ atDuty: 11_500, greatest: 13_000, flow: 0.03 });
    expect(found.findings.map(({ code }) => code)).toEqual(["power-greatest-at-curve-end"]);
  });

  it("stands within a curve whose power has a hump", () => {
    const found = value(greatestShaftPower({ pump: HUMPED, density: 998.2, dutyFlow: 0.03 }));
    const at = (flow: number, head: number, efficiency: number) =>
      (998.2 * STANDARD_GRAVITY * flow * head) / efficiency;
    expect(found.atDuty).toBeCloseTo(at(0.03, 26, 0.7), 6);
    expect(found.greatest).toBeGreaterThanOrEqual(at(0.02, 42, 0.75));
    expect(found.flow).toBeGreaterThan(0.015);
    expect(found.flow).toBeLessThan(0.028);
  });

  it("stands at shutoff for an axial pump", () => {
    expect(value(greatestShaftPower({ pump: AXIAL, density: 998.2, dutyFlow: 0.1 }))).toMatchObject({
      greatest: 30_000,
      flow: 0,
    });
  });

  it("grows with the density of the liquid", () => {
    const water = value(greatestShaftPower({ pump: HUMPED, density: 998.2, dutyFlow: 0.02 }));
    const heavy = value(greatestShaftPower({ pump: HUMPED, density: 1.3 * 998.2, dutyFlow: 0.02 }));
    expect(heavy.greatest / water.greatest).toBeCloseTo(1.3, 6);
    expect(heavy.atDuty / water.atDuty).toBeCloseTo(1.3, 9);
  });

  it("is never below the power at the duty, and needs a duty on the curve", () => {
    for (let flow = 0.01; flow <= 0.04; flow += 0.001) {
      const found = value(greatestShaftPower({ pump: HUMPED, density: 1000, dutyFlow: flow }));
      expect(found.greatest).toBeGreaterThanOrEqual(found.atDuty);
    }
    expect(greatestShaftPower({ pump: HUMPED, density: 1000, dutyFlow: 0.05 }).ok).toBe(false);
  });
});
