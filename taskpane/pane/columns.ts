import type { PaneContext } from "./context.ts";

/** Pictures are drawn no wider and no narrower than this, px. */
const WIDEST = 480;
const NARROWEST = 260;
/** Borders and padding between the edges of the pane. */
const SURROUND = 26;
const GAP = 20;
/** Two panes of the narrowest kind side by side, the outer padding once. */
const BESIDE = 640;

export interface Widths {
  /** What the pictures are drawn for, px. */
  readonly width: number;
  /** The same in one of two columns, what is stated and what comes of it, where both fit. */
  readonly column: number | undefined;
}

export function widthsIn(pane: number): Widths {
  const drawn = (room: number): number => Math.min(WIDEST, Math.max(NARROWEST, Math.floor(room)));
  const column = pane < BESIDE ? undefined : drawn((pane - GAP - SURROUND) / 2);
  return { width: drawn(pane - SURROUND), column };
}

/** What a view within one of two columns gets: all there is, in the width of the column, which holds no further two. */
export function inColumn(context: PaneContext): PaneContext {
  const { column } = context.state;
  return column === undefined ? context : { ...context, state: { ...context.state, width: column, column: undefined } };
}
