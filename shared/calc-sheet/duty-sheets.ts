import { fail, type Result, succeed } from "../../src/basis/result.ts";
import { decodeDuty } from "../duty/decode.ts";
import type { DutyText } from "../duty/duty-text.ts";
import { dutyPlan } from "./duty-plan.ts";
import { type DutySheets, layOut } from "./layout.ts";
import { workOut } from "./work-out.ts";

/** The sheets of a duty as typed, ready for any host; the errors where the duty is not complete. */
export function dutySheets(typed: DutyText): Result<DutySheets> {
  const { duty, findings, isComplete } = decodeDuty(typed);
  const remarks = [...findings.values()].flat();
  if (!isComplete) return fail(remarks);
  const plan = dutyPlan(duty);
  return succeed(layOut(plan, workOut(plan)), remarks);
}
