import { STANDARD_GRAVITY } from "../basis/constants.ts";
import { andThen, fail, type Result, succeed } from "../basis/result.ts";
import {
  type FrontLeg,
  type PrimeTimeInput,
  timeBeyondComputation,
  type WaterFront,
  waterFront,
} from "./prime-time.ts";

/** Where the water stands at a time of the priming. */
export interface PrimeCoursePoint {
  /** From the start of the air pump, s. */
  readonly time: number;
  /** Height of the front over the liquid surface, m; it stays at the lift while level run and casing fill. */
  readonly height: number;
  /** Of the air over the front below the air of the site, Pa. */
  readonly vacuum: number;
  /** Air still over the front, m³. */
  readonly airLeft: number;
  readonly stage: "rising" | "filling" | "primed";
}

/** Steps of equal height up to the lift, then of equal volume until all is full: 21 points whatever the line. */
export const RISE_STEPS = 16;
const FILL_STEPS = 4;
export const COURSE_POINTS = RISE_STEPS + FILL_STEPS + 1;

/**
 * Course of the water front from the liquid to the full casing, 21 points (s, m, Pa, m³): `waterFront` cut at equal
 * steps of height, then of the volume behind the last rise, where it moves evenly; without a lift all steps are of
 * volume. At the height of a level run before the last rise the time is that of arrival; the last time is that of
 * `primeTime`.
 * Fails: as `primeTime`.
 * Warns: as `primeTime`.
 */
export function primeCourse(input: PrimeTimeInput): Result<readonly PrimeCoursePoint[]> {
  return andThen(waterFront(input), (front) => {
    const points = pointsOf(front, input.density * STANDARD_GRAVITY);
    return Number.isFinite(points.at(-1)?.time) ? succeed(points) : fail([timeBeyondComputation()]);
  });
}

function pointsOf({ legs, lift, airVolume }: WaterFront, weight: number): readonly PrimeCoursePoint[] {
  const points: PrimeCoursePoint[] = [];
  const keep = (time: number, height: number, airLeft: number): void => {
    const stage = height < lift ? "rising" : airLeft > 0 ? "filling" : "primed";
    points.push({ time, height, vacuum: weight * height, airLeft, stage });
  };
  const top = legs.findLastIndex(({ rise }) => rise > 0);
  const beyond = legs.slice(top + 1);
  const fillVolume = beyond.reduce((sum, { volume }) => sum + volume, 0);

  keep(0, 0, top < 0 ? fillVolume : airVolume);
  let time = 0;
  let filled = 0;
  if (top >= 0) {
    const rising = legs.slice(0, top + 1);
    let at: Place = { leg: 0, share: 0 };
    for (let step = 1; step <= RISE_STEPS; step += 1) {
      const height = step === RISE_STEPS ? lift : (lift * step) / RISE_STEPS;
      const next: Place = step === RISE_STEPS ? { leg: top, share: 1 } : placeAt(rising, height);
      for (let leg = at.leg; leg <= next.leg; leg += 1) {
        const { volume, timeBetween } = rising[leg] as FrontLeg;
        const from = leg === at.leg ? at.share : 0;
        const to = leg === next.leg ? next.share : 1;
        time += timeBetween(from, to);
        filled += volume * (to - from);
      }
      at = next;
      keep(time, height, step === RISE_STEPS ? fillVolume : airVolume - filled);
    }
  }
  const fillTime = beyond.reduce((sum, { timeBetween }) => sum + timeBetween(0, 1), 0);
  const fillSteps = top < 0 ? COURSE_POINTS - 1 : FILL_STEPS;
  for (let step = 1; step <= fillSteps; step += 1) {
    keep(time + (fillTime * step) / fillSteps, lift, fillVolume * (1 - step / fillSteps));
  }
  return points;
}

interface Place {
  readonly leg: number;
  /** Of the leg, 0 to 1. */
  readonly share: number;
}

/** Where the front first reaches a height below the lift. */
function placeAt(legs: readonly FrontLeg[], height: number): Place {
  const leg = legs.findIndex(({ start, rise }) => rise > 0 && start + rise >= height);
  const { start, rise } = legs[leg] as FrontLeg;
  return { leg, share: Math.min(1, (height - start) / rise) };
}
