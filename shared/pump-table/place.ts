import { addressOf } from "../ports/a1.ts";

/** Where a table stands, so that a message can name the cell. Rows and columns are 0-based. */
export interface TablePlace {
  /** What the table is called: the argument, or the sheet or file it comes from. */
  readonly name: string;
  /** Its top left cell, where that is known. */
  readonly corner?: { readonly row: number; readonly column: number };
}

/** "Pumps.csv D7 (flow)", or "pump table row 7, column 4 (flow)" where nobody knows the address. */
export function cellPlace({ name, corner }: TablePlace, row: number, column: number, columnName?: string): string {
  const at =
    corner === undefined ? `row ${row + 1}, column ${column + 1}` : addressOf(corner.row + row, corner.column + column);
  return columnName === undefined ? `${name} ${at}` : `${name} ${at} (${columnName})`;
}

/** "row 7" as the sheet counts it, or the table where the sheet is not known. */
export function rowNumber({ corner }: TablePlace, row: number): number {
  return (corner?.row ?? 0) + row + 1;
}
