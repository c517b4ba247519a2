import { layOut } from "../shared/calc-sheet/layout.ts";
import type { WorkedDuty } from "../shared/package/worked-duty.ts";
import { freeSheetNames } from "../shared/ports/sheet-name.ts";
import { writeWorkbook } from "../shared/xlsx/write-workbook.ts";

/** A workbook that holds the calc sheets of a duty, under names that sheets may have. */
export function dutyWorkbook(
  { plan, worked }: Pick<WorkedDuty, "plan" | "worked">,
  form: "add-in" | "values",
): { readonly sheetNames: readonly string[]; readonly bytes: Uint8Array } {
  const set = layOut(plan, worked);
  const sheetNames = freeSheetNames(set.wanted, []);
  return { sheetNames, bytes: writeWorkbook({ sheets: set.sheets(sheetNames), form }) };
}
