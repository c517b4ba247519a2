import { append } from "../../../src/basis/append.ts";
import { UNIT_SETS, type UnitSetName } from "../../../src/basis/quantities.ts";
import { type Failure, type Finding, fail, gravestFirst, type Result, succeed } from "../../../src/basis/result.ts";
import type { Unit } from "../../../src/basis/units.ts";
import { greatestOf } from "../../../src/numeric/extremes.ts";
import type { Cell } from "../../cells/cell.ts";
import { isTooLong, tooLong } from "../../cells/long-text.ts";
import type { Columns } from "../../tables/column.ts";
import { type Heading, headingOf } from "../../tables/heading.ts";
import { cellPlace, type TablePlace } from "../../tables/place.ts";
import { readWorkbook } from "../../xlsx/read-workbook.ts";
import { CURVE_COLUMNS, PUMP_COLUMNS } from "../columns.ts";
import { type CurveTable, readCurveTable } from "../curve-table.ts";
import { curveFindings } from "../drawn-curves.ts";
import { type PumpList, readPumpList } from "../pump-list.ts";
import { kindOfTable, type TableKind } from "../table-kind.ts";
import { csvRows } from "./csv-rows.ts";
import { fileText, unreadable } from "./file-text.ts";
import { withNumbers } from "./numbers-of-columns.ts";
import { tooGreat } from "./table-size.ts";
import { sheetTable } from "./xlsx-tables.ts";

export interface PumpFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** What files tell of pumps. With an error among the findings nothing is read. */
export interface ImportedPumps {
  readonly curves: CurveTable;
  /** Left out where no file lists the pumps. */
  readonly list?: PumpList;
}

interface FoundTable {
  readonly kind: TableKind;
  readonly place: TablePlace;
  readonly rows: readonly (readonly Cell[])[];
}

/** As many findings of one import as anybody reads. */
const MOST_FINDINGS = 60;

/**
 * Reads pumps from CSV and .xlsx files: a table of curves, one row a point, and where there is one a list of the pumps.
 * A workbook may hold both on two sheets. Columns without a unit are read in the unit set, with a caution.
 *
 * All or nothing: it fails with every mistake found, each with its cell. A figure that can be read in two ways is
 * refused, not guessed.
 */
export function importPumps(
  files: readonly PumpFile[],
  unitSet: UnitSetName,
  /** Told how far it has come, from 0 to 1. */
  progress: (share: number) => void = () => {},
): Result<ImportedPumps> {
  const findings: Finding[] = [];
  const add = (more: readonly Finding[] = []): void => append(findings, more);
  const tables: FoundTable[] = [];
  for (const [i, file] of files.entries()) {
    const found = tablesOf(file, (share) => progress((i + share) / files.length));
    add(found.findings);
    if (found.ok) append(tables, found.value);
  }
  const name = files.map((file) => file.name).join(", ");
  const curveTables = tables.filter(({ kind }) => kind === "curves");
  const lists = tables.filter(({ kind }) => kind === "list");
  if (findings.length === 0 && curveTables.length === 0) {
    return fail([{ code: "file-not-a-table", kind: "error", subject: name }]);
  }
  for (const extra of [...curveTables.slice(1), ...lists.slice(1)]) {
    const first = extra.kind === "curves" ? curveTables[0] : lists[0];
    const facts = { other: first?.place.name ?? "" };
    findings.push({ code: "table-second-of-its-kind", kind: "error", subject: extra.place.name, facts });
  }
  const [curveTable] = curveTables;
  const [listTable] = lists;
  const curves = curveTable && withFigures(curveTable, CURVE_COLUMNS);
  const list = listTable && withFigures(listTable, PUMP_COLUMNS);
  add(curves?.findings);
  add(list?.findings);
  if (hasError(findings)) return fail(limited(findings, name));

  const units = UNIT_SETS[unitSet];
  const readCurves = curves && readCurveTable(curves.rows, { place: curves.place, units });
  const readList = list && readPumpList(list.rows, { place: list.place, units });
  add(readCurves?.findings);
  add(readList?.findings);
  if (readCurves?.ok && curves !== undefined) {
    for (const pump of readCurves.value.pumps) add(pump.findings);
    add(curveFindings(readCurves.value.pumps, curves.place));
    add(unitsAssumed(curves, CURVE_COLUMNS, readCurves.value.units));
  }
  if (readList?.ok && list !== undefined) add(unitsAssumed(list, PUMP_COLUMNS, readList.value.units));
  if (readCurves?.ok && readList?.ok && curves !== undefined && list !== undefined) {
    add(unmatched(readCurves.value, readList.value, curves.place.name, list.place.name));
  }
  if (hasError(findings) || !readCurves?.ok) return fail(limited(findings, name));
  return succeed(
    { curves: readCurves.value, ...(readList?.ok ? { list: readList.value } : {}) },
    limited(findings, name),
  );
}

function tablesOf({ name, bytes }: PumpFile, progress: (share: number) => void): Result<readonly FoundTable[]> {
  const isZip = bytes[0] === 0x50 && bytes[1] === 0x4b;
  const isOldOffice = bytes[0] === 0xd0 && bytes[1] === 0xcf;
  return isZip || isOldOffice || /\.xls[xm]?$/i.test(name)
    ? workbookTables(name, bytes, progress)
    : csvTables(name, bytes);
}

