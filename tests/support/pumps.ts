import type { HeadCurve } from "../../src/pump/head-curve.ts";
import { type PumpCurve, pumpCurve } from "../../src/pump/pump-curve.ts";
import type { PumpCurvePoint } from "../../src/pump/pump-curve-point.ts";
import { asGiven, type RunningPump, runningPump } from "../../src/pump/running-pump.ts";

/** A curve of these points, which must be good. */
export function curveOf(points: readonly PumpCurvePoint[]): PumpCurve {
  const read = pumpCurve({ points, subject: "curve", labels: points.map((_, i) => `point ${i + 1}`) });
  if (!read.ok) throw new Error(JSON.stringify(read.findings));
  return read.value;
}

/** A curve that follows a formula of head, m, with flow, m³/s, at so many equal steps. */
export function curveByFormula(headAt: (flow: number) => number, mostFlow: number, steps: number): PumpCurve {
  return curveOf(
    Array.from({ length: steps + 1 }, (_, i) => {
      const flow = (mostFlow * i) / steps;
      return { flow, head: headAt(flow) };
    }),
  );
}

/** A system known at any flow, m³/s, by a formula of head, m. */
export function systemByFormula(headAt: (flow: number) => number): HeadCurve {
  return { leastFlow: 0, mostFlow: Number.POSITIVE_INFINITY, headAt, knots: [] };
}

export function running(curve: PumpCurve, speedRatio = 1, trimRatio = 1): RunningPump {
  if (speedRatio === 1 && trimRatio === 1) return asGiven(curve);
  const read = runningPump({ curve, speedRatio, trimRatio });
  if (!read.ok) throw new Error(JSON.stringify(read.findings));
  return read.value;
}

/**
 * A pump of 60 L/s at 30 m with every column, made up for tests; 1450 rpm. Its best efficiency stands at 50 L/s, and
 * its shutoff head is its greatest.
 */
export const FALLING = curveOf([
  { flow: 0, head: 42, power: 8000 },
  { flow: 0.01, head: 41.5, efficiency: 0.34, npshRequired: 1.6, power: 11_950 },
  { flow: 0.02, head: 40.2, efficiency: 0.57, npshRequired: 1.8, power: 13_800 },
  { flow: 0.03, head: 38, efficiency: 0.71, npshRequired: 2.2, power: 15_720 },
  { flow: 0.04, head: 35, efficiency: 0.78, npshRequired: 2.8, power: 17_570 },
  { flow: 0.05, head: 31, efficiency: 0.8, npshRequired: 3.7, power: 18_970 },
  { flow: 0.06, head: 26, efficiency: 0.77, npshRequired: 5, power: 19_830 },
  { flow: 0.07, head: 20, efficiency: 0.69, npshRequired: 6.8, power: 19_860 },
]);

/** H = 30 + 0.2 Q − 0.004 Q² with Q in L/s: a drooping curve with its top at 25 L/s, to 90 L/s. */
export const DROOPING = curveByFormula((flow) => 30 + 200 * flow - 4000 * flow * flow, 0.09, 90);
