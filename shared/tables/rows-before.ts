import type { UnitSet } from "../../src/basis/quantities.ts";
import type { Cell } from "../cells/cell.ts";

/** Of a longer table the rows are read anew: to keep them in mind would take as much again as the table. */
const MOST_ROWS = 2000;

interface RowBefore {
  readonly cells: readonly Cell[];
  readonly read: unknown;
}

/** What was made of the rows of a table. */
interface TableBefore {
  readonly heading: string;
  readonly units: UnitSet;
  readonly rows: Map<number, RowBefore>;
}

const before = new WeakMap<object, TableBefore>();

/**
 * What was made of each row of the table that was read last under these columns: where one row of many is changed, the
 * others read as they did. A row reads by its cells, its place, the heading and the units alone.
 *
 * @param heading all that decides how a row is read and named, but its cells, its number and the units
 */
export class RowsBefore<T> {
  readonly #rows: Map<number, RowBefore> | undefined;

  constructor(columns: object, heading: string, units: UnitSet, rows: number) {
    if (rows > MOST_ROWS) return;
    const last = before.get(columns);
    const isSame = last?.heading === heading && last.units === units;
    this.#rows = isSame ? last.rows : new Map();
    if (!isSame) before.set(columns, { heading, units, rows: this.#rows });
  }

  /** Nothing where another row stood in this place. */
  at(index: number, row: readonly Cell[]): T | undefined {
    const known = this.#rows?.get(index);
    return known !== undefined && isSameRow(known.cells, row) ? (known.read as T) : undefined;
  }

  /** Keeps a reading, whatever becomes of the cells since. */
  keep(index: number, row: readonly Cell[], read: T): T {
    this.#rows?.set(index, { cells: [...row], read });
    return read;
  }
}

function isSameRow(kept: readonly Cell[], row: readonly Cell[]): boolean {
  if (kept.length !== row.length) return false;
  for (let i = 0; i < row.length; i += 1) if (!Object.is(kept[i], row[i])) return false;
  return true;
}
