import { addressOf } from "../ports/a1.ts";

/** Where a table stands, so that a message can name the cell. Rows and columns are 0-based. */
export interface TablePlace {
  /** What the table is called: the argument, or the sheet or file it comes from. */
  readonly name: string;
  /** Its top left cell, where that is known. */
  readonly corner?: { readonly row: number; readonly column: number };
}

/** "Pumps.csv D7 (flow)", or "curve row 7: flow" where nobody knows the address. */
export function cellPlace(place: TablePlace, row: number, column: number, columnName: string): string {
  const { name, corner } = place;
  if (corner === undefined) return `${rowPlace(place, row)}: ${columnName}`;
  return `${name} ${addressOf(corner.row + row, corner.column + column)} (${columnName})`;
}

/** "Pumps.csv D4 (flow)", or "curve column “flow”": a column by its heading. */
export function headingPlace(place: TablePlace, row: number, column: number, columnName: string): string {
  const isKnown = place.corner !== undefined;
  return isKnown ? cellPlace(place, row, column, columnName) : `${place.name} column “${columnName}”`;
}

/** "curve row 7". */
export function rowPlace(place: TablePlace, row: number): string {
  return `${place.name} row ${rowNumber(place, row)}`;
}

/** A row as the sheet counts it, or the table where the sheet is not known. */
export function rowNumber({ corner }: TablePlace, row: number): number {
  return (corner?.row ?? 0) + row + 1;
}
