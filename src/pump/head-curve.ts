import { headOf } from "./pump-reading.ts";
import type { RunningPump } from "./running-pump.ts";

/** Head against flow over a closed range of flows: of a pump, of several, or of a system. */
export interface HeadCurve {
  /** m³/s */
  readonly leastFlow: number;
  /** m³/s; infinite where a system is known at any flow. */
  readonly mostFlow: number;
  /** m, for a flow in the range. */
  readonly headAt: (flow: number) => number;
  /** Flows between which the curve is smooth, both ends of the range included where they are finite. */
  readonly knots: readonly number[];
  /** Between two neighbouring knots it rises, falls or stays, and never turns. */
  readonly goesOneWay?: true;
}

export type Arrangement = "parallel" | "series";

/** Equal pumps as one curve, m over m³/s: side by side they share the flow, one behind the other they add heads. */
export function equalPumps(pump: RunningPump, count: number, arrangement: Arrangement): HeadCurve {
  const flows = arrangement === "parallel" ? count : 1;
  const heads = arrangement === "series" ? count : 1;
  return {
    leastFlow: pump.leastFlow * flows,
    mostFlow: pump.mostFlow * flows,
    headAt: (flow) => heads * headOf(pump, flow / flows),
    knots: pump.curve.points.map((point) => point.flow * pump.flowFactor * flows),
    goesOneWay: true,
  };
}
