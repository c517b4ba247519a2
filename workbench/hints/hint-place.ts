/** Edges in the window, px. */
export interface Edges {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export interface HintPlace {
  readonly top: number;
  readonly maxHeight: number;
}

/** Rows under the cell that the reader is likely to fill next, and that stay in sight. House choice. */
export const ROWS_KEPT_CLEAR = 5;
/** Less than this shows no line of it, px. */
const LEAST_HEIGHT = 36;

/**
 * Where a hint of some height stands so that it covers neither the cell nor the rows under it: at the foot of the cells'
 * area, else at its head, else in the larger room of the two as far as it goes. Nowhere where there is no room.
 */
export function hintPlace(cell: Edges, area: Edges, height: number): HintPlace | undefined {
  const clear = cell.bottom + ROWS_KEPT_CLEAR * ROW_HEIGHT;
  const [below, above] = [area.bottom - clear, cell.top - area.top];
  if (below >= height) return { top: area.bottom - height, maxHeight: height };
  if (above >= height) return { top: area.top, maxHeight: height };
  const maxHeight = Math.max(below, above);
  if (maxHeight < LEAST_HEIGHT) return undefined;
  return { top: below >= above ? area.bottom - maxHeight : area.top, maxHeight };
}

/** Of a row of the grid that nobody has changed, px. */
const ROW_HEIGHT = 24;