function workbookTables(
  name: string,
  bytes: Uint8Array,
  progress: (share: number) => void,
): Result<readonly FoundTable[]> {
  const outcome = readWorkbook(bytes, undefined, progress);
  if (!outcome.ok) {
    const reason = outcome.refusal.message.replace(/\.$/, "");
    return unreadable(name, reason.charAt(0).toLowerCase() + reason.slice(1));
  }
  const found: FoundTable[] = [];
  for (const sheet of outcome.workbook.sheets) {
    const table = sheetTable(sheet, name);
    if (!table.ok) return table;
    const kind = kindOfTable(table.value.rows);
    if (kind !== undefined) found.push({ kind, ...table.value });
  }
  return succeed(found);
}

function csvTables(name: string, bytes: Uint8Array): Result<readonly FoundTable[]> {
  const text = fileText(bytes, name);
  if (!text.ok) return text;
  const rows = csvRows(text.value, name);
  if (!rows.ok) return rows;
  const reason = tooGreat(rows.value.length, greatestOf(rows.value.map((row) => row.length)));
  if (reason !== undefined) return unreadable(name, reason);
  const kind = kindOfTable(rows.value);
  if (kind === undefined) return fail([{ code: "file-not-a-table", kind: "error", subject: name }]);
  return succeed([{ kind, place: { name, corner: { row: 0, column: 0 } }, rows: rows.value }]);
}

interface Figures extends FoundTable {
  /** Columns whose heading states their unit. */
  readonly stated: ReadonlySet<string>;
  readonly findings: readonly Finding[];
}

function withFigures<K extends string>(table: FoundTable, columns: Columns<K>): Figures {
  const heading = headingOf<K>(table.rows, columns, table.place);
  if (heading === undefined || !heading.ok) return { ...table, stated: new Set(), findings: heading?.findings ?? [] };
  const long = tooLongIn(table, heading.value, columns);
  if (long !== undefined) return { ...table, stated: new Set(), findings: long.findings };
  const { rows, findings } = withNumbers(table.rows, heading.value, columns, table.place);
  return { ...table, rows, stated: new Set(Object.keys(heading.value.units)), findings };
}

/** The first text of a column that is too long to be read. */
function tooLongIn<K extends string>(
  { rows, place }: FoundTable,
  { at }: Heading<K>,
  columns: Columns<K>,
): Failure | undefined {
  const read = Object.entries(at) as [K, number][];
  for (const [i, row] of rows.entries()) {
    for (const [key, column] of read) {
      const cell = row[column];
      if (isTooLong(cell)) return tooLong(cellPlace(place, i, column, columns[key].name), cell);
    }
  }
  return undefined;
}

/** One caution for the columns whose heading has no unit. Efficiency shows by itself what it is. */
function unitsAssumed<K extends string>(
  { place, stated }: Figures,
  columns: Columns<K>,
  units: Readonly<Partial<Record<K, Unit>>>,
): readonly Finding[] {
  const assumed = (Object.entries(units) as [K, Unit][]).filter(
    ([key, { dimension }]) => !stated.has(key) && columns[key].quantity !== undefined && dimension !== "ratio",
  );
  if (assumed.length === 0) return [];
  const facts = { columns: assumed.map(([key, { symbol }]) => `${columns[key].name} in ${symbol}`).join(", ") };
  return [{ code: "table-unit-assumed", kind: "assumed", subject: place.name, facts }];
}

/** Pumps of one table that the other does not know. */
function unmatched(curves: CurveTable, list: PumpList, curvesName: string, listName: string): readonly Finding[] {
  const keysOf = (pumps: readonly { readonly name: string }[]): ReadonlySet<string> =>
    new Set(pumps.map(({ name }) => name.toLowerCase()));
  const withCurves = keysOf(curves.pumps);
  const listed = keysOf(list.pumps);
  return [
    ...curves.pumps
      .filter(({ name }) => !listed.has(name.toLowerCase()))
      .map(({ name }) => caution("table-pump-not-listed", listName, name, curvesName)),
    ...list.pumps
      .filter(({ name }) => !withCurves.has(name.toLowerCase()))
      .map(({ name }) => caution("table-pump-without-curves", listName, name, curvesName)),
  ];
}

function caution(
  code: "table-pump-not-listed" | "table-pump-without-curves",
  subject: string,
  given: string,
  other: string,
): Finding {
  return { code, kind: "check", subject, given, facts: { other } };
}

function hasError(findings: readonly Finding[]): boolean {
  return findings.some(({ kind }) => kind === "error");
}

/** Errors first, and no more than anybody reads. */
function limited(findings: readonly Finding[], subject: string): readonly Finding[] {
  const ordered = gravestFirst(findings);
  if (ordered.length <= MOST_FINDINGS) return ordered;
  const count = ordered.length - MOST_FINDINGS;
  return [
    ...ordered.slice(0, MOST_FINDINGS),
    { code: "table-findings-left-out", kind: "check", subject, facts: { count } },
  ];
}
