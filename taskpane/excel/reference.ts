import { referenceParts } from "../../shared/ports/reference.ts";

/** A reference as the port writes it, taken apart. */
export interface ExcelReference {
  readonly sheet: string;
  /** An A1 range, or a sheet-scoped name. */
  readonly target: string;
  readonly isName: boolean;
}

const A1 = /^\$?[A-Za-z]{1,3}\$?[1-9]\d{0,6}(:\$?[A-Za-z]{1,3}\$?[1-9]\d{0,6})?$/;

/** "Sheet!A1:B2", "'Bypass duty'!flow". Throws for anything else: references are our own, never typed. */
export function referenceOf(text: string): ExcelReference {
  const { sheet, target } = referenceParts(text);
  if (sheet === undefined) throw new Error(`not a reference to a sheet: ${text}`);
  return { sheet, target, isName: !A1.test(target) };
}
