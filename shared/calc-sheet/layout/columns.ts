import { columnPoints, WIDE_DIGIT } from "../../ports/column-room.ts";

/**
 * Columns of the printed page, in characters: number of the line; quantity, pipe or label; value or length; unit or
 * fittings; five for worked figures, merged for how a figure comes about; references.
 */
export const COLUMNS = [5, 27, 10, 9.5, 10.95, 10.95, 10.95, 10.95, 10.95, 7] as const;
export const NUMBER = 0;
export const LABEL = 1;
export const VALUE = 2;
export const UNIT = 3;
export const REMARK = 4;
export const REFERENCE = COLUMNS.length - 1;
/** Of worked figures. */
export const LAST = REFERENCE - 1;

/** Columns of a stretch of the page, both counted. */
export type Stretch = readonly [first: number, last: number];

/** All columns of the page. */
export const WHOLE: Stretch = [NUMBER, REFERENCE];

/** Of a column of the workings. */
export const WORKING_WIDTH = 12;

export const CHART_ROWS = 16;
/** Points of each of them. */
export const CHART_ROW_HEIGHT = 11.25;
/** Of a row without long text, points. */
export const ROW_HEIGHT = 12;
/** Points left free under the rule of a head that a text stands below. */
export const UNDER_RULE = 2;

/** Points of all columns side by side, where they are widest. */
export function sheetPoints(columns: readonly number[]): number {
  return columnPoints(columns, WIDE_DIGIT);
}

/** Divides a stretch of the page by shares of its width, as near as its columns allow; each part has one at least. */
export function divided(shares: readonly number[], [first, last]: Stretch = WHOLE): readonly Stretch[] {
  const whole = shares.reduce((total, share) => total + share, 0);
  const width = widthFrom(first, last);
  let from: number = first;
  let share = 0;
  return shares.map((own, i): Stretch => {
    share += own;
    const mostLast = last - (shares.length - 1 - i);
    const off = (to: number): number => Math.abs(widthFrom(first, to) / width - share / whole);
    let to = from;
    while (to < mostLast && off(to + 1) < off(to)) to += 1;
    if (i === shares.length - 1) to = last;
    const part: Stretch = [from, to];
    from = to + 1;
    return part;
  });
}

function widthFrom(first: number, last: number): number {
  return sheetPoints(COLUMNS.slice(first, last + 1));
}
