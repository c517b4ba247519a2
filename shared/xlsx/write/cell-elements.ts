import { type Cell, isCellError } from "../../cells/cell.ts";
import { addressOf } from "../../ports/a1.ts";
import type { SheetSpec } from "../../ports/sheet-spec.ts";
import { attributes, cellText, xmlText } from "../xml-text.ts";
import type { FileCell } from "./file-cells.ts";
import type { StyleTable } from "./styles.ts";

/** How a cell holds a text that is not a formula's answer: by number in a list of texts, or in itself. */
export type CellTexts = (text: string) => { readonly type: "s" | "inlineStr"; readonly content: string };

export interface CellTables {
  readonly styles: StyleTable;
  readonly texts: CellTexts;
  /** What a cell carries whose formula may fill further cells: its number in the file's metadata. */
  readonly spillMark: number;
}

/** Rows of the sheet with their cells, in order. */
export function sheetData(
  { styles, rowHeights = {} }: SheetSpec,
  cells: ReadonlyMap<string, FileCell>,
  tables: CellTables,
): string {
  const rows = new Map<number, FileCell[]>(Object.keys(rowHeights).map((row) => [Number(row) - 1, []]));
  for (const cell of cells.values()) {
    const row = rows.get(cell.row);
    if (row === undefined) rows.set(cell.row, [cell]);
    else row.push(cell);
  }
  const numbers = new Map<string, number>();
  const styleOf = (cell: FileCell): number => {
    const asText = cell.formula === undefined && cell.spilled !== true && readsAsElse(cell.value);
    const key = `${asText} ${cell.style ?? ""}`;
    const known = numbers.get(key) ?? numberOf(cell, asText);
    numbers.set(key, known);
    return known;
  };
  const numberOf = (cell: FileCell, asText: boolean): number => {
    return tables.styles.ofCell(cell.style === undefined ? undefined : styles[cell.style], asText);
  };
  const lines = [...rows.entries()]
    .sort(([a], [b]) => a - b)
    .map(([row, inRow]) => {
      const height = rowHeights[row + 1];
      const facts = attributes({ r: row + 1, ht: height, customHeight: height !== undefined });
      const elements = inRow
        .sort((a, b) => a.column - b.column)
        .map((cell) => cellElement(cell, styleOf(cell), tables));
      return `<row${facts}>${elements.join("")}</row>`;
    });
  return `<sheetData>${lines.join("")}</sheetData>`;
}

function cellElement(cell: FileCell, style: number, { texts, spillMark }: CellTables): string {
  const { formula, fills } = cell;
  const at = addressOf(cell.row, cell.column);
  const { type, content } = contentOf(cell, texts);
  const facts = attributes({ r: at, s: style || undefined, t: type, cm: fills === undefined ? undefined : spillMark });
  const f =
    formula === undefined
      ? ""
      : `<f${attributes(fills === undefined ? {} : { t: "array", ref: fills })}>${xmlText(formula)}</f>`;
  return f === "" && content === "" ? `<c${facts}/>` : `<c${facts}>${f}${content}</c>`;
}

interface CellContent {
  readonly type: string | undefined;
  readonly content: string;
}

function contentOf({ formula, spilled, value }: FileCell, texts: CellTexts): CellContent {
  if (formula === undefined && value === "") return answerContent(null);
  const isText = formula === undefined && spilled !== true && typeof value === "string";
  return isText ? texts(value) : answerContent(value);
}

/** What a formula answered, as its cell holds it. */
export function answerContent(value: Cell | undefined): CellContent {
  if (value === undefined || value === null) return { type: undefined, content: "" };
  if (isCellError(value)) return { type: "e", content: `<v>${xmlText(value.error)}</v>` };
  switch (typeof value) {
    case "boolean":
      return { type: "b", content: `<v>${value ? "1" : "0"}</v>` };
    case "number":
      return { type: undefined, content: `<v>${value}</v>` };
    default:
      return { type: "str", content: `<v>${cellText(value)}</v>` };
  }
}

/** A text that would become a formula, a number or a date if a user edited the cell and pressed Enter. */
function readsAsElse(value: Cell | undefined): boolean {
  return typeof value === "string" && /^[=+\-@']|^[\d\s.,/:%-]+$/.test(value);
}
