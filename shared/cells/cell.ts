/** What a cell can hold, whichever program the cell is in. */
export interface CellError {
  readonly error: string;
  readonly message?: string;
  /** What has to be stated or mended first, where that is all that is wrong. */
  readonly waitsFor?: string;
}

export type Scalar = number | string | boolean | null;
export type Cell = Scalar | CellError;

/** One argument of a call: a single cell, or a range as rows of cells. */
export type Argument = Cell | readonly (readonly Cell[])[];

export function isCellError(value: unknown): value is CellError {
  return typeof value === "object" && value !== null && !Array.isArray(value) && "error" in value;
}

export function isRange(argument: Argument): argument is readonly (readonly Cell[])[] {
  return Array.isArray(argument);
}

/** Left out, blank, or a text of nothing but spaces: all of them mean "not given". */
export function isAbsent(cell: Cell): cell is null | "" {
  return cell === null || cell === undefined || (typeof cell === "string" && cell.trim() === "");
}

/** A blank cell of a range may arrive as 0, which is then as good as nothing. */
export function isBlank(cell: Cell): boolean {
  return cell === 0 || isAbsent(cell);
}
