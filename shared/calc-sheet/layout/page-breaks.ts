import { leastOf } from "../../../src/numeric/extremes.ts";
import { printable } from "../../ports/paper.ts";
import type { Paper } from "../../ports/sheet-spec.ts";
import { sheetPoints } from "./columns.ts";

/** Rows of a printed sheet as they lie one under the other, 0-based. */
export interface PrintedRows {
  readonly count: number;
  /** Points. */
  readonly heightOf: (row: number) => number;
  /** Points, that a page holds. */
  readonly pageHeight: number;
  /** Points, of what is repeated at the top of a page that begins with this row. */
  readonly repeatedAt: (row: number) => number;
  /** Rows before which a page ends where enough stands on it. */
  readonly breaks: readonly number[];
  /** Rows that stay on one page with those up to the second, both counted. */
  readonly together: readonly (readonly [first: number, last: number])[];
}

/** Programs differ by a few points in the height of rows and in rounding the scale. */
const SLACK = 0.99;
/** And in the width of columns: one that does not fit would have pages of its own. */
const WIDTH_SLACK = 0.995;

/** A page filled less than this does not end where a new one is wanted: it would stay nearly empty. House choice. */
const ENOUGH = 0.35;

const PAPERS: readonly Paper[] = ["A4", "Letter"];

/** Points that a page of the paper is wide inside its margins; of the narrowest where none is named. */
export function printedWidth(paper?: Paper): number {
  const papers = paper === undefined ? PAPERS : [paper];
  return leastOf(papers.map((one) => printable(one).width));
}

/** Percent: type of 10 points comes out at 8, the least that is read with ease on paper. House choice. */
const USUAL_SCALE = 80;

/** Percent at which all columns stand side by side on the paper, or on either where none is named; never above the usual. */
export function scaleFor(columns: readonly number[], paper?: Paper): number {
  return Math.min(USUAL_SCALE, Math.floor((100 * WIDTH_SLACK * printedWidth(paper)) / sheetPoints(columns)));
}

/** Points of row height that a page of the paper holds at the scale of these columns. */
export function pageHeight(columns: readonly number[], paper?: Paper): number {
  const papers = paper === undefined ? PAPERS : [paper];
  const height = leastOf(papers.map((one) => printable(one).height));
  return (SLACK * height * 100) / scaleFor(columns, paper);
}

/**
 * Rows before which a page ends: where one is wanted and this one is not nearly empty, and wherever a page is full. A full
 * page ends before rows that belong together, so that no heading stands at the foot of a page without what it heads, and
 * no short table and no chart is cut.
 */
export function pageBreaks(rows: PrintedRows): readonly number[] {
  const { count, heightOf, pageHeight: full, repeatedAt, breaks, together } = rows;
  const wanted = new Set(breaks);
  const joined = new Array<boolean>(count).fill(false);
  for (const [first, last] of together) {
    for (let row = first + 1; row <= Math.min(last, count - 1); row += 1) joined[row] = true;
  }
  const found: number[] = [];
  let top = 0;
  let used = 0;
  for (let row = 0; row < count; row += 1) {
    if (wanted.has(row) && used >= ENOUGH * full) {
      found.push(row);
      top = row;
      used = repeatedAt(row);
    }
    used += heightOf(row);
    if (used <= full) continue;
    let end = row;
    while (end > top && joined[end] === true) end -= 1;
    // More than a page belongs together: it is cut where the page is full.
    if (end === top) end = row;
    if (end === top) continue;
    found.push(end);
    top = end;
    used = repeatedAt(end);
    for (let moved = end; moved <= row; moved += 1) used += heightOf(moved);
  }
  return found;
}
