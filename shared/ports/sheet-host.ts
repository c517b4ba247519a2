import type { Cell, Scalar } from "../cells/cell.ts";
import type { RecordedSheets } from "./sheet-record.ts";
import type { SheetSet } from "./sheet-set.ts";

/** The cell that the reader has selected, for what is put there because the reader asks for it. */
export interface Selection {
  /** "Sheet1!C7", as `read` takes it. */
  readonly cell: () => Promise<string>;
  /**
   * Enters a formula into one cell, one step to undo where the host keeps such steps. A cell that holds anything, or that
   * another cell's answer fills, is left as it is unless it may be replaced. Answers whether the formula went in.
   */
  readonly enter: (reference: string, formula: string, mayReplace: boolean) => Promise<boolean>;
}

/** The few calls we need of whatever holds the cells: Excel or the workbench grid. */
export interface SheetHost {
  readonly kind: "excel" | "workbench";
  /**
   * Adds the sheets of a set, whole, under their own names or the next free ones, one number for all of them, and
   * answers with the names used, in their order, when the host has calculated. The first of them is shown. An existing
   * sheet is never touched; if a step fails, no sheet of the set stays.
   */
  readonly addSheets: (set: SheetSet) => Promise<readonly string[]>;
  readonly sheetNames: () => Promise<readonly string[]>;
  /** Reads ranges written "Sheet!A1:B2" (quoted sheet name where needed) or "Sheet!name" for a sheet-scoped name. */
  readonly read: (refs: readonly string[]) => Promise<readonly (readonly (readonly Cell[])[])[]>;
  /** Writes single input cells, by the same references. Text goes in as text. */
  readonly write: (values: Readonly<Record<string, Scalar>>) => Promise<void>;
  /** Calls back after each recalculation or edit; the answer unsubscribes. Hosts that never calculate never call. */
  readonly onCalculated: (callback: () => void) => () => void;
  /** Whether pictures can stand on its sheets; where they cannot, a sheet is added without them. */
  readonly holdsPictures: () => boolean;
  /** Whether it keeps the records of sheets; where it keeps none, their duty cannot be brought back from them. */
  readonly holdsRecords: () => boolean;
  /** What the workbook holds of duties; nothing where the host can keep no records. */
  readonly recorded: () => Promise<RecordedSheets>;
  /** Whether the reader has set it to calculate only when asked; left out by a host that cannot be set so. */
  readonly calculatesByHand?: () => Promise<boolean>;
  /** Left out by a host without a reader. */
  readonly selection?: Selection;
}
