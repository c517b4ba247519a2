import { FIRST_FIGURE, LAST_FIGURE, RANKING_COLUMNS } from "./columns.ts";

/** A cell of the grid: row 0 is the heading. */
export interface Place {
  readonly row: number;
  readonly column: number;
}

export type Move =
  | "up"
  | "down"
  | "left"
  | "right"
  | "row-start"
  | "row-end"
  | "page-up"
  | "page-down"
  | "first"
  | "last";

export interface GridSize {
  /** Without the heading. */
  readonly rows: number;
  /** Rows of a page. */
  readonly page: number;
  /** Whether a row has one cell in place of its figures. */
  readonly isLeftOut: (row: number) => boolean;
}

/** The cell a key goes to; the edges hold it. */
export function moved({ row, column }: Place, move: Move, size: GridSize): Place {
  const last = RANKING_COLUMNS.length - 1;
  switch (move) {
    case "up":
      return placeIn(row - 1, column, size);
    case "down":
      return placeIn(row + 1, column, size);
    case "page-up":
      return placeIn(Math.max(1, row - size.page), column, size);
    case "page-down":
      return placeIn(row + size.page, column, size);
    case "left":
      return placeIn(row, column - 1, size);
    case "right":
      return placeIn(row, size.isLeftOut(row) && column === FIRST_FIGURE ? LAST_FIGURE + 1 : column + 1, size);
    case "row-start":
      return placeIn(row, 0, size);
    case "row-end":
      return placeIn(row, last, size);
    case "first":
      return placeIn(Math.min(1, size.rows), column, size);
    case "last":
      return placeIn(size.rows, column, size);
  }
}

function placeIn(row: number, column: number, { rows, isLeftOut }: GridSize): Place {
  const at = Math.max(0, Math.min(row, rows));
  const within = Math.max(0, Math.min(column, RANKING_COLUMNS.length - 1));
  return { row: at, column: isLeftOut(at) && within > FIRST_FIGURE && within <= LAST_FIGURE ? FIRST_FIGURE : within };
}
