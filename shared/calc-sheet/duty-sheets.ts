import { fail, type Result, succeed } from "../../src/basis/result.ts";
import { decodeDuty } from "../duty/decode.ts";
import type { DutyText } from "../duty/duty-text.ts";
import { dutyPlan } from "./duty-plan.ts";
import { type DutySheets, layOut } from "./layout.ts";
import { savedWith } from "./open-again/record.ts";
import { workOut } from "./work-out.ts";

/**
 * The sheets of a duty as typed, ready for any host, the duty with them; the errors where it is not complete.
 * @param mark tells them from other sheets of the same duty in one workbook
 */
export function dutySheets(typed: DutyText, mark = ""): Result<DutySheets> {
  const { duty, findings, isComplete } = decodeDuty(typed);
  const remarks = [...findings.values()].flat();
  if (!isComplete) return fail(remarks);
  const plan = dutyPlan(duty);
  return succeed(layOut(plan, workOut(plan), savedWith(typed, mark)), remarks);
}
