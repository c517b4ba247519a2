import { boxOf, rangeOf } from "../ports/a1.ts";
import type { ListSpec, PrintSpec } from "../ports/sheet-spec.ts";
import { type Archive, openArchive } from "./read/archive.ts";
import { LIMITS, type Limits } from "./read/limits.ts";
import { readRecords } from "./read/records.ts";
import { FileRefused, type Refusal, refuse } from "./read/refusal.ts";
import { type RawList, readSheet, type SheetContent } from "./read/sheet-part.ts";
import { readStrings } from "./read/strings-part.ts";
import { readStyles, themeColors } from "./read/styles-part.ts";
import type { ReadName, ReadSheet, ReadWorkbook } from "./read/workbook-content.ts";
import { isOn, type Relation, readPart, relationId, relationsOf } from "./read/xml-part.ts";

export type ReadOutcome =
  | { readonly ok: true; readonly workbook: ReadWorkbook }
  | { readonly ok: false; readonly refusal: Refusal };

/** Reads an .xlsx file, or says in one sentence why not. Macros, pictures, charts and links to other files are not read. */
export function readWorkbook(bytes: Uint8Array, limits: Limits = LIMITS): ReadOutcome {
  try {
    return { ok: true, workbook: workbookOf(openArchive(bytes, limits), limits) };
  } catch (problem) {
    if (problem instanceof FileRefused) return { ok: false, refusal: problem.refusal };
    throw problem;
  }
}

interface SheetEntry {
  readonly name: string;
  readonly hidden: boolean;
  readonly id: string | undefined;
}

interface RawName {
  readonly name: string;
  readonly sheetNumber: number | undefined;
  refersTo: string;
}

function workbookOf(archive: Archive, limits: Limits): ReadWorkbook {
  if (!archive.has("[Content_Types].xml") || !archive.has("_rels/.rels"))
    refuse("not-xlsx", "This is a zip file, but not an .xlsx workbook.");
  const path = relationsOf(archive, "", limits).find(({ type }) => type === "officeDocument")?.target;
  if (path === undefined || !archive.has(path)) return refuse("not-xlsx", "The file holds no workbook.");
  const { entries, rawNames, counted1904, isWorkbook } = readBook(archive, path, limits);
  if (!isWorkbook) refuse("not-xlsx", "The file holds another kind of document, not a workbook.");
  if (entries.length === 0) refuse("not-xlsx", "The workbook has no sheets.");

  const relations = relationsOf(archive, path, limits);
  const ofType = (type: string): string | undefined => relations.find((relation) => relation.type === type)?.target;
  const styles = readStyles(archive, ofType("styles"), themeColors(archive, ofType("theme"), limits), limits);
  const strings = readStrings(archive, ofType("sharedStrings"), limits);
  let filled = 0;
  const count = (cells: number): void => {
    filled += cells;
    if (filled > limits.cells) refuse("too-large", `The workbook has more than ${limits.cells} filled cells.`);
  };

  const contents = entries.flatMap((entry) => {
    const part = worksheetOf(entry, relations);
    const reading = { name: entry.name, strings, styles, counted1904, count };
    return part === undefined ? [] : [{ entry, content: readSheet(archive, part, reading, limits) }];
  });
  const names = rawNames.map(({ name, sheetNumber, refersTo }): ReadName => {
    const sheet = sheetNumber === undefined ? undefined : entries[sheetNumber]?.name;
    return { name, refersTo, ...(sheet === undefined ? {} : { sheet }) };
  });
  const sheets = contents.map(({ entry, content }) =>
    sheetOf(entry, content, names, styles.cells, (sheet, range) =>
      textsIn(contents.find((other) => other.entry.name.toLowerCase() === sheet.toLowerCase())?.content, range),
    ),
  );
  return {
    sheets,
    names: names.filter(({ name }) => !name.startsWith("_xlnm.")),
    records: readRecords(archive, limits),
  };
}

function readBook(
  archive: Archive,
  path: string,
  limits: Limits,
): {
  readonly entries: readonly SheetEntry[];
  readonly rawNames: readonly RawName[];
  readonly counted1904: boolean;
  readonly isWorkbook: boolean;
} {
  const entries: SheetEntry[] = [];
  const rawNames: RawName[] = [];
  let counted1904 = false;
  let isWorkbook = false;
  let inName = false;
  readPart(
    archive,
    path,
    {
      open: (name, at) => {
        if (name === "workbook") isWorkbook = true;
        else if (name === "workbookPr") counted1904 = isOn(at["date1904"]);
        else if (name === "sheet")
          entries.push({
            name: at["name"] ?? "",
            hidden: (at["state"] ?? "visible") !== "visible",
            id: relationId(at),
          });
        else if (name === "definedName") {
          inName = true;
          const sheetNumber = at["localSheetId"] === undefined ? undefined : Number(at["localSheetId"]);
          rawNames.push({ name: at["name"] ?? "", sheetNumber, refersTo: "" });
        }
      },
      text: (text) => {
        const last = rawNames.at(-1);
        if (inName && last !== undefined) last.refersTo += text;
      },
      close: (name) => {
        if (name === "definedName") inName = false;
      },
    },
    limits,
  );
  return { entries, rawNames, counted1904, isWorkbook };
}

