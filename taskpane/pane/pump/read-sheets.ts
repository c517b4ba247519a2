import type { Cell } from "../../../shared/cells/cell.ts";
import { isAbsent } from "../../../shared/cells/cell.ts";
import { boxOf } from "../../../shared/ports/a1.ts";
import type { SheetHost } from "../../../shared/ports/sheet-host.ts";
import { quotedSheetName } from "../../../shared/ports/sheet-name.ts";
import { readCurveTable } from "../../../shared/pump-table/curve-table.ts";
import { curveFindings } from "../../../shared/pump-table/drawn-curves.ts";
import type { PumpTables } from "../../../shared/pump-table/joined-tables.ts";
import { readPumpList } from "../../../shared/pump-table/pump-list.ts";
import { holdsCurves, kindOfSheet, kindOfTable, type TableKind } from "../../../shared/pump-table/table-kind.ts";
import { ROWS_SEARCHED } from "../../../shared/tables/heading.ts";
import type { TablePlace } from "../../../shared/tables/place.ts";
import { inWords } from "../../../shared/text/words.ts";
import { append } from "../../../src/basis/append.ts";
import { nearestNames } from "../../../src/basis/nearest.ts";
import { UNIT_SETS, type UnitSetName } from "../../../src/basis/quantities.ts";
import { all, andThen, type Finding, fail, type Result, succeed } from "../../../src/basis/result.ts";
import { type Candidates, candidatesOf } from "./candidates.ts";

/** Rows read at a time. A sheet is read until as many rows in a row are blank. */
const ROWS_AT_ONCE = 1000;
const LAST_COLUMN = "Z";
const MOST_ROWS = 100_000;
const RANGE = /^\$?[A-Za-z]{1,3}\$?[1-9]\d{0,6}(?::\$?[A-Za-z]{1,3}\$?[1-9]\d{0,6})?$/;

/**
 * Reads the pumps of the workbook: of every sheet that has the headings of a table of curves or of a list of pumps, or
 * of the sheets and ranges typed, parted by semicolons. A sheet of curves that cannot be read is told and the others
 * are read; a list with a mistake stops the reading, for the limits it states would not count. Fails where nothing is
 * read, with every mistake found; rejects where the host cannot read.
 */
export async function readPumpSheets(
  host: SheetHost,
  typed: string,
  unitSet: UnitSetName,
): Promise<Result<Candidates>> {
  const names = await host.sheetNames();
  const found = typed.trim() === "" ? succeed(await tablesFound(host, names)) : await tablesTyped(host, typed, names);
  if (!found.ok) return found;
  const tables: PumpTables[] = [];
  const findings: Finding[] = [];
  let isRead = true;
  for (const table of found.value) {
    const read = tableOf(table, unitSet);
    append(findings, read.findings);
    if (read.ok) tables.push(read.value);
    else if (table.kind === "list" || typed.trim() !== "") isRead = false;
  }
  const sources = tables.filter(({ curves }) => curves !== undefined).map(({ source }) => `“${source}”`);
  if (!isRead || sources.length === 0) return fail(findings);
  return succeed(candidatesOf(inWords(sources, "and"), tables, findings));
}

interface SheetTable {
  readonly kind: TableKind;
  readonly sheet: string;
  readonly place: TablePlace;
  readonly rows: readonly (readonly Cell[])[];
}

function tableOf({ kind, sheet, place, rows }: SheetTable, unitSet: UnitSetName): Result<PumpTables> {
  const units = UNIT_SETS[unitSet];
  if (kind === "list") {
    return andThen(readPumpList(rows, { place, units }), (list) => succeed({ source: sheet, list }));
  }
  return andThen(readCurveTable(rows, { place, units }), (curves) =>
    succeed({ source: sheet, curves }, curveFindings(curves.pumps, place)),
  );
}

