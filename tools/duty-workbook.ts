import { layOut } from "../shared/calc-sheet/layout.ts";
import { resultsCopy } from "../shared/calc-sheet/results-copy.ts";
import type { WorkedDuty } from "../shared/package/worked-duty.ts";
import { freeSheetNames } from "../shared/ports/sheet-name.ts";
import { writeWorkbook } from "../shared/xlsx/write-workbook.ts";

/** The names of the sheets that a reader sees, and the file. */
export interface DutyWorkbook {
  readonly sheetNames: readonly string[];
  readonly bytes: Uint8Array;
}

/**
 * A workbook that holds the calc sheets of a duty, under names that sheets may have: live, or of this date a copy of the
 * results.
 */
export function dutyWorkbook({ plan, worked }: Pick<WorkedDuty, "plan" | "worked">, copyOf?: string): DutyWorkbook {
  const live = layOut(plan, worked);
  if (copyOf === undefined) {
    const sheetNames = freeSheetNames(live.wanted, []);
    return { sheetNames, bytes: writeWorkbook({ sheets: live.sheets(sheetNames), form: "add-in" }) };
  }
  const copy = resultsCopy(live, { date: copyOf, revision: plan.issue?.revision ?? "" });
  const names = freeSheetNames(copy.wanted, []);
  const { shown } = copy;
  const bytes = writeWorkbook({ sheets: copy.sheets(names), form: "values", shown });
  return { sheetNames: names.slice(0, shown), bytes };
}
