import type { SheetSpec } from "./sheet-spec.ts";

/** Sheets that may refer to one another, added together: all of them or none. */
export interface SheetSet {
  /** Wanted names, in the order of the tabs; the first sheet is shown. */
  readonly wanted: readonly string[];
  /** The sheets under the names that they get, in the order of the wanted ones: formulas and charts carry them. */
  readonly sheets: (names: readonly string[]) => readonly SheetSpec[];
  /** XML texts of RECORD_NAMESPACE that travel with them, unseen, in the workbook. */
  readonly records?: readonly string[];
  /** A user's own, read from a file: taken as they are, where those we make are checked first. */
  readonly isFromFile?: true;
}

/** Sheets that do not refer to one another. */
export function setOf(...sheets: readonly SheetSpec[]): SheetSet {
  return {
    wanted: sheets.map(({ name }) => name),
    sheets: (names) => sheets.map((sheet, i) => ({ ...sheet, name: names[i] ?? sheet.name })),
  };
}
