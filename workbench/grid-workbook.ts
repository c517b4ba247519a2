import type { IWorkbookData } from "@univerjs/core";
import { DEFAULT_STYLE } from "./grid-style.ts";

/** A workbook with one empty sheet. Made anew each time: the grid writes into what it is given. */
export function emptyWorkbook(id = "workbook", sheet = "Sheet1"): Partial<IWorkbookData> {
  return {
    id,
    name: "Workbook",
    defaultStyle: { ...DEFAULT_STYLE },
    sheetOrder: ["first"],
    sheets: { first: { id: "first", name: sheet, rowCount: 1000, columnCount: 26, defaultRowHeight: 20 } },
  };
}
