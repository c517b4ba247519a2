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

const RECORD = spillOf("primingLift", PRIMINGLIFT);

/** Each lift the suction is limited by, and the duty's own held against the least of them. */
export function greatestLift(duty: Duty): readonly PlanItem[] {
  const isOnCurve = duty.pump?.curve.npshRequired !== undefined;
  const isStated = isLiftKnown(duty) && !isOnCurve;
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
              sum(NPSH.suctionLift, difference(POINT.operatingNpshMargin, FIELD.npshMargin)),
              "",
            ),
            "At the operating point: lift of the duty, and the NPSH left over the margin wanted.",
          ),
        ]
      : []),
    spill(RECORD, "Greatest suction lift", call),
    figure(
      LIFT.liftByBlankOff,
      "Lift by blank-off",
      part(RECORD, "byBlankOff"),
      "Height at which the air pump moves no more air.",
    ),
    figure(
      LIFT.liftByPractice,
      "Lift in practice",
      part(RECORD, "byPractice"),
      "7.6 m (25 ft) less altitude, warmth and weight.",
    ),
    ...(isStated
      ? [figure(liftByNpsh, "Lift by NPSH", part(RECORD, "byNpsh"), "Of the section on NPSH, with its margin.")]
      : []),
    figure(
      LIFT.greatestPrimingLift,
      "Greatest lift, all counted",
      whereOnCurve(least(liftByNpsh, others), others),
      isOnCurve || isStated ? "The least of them." : "The least of them; NPSH is not judged, for NPSHR is not stated.",
      "main",
    ),
    figure(
      LIFT.liftRule,
      "Ruled by",
      whereOnCurve(ifAtLeast(liftByNpsh, others, rules, constant("NPSH")), rules),
      "What has to change for a higher lift.",
    ),
    figure(
      LIFT.liftOfDuty,
      "Suction lift of the duty",
      NPSH.suctionLift,
      "Pump level less source level, from the section on NPSH.",
    ),
    figure(
      LIFT.liftVerdict,
      "Lift of the duty",
      verdict(LIFT.greatestPrimingLift, NPSH.suctionLift, "within the greatest lift", "BEYOND THE GREATEST LIFT"),
      "Held against the greatest lift. Check it at the lowest level too.",
    ),
    remark(LIFT.primingLiftNotes, "Greatest lift", call),
  ];
}
