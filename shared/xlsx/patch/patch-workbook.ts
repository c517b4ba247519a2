import { checkHeld } from "../../ports/check/sheet-problems.ts";
import type { SheetSpec } from "../../ports/sheet-spec.ts";
import { openArchive } from "../read/archive.ts";
import { LIMITS, type Limits } from "../read/limits.ts";
import { readRecords } from "../read/records.ts";
import { refuse } from "../read/refusal.ts";
import { relationsOf } from "../read/xml-part.ts";
import { nameElements } from "../write/defined-names.ts";
import { listSheet } from "../write/drop-downs.ts";
import { fileCells } from "../write/file-cells.ts";
import { recordParts } from "../write/record-parts.ts";
import { inlineTexts } from "../write/shared-strings.ts";
import { styleTable } from "../write/styles.ts";
import { worksheetParts } from "../write/worksheet-parts.ts";
import { cellEdits } from "./cell-edits.ts";
import { isUnchanged, type SheetChanges } from "./changes.ts";
import type { EditTables } from "./edited-cell.ts";
import { editedSheet } from "./edited-sheet.ts";
import { openedStyles } from "./opened-styles.ts";
import { packageEdit } from "./package-edit.ts";
import { withSpillMark } from "./spill-mark.ts";
import { type AddedSheet, countsFrom1904, listedSheets, type SheetPlace, workbookText } from "./workbook-text.ts";

/** A sheet of the workbook as it is to be: one of the opened file with what changed on it, or one that is added. */
export type PatchedSheet =
  | { readonly kind: "opened"; readonly name: string; readonly now: SheetSpec; readonly changes: SheetChanges }
  | { readonly kind: "added"; readonly spec: SheetSpec };

/** What the names of a workbook in the strict form begin with (ISO/IEC 29500-1); ours are of the transitional one. */
const STRICT = "http://purl.oclc.org/ooxml/spreadsheetml/main";

/** Days from the first day of one calendar to that of the other. */
const DAYS_1900_TO_1904 = 1462;

/**
 * The opened file with the changed cells spliced into its sheets and the added sheets joined to it, in the order
 * given, and the records that it does not hold. Every part that none of it concerns stays byte for byte. Throws where a sheet asks for what a file cannot hold.
 */
export function patchedWorkbook(
  bytes: Uint8Array,
  sheets: readonly PatchedSheet[],
  records: readonly string[] = [],
  limits: Limits = LIMITS,
): Uint8Array {
  const archive = openArchive(bytes, limits);
  const file = packageEdit(archive);
  const workbook =
    relationsOf(archive, "", limits).find(({ type }) => type === "officeDocument")?.target ??
    refuse("not-xlsx", "The file holds no workbook.");
  const relations = relationsOf(archive, workbook, limits);
  const pathOf = (type: string): string | undefined => relations.find((each) => each.type === type)?.target;
  const from1904 = countsFrom1904(file.text(workbook));
  const listed = listedSheets(file.text(workbook));
  const listedNames = listed.map(({ name }) => name);

  const styles = once(() => {
    const path = pathOf("styles");
    return openedStyles(path === undefined ? styleTable().part() : file.text(path));
  });
  const metadata = once(() => {
    const path = pathOf("sheetMetadata");
    return withSpillMark(path === undefined ? undefined : file.text(path));
  });
  /** Puts a part of the workbook in place of the one there is, or beside the others. */
  const settle = (type: "styles" | "sheetMetadata", stem: string, text: string | undefined): void => {
    const path = pathOf(type);
    if (text === undefined) return;
    if (path === undefined) file.add({ path: file.freePath(stem, "xml"), type, text }, workbook);
    else file.put(path, text);
  };

  const tables: EditTables = {
    texts: inlineTexts,
    spillMark: () => metadata.get().mark,
    storedNumber: (value, style) => (from1904 && styles.get().isDate(style) ? value - DAYS_1900_TO_1904 : value),
  };
  for (const sheet of sheets) {
    if (sheet.kind === "added" || isUnchanged(sheet.changes)) continue;
    const relation = listed.find(({ name }) => name === sheet.name)?.relation;
    const path = relations.find(({ id }) => id === relation)?.target;
    if (path === undefined) throw new Error(`the opened file has no sheet ${sheet.name}`);
    const { cells, merges, beyond: _, ...others } = sheet.changes;
    const edits = {
      ...others,
      cells: cellEdits(sheet.now, cells, (now, change) => styles.get().restyled(now, change)),
      ...(merges === undefined ? {} : { merges }),
    };
    file.put(path, editedSheet(file.text(path), edits, tables));
  }

  const added = sheets.flatMap((sheet) => (sheet.kind === "added" ? [sheet.spec] : []));
  if (added.length > 0 && file.text(workbook).includes(STRICT))
    throw new Error(
      "sheets cannot be added to a workbook saved in the strict form: save it as an ordinary .xlsx first",
    );
  const places = added.length === 0 ? [] : addSheets(added);
  const order = orderOf(sheets, listedNames, places);
  if (order.some((place, i) => place !== i)) {
    const names = nameElements(added, (i) => order.indexOf(places[i] as SheetPlace));
    file.put(workbook, workbookText(file.text(workbook), order, names));
  }
  settle("styles", "xl/styles", styles.made()?.text());
  settle("sheetMetadata", "xl/metadata", metadata.made()?.text);
  const there = readRecords(archive, limits);
  const more = records.filter((record) => !there.includes(record));
  for (const part of recordParts(more, file.freePath)) file.add(part, workbook);
  const chain = pathOf("calcChain");
  const newFormulas = sheets.some((sheet) => sheet.kind === "added" || sheet.changes.formulas);
  if (chain !== undefined && newFormulas) file.remove(chain, workbook);
  return file.bytes();

  function addSheets(specs: readonly SheetSpec[]): readonly AddedSheet[] {
    checkHeld(specs);
    const lists = listSheet(specs, listedNames);
    const all = lists.spec === undefined ? specs : [...specs, lists.spec];
    const inFile = all.map((spec) => ({ spec, cells: fileCells(spec) }));
    const spills = inFile.some(({ cells }) => [...cells.values()].some(({ fills }) => fills !== undefined));
    const spillMark = spills ? metadata.get().mark : 0;
    const sheetTables = { styles: styles.get(), lists, texts: inlineTexts, spillMark };
    return worksheetParts(inFile, sheetTables, file.freePath, undefined).map((part, i) => ({
      name: (all[i] as SheetSpec).name,
      relation: file.add(part, workbook),
      hidden: i >= specs.length,
    }));
  }
}

/** Sheets that no host shows (a chart alone) stay behind the one they stood behind; helping sheets come last. */
function orderOf(
  sheets: readonly PatchedSheet[],
  listed: readonly string[],
  places: readonly AddedSheet[],
): readonly SheetPlace[] {
  let next = 0;
  const order: SheetPlace[] = sheets.map((sheet) => {
    if (sheet.kind === "opened") return listed.indexOf(sheet.name);
    next += 1;
    return places[next - 1] as AddedSheet;
  });
  for (const i of listed.keys()) if (!order.includes(i)) order.splice(order.indexOf(i - 1) + 1, 0, i);
  return [...order, ...places.slice(next)];
}

interface Once<T> {
  readonly get: () => T;
  /** Nothing where nobody has asked for it. */
  readonly made: () => T | undefined;
}

function once<T>(make: () => T): Once<T> {
  let made: T | undefined;
  return {
    get: () => {
      made ??= make();
      return made;
    },
    made: () => made,
  };
}
