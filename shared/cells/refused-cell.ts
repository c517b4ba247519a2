import { type Failure, fail } from "../../src/basis/result.ts";
import { type Cell, isCellError } from "./cell.ts";

/** The refusal of a cell that holds another kind of thing than is wanted. */
export function wrongKind(subject: string, cell: Cell, wanted: string): Failure {
  const shown = isCellError(cell) ? cell.error : String(cell);
  const given = typeof cell === "boolean" ? shown.toUpperCase() : shown;
  return fail([{ code: "wrong-kind", kind: "error", subject, given, suggestions: [wanted] }]);
}

/** The refusal of a blank cell where something is needed. */
export function leftOut(subject: string, wanted: string): Failure {
  return fail([{ code: "left-out", kind: "error", subject, suggestions: [wanted] }]);
}
