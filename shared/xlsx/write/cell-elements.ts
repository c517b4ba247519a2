import { type Cell, isCellError } from "../../cells/cell.ts";
import { addressOf } from "../../ports/a1.ts";
import type { SheetSpec } from "../../ports/sheet-spec.ts";
import { attributes, cellText, xmlText } from "../xml-text.ts";
import type { FileCell } from "./file-cells.ts";
import type { SharedStrings } from "./shared-strings.ts";
import type { StyleTable } from "./styles.ts";

const LONGEST_FORMULA = 8192;

/** Rows of the sheet with their cells, in order. */
export function sheetData(
  { name, styles, rowHeights = {} }: SheetSpec,
  cells: ReadonlyMap<string, FileCell>,
  styleTable: StyleTable,
  strings: SharedStrings,
): string {
  const rows = new Map<number, FileCell[]>(Object.keys(rowHeights).map((row) => [Number(row) - 1, []]));
  for (const cell of cells.values()) {
    const row = rows.get(cell.row);
    if (row === undefined) rows.set(cell.row, [cell]);
    else row.push(cell);
  }
  const styleOf = (cell: FileCell): number => {
    const style = cell.style === undefined ? undefined : styles[cell.style];
    if (cell.style !== undefined && style === undefined) throw new Error(`${name}: there is no style ${cell.style}`);
    return styleTable.ofCell(style, cell.formula === undefined && cell.spilled !== true && readsAsElse(cell.value));
  };
  const lines = [...rows.entries()]
    .sort(([a], [b]) => a - b)
    .map(([row, inRow]) => {
      const height = rowHeights[row + 1];
      const facts = attributes({ r: row + 1, ht: height, customHeight: height !== undefined });
      const elements = inRow
        .sort((a, b) => a.column - b.column)
        .map((cell) => cellElement(cell, styleOf(cell), strings));
      return `<row${facts}>${elements.join("")}</row>`;
    });
  return `<sheetData>${lines.join("")}</sheetData>`;
}

function cellElement(cell: FileCell, style: number, strings: SharedStrings): string {
  const { formula, fills, value } = cell;
  const at = addressOf(cell.row, cell.column);
  const shared = formula === undefined && cell.spilled !== true && typeof value === "string";
  const content =
    formula === undefined && (value === "" || value === null || value === undefined)
      ? { type: undefined, text: undefined }
      : shared
        ? { type: "s", text: String(strings.numberOf(value)) }
        : contentOf(value);
  if (formula !== undefined && formula.length > LONGEST_FORMULA)
    throw new Error(`${at}: a formula has at most ${LONGEST_FORMULA} characters, this one has ${formula.length}`);
  const facts = attributes({ r: at, s: style || undefined, t: content.type, cm: fills === undefined ? undefined : 1 });
  const f =
    formula === undefined
      ? ""
      : `<f${attributes(fills === undefined ? {} : { t: "array", ref: fills })}>${xmlText(formula)}</f>`;
  const v = content.text === undefined ? "" : `<v>${content.text}</v>`;
  return f === "" && v === "" ? `<c${facts}/>` : `<c${facts}>${f}${v}</c>`;
}

function contentOf(value: Cell | undefined): { readonly type: string | undefined; readonly text: string | undefined } {
  if (value === undefined || value === null) return { type: undefined, text: undefined };
  if (isCellError(value)) return { type: "e", text: xmlText(value.error) };
  switch (typeof value) {
    case "boolean":
      return { type: "b", text: value ? "1" : "0" };
    case "number":
      return { type: undefined, text: String(value) };
    default:
      return { type: "str", text: cellText(value) };
  }
}

/** A text that would become a formula, a number or a date if a user edited the cell and pressed Enter. */
function readsAsElse(value: Cell | undefined): boolean {
  return typeof value === "string" && /^[=+\-@']|^[\d\s.,/:%-]+$/.test(value);
}
