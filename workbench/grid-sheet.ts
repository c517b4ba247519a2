import type { ICellData, IRange, IWorksheetData } from "@univerjs/core";
import type { Scalar } from "../shared/cells/cell.ts";
import { absolute, boxOf } from "../shared/ports/a1.ts";
import type { CellSpec, SheetSpec } from "../shared/ports/sheet-spec.ts";
import { changedFormula, type FormulaChanges } from "./grid-formula.ts";
import { DEFAULT_STYLE } from "./grid-style.ts";

/** The grid's kinds of cell content. */
const TEXT = 1;
const NUMBER = 2;
const BOOLEAN = 3;
/** Text that the grid must never read as a number, a formula or TRUE. */
const FORCED_TEXT = 4;

const LEAST_ROWS = 1000;
const LEAST_COLUMNS = 26;
const ROOM_BELOW = 60;

/**
 * A sheet as the grid's own data. Pure, so that a faulty sheet is refused before the workbook is touched.
 *
 * @param changes what its formulas need changed for the grid
 * @param styleId the grid's id of one of the sheet's styles
 */
export function worksheetData(
  spec: SheetSpec,
  changes: FormulaChanges,
  styleId: (style: string) => string,
): Partial<IWorksheetData> {
  const cellData: Record<number, Record<number, ICellData>> = {};
  let lastRow = 0;
  for (const cell of spec.cells) {
    const { top, left } = boxOf(cell.at);
    lastRow = Math.max(lastRow, top);
    const line = cellData[top] ?? {};
    cellData[top] = line;
    line[left] = gridCell(cell, changes, styleId);
  }
  const frozen = spec.freezeRows ?? 0;
  return {
    cellData,
    mergeData: (spec.merges ?? []).map(gridRange),
    rowCount: Math.max(LEAST_ROWS, lastRow + 1 + ROOM_BELOW),
    columnCount: Math.max(LEAST_COLUMNS, spec.columns.length),
    defaultRowHeight: 20,
    defaultStyle: { ...DEFAULT_STYLE },
    showGridlines: spec.gridlines === false ? 0 : 1,
    columnData: Object.fromEntries(spec.columns.map((width, i) => [i, { w: columnPixels(width) }])),
    rowData: Object.fromEntries(
      // ia: 0 keeps the height from growing with its content.
      Object.entries(spec.rowHeights ?? {}).map(([row, points]) => [Number(row) - 1, { h: rowPixels(points), ia: 0 }]),
    ),
    freeze: { xSplit: 0, ySplit: frozen, startRow: frozen === 0 ? -1 : frozen, startColumn: -1 },
  };
}

/** What the formulas of each sheet need changed for the grid, where they stand among these. */
export function formulaChanges(specs: readonly SheetSpec[]): readonly FormulaChanges[] {
  const own = specs.map(
    ({ names = {} }) =>
      new Map(Object.entries(names).map(([name, range]) => [name.toLowerCase(), absolute(range)] as const)),
  );
  const namesOn = new Map(specs.map(({ name }, i) => [name.toLowerCase(), own[i] ?? new Map<string, string>()]));
  return specs.map((spec, i) => ({ names: own[i] ?? new Map<string, string>(), namesOn, spills: spillsOf(spec) }));
}

function spillsOf({ cells }: SheetSpec): ReadonlyMap<string, string> {
  return new Map(
    cells.flatMap(({ at, spill }) => (spill === undefined ? [] : [[at.toUpperCase(), absolute(spill)] as const])),
  );
}

function gridCell(cell: CellSpec, changes: FormulaChanges, styleId: (style: string) => string): ICellData {
  const style = cell.style === undefined ? {} : { s: styleId(cell.style) };
  if (cell.f !== undefined) return { f: `=${changedFormula(cell.f, changes)}`, ...style };
  return { ...constantData(cell.v ?? null), ...style };
}

/** A constant as the grid holds it. */
export function constantData(value: Scalar): Pick<ICellData, "v" | "t"> {
  if (value === null) return {};
  if (typeof value === "number") return { v: value, t: NUMBER };
  if (typeof value === "boolean") return { v: value ? 1 : 0, t: BOOLEAN };
  return { v: value, t: wouldBeReread(value) ? FORCED_TEXT : TEXT };
}

/** Whether the grid would take a text for something else once rows move or the cell is edited. */
function wouldBeReread(text: string): boolean {
  return (
    /^[=+\-@']/.test(text) ||
    (text.trim() !== "" && Number.isFinite(Number(text))) ||
    /^(true|false)$/i.test(text.trim())
  );
}

/** The errors a cell can hold; the grid keeps them as texts. */
const ERROR = /^#(N\/A|VALUE!|REF!|DIV\/0!|NUM!|NAME\?|NULL!|SPILL!|CALC!|CYCLE!|ERROR!|CONNECT!|GETTING_DATA)$/;

/** What a cell of the grid holds, an error as its code alone. */
export function cellContent(data: ICellData | null | undefined): Scalar | { readonly error: string } {
  if (data === null || data === undefined) return null;
  const { v, t, p } = data;
  // Text with line breaks or partial formats is kept as a document.
  if (p !== null && p !== undefined) return (p.body?.dataStream ?? "").replace(/\r?\n$/, "").replaceAll("\r", "\n");
  if (v === null || v === undefined) return null;
  if (t === BOOLEAN) return v === 1 || v === true || String(v).toUpperCase() === "TRUE";
  if (t === FORCED_TEXT) return String(v);
  if (typeof v === "string" && ERROR.test(v)) return { error: v };
  if (t === NUMBER && typeof v === "string" && v.trim() !== "" && Number.isFinite(Number(v))) return Number(v);
  return v;
}

export function gridRange(reference: string): IRange {
  const { top, left, bottom, right } = boxOf(reference);
  return { startRow: top, startColumn: left, endRow: bottom, endColumn: right };
}

/** Characters of the default font to pixels, and back. */
export function columnPixels(characters: number): number {
  return Math.round(characters * 7 + 5);
}

export function columnCharacters(pixels: number): number {
  return Math.round(((pixels - 5) / 7) * 100) / 100;
}

export function rowPixels(points: number): number {
  return Math.round((points * 4) / 3);
}

export function rowPoints(pixels: number): number {
  return Math.round(pixels * 0.75 * 100) / 100;
}
