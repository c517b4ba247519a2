import type { FoundDuties, FoundDuty } from "../../shared/calc-sheet/open-again/duties-in.ts";
import type { DutyText } from "../../shared/duty/duty-text.ts";

/** The sheets in the workbook that hold the duty of the pane: the newest of those for the same item of the same project. */
export function sheetOf(duty: DutyText, found: FoundDuties | undefined): FoundDuty | undefined {
  return found?.duties.findLast(({ back }) =>
    (["item", "project"] as const).every((key) => back.duty.fields[key].trim() === duty.fields[key].trim()),
  );
}
