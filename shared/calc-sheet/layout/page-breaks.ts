import { COLUMNS } from "./columns.ts";

/** Rows of a printed sheet as they lie one under the other, 0-based. */
export interface PrintedRows {
  readonly count: number;
  /** Points. */
  readonly heightOf: (row: number) => number;
  /** Points, of what is repeated at the top of every page but the first. */
  readonly repeated: number;
  /** Rows before which a page ends where enough stands on it. */
  readonly breaks: readonly number[];
  /** Rows that stay on one page with those up to the second, both counted. */
  readonly together: readonly (readonly [first: number, last: number])[];
}

// What fits on a page, in points of row height at the scale that brings all columns to its width. Paper is the user's:
// letter is the shorter, A4 the narrower, which shrinks the print. Margins are 0.7 in at the sides, 0.75 in above and
// below. A column takes 7 px a character and 5 px between, 0.75 pt a px.
const INCH = 72;
const SHEET_WIDTH = COLUMNS.reduce((total, characters) => total + (characters * 7 + 5) * 0.75, 0);
const LETTER = { width: 8.5 * INCH, height: 11 * INCH };
const A4 = { width: (210 / 25.4) * INCH, height: (297 / 25.4) * INCH };

/** Programs differ by a few points in the height of rows and in rounding the scale. */
const SLACK = 0.98;

/** A page filled less than this does not end where a new one is wanted: it would stay nearly empty. */
const ENOUGH = 0.5;

const PAGE_HEIGHT =
  SLACK *
  Math.min(
    ...[LETTER, A4].map(({ width, height }) => (height - 1.5 * INCH) * Math.max(1, SHEET_WIDTH / (width - 1.4 * INCH))),
  );

/**
 * Rows before which a page ends: where a new one is wanted and this one is half full, and wherever a page is full. A
 * full page ends before rows that belong together, so that no heading stands at the foot of a page without what it heads,
 * and no chart is cut.
 */
export function pageBreaks({ count, heightOf, repeated, breaks, together }: PrintedRows): readonly number[] {
  const wanted = new Set(breaks);
  const joined = new Array<boolean>(count).fill(false);
  for (const [first, last] of together) {
    for (let row = first + 1; row <= Math.min(last, count - 1); row += 1) joined[row] = true;
  }
  const found: number[] = [];
  let top = 0;
  let used = 0;
  for (let row = 0; row < count; row += 1) {
    if (wanted.has(row) && used >= ENOUGH * PAGE_HEIGHT) {
      found.push(row);
      top = row;
      used = repeated;
    }
    used += heightOf(row);
    if (used <= PAGE_HEIGHT) continue;
    let end = row;
    while (end > top && joined[end] === true) end -= 1;
    // More than a page belongs together: it is cut where the page is full.
    if (end === top) end = row;
    if (end === top) continue;
    found.push(end);
    top = end;
    used = repeated;
    for (let moved = end; moved <= row; moved += 1) used += heightOf(moved);
  }
  return found;
}
