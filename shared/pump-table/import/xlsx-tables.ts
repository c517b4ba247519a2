import { type Result, succeed } from "../../../src/basis/result.ts";
import { greatestOf, leastOf } from "../../../src/numeric/extremes.ts";
import type { Cell } from "../../cells/cell.ts";
import type { TablePlace } from "../../tables/place.ts";
import type { ReadSheet } from "../../xlsx/read/workbook-content.ts";
import { unreadable } from "./file-text.ts";
import { tooGreat } from "./table-size.ts";

export interface SheetTable {
  readonly place: TablePlace;
  readonly rows: readonly (readonly Cell[])[];
}

/**
 * The cells of a sheet as a full table from its first used cell, or why they are none: blank cells between filled ones count.
 * A date stands as an error that shows it: a spreadsheet makes one of a typed figure such as 5.3 or a name such as 4-11, and it
 * is neither.
 */
export function sheetTable(sheet: ReadSheet, fileName: string): Result<SheetTable> {
  const filled = sheet.rows.map(({ row, cells }) => ({ row, cells: cells.filter(({ value }) => value !== null) }));
  const used = filled.filter(({ cells }) => cells.length > 0);
  const top = used[0]?.row ?? 0;
  const corner = { row: top, column: used.length === 0 ? 0 : leastOf(used.map(({ cells }) => cells[0]?.column ?? 0)) };
  const last = greatestOf(used.map(({ cells }) => cells.at(-1)?.column ?? 0));
  const reason = tooGreat((used.at(-1)?.row ?? top) - top + 1, last - corner.column + 1);
  if (reason !== undefined) return unreadable(`${fileName} ${sheet.name}`, reason);
  const place: TablePlace = { name: `${fileName} ${sheet.name}`, corner };
  const rows: Cell[][] = [];
  for (const { row, cells } of used) {
    const line: Cell[] = [];
    for (const { column, value, style } of cells) {
      while (line.length < column - corner.column) line.push(null);
      const isDate = typeof value === "number" && isDateFormat(sheet.styles[style]?.numFmt ?? "");
      line.push(isDate ? { error: `the date ${dateText(value)}` } : value);
    }
    while (rows.length < row - top) rows.push([]);
    rows.push(line);
  }
  return succeed({ place, rows });
}

/** From the first day of the sheet's calendar to that of the computer's. */
const DAYS_TO_1970 = 25_569;
const MS_A_DAY = 86_400_000;
/** Day numbers a date can be made of; the calendar of spreadsheets ends with the year 9999. */
const LAST_DAY = 2_958_465;

function dateText(day: number): string {
  if (!(day >= 0 && day <= LAST_DAY)) return String(day);
  return new Date(Math.floor(day - DAYS_TO_1970) * MS_A_DAY).toISOString().slice(0, 10);
}

/** Whether a number format shows a day, a month or a year, texts in quotes and brackets apart. */
function isDateFormat(format: string): boolean {
  return /[dmy]/i.test(format.replace(/"[^"]*"|\[[^\]]*\]|\\./g, "").replace(/general/i, "")) && !/[#0?]/.test(format);
}
