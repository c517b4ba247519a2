import { cell } from "../../shared/calc-sheet/expression.ts";
import { subjectsOf, VERDICT_TABLE } from "../../shared/calc-sheet/verdicts/verdict-items.ts";
import { isCellError, isRange } from "../../shared/cells/cell.ts";
import type { Duty } from "../../shared/duty/duty.ts";
import type { WorkedDuty } from "../../shared/package/worked-duty.ts";
import type { Figure } from "./duty-figures.ts";

export interface ShownVerdict {
  readonly of: string;
  readonly state: string;
  readonly text: string;
  /** The figure that decides and its limit, where figures do. */
  readonly found?: Figure;
  readonly limit?: Figure;
}

/** What holds, what fails and what is open, as the sheet says it. */
export function dutyVerdicts(duty: Duty, { worked }: WorkedDuty): readonly ShownVerdict[] {
  return subjectsOf(duty).map((of, i) => {
    const at = (column: (typeof VERDICT_TABLE)["columns"][number]["key"]): string | number => {
      const held = worked.cells.get(cell(VERDICT_TABLE, i + 1, column).key) ?? "";
      if (typeof held === "number") return held;
      return isRange(held) ? "" : isCellError(held) ? (held.message ?? held.error) : String(held);
    };
    // A table of verdicts that is an error judges nothing.
    if (at("verdict") !== of) return { of, state: "open", text: String(at("text")) };
    const unit = String(at("unit"));
    const figure = (column: "found" | "limit"): { readonly [K in "found" | "limit"]?: Figure } => {
      const value = at(column);
      return typeof value === "number" ? { [column]: unit === "" ? { value } : { value, unit } } : {};
    };
    return { of, state: String(at("state")), text: String(at("text")), ...figure("found"), ...figure("limit") };
  });
}
