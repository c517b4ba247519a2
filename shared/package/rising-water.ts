import { isAtMost } from "../../src/basis/at-most.ts";
import { COURSE_POINTS, RISE_STEPS } from "../../src/priming/prime-course.ts";
import { cell } from "../calc-sheet/expression.ts";
import { NPSH } from "../calc-sheet/sections/npsh.ts";
import { COURSE } from "../calc-sheet/sections/priming.ts";
import { LIFT } from "../calc-sheet/sections/priming-lift.ts";
import { type Duty, isLifted } from "../duty/duty.ts";
import type { Worked } from "./worked-calculation.ts";
import { type WorkedDuty, workedDuty } from "./worked-duty.ts";

/** Where the water stands at a time of the priming: s, and m over the liquid surface. */
export interface WaterMark {
  readonly time: number;
  readonly height: number;
}

/** How the water rises to the pump, read off the plan that the sheet is written from. m and s. */
export interface RisingWater {
  readonly lift: number;
  readonly byBlankOff: number;
  readonly byPractice: number;
  /** Undefined where NPSHR is not stated. */
  readonly byNpsh: number | undefined;
  readonly greatest: number;
  /** From the start until the casing is full; undefined where it never primes, or the lift is above the greatest. */
  readonly course: WaterCourse | undefined;
}

export interface WaterCourse {
  /** From the liquid surface to the lift in equal steps of height. */
  readonly rising: readonly WaterMark[];
  /** When the lift is gained, and when the casing is full. */
  readonly riseTime: number;
  readonly total: number;
}

/** The rising water for the pane; undefined where the pump is flooded or its lifts cannot be worked out. */
export function risingWater(duty: Duty): RisingWater | undefined {
  if (!isLifted(duty)) return undefined;
  const worked = workedDuty(duty);
  const { figure, figureWhereGiven } = worked;
  const lift = figure(NPSH.suctionLift);
  const byBlankOff = figure(LIFT.liftByBlankOff);
  const byPractice = figure(LIFT.liftByPractice);
  const byNpsh = figureWhereGiven(LIFT.liftByNpsh);
  const greatest = figure(LIFT.greatestPrimingLift);
  if (!isNumber(lift) || !isNumber(byBlankOff) || !isNumber(byPractice) || !isNumber(greatest)) return undefined;
  return {
    lift,
    byBlankOff,
    byPractice,
    byNpsh: isNumber(byNpsh) ? byNpsh : undefined,
    greatest,
    // A lift that does not hold has no time to prime.
    course: isAtMost(lift, greatest) ? courseOf(worked) : undefined,
  };
}

function courseOf({ figure }: WorkedDuty): WaterCourse | undefined {
  const marks: WaterMark[] = [];
  for (let row = 0; row < COURSE_POINTS; row += 1) {
    const time = figure(cell(COURSE, row, "time"));
    const height = figure(cell(COURSE, row, "height"));
    if (!isNumber(time) || !isNumber(height)) return undefined;
    marks.push({ time, height });
  }
  const rising = marks.slice(0, RISE_STEPS + 1);
  return {
    rising,
    riseTime: (rising.at(-1) as WaterMark).time,
    total: (marks.at(-1) as WaterMark).time,
  };
}

function isNumber(worked: Worked | undefined): worked is number {
  return typeof worked === "number";
}
