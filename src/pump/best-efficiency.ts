import { SPECIFIC_GRAVITY_REFERENCE, STANDARD_GRAVITY } from "../basis/constants.ts";
import { brent } from "../numeric/brent.ts";
import { greatestOf } from "../numeric/extremes.ts";
import { type Pchip, slopeAt, valueAt } from "../numeric/pchip.ts";
import { withPlacesBetween } from "../numeric/places-between.ts";

/** Best efficiency point of a curve. */
export interface BestEfficiency {
  /** m³/s */
  readonly flow: number;
  /** m */
  readonly head: number;
  /** 0 to 1. */
  readonly efficiency: number;
  /** Efficiency still rises at the last point given: the true peak may lie beyond. */
  readonly isAtEnd: boolean;
}

interface Drawn {
  readonly head: Pchip;
  readonly efficiency?: Pchip;
  readonly power?: Pchip;
}

/** Places looked at in each interval for the highest efficiency by power, before it is refined. */
const PLACES = 8;

/**
 * Best efficiency point, m³/s, m, 0 to 1: the peak of the efficiency curve, else of ρ g Q H/P; nothing without either.
 * A monotone interpolant has its peak at the highest point given; of two equal highest neighbours the middle is taken.
 * By power the peak is where the derivative vanishes, by Brent to double precision.
 */
export function bestEfficiencyOf({ head, efficiency, power }: Drawn): BestEfficiency | undefined {
  if (efficiency !== undefined) return byEfficiency(efficiency, head);
  return power === undefined ? undefined : byPower(head, power);
}

function byEfficiency(efficiency: Pchip, head: Pchip): BestEfficiency {
  const { x, y } = efficiency;
  const highest = greatestOf(y);
  const first = y.indexOf(highest);
  const last = y[first + 1] === highest ? first + 1 : first;
  const flow = ((x[first] as number) + (x[last] as number)) / 2;
  return { flow, head: valueAt(head, flow), efficiency: highest, isAtEnd: last === y.length - 1 };
}

/** ρ g Q H / P with the water the curve was made with. */
export function efficiencyFromPower(flow: number, head: number, power: number): number {
  return (SPECIFIC_GRAVITY_REFERENCE * STANDARD_GRAVITY * flow * head) / power;
}

function byPower(head: Pchip, power: Pchip): BestEfficiency {
  const places = withPlacesBetween(power.x, PLACES);
  const efficiencyAt = (flow: number) => efficiencyFromPower(flow, valueAt(head, flow), valueAt(power, flow));
  const efficiencies = places.map(efficiencyAt);
  const best = efficiencies.indexOf(greatestOf(efficiencies));
  /** Has the sign of dη/dQ. */
  const climb = (flow: number): number => {
    const h = valueAt(head, flow);
    const p = valueAt(power, flow);
    return (h + flow * slopeAt(head, flow)) * p - flow * h * slopeAt(power, flow);
  };
  const from = places[Math.max(best - 1, 0)] as number;
  const to = places[Math.min(best + 1, places.length - 1)] as number;
  const flow = brent(climb, from, to) ?? (places[best] as number);
  const isAtEnd = flow === places.at(-1);
  return { flow, head: valueAt(head, flow), efficiency: efficiencyAt(flow), isAtEnd };
}
