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
export function readWorkbook(
  bytes: Uint8Array,
  limits: Limits = LIMITS,
  /** Told how far it has come, from 0 to 1. */
  progress: (share: number) => void = () => {},
): ReadOutcome {
  try {
    return { ok: true, workbook: workbookOf(followed(openArchive(bytes, limits), progress), limits) };
  } catch (problem) {
    if (problem instanceof FileRefused) return { ok: false, refusal: problem.refusal };
    throw problem;
  }
}

/** The archive that tells how much of its XML it has unpacked, each hundredth once. */
function followed(archive: Archive, progress: (share: number) => void): Archive {
  let unpacked = 0;
  let told = 0;
  return {
    ...archive,
    unpack: (path, take) =>
      archive.unpack(path, (bytes, last) => {
        take(bytes, last);
        unpacked += bytes.length;
        const share = Math.min(1, unpacked / archive.xmlBytes);
        if (share < told + 0.01) return;
        told = share;
        progress(share);
      }),
  };
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
  let letters = 0;
  const countFormula = (of: number): void => {
    letters += of;
    if (letters > limits.formulas)
      refuse("too-large", `The formulas of the workbook have more than ${limits.formulas} characters in all.`);
  };

  const sheetOfPart = new Map<string, string>();
  const contents = entries.flatMap((entry) => {
    const part = worksheetOf(entry, relations);
    if (part === undefined) return [];
    const other = sheetOfPart.get(part.toLowerCase());
    if (other !== undefined)
      refuse("damaged", `Sheets ${other} and ${entry.name} are one and the same part of the file.`);
    sheetOfPart.set(part.toLowerCase(), entry.name);
    const reading = { name: entry.name, strings, styles, counted1904, count, countFormula };
    return [{ entry, content: readSheet(archive, part, reading, limits) }];
  });
  const names = rawNames.map(({ name, sheetNumber, refersTo }): ReadName => {
    const sheet = sheetNumber === undefined ? undefined : entries[sheetNumber]?.name;
    return { name, refersTo, ...(sheet === undefined ? {} : { sheet }) };
  });
  const lookup = namesOf(names);
  const texts = textsOfSheets(contents, limits);
  const sheets = contents.map(({ entry, content }) => sheetOf(entry, content, lookup, styles.cells, texts));
  return {
    sheets,
    names: names.filter(({ name }) => !name.startsWith("_xlnm.")),
    records: readRecords(archive, limits),
  };
}

interface PlacedName extends ReadName {
  readonly range: string;
}

/** The names of a workbook, found at once however many there are. */
interface Names {
  readonly all: readonly ReadName[];
  readonly named: (name: string) => ReadName | undefined;
  /** Those that stand for one range of a sheet, the sheet's own last. */
  readonly on: (sheet: string) => readonly PlacedName[];
}

function namesOf(all: readonly ReadName[]): Names {
  const byName = new Map<string, ReadName>();
  const bySheet = new Map<string, PlacedName[]>();
  for (const one of all) {
    const key = one.name.toLowerCase();
    if (!byName.has(key)) byName.set(key, one);
    const target = targetOf(one.refersTo);
    if (target === undefined) continue;
    const sheet = target.sheet.toLowerCase();
    const placed = bySheet.get(sheet) ?? [];
    placed.push({ ...one, range: target.range });
    bySheet.set(sheet, placed);
  }
  return {
    all,
    named: (name) => byName.get(name.toLowerCase()),
    on: (sheet) =>
      [...(bySheet.get(sheet.toLowerCase()) ?? [])].sort(
        (a, b) => Number(a.sheet === sheet) - Number(b.sheet === sheet),
      ),
  };
}

type Texts = (sheet: string, range: string) => readonly string[];

/** Rows looked through for the items of drop-downs, those of another sheet. House choice. */
const MOST_LOOKED_AT = 20e6;

function textsOfSheets(
  contents: readonly { readonly entry: SheetEntry; readonly content: SheetContent }[],
  limits: Limits,
): Texts {
  const bySheet = new Map(contents.map(({ entry, content }) => [entry.name.toLowerCase(), content]));
  const known = new Map<string, readonly string[]>();
  let looked = 0;
  return (sheet, range) => {
    const key = `${range} ${sheet.toLowerCase()}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const content = bySheet.get(sheet.toLowerCase());
    looked += content?.rows.length ?? 0;
    if (looked > MOST_LOOKED_AT || known.size > limits.areas)
      refuse("too-large", "The drop-downs of the workbook take their items from too many ranges.");
    const texts = textsIn(content, range);
    known.set(key, texts);
    return texts;
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
        else if (name === "sheet") {
          if (entries.length >= limits.sheets)
            refuse("too-large", `The workbook has more than ${limits.sheets} sheets.`);
          entries.push({
            name: at["name"] ?? "",
            hidden: (at["state"] ?? "visible") !== "visible",
            id: relationId(at),
          });
        } else if (name === "definedName") {
          if (rawNames.length >= limits.names) refuse("too-large", `The workbook has more than ${limits.names} names.`);
          inName = true;
          const sheetNumber = at["localSheetId"] === undefined ? undefined : Number(at["localSheetId"]);
          rawNames.push({ name: at["name"] ?? "", sheetNumber, refersTo: "" });
        }
      },
      text: (text) => {
        const last = rawNames.at(-1);
        if (!inName || last === undefined) return;
        last.refersTo += text;
        if (last.refersTo.length > 2 * limits.formula)
          refuse("too-large", `The name ${last.name} stands for more than ${limits.formula} characters.`);
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
  names: Names,
  styles: ReadSheet["styles"],
  textsOf: Texts,
): ReadSheet {
  const here = (refersTo: string): string | undefined => {
    const target = targetOf(refersTo);
    return target !== undefined && target.sheet.toLowerCase() === name.toLowerCase() ? target.range : undefined;
  };
  const own: Record<string, string> = {};
  // The sheet's own name wins over the workbook's.
  for (const { name: given, sheet, range } of names.on(name)) {
    if ((sheet === undefined || sheet === name) && !given.startsWith("_xlnm."))
      Object.defineProperty(own, given, { value: range, enumerable: true, configurable: true, writable: true });
  }
  const lists = content.lists.flatMap((list) => listOf(list, name, names, textsOf));
  const print = printOf(content.print, names.all, name, here);
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
  { ref, source, help, strict, asks }: RawList,
  sheet: string,
  names: Names,
  textsOf: Texts,
): readonly ListSpec[] {
  const rest = { ref, strict, ...(asks === undefined ? {} : { asks }), ...(help === undefined ? {} : { help }) };
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
  const named = names.named(source)?.refersTo;
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
