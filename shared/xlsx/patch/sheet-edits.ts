import type { Cell, Scalar } from "../../cells/cell.ts";

/** What a cell of the opened file is to hold. */
export type CellContent =
  | { readonly kind: "constant"; readonly value: Scalar }
  /** In the file's own words; `fills` is the range it fills, where it can fill one. */
  | { readonly kind: "formula"; readonly formula: string; readonly fills?: string; readonly value: Cell }
  /** The formula of the cell stays, or that of the cell it was filled from; its answer is another. */
  | { readonly kind: "answer"; readonly value: Cell; readonly fills?: string };

export interface CellEdit {
  /** 0-based. */
  readonly row: number;
  readonly column: number;
  /** Left out, the cell holds what it held. */
  readonly content?: CellContent;
  /** Number of its format in the file; given the one it has now. Left out, it keeps that. */
  readonly style?: (now: number) => number;
}

/** What is to change in a sheet of the opened file. Everything else in its part stays byte for byte. */
export interface SheetEdits {
  readonly cells: readonly CellEdit[];
  /** Characters by 0-based column. */
  readonly widths?: ReadonlyMap<number, number>;
  /** Points by 0-based row; nothing for a row that takes the height it needs. */
  readonly heights?: ReadonlyMap<number, number | undefined>;
  /** All merged ranges, where they are others than before. */
  readonly merges?: readonly string[];
  /** Rows that stay in sight, and whether grid lines show, where that is other than before. */
  readonly freezeRows?: number;
  readonly gridlines?: boolean;
}
