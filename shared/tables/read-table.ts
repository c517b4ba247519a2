import { outOfRange } from "../../src/basis/method.ts";
import type { Quantity, UnitSet } from "../../src/basis/quantities.ts";
import { unitsThatDo } from "../../src/basis/quantity-text.ts";
import { all, andThen, type Finding, fail, type Result, succeed } from "../../src/basis/result.ts";
import type { Unit } from "../../src/basis/units.ts";
import { amountOf, withoutText } from "../cells/amount-cell.ts";
import { type Cell, isAbsent, isBlank } from "../cells/cell.ts";
import { leftOut, wrongKind } from "../cells/refused-cell.ts";
import { namesOf, type TableColumn } from "./column.ts";
import { type Heading, headingOf, noHeading, noRows, type Rows, usualHeading } from "./heading.ts";
import { beginsInOrder, saysHeading, saysOrder } from "./heading-again.ts";
import { cellPlace, rowPlace, type TablePlace } from "./place.ts";
import { RowsBefore } from "./rows-before.ts";

/** A column and how its cells are read: as amounts, by a reader of its own, or else as plain texts. */
export interface ReadColumn extends TableColumn {
  /** Reads a filled cell of a column without a quantity. The value rests on the cell alone; the subject names findings. */
  readonly read?: (cell: Cell, subject: string) => Result<unknown>;
  /** A 0 in a column without a quantity is a figure, not a blank cell. */
  readonly holdsFigures?: boolean;
  /** What is asked for where a needed cell is blank. */
  readonly wanted?: string;
  /** The column may be missing, but where it stands every row fills it. */
  readonly whole?: boolean;
  /** In the engine's unit. */
  readonly atLeast?: number;
}

export type ReadColumns = Readonly<Record<string, ReadColumn>>;
type Value<C> = C extends { readonly read: (cell: Cell, subject: string) => Result<infer T> }
  ? T
  : C extends { readonly quantity: Quantity }
    ? number
    : string;
type NeededKey<C> = { [K in keyof C]: C[K] extends { readonly needed: true } ? K : never }[keyof C];

/** What a row says: the columns needed, and of the others those it fills. */
export type RowValues<C> = { readonly [K in NeededKey<C>]: Value<C[K]> } & {
  readonly [K in Exclude<keyof C, NeededKey<C>>]?: Value<C[K]>;
};

export interface TableRow<C> {
  readonly values: RowValues<C>;
  /** 0-based, of the table. */
  readonly row: number;
  /** "curve row 7". */
  readonly label: string;
  /** What findings call one of its cells. */
  readonly placeOf: (key: keyof C & string) => string;
}

export interface Table<C> {
  readonly rows: readonly TableRow<C>[];
  readonly heading: Heading<keyof C & string>;
}

export interface TableReading<K extends string> {
  readonly place: TablePlace;
  /** Units of columns whose heading states none. */
  readonly units: UnitSet;
  /** The columns of a table without a heading; left out where it must have one. */
  readonly order?: readonly K[];
  /** Words of a heading that are neither name nor unit. */
  readonly aside?: RegExp;
  /** Whether a row is passed over, by its cells in the columns read; a row of blanks and zeros if not given. */
  readonly isBlankRow?: (cells: readonly Cell[]) => boolean;
  /** A blank row that counts nevertheless. */
  readonly alsoRow?: (rows: Rows, heading: Heading<K>) => number | undefined;
}

/**
 * A table of one row a thing, under a heading or in the usual order of its columns. A heading that is said again further
 * down, as on the pages of a long table, is passed over. Told are all mistakes of all rows.
 */
export function readTable<const C extends ReadColumns>(
  rows: Rows,
  columns: C,
  reading: TableReading<keyof C & string>,
): Result<Table<C>> {
  type K = keyof C & string;
  const { place, units, order, aside, isBlankRow = (cells) => cells.every(isBlank), alsoRow } = reading;
  const isInOrder = order !== undefined && beginsInOrder<K>(rows, columns, order, units);
  const headed = isInOrder ? undefined : headingOf<K>(rows, columns, place, aside);
  const usual = order === undefined ? noHeading(columns, place) : usualHeading<K>(rows, columns, place, order);
  return andThen(headed ?? usual, (heading) => {
    const also = alsoRow?.(rows, heading);
    const used = headed === undefined ? undefined : Object.values<number | undefined>(heading.at);
    const entries = Object.entries(columns);
    const saysAgain = (row: readonly Cell[]): boolean =>
      headed === undefined
        ? order !== undefined && saysOrder<K>(row, columns, order, units)
        : saysHeading(row, heading);
    const before = new RowsBefore<Result<TableRow<C>>>(
      columns,
      JSON.stringify([place, order, heading]),
      units,
      rows.length,
    );
    const read: Result<TableRow<C>>[] = [];
    for (let i = heading.firstRow; i < rows.length; i += 1) {
      const row = rows[i] as readonly Cell[];
      const isPassedOver = isBlankRow(used === undefined ? row : used.map((at) => row[at as number] ?? null));
      if (isPassedOver && i !== also) continue;
      const known = before.at(i, row);
      if (known !== undefined) read.push(known);
      else if (i === also || !saysAgain(row))
        read.push(before.keep(i, row, readRow(row, i, columns, entries, heading, reading)));
    }
    if (read.length === 0) return noRows(columns, place);
    return andThen(all(read), (values) => succeed({ rows: values, heading }));
  });
}

