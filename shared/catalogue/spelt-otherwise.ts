import { type Argument, type Cell, isRange } from "../cells/cell.ts";
import { spelt } from "../text/spelling.ts";

/** The texts among the arguments of a call that American spelling changes, each once. */
export function speltOtherwise(args: readonly Argument[]): readonly string[] {
  const found = new Set<string>();
  // In a long table a name stands on many rows, one under the other.
  let last = "";
  const look = (cell: Cell): void => {
    if (typeof cell !== "string" || cell === last) return;
    last = cell;
    const text = cell.trim();
    if (spelt(text, "US") !== text) found.add(text);
  };
  for (const arg of args) {
    if (isRange(arg)) for (const row of arg) for (const cell of row) look(cell);
    else look(arg);
  }
  return [...found];
}
