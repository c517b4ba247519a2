import { fail, type Result, succeed } from "../../src/basis/result.ts";
import type { Cell } from "../cells/cell.ts";

/** Reads a cell of a column that says yes or no. */
export function yesOrNo(cell: Cell, subject: string): Result<boolean> {
  const given = String(cell).trim().toLowerCase();
  if (given === "yes" || given === "true") return succeed(true);
  if (given === "no" || given === "false") return succeed(false);
  return fail([{ code: "choice-unknown", kind: "error", subject, given, suggestions: ['"yes"', '"no"'] }]);
}