/** Chart sheets and the like have no cells and are passed over. */
function worksheetOf({ id }: SheetEntry, relations: readonly Relation[]): string | undefined {
  return relations.find((relation) => relation.id === id && relation.type === "worksheet")?.target;
}

function sheetOf(
  { name, hidden }: SheetEntry,
  content: SheetContent,
  names: readonly ReadName[],
  styles: ReadSheet["styles"],
  textsOf: (sheet: string, range: string) => readonly string[],
): ReadSheet {
  const here = (refersTo: string): string | undefined => {
    const target = targetOf(refersTo);
    return target !== undefined && target.sheet.toLowerCase() === name.toLowerCase() ? target.range : undefined;
  };
  const own: Record<string, string> = {};
  // The sheet's own name wins over the workbook's.
  for (const { name: given, sheet, refersTo } of [...names].sort(
    (a, b) => Number(a.sheet === name) - Number(b.sheet === name),
  )) {
    const range = here(refersTo);
    if (range !== undefined && (sheet === undefined || sheet === name) && !given.startsWith("_xlnm."))
      Object.defineProperty(own, given, { value: range, enumerable: true, configurable: true, writable: true });
  }
  const lists = content.lists.flatMap((list) => listOf(list, name, names, textsOf));
  const print = printOf(content.print, names, name, here);
  return {
    name,
    hidden,
    rows: content.rows,
    styles,
    columns: content.columns,
    rowHeights: content.rowHeights,
    merges: content.merges,
    names: own,
    lists,
    rules: content.rules,
    freezeRows: content.freezeRows,
    gridlines: content.gridlines,
    ...(print === undefined ? {} : { print }),
  };
}

function listOf(
  { ref, source, help, strict }: RawList,
  sheet: string,
  names: readonly ReadName[],
  textsOf: (sheet: string, range: string) => readonly string[],
): readonly ListSpec[] {
  const rest = { ref, strict, ...(help === undefined ? {} : { help }) };
  const inline = /^"(.*)"$/s.exec(source)?.[1];
  if (inline !== undefined)
    return [
      {
        ...rest,
        items: inline
          .replaceAll('""', '"')
          .split(",")
          .map((item) => item.trim()),
      },
    ];
  const named = names.find((one) => one.name.toLowerCase() === source.toLowerCase())?.refersTo;
  const target = targetOf(named ?? source) ?? targetOf(`${sheetPrefix(sheet)}${source}`);
  if (target === undefined) return [];
  if (target.sheet.toLowerCase() === sheet.toLowerCase()) return [{ ...rest, items: { from: target.range } }];
  const items = textsOf(target.sheet, target.range);
  return items.length === 0 ? [] : [{ ...rest, items }];
}

function textsIn(content: SheetContent | undefined, range: string): readonly string[] {
  if (content === undefined) return [];
  const { top, left, bottom, right } = boxOf(range);
  return content.rows
    .filter(({ row }) => row >= top && row <= bottom)
    .flatMap(({ cells }) => cells)
    .filter(({ column, value }) => column >= left && column <= right && ["string", "number"].includes(typeof value))
    .map(({ value }) => String(value));
}

function printOf(
  print: SheetContent["print"],
  names: readonly ReadName[],
  sheet: string,
  here: (refersTo: string) => string | undefined,
): PrintSpec | undefined {
  const refersTo = (name: string): string =>
    names.find((one) => one.name === name && one.sheet === sheet)?.refersTo ?? "";
  const area = here(refersTo("_xlnm.Print_Area"));
  if (area === undefined) return undefined;
  const rows = /!\$?(\d+):\$?(\d+)$/.exec(refersTo("_xlnm.Print_Titles"));
  return { area, ...print, ...(rows === null ? {} : { titleRows: `${rows[1]}:${rows[2]}` }) };
}

/** The sheet and range of "Data!$A$1:$B$7" or "'My sheet'!B3"; nothing for anything else. */
function targetOf(refersTo: string): { readonly sheet: string; readonly range: string } | undefined {
  const match =
    /^=?(?:'((?:[^']|'')+)'|([^'!\s]+))!(\$?[A-Z]{1,3}\$?[1-9]\d{0,6}(?::\$?[A-Z]{1,3}\$?[1-9]\d{0,6})?)$/.exec(
      refersTo.trim(),
    );
  if (match === null) return undefined;
  return { sheet: (match[1] ?? match[2] ?? "").replaceAll("''", "'"), range: rangeOf(boxOf(match[3] as string)) };
}

function sheetPrefix(sheet: string): string {
  return `'${sheet.replaceAll("'", "''")}'!`;
}
