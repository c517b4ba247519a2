import type { Cell } from "../../cells/cell.ts";
import type { ListSpec, PrintSpec, RuleSpec, StyleSpec } from "../../ports/sheet-spec.ts";

/** A workbook as read from a file: values as the file holds them, formulas as a user reads them. */
export interface ReadWorkbook {
  /** In the order of the tabs, hidden ones too. */
  readonly sheets: readonly ReadSheet[];
  /** All names, whatever they stand for. */
  readonly names: readonly ReadName[];
  /** The XML texts of ours that travel in it. */
  readonly records: readonly string[];
}

export interface ReadName {
  readonly name: string;
  /** The sheet it belongs to; left out for a name of the whole workbook. */
  readonly sheet?: string;
  /** As written: "Data!$A$1:$B$7", "9.81", "#REF!". */
  readonly refersTo: string;
}

export interface ReadCell {
  /** 0-based. */
  readonly row: number;
  readonly column: number;
  /** Dates are day numbers counted from 1900, as their number format expects. Nothing for a cell that is only formatted. */
  readonly value: Cell;
  /** Without "=", calls of the add-in as DUTY.NAME(. */
  readonly formula?: string;
  /** The range an array or spilling formula fills, where that is more than its own cell. */
  readonly spill?: string;
  /** Its place in `styles` of the sheet. */
  readonly style: number;
}

/** A row of the sheet that holds anything. */
export interface ReadRow {
  readonly row: number;
  readonly cells: readonly ReadCell[];
}

export interface ReadSheet {
  readonly name: string;
  readonly hidden: boolean;
  readonly rows: readonly ReadRow[];
  /** Of the whole workbook, shared by all its sheets. */
  readonly styles: readonly StyleSpec[];
  /** Characters, from column A as far as the file says. */
  readonly columns: readonly number[];
  /** Points, by 1-based row, where the file sets them. */
  readonly rowHeights: Readonly<Record<number, number>>;
  readonly merges: readonly string[];
  /** Names that stand for one range of this sheet, its own and the workbook's. */
  readonly names: Readonly<Record<string, string>>;
  readonly lists: readonly ListSpec[];
  readonly rules: readonly RuleSpec[];
  readonly freezeRows: number;
  readonly gridlines: boolean;
  readonly print?: PrintSpec;
}
