import { absolute } from "../../ports/a1.ts";
import { quotedSheetName } from "../../ports/sheet-name.ts";
import type { SheetSpec } from "../../ports/sheet-spec.ts";
import { xmlText } from "../xml-text.ts";

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
      ...Object.entries(own).map(([name, range]) => ({ name, i, refersTo: on(absolute(range)) })),
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

function absoluteRows(rows: string): string {
  const match = /^\$?(\d+):\$?(\d+)$/.exec(rows);
  if (match === null) throw new Error(`not a range of rows: ${rows}`);
  return `$${match[1]}:$${match[2]}`;
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
