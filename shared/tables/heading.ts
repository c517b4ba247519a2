import type { PlainCode } from "../../src/basis/finding-code.ts";
import { type Quantity, unitFits } from "../../src/basis/quantities.ts";
import { unitsThatDo } from "../../src/basis/quantity-text.ts";
import { type Failure, type Finding, fail, type Result, succeed } from "../../src/basis/result.ts";
import { meaningsOf, type Unit, unitNamed } from "../../src/basis/units.ts";
import { greatestOf } from "../../src/numeric/extremes.ts";
import { type Cell, isAbsent } from "../cells/cell.ts";
import {
  type Columns,
  columnFinder,
  type Named,
  namesOf,
  neededOf,
  type TableColumn,
  withoutBrackets,
} from "./column.ts";
import { cellPlace, headingPlace, rowPlace, type TablePlace } from "./place.ts";

export type Rows = readonly (readonly Cell[])[];

type ByKey<K extends string, T> = Readonly<Partial<Record<K, T>>>;

/** Which column stands where, in which unit, and the row the figures begin in. */
export interface Heading<K extends string> {
  readonly at: ByKey<K, number>;
  /** Units that the heading or a row below it states. */
  readonly units: ByKey<K, Unit>;
  /** The headings as written; none where the columns stand in their usual order. */
  readonly texts: ByKey<K, string>;
  readonly firstRow: number;
}

/** A title and a few notes may stand above the heading. */
export const ROWS_SEARCHED = 30;

/**
 * The heading of a table: the first row that names two of the columns it needs, or else of any. A unit may stand in the
 * heading ("flow, m³/h", "Q (gpm)", "H / m"), alone ("GPM") where the column allows it, or in a row of units below.
 * Headings without a meaning are told. Nothing where no row is a heading. `aside` are words of a heading that are
 * neither name nor unit.
 */
export function headingOf<K extends string>(
  rows: Rows,
  columns: Columns<K>,
  place: TablePlace,
  aside?: RegExp,
): Result<Heading<K>> | undefined {
  const find = columnFinder(columns, aside);
  const named: (readonly (Named<K> | undefined)[])[] = [];
  const needed = neededOf(columns);
  const least = Math.min(2, needed.length);
  // Of a table that needs none of its columns no row names what it needs.
  const ofNeeded = rows.slice(0, ROWS_SEARCHED).findIndex((cells) => {
    const row = find(cells);
    named.push(row);
    return least > 0 && needed.filter((key) => row.some((one) => one?.key === key)).length >= least;
  });
  const row = ofNeeded >= 0 ? ofNeeded : named.findIndex((one) => keysIn(one).size >= 2);
  return row < 0 ? undefined : readHeading(rows, row, named[row] as readonly (Named<K> | undefined)[], columns, place);
}

/** The columns in their usual order, for a table that begins with figures; refused where it begins with words. */
export function usualHeading<K extends string>(
  rows: Rows,
  columns: Columns<K>,
  place: TablePlace,
  order: readonly NoInfer<K>[],
): Result<Heading<K>> {
  const firstRow = rows.findIndex((row) => !row.every(isAbsent));
  const row = rows[firstRow];
  if (row === undefined) return noRows(columns, place);
  const isWord = (cell: Cell | undefined): boolean => typeof cell === "string" && /^\s*\p{L}/u.test(cell);
  const figures = order.flatMap((key, i) => (columns[key].needed && columns[key].quantity ? [row[i]] : []));
  if (figures.every(isWord) && row.every((cell) => isAbsent(cell) || isWord(cell))) return noHeading(columns, place);
  const at = Object.fromEntries(order.slice(0, row.length).map((key, i) => [key, i])) as ByKey<K, number>;
  const units: Partial<Record<K, Unit>> = {};
  const texts: Partial<Record<K, string>> = {};
  return succeed({ at, units, texts, firstRow });
}

/** How many of the columns the first rows name, in the row that names most: which delimiter, which sheet, which table. */
export function columnsNamed<K extends string>(rows: Rows, columns: Columns<K>): number {
  const find = columnFinder(columns);
  return Math.max(0, greatestOf(rows.slice(0, ROWS_SEARCHED).map((row) => keysIn(find(row)).size)));
}

export function noRows<K extends string>(columns: Columns<K>, { name }: TablePlace): Failure {
  return fail([{ code: "table-no-rows", kind: "error", subject: name, suggestions: [namesOf(columns)] }]);
}

export function noHeading<K extends string>(columns: Columns<K>, { name }: TablePlace): Failure {
  return fail([{ code: "table-heading-missing", kind: "error", subject: name, suggestions: [namesOf(columns)] }]);
}

function keysIn<K extends string>(named: readonly (Named<K> | undefined)[]): ReadonlySet<K> {
  return new Set(named.flatMap((one) => (one === undefined ? [] : [one.key])));
}

