import { absolute } from "../../ports/a1.ts";
import { quotedSheetName } from "../../ports/sheet-name.ts";
import type { SheetSpec } from "../../ports/sheet-spec.ts";
import { xmlText } from "../xml-text.ts";

const NAME = /^[\p{L}_\\][\p{L}\p{N}_.\\?]*$/u;
/** What Excel reads as a cell: DN80, Q1, R, C, R1C1. */
const LIKE_A_CELL = /^([a-z]{1,3}[0-9]{1,7}|r[0-9]*(c[0-9]*)?|c[0-9]*)$/i;
const LONGEST = 255;

/** The names of all sheets, their print areas and repeated rows, in the order Excel keeps them. */
export function definedNames(sheets: readonly SheetSpec[]): string {
  const elements = nameElements(sheets, (i) => i);
  return elements.length === 0 ? "" : `<definedNames>${elements.join("")}</definedNames>`;
}

/** One element for each; `placeOf` tells the place of a sheet among all of the file, by its place here. */
export function nameElements(sheets: readonly SheetSpec[], placeOf: (i: number) => number): readonly string[] {
  const names = sheets.flatMap(({ name: sheet, names: own = {}, print }, i) => {
    const on = (range: string): string => `${quotedSheetName(sheet)}!${range}`;
    return [
      ...Object.entries(own).map(([name, range]) => ({ name: checked(name, sheet), i, refersTo: on(absolute(range)) })),
      ...(print === undefined ? [] : [{ name: "_xlnm.Print_Area", i, refersTo: on(absolute(print.area)) }]),
      ...(print?.titleRows === undefined
        ? []
        : [{ name: "_xlnm.Print_Titles", i, refersTo: on(absoluteRows(print.titleRows)) }]),
    ];
  });
  return names
    .sort((a, b) => compare(a.name.toLowerCase(), b.name.toLowerCase()) || a.i - b.i)
    .map(
      ({ name, i, refersTo }) =>
        `<definedName name="${name}" localSheetId="${placeOf(i)}">${xmlText(refersTo)}</definedName>`,
    );
}

function checked(name: string, sheet: string): string {
  if (!NAME.test(name) || LIKE_A_CELL.test(name) || name.length > LONGEST)
    throw new Error(`${sheet}: "${name}" cannot be the name of a range`);
  return name;
}

function absoluteRows(rows: string): string {
  const match = /^\$?(\d+):\$?(\d+)$/.exec(rows);
  if (match === null) throw new Error(`not a range of rows: ${rows}`);
  return `$${match[1]}:$${match[2]}`;
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
