import { amount, andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import type { LiquidState } from "../liquid/liquid.ts";
import { hotRemarks } from "../suction/suction-practice.ts";
import { vapourPressureMissing } from "../suction/suction-state.ts";
import { BETTER_BLANK_OFF, BLANK_OFF_CHOICE, blankOffVacuum, DEFAULT_BLANK_OFF } from "./air-pump.ts";
import type { StatedAirPump } from "./described-air-pump.ts";
import { type PrimingLift, primingLift } from "./priming-lift.ts";

export interface StatedPrimingLiftInput {
  readonly airPump: StatedAirPump;
  /** Greatest lift that leaves the pump its NPSH, m; null where it was not worked out. */
  readonly npshLift: number | null;
  /** Absolute pressure of the air on site, Pa. */
  readonly atmosphericPressure: number;
  readonly liquid: LiquidState;
}

/**
 * Greatest suction lift by each rule, m (`primingLift`), with an air pump as its user states it; not stated: blank-off
 * 25 inHg of vacuum at sea level, no leak.
 * Fails: vapour-pressure-missing; as `primingLift`.
 * Warns: cautions priming-lift-blank-off-assumed (gives the lift at the better end), priming-npsh-not-judged,
 * priming-lift-negative; as `hotRemarks`.
 * Source: as `primingLift`; the blank-off is a house choice.
 */
export function statedPrimingLift(input: StatedPrimingLiftInput): Result<PrimingLift> {
  const { airPump, npshLift, atmosphericPressure, liquid } = input;
  const { density, vapourPressure } = liquid;
  if (vapourPressure === undefined) return fail([vapourPressureMissing()]);
  const liftAt = (blankOff: number): Result<PrimingLift> =>
    primingLift({
      airPump: { freeAir: airPump.freeAir, blankOff, leak: airPump.leak ?? 0 },
      atmosphericPressure,
      density,
      vapourPressure,
      npshLift,
    });
  return andThen(liftAt(airPump.blankOff ?? DEFAULT_BLANK_OFF), (lift) =>
    succeed(lift, [
      ...(airPump.blankOff === null ? [blankOffAssumed(liftAt(BETTER_BLANK_OFF))] : []),
      ...(npshLift === null ? [npshNotJudged(lift)] : []),
      ...(lift.greatest < 0 ? [noLiftLeft(lift)] : []),
      ...hotRemarks("suction lift", vapourPressure),
    ]),
  );
}

function blankOffAssumed(better: Result<PrimingLift>): Finding {
  return {
    code: "priming-lift-blank-off-assumed",
    kind: "assumed",
    subject: "air pump",
    found: blankOffVacuum(DEFAULT_BLANK_OFF),
    facts: {
      better: blankOffVacuum(BETTER_BLANK_OFF),
      // A leak that the poorer pump outdraws the better one does too.
      lift: amount("head", better.ok ? better.value.byBlankOff : 0),
    },
    cites: BLANK_OFF_CHOICE,
  };
}

function npshNotJudged({ greatest }: PrimingLift): Finding {
  const found = amount("head", greatest);
  return { code: "priming-npsh-not-judged", kind: "check", subject: "suction lift", found };
}

function noLiftLeft({ greatest, rules }: PrimingLift): Finding {
  const found = amount("head", -greatest);
  return { code: "priming-lift-negative", kind: "check", subject: "suction lift", found, facts: { rule: rules } };
}