function readHeading<K extends string>(
  rows: Rows,
  row: number,
  named: readonly (Named<K> | undefined)[],
  columns: Columns<K>,
  place: TablePlace,
): Result<Heading<K>> {
  const at: Partial<Record<K, number>> = {};
  const units: Partial<Record<K, Unit>> = {};
  const texts: Partial<Record<K, string>> = {};
  const findings: Finding[] = [];
  const unread: string[] = [];
  for (const [column, cell] of (rows[row] as readonly Cell[]).entries()) {
    if (typeof cell !== "string" || isAbsent(cell)) continue;
    const text = cell.trim();
    const one = named[column];
    if (one === undefined) {
      unread.push(text);
      continue;
    }
    const { key, unitText } = one;
    const { name, quantity } = columns[key];
    const subject = headingPlace(place, row, column, name);
    if (texts[key] !== undefined) {
      const given = `${texts[key]}” and “${text}`;
      findings.push({ code: "table-column-repeated", kind: "error", subject, given });
      continue;
    }
    at[key] = column;
    texts[key] = text;
    if (quantity === undefined || unitText === "") continue;
    const unit = unitOfHeading(unitText, quantity, subject);
    if (unit.ok) units[key] = unit.value;
    else findings.push(...unit.findings);
  }
  for (const key of neededOf(columns)) if (at[key] === undefined) findings.push(missing(columns[key], place));
  const below = unitsRow(rows[row + 1] ?? [], at, columns);
  for (const [key, { unit, column, text }] of below ?? []) {
    const stated = units[key];
    units[key] ??= unit;
    if (stated === undefined || stated === unit) continue;
    const subject = cellPlace(place, row + 1, column, columns[key].name);
    const facts = { heading: stated.symbol };
    findings.push({ code: "table-units-disagree", kind: "error", subject, given: text, facts });
  }
  if (findings.length > 0) return fail(findings);
  const heading = { at, units, texts, firstRow: row + (below === undefined ? 1 : 2) };
  return succeed(heading, [
    ...unreadHeadings(unread, at, columns, place),
    ...figuresAbove(rows, row, at, columns, place),
  ]);
}

function missing({ name, also }: TableColumn, place: TablePlace): Finding {
  const suggestions = [name, ...also.slice(0, 3)].map((word) => `“${word}”`);
  return { code: "table-column-missing", kind: "error", subject: place.name, given: name, suggestions };
}

/** What nobody reads is said, for it may be a misspelt column. */
function unreadHeadings<K extends string>(
  unread: readonly string[],
  at: ByKey<K, number>,
  columns: Columns<K>,
  place: TablePlace,
): readonly Finding[] {
  if (unread.length === 0) return [];
  const given = unread.join("”, “");
  const open = Object.entries<TableColumn>(columns).filter(([key]) => at[key as K] === undefined);
  const suggestions = open.map(([, { name }]) => name);
  return [{ code: "table-column-unread", kind: "check", subject: place.name, given, suggestions }];
}

/** Rows above the heading that look like rows of the table. */
function figuresAbove<K extends string>(
  rows: Rows,
  heading: number,
  at: ByKey<K, number>,
  columns: Columns<K>,
  place: TablePlace,
): readonly Finding[] {
  const needed = neededOf(columns);
  const isFilled = (key: K, cell: Cell = null): boolean =>
    columns[key].quantity === undefined ? !isAbsent(cell) : typeof cell === "number";
  const above = rows.slice(0, heading).findIndex((row) => needed.every((key) => isFilled(key, row[at[key] as number])));
  if (above < 0) return [];
  return [{ code: "table-row-above-heading", kind: "check", subject: rowPlace(place, above) }];
}

function unitOfHeading(given: string, quantity: Quantity, subject: string): Result<Unit> {
  const unit = unitNamed(given);
  if (unit !== undefined && unitFits(unit, quantity)) return succeed(unit);
  const meant = meaningsOf(given);
  const problem = (code: PlainCode, suggestion: string): Failure =>
    fail([{ code, kind: "error", subject, given, suggestions: [suggestion] }]);
  if (meant !== undefined) return problem("unit-ambiguous", meant);
  return problem(unit === undefined ? "unit-unknown" : "unit-wrong-kind", unitsThatDo(quantity));
}

/** The row below the heading, where it holds nothing but units that fit their columns. */
function unitsRow<K extends string>(
  cells: readonly Cell[],
  at: ByKey<K, number>,
  columns: Columns<K>,
): Map<K, { readonly unit: Unit; readonly column: number; readonly text: string }> | undefined {
  const found = new Map<K, { unit: Unit; column: number; text: string }>();
  for (const [key, column] of Object.entries(at) as [K, number][]) {
    const cell = cells[column] ?? null;
    const { quantity } = columns[key];
    const text = typeof cell === "string" ? withoutBrackets(cell) : "";
    if (quantity === undefined) {
      // A text beside the units is a note such as "units"; a filled row would have figures.
      if (!isAbsent(cell) && !/^(?:units?|[-–—])$/i.test(text)) return undefined;
      continue;
    }
    if (isAbsent(cell) || text === "-" || text === "–") continue;
    const unit = text === "" ? undefined : unitNamed(text);
    if (unit === undefined || !unitFits(unit, quantity)) return undefined;
    found.set(key, { unit, column, text });
  }
  return found.size === 0 ? undefined : found;
}
