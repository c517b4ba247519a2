import { type Cell, isAbsent } from "../cells/cell.ts";
import { type Columns, columnFinder } from "../tables/column.ts";
import { ROWS_SEARCHED, type Rows } from "../tables/heading.ts";
import { CURVE_COLUMNS, LIMIT_COLUMNS, PUMP_COLUMNS } from "./columns.ts";

/** What a table of pumps holds: the points of their curves, or one row a pump. */
export type TableKind = "curves" | "list";

const { pump, flow, head } = CURVE_COLUMNS;
const POINT = { flow, head };
const CURVES = { pump, flow, head };
const LIMITS = { pump, ...Object.fromEntries(LIMIT_COLUMNS.map((key) => [key, PUMP_COLUMNS[key]])) };

/**
 * Of a table that somebody has named as one of pumps: it holds curves where it names flow and head, and is a list where
 * it names the pump and another column of a list.
 */
export function kindOfTable(rows: Rows): TableKind | undefined {
  if (rowNaming(rows, POINT, 2) !== undefined) return "curves";
  return rowNaming(rows, PUMP_COLUMNS, 2, "pump") === undefined ? undefined : "list";
}

/**
 * Of a sheet nobody has named: it holds curves where one row names pump, flow and head, and is a list where one names
 * the pump and a limit of it.
 */
export function kindOfSheet(rows: Rows): TableKind | undefined {
  if (rowNaming(rows, CURVES, 3) !== undefined) return "curves";
  return rowNaming(rows, LIMITS, 2, "pump") === undefined ? undefined : "list";
}

/**
 * Whether a pump of a sheet of curves has several rows. A ranking and a table of duties name pump, flow and head as
 * well, with a row for each and no curve.
 */
export function holdsCurves(rows: Rows): boolean {
  const heading = rowNaming(rows, CURVES, 3);
  if (heading === undefined) return false;
  const { row, at } = heading;
  let last: Cell = null;
  return rows.slice(row + 1).some((cells) => {
    const name = cells[at("pump")] ?? null;
    const isNew = !isAbsent(name) && name !== last;
    if (isNew) last = name;
    return !isNew && last !== null && typeof cells[at("flow")] === "number";
  });
}

/** The first row that names so many of the columns, that one among them. */
function rowNaming<K extends string>(
  rows: Rows,
  columns: Columns<K>,
  least: number,
  needed?: NoInfer<K>,
): { readonly row: number; readonly at: (key: K) => number } | undefined {
  const find = columnFinder(columns);
  for (const [row, cells] of rows.slice(0, ROWS_SEARCHED).entries()) {
    const keys = find(cells).map((one) => one?.key);
    const named = new Set(keys.filter((key) => key !== undefined));
    if (named.size >= least && (needed === undefined || named.has(needed))) {
      return { row, at: (key) => keys.indexOf(key) };
    }
  }
  return undefined;
}
