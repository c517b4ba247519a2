import { absolute } from "./a1.ts";
import { quotedSheetName } from "./sheet-name.ts";

/** A reference taken apart. */
export interface SheetReference {
  /** Nothing where it is one of the sheet that it stands on. */
  readonly sheet: string | undefined;
  /** What stands after the name: an A1 range, or a sheet-scoped name. */
  readonly target: string;
}

/** "A1:B2", "Sheet!A1:B2", "'Bypass duty'!flow". */
export function referenceParts(text: string): SheetReference {
  const match = /^(?:'((?:[^']|'')+)'|([^'!]+))!(.+)$/.exec(text.trim());
  if (match === null) return { sheet: undefined, target: text.trim() };
  return { sheet: match[1]?.replaceAll("''", "'") ?? match[2], target: (match[3] as string).trim() };
}

/** "'Duty P-1'!A1:B2" as "'Duty P-1'!$A$1:$B$2". */
export function absoluteReference(text: string): string {
  const { sheet, target } = referenceParts(text);
  return sheet === undefined ? absolute(target) : `${quotedSheetName(sheet)}!${absolute(target)}`;
}

/** The reference as it is written on one of the sheets: the other's name before it, where it is another's. */
export function writtenFrom(sheet: string, on: string, range: string): string {
  return sheet === on ? range : `${quotedSheetName(on)}!${range}`;
}
