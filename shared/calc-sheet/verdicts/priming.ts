import { type Duty, isLifted } from "../../duty/duty.ts";
import { LIFT } from "../sections/priming-lift.ts";
import { type Criterion, limitOf, openPoint, worded } from "./criterion.ts";

/** The lift of the duty against the least of what air pump, practice and NPSH allow. */
export function primingCriteria(duty: Duty): readonly Criterion[] {
  const missing = (["sourceLevel", "pumpLevel"] as const).filter((key) => duty[key] === undefined);
  if (missing.length > 0) return [openPoint({ of: "priming", what: "suction lift", missing })];
  if (!isLifted(duty)) {
    return [worded({ of: "priming", state: "pass", what: "flooded at the source level stated, nothing needed" })];
  }
  return [
    limitOf({
      of: "priming",
      what: "suction lift",
      found: LIFT.liftOfDuty,
      limit: LIFT.greatestPrimingLift,
      quantity: "head",
      mustBe: "at most",
      broken: "fail",
    }),
  ];
}
