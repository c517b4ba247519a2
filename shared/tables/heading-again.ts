import type { UnitSet } from "../../src/basis/quantities.ts";
import { unitNamed } from "../../src/basis/units.ts";
import { type Cell, isAbsent } from "../cells/cell.ts";
import { type Columns, columnFinder, neededOf } from "./column.ts";
import type { Heading, Rows } from "./heading.ts";

/*
 * A long table that is printed over several pages says its heading on each. Such rows are no rows of the table.
 */

/** Whether a row below the heading says it word for word. */
export function saysHeading<K extends string>(row: readonly Cell[], { at, texts }: Heading<K>): boolean {
  const said = Object.entries<string | undefined>(texts);
  return said.length > 0 && said.every(([key, text]) => cellText(row[at[key as K] as number]) === text);
}

/** Whether a row names the columns where they stand in their usual order, in the units they are read in without a heading. */
export function saysOrder<K extends string>(
  row: readonly Cell[],
  columns: Columns<K>,
  order: readonly NoInfer<K>[],
  units: UnitSet,
): boolean {
  // A cheap look first: a table may have a million rows.
  if (neededOf(columns).some((key) => typeof row[order.indexOf(key)] !== "string")) return false;
  const named = columnFinder(columns)(row);
  return row.every((cell, i) => {
    if (isAbsent(cell)) return true;
    const one = named[i];
    if (one === undefined || one.key !== order[i]) return false;
    const { quantity } = columns[one.key];
    return quantity === undefined || one.unitText === "" || unitNamed(one.unitText) === units[quantity];
  });
}

/** A row or two above a heading may be a slip, and are told; from so many on they are the table, and the heading is said again. */
const ROWS_OF_A_TABLE = 3;

/** Whether a table begins with rows in their usual order, whatever heading stands further down. */
export function beginsInOrder<K extends string>(
  rows: Rows,
  columns: Columns<K>,
  order: readonly NoInfer<K>[],
  units: UnitSet,
): boolean {
  let found = 0;
  for (const row of rows) {
    if (row.every(isAbsent)) continue;
    if (saysOrder(row, columns, order, units)) return found >= ROWS_OF_A_TABLE;
    if (isFilled(row, columns, order)) found += 1;
    else if (found === 0) return false;
  }
  return false;
}

function isFilled<K extends string>(row: readonly Cell[], columns: Columns<K>, order: readonly K[]): boolean {
  return neededOf(columns).every((key) => {
    const cell = row[order.indexOf(key)] ?? null;
    return columns[key].quantity === undefined ? !isAbsent(cell) : typeof cell === "number";
  });
}

function cellText(cell: Cell | undefined): string | undefined {
  return typeof cell === "string" ? cell.trim() : undefined;
}
