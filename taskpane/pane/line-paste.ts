import type { LineKey, SegmentText } from "../../shared/duty/duty-text.ts";

export type LineColumn = keyof SegmentText;

/** The boxes of a row from left to right, as they are pasted. */
export const LINE_COLUMNS: readonly LineColumn[] = ["pipe", "length", "fittings", "share", "level"];

const HEADING = /^(pipe|length|fittings?|share|level)\b/i;

/** Where cells are pasted: they fill to the right and downwards from there. */
export interface PasteAt {
  readonly line: LineKey;
  readonly row: number;
  readonly column: LineColumn;
}

/**
 * Cells copied from a spreadsheet as rows of boxes: tabs part the columns, line breaks the rows, and a first row of headings is left
 * out. Nothing for a text of one cell, which goes into its box as any other, for a list of lengths, which is asked about
 * there, or for more columns than there are boxes.
 */
export function pastedCells(text: string, column: LineColumn): readonly (readonly string[])[] | undefined {
  const lines = text.replace(/\r\n?/g, "\n").replace(/\n+$/, "").split("\n");
  const rows = lines.map((line) => line.split("\t").map((cell) => cell.trim()));
  if (rows.length === 1 && rows[0]?.length === 1) return undefined;
  if (column === "length" && rows.every((cells) => cells.length === 1)) return undefined;
  const room = LINE_COLUMNS.length - LINE_COLUMNS.indexOf(column);
  if (rows.some((cells) => cells.length > room)) return undefined;
  const [first, ...others] = rows;
  return first?.every((cell) => cell === "" || HEADING.test(cell)) === true ? others : rows;
}

/** The rows of a line with the cells in them; rows that are wanting are added, other boxes stay as they are. */
export function withPasted(
  rows: readonly SegmentText[],
  { row, column }: PasteAt,
  cells: readonly (readonly string[])[],
  blank: SegmentText,
): readonly SegmentText[] {
  const from = LINE_COLUMNS.indexOf(column);
  const into = (at: number, texts: readonly string[]): SegmentText => ({
    ...(rows[at] ?? blank),
    ...Object.fromEntries(texts.map((text, i) => [LINE_COLUMNS[from + i] as LineColumn, text])),
  });
  return [...rows.slice(0, row), ...cells.map((texts, i) => into(row + i, texts)), ...rows.slice(row + cells.length)];
}
