import type { CellNow, RecordedSheets, SheetNow } from "../ports/sheet-record.ts";
import { RECORD_NAME } from "../ports/sheet-record.ts";
import type { ReadSheet, ReadWorkbook } from "./read/workbook-content.ts";

/** What the workbook of a file holds of duties. */
export function recordedSheets({ records, sheets }: ReadWorkbook): RecordedSheets {
  return { records, sheets: sheets.filter(({ names }) => Object.hasOwn(names, RECORD_NAME)).map(sheetNow) };
}

const BLANK: CellNow = { value: null, isFormula: false };

function sheetNow({ name, names, rows }: ReadSheet): SheetNow {
  const cells = new Map(
    rows.flatMap(({ row, cells: filled }) =>
      filled.map(
        ({ column, value, formula }) => [`${row}.${column}`, { value, isFormula: formula !== undefined }] as const,
      ),
    ),
  );
  return { name, names, at: (row, column) => cells.get(`${row}.${column}`) ?? BLANK };
}
