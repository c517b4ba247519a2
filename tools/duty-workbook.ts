import { layOut } from "../shared/calc-sheet/layout.ts";
import type { WorkedDuty } from "../shared/package/worked-duty.ts";
import { freeSheetName } from "../shared/ports/sheet-name.ts";
import { writeWorkbook } from "../shared/xlsx/write-workbook.ts";

/** A workbook that holds the calc sheet of a duty, under a name that a sheet may have. */
export function dutyWorkbook(
  { plan, worked }: Pick<WorkedDuty, "plan" | "worked">,
  form: "add-in" | "values",
): { readonly sheetName: string; readonly bytes: Uint8Array } {
  const sheetName = freeSheetName(plan.sheetName, []);
  return { sheetName, bytes: writeWorkbook({ sheets: [{ ...layOut(plan, worked), name: sheetName }], form }) };
}
