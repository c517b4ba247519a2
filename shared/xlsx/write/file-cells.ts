import { type Cell, isCellError } from "../../cells/cell.ts";
import { addressOf, type Box, boxOf, rangeOf } from "../../ports/a1.ts";
import type { CellSpec, SheetSpec } from "../../ports/sheet-spec.ts";
import { ERROR_VALUES } from "../format-facts.ts";
import { callsAddIn, encodeFormula, rangeReckoner } from "../formula-text.ts";

/** A cell as the file will hold it. */
export interface FileCell {
  readonly row: number;
  readonly column: number;
  readonly style: string | undefined;
  /** Left out where a formula's answer is not known. */
  readonly value?: Cell;
  /** In the file's own words. */
  readonly formula?: string;
  /** The range that a formula fills, where it can fill one. */
  readonly fills?: string;
  /** Worked out by the formula of another cell. */
  readonly spilled?: boolean;
}

/** Cells by address, formulas as Excel keeps them for people who have the add-in, spilled answers laid into the cells they fill. The sheet has been checked. */
export function fileCells(spec: SheetSpec): ReadonlyMap<string, FileCell> {
  const cells = new Map<string, FileCell>();
  const merged = (spec.merges ?? []).map(boxOf);
  const wideNames = Object.entries(spec.names ?? {}).flatMap(([name, range]) => (isSingle(boxOf(range)) ? [] : [name]));
  const reckonsWithRanges = rangeReckoner(wideNames);
  for (const cell of spec.cells) {
    const box = boxOf(cell.at);
    const at = addressOf(box.top, box.left);
    const place = { row: box.top, column: box.left, style: cell.style };
    cells.set(
      at,
      cell.f === undefined
        ? { ...place, value: stored(cell.v ?? null) }
        : { ...place, ...formulaCell(cell, cell.f, merged, reckonsWithRanges) },
    );
  }
  for (const cell of spec.cells) if (cell.spill !== undefined) layAnswer(cell, cells);
  return cells;
}

function formulaCell(
  cell: CellSpec,
  f: string,
  merged: readonly Box[],
  reckonsWithRanges: (formula: string) => boolean,
): Pick<FileCell, "value" | "formula" | "fills"> {
  const own = callsAddIn(f);
  const answer = cornerOf(cell.cached);
  const known = answer === undefined ? {} : { value: answer ?? "" };
  const filled = boxOf(cell.spill ?? cell.at);
  const inMerge = merged.some((box) => overlap(box, filled));
  // An array formula may not stand in a merged cell; there Excel reads it one cell at a time.
  const fills = !inMerge && (own || cell.spill !== undefined || reckonsWithRanges(f));
  return { ...known, formula: encodeFormula(f), ...(fills ? { fills: rangeOf(filled) } : {}) };
}

function layAnswer(cell: CellSpec, cells: Map<string, FileCell>): void {
  const box = boxOf(cell.spill ?? cell.at);
  const rows = isRows(cell.cached) ? cell.cached : [];
  for (let row = box.top; row <= box.bottom; row += 1)
    for (let column = box.left; column <= box.right; column += 1) {
      if (row === box.top && column === box.left) continue;
      const at = addressOf(row, column);
      const value = stored(rows[row - box.top]?.[column - box.left] ?? null);
      cells.set(at, { row, column, style: cells.get(at)?.style, value, spilled: true });
    }
}

/** The answer that stands in the formula's own cell; nothing where none is known. */
function cornerOf(cached: CellSpec["cached"]): Cell | undefined {
  const corner = isRows(cached) ? cached[0]?.[0] : cached;
  return corner === undefined ? undefined : stored(corner);
}

function isRows(cached: CellSpec["cached"]): cached is readonly (readonly Cell[])[] {
  return Array.isArray(cached);
}

/** What a file can hold: no NaN or infinity, no error value it does not know. */
export function stored(value: Cell): Cell {
  if (typeof value === "number") return Number.isFinite(value) ? value + 0 : { error: "#NUM!" };
  if (isCellError(value)) return { error: ERROR_VALUES.has(value.error) ? value.error : "#VALUE!" };
  return value;
}

function isSingle({ top, left, bottom, right }: Box): boolean {
  return top === bottom && left === right;
}

function overlap(a: Box, b: Box): boolean {
  return a.top <= b.bottom && b.top <= a.bottom && a.left <= b.right && b.left <= a.right;
}
