import type { Cell } from "../cells/cell.ts";

/** The namespace of the XML in which a duty travels unseen in the workbook that holds its sheets. */
export const RECORD_NAMESPACE = "urn:dutybook:duty:1";

/** The name, on each sheet of a duty that is opened again, of the cell that says which record the sheet belongs to. */
export const RECORD_NAME = "duty_record";

/** The name of the same cell on its workings, which hold no input. */
export const WORKINGS_NAME = "workings_record";

/** A cell as a reader finds it. */
export interface CellNow {
  readonly value: Cell;
  readonly isFormula: boolean;
}

/** A sheet as it stands now. */
export interface SheetNow {
  readonly name: string;
  /** Its own names and the range of each; none whose cells are gone. */
  readonly names: Readonly<Record<string, string>>;
  /** 0-based; blank beyond what is filled. */
  readonly at: (row: number, column: number) => CellNow;
}

/** What a workbook holds of duties. */
export interface RecordedSheets {
  /** The XML texts of RECORD_NAMESPACE. */
  readonly records: readonly string[];
  /** The sheets that name a record, in the order of the tabs. */
  readonly sheets: readonly SheetNow[];
}
