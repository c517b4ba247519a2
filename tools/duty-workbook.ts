import { dutyPlan } from "../shared/calc-sheet/duty-plan.ts";
import { layOut } from "../shared/calc-sheet/layout.ts";
import { savedWith } from "../shared/calc-sheet/open-again/record.ts";
import type { Duty } from "../shared/duty/duty.ts";
import type { DutyText } from "../shared/duty/duty-text.ts";
import { workedDuty } from "../shared/package/worked-duty.ts";
import { type Book, bookOfSet } from "../shared/xlsx/book-of-set.ts";

/** A workbook that holds the calc sheets of a duty, live, and the duty with them. */
export function dutyWorkbook(duty: Duty, typed: DutyText): Book {
  return bookOfSet(layOut(dutyPlan(duty), workedDuty(duty).worked, savedWith(typed, "")));
}
