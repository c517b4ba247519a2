import { PRIMINGLIFT } from "../../catalogue/entries/priming-devices.ts";
import type { Duty } from "../../duty/duty.ts";
import {
  callOf,
  constant,
  difference,
  type Expression,
  handles,
  ifAtLeast,
  ifNumber,
  least,
  part,
  spillOf,
  sum,
  verdict,
} from "../expression.ts";
import { FIELD, LIQUID } from "../field-handles.ts";
import { figure, type PlanItem, remark, spill } from "../plan.ts";
import { isLiftKnown, NPSH } from "./npsh.ts";
import { POINT } from "./operating-point.ts";

/** Worked cells of the greatest lift. */
export const LIFT = handles({
  liftByNpsh: "head",
  liftByBlankOff: "head",
  liftByPractice: "head",
  greatestPrimingLift: "head",
  liftRule: null,
  liftOfDuty: "head",
  liftVerdict: null,
  primingLiftNotes: null,
});

/** The greatest lift, with the dust of rounding that equality allows. */
export const AT_MOST = sum(LIFT.greatestPrimingLift, constant(1e-9));

/** Whether the lift that NPSH leaves is worked out: of the pump's curve at its operating point, or of NPSHR stated. */
export function isNpshLiftKnown(duty: Duty): boolean {
  return isNpshOnCurve(duty) || isLiftKnown(duty);
}

/** The margin that the lift by NPSH keeps. */
export function npshLiftMargin(duty: Duty): Expression {
  return isNpshOnCurve(duty) ? POINT.operatingNpshMarginKept : NPSH.npshMarginKept;
}

function isNpshOnCurve({ pump }: Duty): boolean {
  return pump?.curve.npshRequired !== undefined;
}

/** Whether it comes of the NPSHR stated, for no curve gives one. */
export function isNpshLiftStated(duty: Duty): boolean {
  return isLiftKnown(duty) && !isNpshOnCurve(duty);
}

const RECORD = spillOf("primingLift", PRIMINGLIFT);

/** Each lift the suction is limited by, and the duty's own held against the least of them. */
export function greatestLift(duty: Duty): readonly PlanItem[] {
  const isOnCurve = isNpshOnCurve(duty);
  const isStated = isNpshLiftStated(duty);
  // What the operating point leaves is held against the others on the sheet itself: one more call would be a link more.
  const call = callOf(PRIMINGLIFT, {
    airPumpCapacity: FIELD.airPump,
    ...(isStated && { NPSHLift: NPSH.greatestLift }),
    altitude: FIELD.altitude,
    ...LIQUID,
  });
  const { liftByNpsh } = LIFT;
  const others = part(RECORD, "greatest");
  const rules = part(RECORD, "rules");
  const whereOnCurve = (met: Expression, otherwise: Expression): Expression =>
    isOnCurve ? { op: "ifNumber", of: liftByNpsh, met, otherwise } : otherwise;
  return [
    ...(isOnCurve
      ? [
          // Raised by a metre, the pump has a metre less NPSH available and runs at the same flow.
          figure(
            liftByNpsh,
            "Lift by NPSH",
            ifNumber(
              POINT.operatingNpshMargin,
              sum(NPSH.suctionLift, difference(POINT.operatingNpshMargin, POINT.operatingNpshMarginKept)),
              "",
            ),
            "Lift of the duty, and the NPSH left over the margin.",
          ),
        ]
      : []),
    spill(RECORD, "Maximum suction lift", call),
    figure(
      LIFT.liftByBlankOff,
      "Limit by air pump",
      part(RECORD, "byBlankOff"),
      "Height at which the air pump moves no more air.",
    ),
    figure(
      LIFT.liftByPractice,
      "Practical limit",
      part(RECORD, "byPractice"),
      "7.62 m (25 ft) less altitude, warmth and weight.",
    ),
    ...(isStated
      ? [figure(liftByNpsh, "Lift by NPSH", part(RECORD, "byNpsh"), "Of the section on NPSH, with its margin.")]
      : []),
    figure(
      LIFT.greatestPrimingLift,
      "Maximum lift, all counted",
      whereOnCurve(least(liftByNpsh, others), others),
      isOnCurve || isStated
        ? "The lowest of them."
        : "The lowest of them; NPSH is not judged, for NPSHR is not stated.",
      "main",
    ),
    {
      ...figure(
        LIFT.liftRule,
        "Governed by",
        whereOnCurve(ifAtLeast(liftByNpsh, others, rules, constant("NPSH")), rules),
        "What has to change for a higher lift.",
      ),
      isNoVerdict: true,
    },
    figure(
      LIFT.liftOfDuty,
      "Suction lift of the duty",
      NPSH.suctionLift,
      "Pump level less source level, from the section on NPSH.",
    ),
    figure(
      LIFT.liftVerdict,
      "Duty lift",
      verdict(AT_MOST, NPSH.suctionLift, "within the limit", "BEYOND THE MAXIMUM LIFT"),
      "The maximum lift; check the lowest level too.",
    ),
    remark(LIFT.primingLiftNotes, "Maximum lift", call),
  ];
}
