import { layOut } from "../shared/calc-sheet/layout.ts";
import { savedWith } from "../shared/calc-sheet/open-again/record.ts";
import { resultsCopy } from "../shared/calc-sheet/results-copy.ts";
import type { DutyText } from "../shared/duty/duty-text.ts";
import type { WorkedDuty } from "../shared/package/worked-duty.ts";
import { freeSheetNames } from "../shared/ports/sheet-name.ts";
import { writeWorkbook } from "../shared/xlsx/write-workbook.ts";

/** The names of the sheets that a reader sees, and the file. */
export interface DutyWorkbook {
  readonly sheetNames: readonly string[];
  readonly bytes: Uint8Array;
}

/** A workbook that holds the calc sheets of a duty, live, under names that sheets may have, and the duty with them. */
export function dutyWorkbook({ plan, worked }: Pick<WorkedDuty, "plan" | "worked">, typed: DutyText): DutyWorkbook {
  const { wanted, sheets, records = [] } = layOut(plan, worked, savedWith(typed, ""));
  const sheetNames = freeSheetNames(wanted, []);
  return { sheetNames, bytes: writeWorkbook({ sheets: sheets(sheetNames), form: "add-in", records }) };
}

/** A workbook that holds a copy of the results of this date: no duty can be opened from it again. */
export function copyWorkbook({ plan, worked }: Pick<WorkedDuty, "plan" | "worked">, date: string): DutyWorkbook {
  const copy = resultsCopy(layOut(plan, worked), { date, revision: plan.issue?.revision ?? "" });
  const names = freeSheetNames(copy.wanted, []);
  const { shown } = copy;
  const bytes = writeWorkbook({ sheets: copy.sheets(names), form: "values", shown });
  return { sheetNames: names.slice(0, shown), bytes };
}
