import { checkHeld } from "../ports/check/sheet-problems.ts";
import type { SheetSpec } from "../ports/sheet-spec.ts";
import { definedNames } from "./write/defined-names.ts";
import { listSheet } from "./write/drop-downs.ts";
import { type FileCell, fileCells } from "./write/file-cells.ts";
import { SPILL_MARK, SPILL_PART, THEME_PART } from "./write/fixed-parts.ts";
import { freePaths } from "./write/free-paths.ts";
import { type Part, packageOf } from "./write/package.ts";
import { propertyParts, type WorkbookProperties } from "./write/properties.ts";
import { recordParts } from "./write/record-parts.ts";
import { MAIN, RELATIONSHIPS } from "./write/schemas.ts";
import { sharedStrings } from "./write/shared-strings.ts";
import { styleTable } from "./write/styles.ts";
import { worksheetParts } from "./write/worksheet-parts.ts";
import { attributes, DECLARATION } from "./xml-text.ts";

export interface WorkbookSpec {
  readonly sheets: readonly SheetSpec[];
  readonly properties?: WorkbookProperties;
  /** XML texts that travel with the sheets. */
  readonly records?: readonly string[];
}

/**
 * The version of Excel's calculation that the file claims. With a lower one Excel works everything out again on
 * opening, and without the add-in every call of it would turn into #NAME?.
 */
const CALCULATION_VERSION = 191029;

/**
 * The bytes of an .xlsx file of these sheets; the same sheets always give the same bytes. Throws a HostFault where a
 * sheet asks for what a file cannot hold.
 *
 * The file names no add-in that Excel should offer: that needs the store or catalogue a company deploys it from.
 */
export function writeWorkbook(spec: WorkbookSpec): Uint8Array {
  const { sheets, properties = {}, records = [] } = spec;
  if (sheets.length === 0) throw new Error("a workbook needs a sheet");
  checkHeld(sheets);
  const styles = styleTable();
  const strings = sharedStrings();
  const lists = listSheet(sheets);
  const all = lists.spec === undefined ? sheets : [...sheets, lists.spec];
  const inFile = all.map((spec) => ({ spec, cells: fileCells(spec) }));
  const cells = inFile.flatMap((sheet) => [...sheet.cells.values()]);
  const tables = { styles, lists, texts: strings.texts, spillMark: SPILL_MARK };
  const freePath = freePaths();
  const worksheets = worksheetParts(inFile, tables, freePath, 0);
  const workbook: Part = {
    path: "xl/workbook.xml",
    type: "workbook",
    text: workbookText(all, sheets.length, cells),
    pointsTo: [
      ...worksheets,
      THEME_PART,
      { path: "xl/styles.xml", type: "styles", text: styles.part() },
      { path: "xl/sharedStrings.xml", type: "sharedStrings", text: strings.part() },
      ...(cells.some(({ fills }) => fills !== undefined) ? [SPILL_PART] : []),
      ...recordParts(records, freePath),
    ],
  };
  return packageOf([workbook, ...propertyParts(properties)]);
}

/** Sheets beyond the first `shown`, which hold the lists of the others, are hidden. */
function workbookText(sheets: readonly SheetSpec[], shown: number, cells: readonly FileCell[]): string {
  const lines = sheets.map(
    ({ name }, i) =>
      `<sheet${attributes({ name, sheetId: i + 1, state: i < shown ? undefined : "hidden", "r:id": `rId${i + 1}` })}/>`,
  );
  // Excel would show an answer that is not there as nothing or 0.
  const unknown = cells.some(({ formula, value }) => formula !== undefined && value === undefined);
  const calculation = attributes({ calcId: CALCULATION_VERSION, fullCalcOnLoad: unknown });
  return `${DECLARATION}<workbook xmlns="${MAIN}" xmlns:r="${RELATIONSHIPS}"><bookViews><workbookView xWindow="0" yWindow="0" windowWidth="24000" windowHeight="12000"/></bookViews><sheets>${lines.join("")}</sheets>${definedNames(
    sheets.slice(0, shown),
  )}<calcPr${calculation}/></workbook>`;
}
