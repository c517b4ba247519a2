import { type Box, boxOf, rangeOf } from "../../shared/ports/a1.ts";
import { addressesOf, rectangles } from "./joined-areas.ts";

/** Rows of one height, as addresses of cells in them. */
export interface RowsOfHeight {
  readonly height: number;
  readonly addresses: readonly string[];
}

/** Rows by their height, those of one height together. */
export function rowsByHeight(heights: Readonly<Record<number, number>>): readonly RowsOfHeight[] {
  const rows = new Map<number, (readonly [row: number, column: number])[]>();
  for (const [row, height] of Object.entries(heights)) {
    const own = rows.get(height) ?? [];
    own.push([Number(row) - 1, 0]);
    rows.set(height, own);
  }
  return [...rows].map(([height, members]) => ({ height, addresses: addressesOf(rectangles(members, false, true)) }));
}

/** A range to be merged: whole, or each of its rows by itself. */
export interface Merge {
  readonly ref: string;
  readonly byRow: boolean;
}

/** Rows merged over the same columns one below another are merged at once. */
export function joinedMerges(merges: readonly string[]): readonly Merge[] {
  const boxes = merges.map(boxOf).sort((a, b) => a.left - b.left || a.right - b.right || a.top - b.top);
  const joined: { box: Box; byRow: boolean }[] = [];
  for (const box of boxes) {
    const last = joined.at(-1);
    const isNext =
      last !== undefined &&
      box.top === box.bottom &&
      (last.byRow || last.box.top === last.box.bottom) &&
      last.box.bottom === box.top - 1 &&
      last.box.left === box.left &&
      last.box.right === box.right;
    if (isNext) joined[joined.length - 1] = { box: { ...last.box, bottom: box.bottom }, byRow: true };
    else joined.push({ box, byRow: false });
  }
  return joined.map(({ box, byRow }) => ({ ref: rangeOf(box), byRow }));
}
