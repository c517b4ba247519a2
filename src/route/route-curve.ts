import { all, type Result, succeed } from "../basis/result.ts";
import { type SystemPoint, systemCurve, systemCurveMethod } from "../head/system-curve.ts";
import type { PumpingSystem } from "../head/total-head.ts";
import { headToFill, headToFillMethod, type RoutedSystem } from "./filling.ts";

export interface RouteCurveInput extends RoutedSystem, PumpingSystem {
  /** Gauge pressure over the destination, Pa. */
  readonly deliveryPressure: number;
  /** Flow of the last point, m³/s. */
  readonly greatestFlow: number;
  /** How many points, from zero flow to the greatest. */
  readonly points: number;
  /** The fall beyond the summit is counted on: the line runs full at every flow. */
  readonly runsFull: boolean;
}

export const routeCurveMethod = { cites: [...systemCurveMethod.cites, headToFillMethod.cites[1]] } as const;

/**
 * Head that a line with levels asks for at evenly spaced flows, m: through the full line, and where that is not counted
 * on no less than to its summit, which the pumps then see at all times.
 * Formula: the greater of `systemCurve` and `headToFill`, at each flow
 * Fails: as these.
 * Warns: as `systemCurve`.
 * Source: White, steady-flow energy equation; held to the summit without velocity head, a house choice.
 */
export function routeCurve(input: RouteCurveInput): Result<readonly SystemPoint[]> {
  const { sourcePressure, deliveryPressure, runsFull } = input;
  const through = systemCurve({ ...input, pressureDifference: deliveryPressure - sourcePressure });
  if (runsFull || !through.ok) return through;
  const held = all(through.value.map(({ flow }) => headToFill({ ...input, flow })));
  if (!held.ok) return held;
  const points = held.value.map(({ head }, i) => {
    const { flow, head: full } = through.value[i] as SystemPoint;
    return { flow, head: Math.max(full, head) };
  });
  return succeed(points, through.findings);
}
