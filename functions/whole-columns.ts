import { type Entry, parameterName, withUnits } from "../shared/catalogue/entry.ts";
import { type CellError, isCellError } from "../shared/cells/cell.ts";
import { cellOf } from "./host-values.ts";

/** A house choice: more answers at once would hold Excel up for seconds. */
export const MOST_ROWS = 100_000;

/**
 * The arguments, a whole column (A:A) as far as one of them is filled: what is asked of a column beyond that is
 * nothing. Excel on the desktop hands blank cells of a range over as 0, which cannot be told from a 0 that was typed;
 * there, and where more rows are filled, the call is refused.
 */
export function asFarAsFilled(entry: Entry, raw: readonly unknown[]): readonly unknown[] | CellError {
  const long = raw.filter(isLong);
  if (long.length === 0) return raw;
  const filled = long.reduce((most, rows) => Math.max(most, filledRows(rows)), 1);
  if (filled <= MOST_ROWS) return raw.map((value) => (isLong(value) ? value.slice(0, filled) : value));
  const at = raw.findIndex(isLong);
  const names = withUnits(
    entry,
    entry.parameters.map(([key]) => parameterName(key)),
    "units",
  );
  const name = names[Math.min(at, names.length - 1)] ?? "units";
  return {
    error: "#VALUE!",
    message:
      `${name.charAt(0).toUpperCase()}${name.slice(1)} has ${rowsText(long[0]?.length ?? 0)} rows; a call takes at most ` +
      `${rowsText(MOST_ROWS)}. Give the filled rows alone, such as A2:A500 in place of A:A.`,
  };
}

function isLong(value: unknown): value is readonly unknown[] {
  return Array.isArray(value) && value.length > MOST_ROWS;
}

/** How many rows there are down to the last that holds anything. */
function filledRows(rows: readonly unknown[]): number {
  for (let count = rows.length; count > 0; count -= 1) {
    const row = rows[count - 1];
    if (!(Array.isArray(row) ? row : [row]).every(isBlank)) return count;
  }
  return 0;
}

function isBlank(value: unknown): boolean {
  const cell = cellOf(value);
  return !isCellError(cell) && cell === null;
}

function rowsText(count: number): string {
  return count.toLocaleString("en-GB");
}
