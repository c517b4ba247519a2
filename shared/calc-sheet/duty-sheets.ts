import { fail, type Result, succeed } from "../../src/basis/result.ts";
import { decodeDuty } from "../duty/decode.ts";
import type { DutyText } from "../duty/duty-text.ts";
import type { SheetSet } from "../ports/sheet-set.ts";
import { dutyPlan } from "./duty-plan.ts";
import { type DutySheets, layOut } from "./layout.ts";
import { savedWith } from "./open-again/record.ts";
import type { CalcSheetPlan } from "./plan.ts";
import { resultsCopy } from "./results-copy.ts";
import { type WorkedPlan, workOut } from "./work-out.ts";

/**
 * The sheets of a duty as typed, ready for any host, the duty with them; the errors where it is not complete.
 * @param mark tells them from other sheets of the same duty in one workbook
 * @param holdsRecords whether the workbook keeps the duty; where it does not, the sheets do not say so either
 */
export function dutySheets(typed: DutyText, mark = "", holdsRecords = true): Result<DutySheets> {
  return ofComplete(typed, (plan, worked) => layOut(plan, worked, holdsRecords ? savedWith(typed, mark) : undefined));
}

/** A copy of its results for whoever gets it. @param date of the copy, as it is to be read */
export function customerCopy(typed: DutyText, date: string): Result<SheetSet> {
  return ofComplete(typed, (plan, worked) => resultsCopy(plan, worked, date));
}

function ofComplete<S>(typed: DutyText, made: (plan: CalcSheetPlan, worked: WorkedPlan) => S): Result<S> {
  const { duty, findings, isComplete } = decodeDuty(typed);
  const remarks = [...findings.values()].flat();
  if (!isComplete) return fail(remarks);
  const plan = dutyPlan(duty);
  return succeed(made(plan, workOut(plan)), remarks);
}
