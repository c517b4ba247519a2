import type { Citation } from "../basis/citation.ts";
import { STANDARD_GRAVITY } from "../basis/constants.ts";
import { amount, andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import type { LiquidState } from "../liquid/liquid.ts";
import { greatestOf } from "../numeric/extremes.ts";
import type { Line } from "../pipework/line.ts";
import { liftRemarks } from "../suction/suction-practice.ts";
import { layFlatCollapse } from "../suction/suction-state.ts";
import { BETTER_BLANK_OFF, BLANK_OFF_CHOICE, blankOffVacuum, DEFAULT_BLANK_OFF } from "./air-pump.ts";
import type { StatedAirPump } from "./described-air-pump.ts";
import { type PrimeCoursePoint, primeCourse } from "./prime-course.ts";
import { COLD_VAPOUR_PRESSURE, type PrimeTime, type PrimeTimeInput, primeTime } from "./prime-time.ts";
import { checkPumps } from "./pumps-on-line.ts";
import { verticalFirst } from "./vertical-first.ts";

export interface LinePrimingInput {
  readonly suctionLine: Line;
  /** Height of the pump datum over the liquid surface, m. */
  readonly suctionLift: number;
  readonly airPump: StatedAirPump;
  /** Air in casing and priming chamber, m³; null where not stated. */
  readonly casingVolume: number | null;
  /** Absolute pressure of the air on site, Pa. */
  readonly atmosphericPressure: number;
  readonly liquid: LiquidState;
  /** How many pumps the suction line serves, each with its part of runs side by side; null where not stated. */
  readonly pumps: number | null;
}

const PROFILE_CHOICE: Citation = {
  source: "house",
  at: "the lift is gained straight up from the liquid and the rest of the line is level: the longest time of any line without a high point",
};

/**
 * Time to prime through a suction line of known lengths and bores, s: the lift gained straight up first, the safe
 * profile. Not stated: blank-off 25 inHg of vacuum at sea level, no air in the casing, no leak, one of runs side by side
 * for the pump.
 * Fails: out-of-range and not-a-whole-number of the pumps; flooded-no-priming; suction-lay-flat-collapses; as `verticalFirst` and `primeTime`.
 * Warns: cautions priming-profile-assumed, priming-one-run, blank-off-assumed, casing-not-counted,
 * priming-vapour-unknown or -counted; as `primeTime` and `liftRemarks`.
 * Source: as `primeTime`; profile and blank-off are house choices.
 */
export function linePrimeTime(input: LinePrimingInput): Result<PrimeTime> {
  return alongLine(input, primeTime);
}

/** Course of the water front through the line as `linePrimeTime` takes it; fails and warns as that. */
export function linePrimeCourse(input: LinePrimingInput): Result<readonly PrimeCoursePoint[]> {
  return alongLine(input, primeCourse);
}

function alongLine<T>(input: LinePrimingInput, work: (front: PrimeTimeInput) => Result<T>): Result<T> {
  const { suctionLine, suctionLift, airPump, atmosphericPressure, liquid, pumps } = input;
  const checked = checkPumps(pumps);
  if (!checked.ok) return checked;
  if (suctionLift < 0) {
    const found = amount("head", -suctionLift);
    return fail([{ code: "flooded-no-priming", kind: "error", subject: "suction lift", found }]);
  }
  const vacuum = liquid.density * STANDARD_GRAVITY * suctionLift;
  const collapse = suctionLift > 0 ? layFlatCollapse(suctionLine, vacuum) : undefined;
  if (collapse !== undefined) return fail([collapse]);

  return andThen(verticalFirst(suctionLine, suctionLift, pumps), (runs) => {
    const { freeAir } = airPump;
    const leak = airPump.leak ?? 0;
    const vapourPressure = liquid.vapourPressure ?? 0;
    const frontWith = (blankOff: number): PrimeTimeInput => ({
      runs,
      casingVolume: input.casingVolume ?? 0,
      airPump: { freeAir, blankOff, leak },
      atmosphericPressure,
      density: liquid.density,
      vapourPressure,
    });
    return andThen(work(frontWith(airPump.blankOff ?? DEFAULT_BLANK_OFF)), (answer) =>
      succeed(answer, [
        ...(runs.some(({ rise }) => rise === 0) ? [profileAssumed()] : []),
        ...(pumps === null ? oneRunCounted(suctionLine) : []),
        ...(airPump.blankOff === null ? [blankOffAssumed(primeTime(frontWith(BETTER_BLANK_OFF)))] : []),
        ...(input.casingVolume === null ? [casingNotCounted()] : []),
        ...vapourRemarks(liquid),
        ...liftRemarks("suction lift", suctionLift, atmosphericPressure, liquid.density, vapourPressure),
      ]),
    );
  });
}

function profileAssumed(): Finding {
  return { code: "priming-profile-assumed", kind: "assumed", subject: "suction line", cites: PROFILE_CHOICE };
}

function oneRunCounted(line: Line): readonly Finding[] {
  const most = Math.max(1, greatestOf(line.map(({ runs = 1 }) => runs)));
  return most === 1 ? [] : [{ code: "priming-one-run", kind: "check", subject: "suction line", facts: { runs: most } }];
}

function blankOffAssumed(better: Result<PrimeTime>): Finding {
  return {
    code: "blank-off-assumed",
    kind: "assumed",
    subject: "air pump",
    found: blankOffVacuum(DEFAULT_BLANK_OFF),
    facts: {
      better: blankOffVacuum(BETTER_BLANK_OFF),
      ...(better.ok ? { time: amount("duration", better.value.total) } : {}),
    },
    cites: BLANK_OFF_CHOICE,
  };
}

function casingNotCounted(): Finding {
  return { code: "casing-not-counted", kind: "assumed", subject: "casing volume" };
}

function vapourRemarks({ vapourPressure }: LiquidState): readonly Finding[] {
  if (vapourPressure === undefined) {
    return [{ code: "priming-vapour-unknown", kind: "check", subject: "liquid" }];
  }
  if (vapourPressure <= COLD_VAPOUR_PRESSURE) return [];
  const found = amount("absolutePressure", vapourPressure);
  return [{ code: "priming-vapour-counted", kind: "check", subject: "liquid", found }];
}
