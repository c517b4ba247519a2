import { dutyCalculation } from "../calc-sheet/duty-plan.ts";
import type { CalcSheetPlan } from "../calc-sheet/plan.ts";
import type { Duty } from "../duty/duty.ts";
import { type WorkedCalculation, workedCalculation } from "./worked-calculation.ts";

/** The whole calculation of a duty, worked out. */
export type WorkedDuty = WorkedCalculation<CalcSheetPlan>;

const kept = new WeakMap<Duty, WorkedDuty>();

/** Works a duty out; the same duty gives the same object again without working. */
export function workedDuty(duty: Duty): WorkedDuty {
  const known = kept.get(duty);
  if (known !== undefined) return known;
  const made = workedCalculation(dutyCalculation(duty));
  kept.set(duty, made);
  return made;
}
