// Columns of the printed page: label or pipe; value or length; unit or fittings; then five for worked figures, merged
// for remarks.
export const COLUMNS = [31, 12, 30, 10, 9.5, 11, 10, 10] as const;
export const LABEL = 0;
export const VALUE = 1;
export const UNIT = 2;
export const REMARK = 3;
export const LAST = COLUMNS.length - 1;

/** Of a column of the workings. */
export const WORKING_WIDTH = 12;

export const CHART_ROWS = 19;
/** Points. */
export const LINE_HEIGHT = 13;
export const ROW_HEIGHT = 15;

// Characters that fit on a line of each merged stretch: proportional 9-point text runs tighter than the column unit.
const TIGHTER = 1.3;
export const WIDTHS = {
  text: widthFrom(VALUE, LAST) * TIGHTER,
  option: widthFrom(UNIT, LAST) * TIGHTER,
  remark: widthFrom(REMARK, LAST) * TIGHTER,
  statement: widthFrom(LABEL, LAST) * TIGHTER,
} as const;

function widthFrom(first: number, last: number): number {
  return COLUMNS.slice(first, last + 1).reduce((total, width) => total + width, 0);
}

/** Lines a text takes at so many characters a line. */
export function linesOf(text: string, width: number): number {
  return text.split("\n").reduce((lines, part) => lines + Math.max(1, Math.ceil(part.length / width)), 0);
}
