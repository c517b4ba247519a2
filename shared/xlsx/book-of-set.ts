import { checkSheets } from "../ports/check/sheet-problems.ts";
import { freeSheetNames } from "../ports/sheet-name.ts";
import type { SheetSet } from "../ports/sheet-set.ts";
import { writeWorkbook } from "./write-workbook.ts";

/** A workbook of nothing but a set: the names its sheets got, and the file. */
export interface Book {
  readonly sheetNames: readonly string[];
  readonly bytes: Uint8Array;
}

/** Throws a HostFault where a sheet asks for what no host can hold. */
export function bookOfSet({ wanted, sheets, records = [] }: SheetSet): Book {
  const sheetNames = freeSheetNames(wanted, []);
  const specs = sheets(sheetNames);
  checkSheets(specs);
  return { sheetNames, bytes: writeWorkbook({ sheets: specs, records }) };
}