/** The unit each column of figures was read in. */
export function unitsRead<C extends ReadColumns>(
  { at, units }: Heading<keyof C & string>,
  columns: C,
  unitSet: UnitSet,
): Readonly<Partial<Record<keyof C & string, Unit>>> {
  const keys = Object.keys(at) as (keyof C & string)[];
  return Object.fromEntries(
    keys.flatMap((key) => {
      const { quantity } = columns[key] as ReadColumn;
      return quantity === undefined ? [] : [[key, units[key] ?? unitSet[quantity]]];
    }),
  ) as Readonly<Partial<Record<keyof C & string, Unit>>>;
}

function readRow<C extends ReadColumns>(
  row: readonly Cell[],
  index: number,
  columns: C,
  entries: readonly (readonly [keyof C & string, ReadColumn])[],
  { at, units, texts }: Heading<keyof C & string>,
  { place, units: unitSet, order }: TableReading<keyof C & string>,
): Result<TableRow<C>> {
  const label = rowPlace(place, index);
  const placeOf = (key: keyof C & string): string =>
    cellPlace(place, index, at[key] ?? 0, (columns[key] as ReadColumn).name);
  const isHeaded = Object.keys(texts).length > 0;
  const extra = isHeaded ? undefined : row.slice(order?.length).find((cell) => !isBlank(cell));
  if (extra !== undefined) return wrongKind(label, extra, `${namesOf(columns)}, or a header row that names them`);
  const values: Partial<Record<string, unknown>> = {};
  const findings: Finding[] = [];
  let isWhole = true;
  for (const [key, column] of entries) {
    const cell = row[at[key] ?? row.length] ?? null;
    const isMissing = column.quantity === undefined && !column.holdsFigures ? isBlank(cell) : isAbsent(cell);
    if (isMissing && !column.needed && !(column.whole && at[key] !== undefined)) continue;
    const read = isMissing
      ? leftOut(placeOf(key), wantedOf(column))
      : readAt(cell, column, () => placeOf(key), units[key], unitSet);
    for (const finding of read.findings) findings.push(finding);
    if (read.ok) values[key] = read.value;
    else isWhole = false;
  }
  return isWhole ? succeed({ values: values as RowValues<C>, row: index, label, placeOf }, findings) : fail(findings);
}

function wantedOf({ wanted, quantity }: ReadColumn): string {
  return wanted ?? (quantity === undefined ? "a text" : `a number or a text with a unit (${unitsThatDo(quantity)})`);
}

/** A cell read; it is named only where there is something to say of it, for a table may have a million. */
function readAt(
  cell: Cell,
  column: ReadColumn,
  place: () => string,
  stated: Unit | undefined,
  units: UnitSet,
): Result<unknown> {
  const read = readCell(cell, column, column.name, stated, units);
  return read.findings.length === 0 ? read : readCell(cell, column, place(), stated, units);
}

function readCell(
  cell: Cell,
  { quantity, read = plainText, atLeast }: ReadColumn,
  subject: string,
  stated: Unit | undefined,
  units: UnitSet,
): Result<unknown> {
  if (quantity === undefined) return read(cell, subject);
  const amount = amountOf(withoutText(cell), quantity, stated ?? units[quantity], subject);
  if (!amount.ok || atLeast === undefined || amount.value >= atLeast) return amount;
  return fail([outOfRange(subject, quantity, amount.value, "at least", atLeast)]);
}

/** A name may be a number, such as a model or a flange size. */
function plainText(cell: Cell, subject: string): Result<string> {
  if (typeof cell === "string" || typeof cell === "number") return succeed(String(cell).trim());
  return wrongKind(subject, cell, "a text");
}

/** A reader of texts and of nothing else. */
export function textCell<T>(
  example: string,
  read: (text: string, subject: string) => Result<T>,
): (cell: Cell, subject: string) => Result<T> {
  return (cell, subject) =>
    typeof cell === "string" ? read(cell, subject) : wrongKind(subject, cell, `a text such as ${example}`);
}
