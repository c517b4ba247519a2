import { layOut } from "../shared/calc-sheet/layout.ts";
import { savedWith } from "../shared/calc-sheet/open-again/record.ts";
import type { DutyText } from "../shared/duty/duty-text.ts";
import type { WorkedDuty } from "../shared/package/worked-duty.ts";
import { type Book, bookOfSet } from "../shared/xlsx/book-of-set.ts";

/** A workbook that holds the calc sheets of a duty, live, and the duty with them. */
export function dutyWorkbook({ plan, worked }: Pick<WorkedDuty, "plan" | "worked">, typed: DutyText): Book {
  return bookOfSet(layOut(plan, worked, savedWith(typed, "")));
}
