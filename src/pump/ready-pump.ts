import type { Result } from "../basis/result.ts";
import { greatestOf, leastOf } from "../numeric/extremes.ts";
import type { OfferedCurve, OfferedPump } from "./offered-pump.ts";
import { type PumpCurve, pumpCurve } from "./pump-curve.ts";
import { LEAST_TRIM_RATIO, SPEED_RATIO_RANGE } from "./running-pump.ts";

/** How far one curve of a pump may be carried: ratios of its own speed and diameter. 1 where it may not be moved. */
export interface ReadyCurve {
  readonly offered: OfferedCurve;
  readonly leastSpeedRatio: number;
  readonly mostSpeedRatio: number;
  /** At variable speed: the lowest speed stated, or as far as a curve is carried. */
  readonly slowestSpeedRatio: number;
  readonly leastTrimRatio: number;
  /** Below 1 where the limits of the pump allow less than the impeller the curve was given for. */
  readonly mostTrimRatio: number;
  /** The measured curve of the next smaller impeller at this speed, which trims are drawn between. */
  readonly smaller?: ReadyCurve;
  /** Drawn when first asked for. */
  readonly drawn: () => Result<PumpCurve>;
}

/** A pump made ready to be held against many duties. */
export interface ReadyPump {
  readonly offered: OfferedPump;
  readonly curves: readonly ReadyCurve[];
}

/**
 * A pump with the range of each of its curves. A curve serves from its own speed down to the next one given, or to the
 * lowest speed allowed; only the fastest is sped up, to the highest speed allowed. A trim is likewise carried down to
 * the next impeller given, or to the least allowed. Where nobody states a limit, the curves given are the limit.
 */
export function readyPump(offered: OfferedPump): ReadyPump {
  if (offered.curves.length === 1 && Object.keys(offered.limits).length === 0) {
    return { offered, curves: [fixedCurve(offered.curves[0] as OfferedCurve, offered.name)] };
  }
  const curves = new Map<OfferedCurve, ReadyCurve>();
  const make = (curve: OfferedCurve): ReadyCurve => {
    const known = curves.get(curve);
    if (known !== undefined) return known;
    const next = nextSmaller(curve, offered.curves);
    const made: ReadyCurve = {
      ...fixedCurve(curve, offered.name),
      ...speedRange(curve, offered),
      ...trimRange(curve, next, offered),
      ...(next === undefined ? {} : { smaller: make(next) }),
    };
    curves.set(curve, made);
    return made;
  };
  return { offered, curves: offered.curves.map(make) };
}

function fixedCurve(offered: OfferedCurve, name: string): ReadyCurve {
  let drawn: Result<PumpCurve> | undefined;
  return {
    offered,
    leastSpeedRatio: 1,
    mostSpeedRatio: 1,
    slowestSpeedRatio: SPEED_RATIO_RANGE.least,
    leastTrimRatio: 1,
    mostTrimRatio: 1,
    drawn: () => {
      drawn ??= draw(offered, name);
      return drawn;
    },
  };
}

function draw({ points }: OfferedCurve, name: string): Result<PumpCurve> {
  return pumpCurve({ points, subject: name, labels: points.map((_, i) => `${name} point ${i + 1}`) });
}

function speedRange({ speed, diameter }: OfferedCurve, { curves, limits }: OfferedPump): Partial<ReadyCurve> {
  if (speed === undefined) return {};
  const given = curves.flatMap((other) => (other.speed === undefined ? [] : [other.speed]));
  const alike = curves.filter((other) => other.diameter === diameter && other.speed !== undefined);
  const slower = alike.map((other) => other.speed as number).filter((other) => other < speed);
  const isFastest = alike.every((other) => (other.speed as number) <= speed);
  const least = Math.max(limits.leastSpeed ?? leastOf(given), greatestOf(slower));
  const greatest = limits.greatestSpeed ?? greatestOf(given);
  return {
    leastSpeedRatio: Math.max(least / speed, SPEED_RATIO_RANGE.least),
    slowestSpeedRatio: Math.max((limits.leastSpeed ?? 0) / speed, SPEED_RATIO_RANGE.least),
    mostSpeedRatio: Math.min(isFastest ? greatest / speed : Math.min(1, greatest / speed), SPEED_RATIO_RANGE.most),
  };
}

function trimRange(
  { diameter }: OfferedCurve,
  next: OfferedCurve | undefined,
  { curves, limits }: OfferedPump,
): Pick<ReadyCurve, "leastTrimRatio" | "mostTrimRatio"> {
  if (diameter === undefined) return { leastTrimRatio: 1, mostTrimRatio: 1 };
  const given = curves.flatMap((other) => (other.diameter === undefined ? [] : [other.diameter]));
  const least = Math.max(limits.leastImpeller ?? leastOf(given), next?.diameter ?? 0);
  return {
    leastTrimRatio: Math.max(least / diameter, LEAST_TRIM_RATIO),
    mostTrimRatio: Math.min(1, (limits.greatestImpeller ?? diameter) / diameter),
  };
}

function nextSmaller(curve: OfferedCurve, curves: readonly OfferedCurve[]): OfferedCurve | undefined {
  const { speed, diameter } = curve;
  if (diameter === undefined) return undefined;
  let next: OfferedCurve | undefined;
  for (const other of curves) {
    if (other.speed !== speed || other.diameter === undefined || other.diameter >= diameter) continue;
    if (next === undefined || other.diameter > (next.diameter as number)) next = other;
  }
  return next;
}
