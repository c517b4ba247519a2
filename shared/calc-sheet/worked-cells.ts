import type { Argument } from "../cells/cell.ts";
import { tableCell } from "./expression.ts";

/** Cells of a table as they are filled in, or as they were spilled. */
interface TableCells {
  readonly columns: readonly string[];
  readonly rows: number;
  /** Nothing where the table has no such cell. */
  readonly at: (row: number, column: string) => Argument | undefined;
}

/**
 * What the cells of a plan hold, by their keys. Those of a table are kept by row and column: a duty has some ten thousand
 * of them, and to name each costs more than to work it out.
 */
export class WorkedCells implements ReadonlyMap<string, Argument> {
  readonly #single = new Map<string, Argument>();
  readonly #tables = new Map<string, TableCells>();

  set(key: string, value: Argument): void {
    this.#single.set(key, value);
  }

  /** Cells of a table that are already there, rows counted from 0 under the headings. */
  place(table: string, cells: TableCells): void {
    this.#tables.set(table, cells);
  }

  /** A table to be filled in cell by cell. */
  fill(table: string, rows: number): FilledTable {
    const filled = new FilledTable(rows);
    this.#tables.set(table, filled);
    return filled;
  }

  /** A cell of a table; nothing where there is none. */
  at(table: string, row: number, column: string): Argument | undefined {
    return this.#tables.get(table)?.at(row, column);
  }

  /** How many rows a table has; nothing where there is no such table. */
  rowsOf(table: string): number | undefined {
    return this.#tables.get(table)?.rows;
  }

  get(key: string): Argument | undefined {
    const single = this.#single.get(key);
    if (single !== undefined) return single;
    const place = placeIn(key);
    return place === undefined ? undefined : this.at(...place);
  }

  has(key: string): boolean {
    return this.get(key) !== undefined;
  }

  get size(): number {
    return this.#all().size;
  }

  entries(): MapIterator<[string, Argument]> {
    return this.#all().entries();
  }

  keys(): MapIterator<string> {
    return this.#all().keys();
  }

  values(): MapIterator<Argument> {
    return this.#all().values();
  }

  forEach(visit: (value: Argument, key: string, map: ReadonlyMap<string, Argument>) => void): void {
    this.#all().forEach(visit);
  }

  [Symbol.iterator](): MapIterator<[string, Argument]> {
    return this.entries();
  }

  #all(): Map<string, Argument> {
    const all = new Map(this.#single);
    for (const [table, { columns, rows, at }] of this.#tables) {
      for (const column of columns) {
        for (let row = 0; row < rows; row += 1) {
          const cell = at(row, column);
          if (cell !== undefined) all.set(tableCell(table, row, column), cell);
        }
      }
    }
    return all;
  }
}

/** A table filled in cell by cell; a cell may be read as soon as it is set. */
export class FilledTable implements TableCells {
  readonly rows: number;
  readonly #columns = new Map<string, (Argument | undefined)[]>();

  constructor(rows: number) {
    this.rows = rows;
  }

  get columns(): readonly string[] {
    return [...this.#columns.keys()];
  }

  readonly at = (row: number, column: string): Argument | undefined => this.#columns.get(column)?.[row];

  /** The cells of a column, to be filled in; none of them yet where it is new. */
  column(key: string): (Argument | undefined)[] {
    let cells = this.#columns.get(key);
    if (cells === undefined) {
      cells = Array<Argument | undefined>(this.rows).fill(undefined);
      this.#columns.set(key, cells);
    }
    return cells;
  }
}

/** "suctionLine.0.velocity" taken apart. */
function placeIn(key: string): readonly [table: string, row: number, column: string] | undefined {
  const last = key.lastIndexOf(".");
  const middle = last <= 0 ? -1 : key.lastIndexOf(".", last - 1);
  if (middle < 0) return undefined;
  return [key.slice(0, middle), Number(key.slice(middle + 1, last)), key.slice(last + 1)];
}
