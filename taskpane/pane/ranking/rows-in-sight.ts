/** Rows of one height under one another, one of which may be open over what is said below it. Heights in px. */
export interface RowLayout {
  readonly count: number;
  readonly rowHeight: number;
  readonly open?: { readonly row: number; readonly height: number };
}

/** Rows beyond either edge that are drawn too, so that a short scroll meets them. */
const BEYOND = 4;

/** Where a row begins, over the first. */
export function topOf({ rowHeight, open }: RowLayout, row: number): number {
  return row * rowHeight + (open !== undefined && row > open.row ? open.height : 0);
}

/** All rows together. */
export function heightOf(layout: RowLayout): number {
  return topOf(layout, layout.count);
}

/** The rows of which something lies within a window that is scrolled so far: the first, and the one after the last. */
export function rowsInSight(layout: RowLayout, scrolled: number, height: number): readonly [number, number] {
  const from = rowAt(layout, scrolled) - BEYOND;
  const to = rowAt(layout, scrolled + height) + 1 + BEYOND;
  return [Math.max(0, Math.min(from, layout.count)), Math.max(0, Math.min(to, layout.count))];
}

/** The row at a height; what is said below an open one belongs to it. */
function rowAt({ rowHeight, open }: RowLayout, at: number): number {
  const below = open === undefined ? Number.POSITIVE_INFINITY : (open.row + 1) * rowHeight;
  if (open === undefined || at < below) return Math.floor(at / rowHeight);
  return at < below + open.height ? open.row : Math.floor((at - open.height) / rowHeight);
}

/** How far to scroll for a stretch to lie in the window; as little as it takes, and its top before its end. */
export function scrolledTo(top: number, bottom: number, scrolled: number, height: number): number {
  if (top < scrolled || bottom - top > height) return top;
  return Math.max(scrolled, bottom - height);
}
