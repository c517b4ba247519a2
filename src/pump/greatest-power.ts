import type { Citation } from "../basis/citation.ts";
import { SPECIFIC_GRAVITY_REFERENCE } from "../basis/constants.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { amount, andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { greatestOf } from "../numeric/extremes.ts";
import { leastBetween } from "../numeric/golden-section.ts";
import type { Pchip } from "../numeric/pchip.ts";
import { withPlacesBetween } from "../numeric/places-between.ts";
import { pumpCurveMethod } from "./pump-curve-point.ts";
import { columnMissing, shaftPowerAtFlow } from "./pump-reading.ts";
import type { RunningPump } from "./running-pump.ts";
import { SPECIFIC_GRAVITY } from "./shaft-power.ts";

export interface GreatestPowerInput {
  readonly pump: RunningPump;
  readonly specificGravity: number;
  /** Greatest flow it reaches, m³/s; the end of its curve where left out. */
  readonly upTo?: number;
}

/** Shaft power in W, flow in m³/s, of one pump. */
export interface GreatestPower {
  readonly power: number;
  readonly flow: number;
  /** At the greatest flow looked at. */
  readonly endPower: number;
  readonly endFlow: number;
  /** Greatest where the curve itself gives efficiency or power. */
  readonly givenPower: number;
}

const EXTENSION: Citation = {
  source: "house",
  at: "beyond the efficiencies given, power goes on along the line of the last two, and does not fall",
};

export const greatestPowerMethod = {
  cites: [...pumpCurveMethod.cites, EXTENSION],
  inputs: {
    specificGravity: SPECIFIC_GRAVITY,
    upTo: { name: "maximum flow", quantity: "flow", above: 0, atMost: 1000 },
  },
} as const satisfies Method<"specificGravity" | "upTo">;

/** Places looked at in each interval of the curve before the highest is refined. */
const PLACES = 8;
/** A flow this near the end of the curve is that end. */
const ROUNDING = 1e-9;
/** Scaling a flow to the speed and back may put it outside its column. */
const NUDGES = [1, 1 - 1e-12, 1 + 1e-12] as const;

/**
 * Greatest shaft power of a pump over the flows it can run at, W: from the first flow at which its curve gives power to
 * the end of the curve or a flow before it. Where efficiency is given over a part of the curve alone, power goes on from
 * there along the straight line through the last two powers given, and never falls: a power curve bends down, so the
 * line lies on the careful side.
 * Formula: P = ρ g Q H/η or the power column, with ρ = SG × 998.2 kg/m³
 * Fails: curve-column-missing; flow-beyond-curve; flow-below-curve where the flow ends before the first power given.
 * Warns: power-extended; power-rising-at-end; power-rising-to-shutoff.
 * Source: ISO 17769-1; the extension is a choice of this product.
 */
export function greatestPower({ pump, specificGravity, upTo }: GreatestPowerInput): Result<GreatestPower> {
  const { curve, flowFactor, mostFlow } = pump;
  const end = upTo ?? mostFlow;
  const column = curve.power ?? curve.efficiency;
  if (column === undefined) return fail([columnMissing("power")]);
  return andThen(checkInputs(greatestPowerMethod, { specificGravity, upTo: end }), () => {
    const given = flowsOf(column, curve.power !== undefined, flowFactor);
    const first = given[0] as number;
    if (end > mostFlow * (1 + ROUNDING)) return fail([beyond("flow-beyond-curve", end, mostFlow, "at most")]);
    if (end < first) return fail([beyond("flow-below-curve", end, first, "at least")]);
    const density = specificGravity * SPECIFIC_GRAVITY_REFERENCE;
    // All flows asked for lie between the first power given and the last, to a rounding.
    const read = (flow: number): number => {
      for (const nudge of NUDGES) {
        const found = shaftPowerAtFlow(pump, flow * nudge, density);
        if (found.ok) return found.value;
      }
      return 0;
    };
    const last = given.at(-1) as number;
    const within = highest(read, [...given.filter((flow) => flow < end), Math.min(end, last)]);
    const beyondGiven = end > last * (1 + ROUNDING);
    const slope = Math.max(0, slopeAtEnd(given, read));
    const endPower = beyondGiven ? read(last) + slope * (end - last) : read(Math.min(end, last));
    const isExtension = endPower > within.power;
    const power = isExtension ? endPower : within.power;
    const flow = isExtension ? end : within.flow;
    const remarks: Finding[] = [];
    if (beyondGiven) {
      const facts = { from: amount("flow", first), last: amount("flow", last), end: amount("flow", end) };
      remarks.push({ code: "power-extended", kind: "check", subject: "shaft power", facts, cites: EXTENSION });
    }
    const reachesEnd = end >= mostFlow * (1 - ROUNDING);
    if (reachesEnd && flow >= mostFlow * (1 - ROUNDING)) {
      remarks.push({ code: "power-rising-at-end", kind: "check", subject: "shaft power", found: amount("flow", end) });
    } else if (flow === first && first > 0) {
      const found = amount("flow", first);
      remarks.push({ code: "power-rising-to-shutoff", kind: "check", subject: "shaft power", found });
    }
    return succeed({ power, flow, endPower, endFlow: end, givenPower: within.power }, remarks);
  });
}

/** The flows at which the curve gives power, as the pump runs: by efficiency none at zero flow. */
function flowsOf({ x, y }: Pchip, isPower: boolean, flowFactor: number): readonly number[] {
  return x.filter((_, i) => isPower || (y[i] as number) > 0).map((flow) => flow * flowFactor);
}

function slopeAtEnd(given: readonly number[], read: (flow: number) => number): number {
  const [before, last] = given.slice(-2);
  if (before === undefined || last === undefined) return 0;
  return (read(last) - read(before)) / (last - before);
}

function highest(
  read: (flow: number) => number,
  flows: readonly number[],
): { readonly power: number; readonly flow: number } {
  const places = withPlacesBetween(flows, PLACES);
  const powers = places.map(read);
  const best = powers.indexOf(greatestOf(powers));
  const top = { power: powers[best] as number, flow: places[best] as number };
  if (best === 0 || best === places.length - 1) return top;
  const flow = leastBetween((at) => -read(at), places[best - 1] as number, places[best + 1] as number);
  const power = read(flow);
  return power > top.power ? { power, flow } : top;
}

function beyond(
  code: "flow-beyond-curve" | "flow-below-curve",
  flow: number,
  value: number,
  side: "at most" | "at least",
): Finding {
  const limit = { quantity: "flow", value, side } as const;
  return { code, kind: "error", subject: "maximum flow", found: amount("flow", flow), limit };
}
