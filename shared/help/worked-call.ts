import { printedUnit, type Quantity, type UnitSetName } from "../../src/basis/quantities.ts";
import type { Finding } from "../../src/basis/result.ts";
import { call } from "../catalogue/call.ts";
import { CATALOGUE } from "../catalogue/catalogue.ts";
import type { Entry } from "../catalogue/entry.ts";
import { type Argument, type Cell, isCellError, isRange } from "../cells/cell.ts";
import { figures } from "../text/figure.ts";

/** A call made while the pages are written: what a page shows as an answer, a function gave. */
export interface WorkedCall {
  readonly value: Cell | readonly (readonly Cell[])[];
  readonly findings: readonly Finding[];
  readonly unitSet: UnitSetName;
  /** "16.03 ft"; of a spilled answer nothing. */
  readonly text: string;
}

/** Works a call out. One that is refused has no place on a page, so the page is not made. */
export function workedCall(entry: Entry, args: readonly Argument[]): WorkedCall {
  const outcome = call(entry, args);
  if (!outcome.ok) throw new Error(`${entry.id}: ${outcome.error.message ?? outcome.error.error}`);
  const { value, findings, unitSet } = outcome;
  const { answer } = entry;
  const quantity = answer.kind === "quantity" ? answer.quantity : undefined;
  const text = Array.isArray(value) ? "" : withUnit(value as Cell, quantity, unitSet);
  return { value, findings, unitSet, text };
}

/** The answer of a function that gives one value, as a page's sentence says it. */
export function answerOf(id: string, args: readonly Argument[]): string {
  return workedCall(entryOf(id), args).text;
}

/** A cell of a spilled answer, by its row under the headings and the key of its column. */
export function cellOf(id: string, args: readonly Argument[], row: number, key: string): string {
  const entry = entryOf(id);
  const { value, unitSet } = workedCall(entry, args);
  const { answer } = entry;
  if (!isRange(value) || !("columns" in answer)) throw new Error(`${id} answers one value`);
  const column = answer.columns.findIndex((one) => one.key === key);
  if (column < 0) throw new Error(`${id} has no column ${key}`);
  return withUnit(value[row + 1]?.[column] ?? null, answer.columns[column]?.quantity, unitSet);
}

export function entryOf(id: string): Entry {
  const entry = CATALOGUE.find((one) => one.id === id);
  if (entry === undefined) throw new Error(`no function ${id}`);
  return entry;
}

function withUnit(cell: Cell, quantity: Quantity | undefined, unitSet: UnitSetName): string {
  const shown = shownCell(cell);
  const unit = quantity === undefined || typeof cell !== "number" ? "" : printedUnit(quantity, unitSet);
  return unit === "" ? shown : `${shown} ${unit}`;
}

/** A cell of an answer as a reader sees it: four significant figures, thousands set apart. */
export function shownCell(cell: Cell): string {
  if (cell === null) return "";
  if (typeof cell === "number") return figures(cell);
  return isCellError(cell) ? cell.error : String(cell);
}

/** The plain number that a function answers, in the unit of the call. */
export function numberOf(id: string, args: readonly Argument[]): number {
  const { value } = workedCall(entryOf(id), args);
  if (typeof value !== "number") throw new Error(`${id} answers no number`);
  return value;
}

/** Two columns of a spilled answer against one another. */
export function pointsOf(
  id: string,
  args: readonly Argument[],
  x: string,
  y: string,
): readonly (readonly [number, number])[] {
  const { answer } = entryOf(id);
  const { value } = workedCall(entryOf(id), args);
  if (!isRange(value) || !("columns" in answer)) throw new Error(`${id} answers one value`);
  const [across, up] = [x, y].map((key) => answer.columns.findIndex((one) => one.key === key)) as [number, number];
  return value.slice(1).flatMap((row) => {
    const [a, b] = [row[across], row[up]];
    return typeof a === "number" && typeof b === "number" ? [[a, b] as const] : [];
  });
}