/** The tables of every sheet that has their headings, in the order of the tabs. */
async function tablesFound(host: SheetHost, names: readonly string[]): Promise<readonly SheetTable[]> {
  const tops = await host.read(names.map((name) => `${quotedSheetName(name)}!A1:${LAST_COLUMN}${ROWS_SEARCHED}`));
  const tables: SheetTable[] = [];
  for (const [i, sheet] of names.entries()) {
    const kind = kindOfSheet(tops[i] ?? []);
    if (kind === undefined) continue;
    const rows = await wholeSheet(host, sheet);
    if (kind === "list" || holdsCurves(rows)) tables.push({ kind, sheet, place: placeOn(sheet), rows });
  }
  return tables;
}

async function tablesTyped(
  host: SheetHost,
  typed: string,
  names: readonly string[],
): Promise<Result<readonly SheetTable[]>> {
  const read: Result<SheetTable>[] = [];
  // A semicolon within quotes is one of a name.
  for (const [place] of typed.matchAll(/\s*(?:'(?:[^']|'')+'[^;]*|[^;]+)/g)) {
    if (place.trim() !== "") read.push(await tableAt(host, place, names));
  }
  return all(read);
}

async function tableAt(host: SheetHost, typed: string, names: readonly string[]): Promise<Result<SheetTable>> {
  const { sheet, range } = placeOf(typed);
  const name = names.find((other) => other.toLowerCase() === sheet.toLowerCase());
  if (name === undefined) {
    const near = nearestNames(sheet, names);
    const suggestions = near.length > 0 ? near : names.slice(0, 6);
    return fail([{ code: "name-unknown", kind: "error", subject: "pumps: sheet", given: sheet, suggestions }]);
  }
  if (range !== undefined && !RANGE.test(range)) {
    const suggestions = ["a range such as A4:H220"];
    return fail([{ code: "wrong-kind", kind: "error", subject: "pumps: range", given: range, suggestions }]);
  }
  const rows = range === undefined ? await wholeSheet(host, name) : await rangeOf(host, name, range);
  const kind = kindOfTable(rows) ?? "curves";
  return succeed({ kind, sheet: name, place: placeOn(name, range), rows });
}

async function rangeOf(host: SheetHost, name: string, range: string): Promise<readonly (readonly Cell[])[]> {
  const [rows = []] = await host.read([`${quotedSheetName(name)}!${range}`]);
  return rows;
}

function placeOn(sheet: string, range = "A1"): TablePlace {
  const { top, left } = boxOf(range);
  return { name: `“${sheet}”`, corner: { row: top, column: left } };
}

/** Every row of a sheet down to its last filled one: rows added under a table count without any name being moved. */
async function wholeSheet(host: SheetHost, name: string): Promise<readonly (readonly Cell[])[]> {
  const rows: (readonly Cell[])[] = [];
  for (let first = 1; first < MOST_ROWS; first += ROWS_AT_ONCE) {
    const range = `A${first}:${LAST_COLUMN}${first + ROWS_AT_ONCE - 1}`;
    const [read = []] = await host.read([`${quotedSheetName(name)}!${range}`]);
    const filled = read.findLastIndex((row) => !row.every(isAbsent));
    if (filled < 0) break;
    append(rows, read);
  }
  return rows.slice(0, rows.findLastIndex((row) => !row.every(isAbsent)) + 1);
}

/** "'Pump curves'!A4:H220" or "Pump curves" taken apart. */
function placeOf(typed: string): { readonly sheet: string; readonly range?: string } {
  const text = typed.trim();
  const quoted = /^'((?:[^']|'')+)'(?:!(.*))?$/.exec(text);
  const [, sheet = text, range] = quoted ?? /^(.*?)(?:!([^!]*))?$/.exec(text) ?? [];
  const name = quoted === null ? sheet.trim() : sheet.replaceAll("''", "'");
  return range === undefined ? { sheet: name } : { sheet: name, range: range.trim() };
}
