import { boxOf } from "./a1.ts";
import type { PictureSpec, SheetSpec } from "./sheet-spec.ts";

/** In whatever unit both sides are. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

/** As large as the room holds the picture, in its own proportions. */
export function fitted(
  { widthPx, heightPx }: Pick<PictureSpec, "widthPx" | "heightPx">,
  { width, height }: Size,
): Size {
  const scale = Math.min(width / widthPx, height / heightPx);
  return { width: widthPx * scale, height: heightPx * scale };
}

/** Characters of a column, and points of a row, of which a sheet says nothing. */
const USUAL_COLUMN = 8.43;
const USUAL_ROW = 12.75;

/** What a range measures, points, by the columns and rows of its sheet. */
export function sizeOfRange(
  { columns, rowHeights = {} }: Pick<SheetSpec, "columns" | "rowHeights">,
  range: string,
): Size {
  const { top, left, bottom, right } = boxOf(range);
  let width = 0;
  for (let column = left; column <= right; column += 1) width += columnPoints(columns[column] ?? USUAL_COLUMN);
  let height = 0;
  for (let row = top; row <= bottom; row += 1) height += rowHeights[row + 1] ?? USUAL_ROW;
  return { width, height };
}

/** A width in characters of the default font (7 pixels a digit, 5 of padding; ISO/IEC 29500, col) in points. */
export function columnPoints(characters: number): number {
  return Math.round(characters * 7 + 5) * 0.75;
}
