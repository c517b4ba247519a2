import type { Cell } from "../../../shared/cells/cell.ts";
import { isAbsent } from "../../../shared/cells/cell.ts";
import { boxOf } from "../../../shared/ports/a1.ts";
import type { SheetHost } from "../../../shared/ports/sheet-host.ts";
import { quotedSheetName } from "../../../shared/ports/sheet-name.ts";
import { readCurveTable } from "../../../shared/pump-table/curve-table.ts";
import { curveFindings } from "../../../shared/pump-table/drawn-curves.ts";
import { readPumpList } from "../../../shared/pump-table/pump-list.ts";
import type { TablePlace } from "../../../shared/tables/place.ts";
import { append } from "../../../src/basis/append.ts";
import { nearestNames } from "../../../src/basis/nearest.ts";
import { UNIT_SETS, type UnitSetName } from "../../../src/basis/quantities.ts";
import { fail, type Result, succeed } from "../../../src/basis/result.ts";
import { type Candidates, candidatesOf } from "./candidates.ts";

/** Sheets, or ranges on sheets, as typed: "Pump curves", "Pump curves!A4:H220". */
export interface PumpPlaces {
  readonly curves: string;
  /** Blank where nothing lists the pumps. */
  readonly list: string;
}

/** Rows read at a time. A sheet is read until as many rows in a row are blank. */
const ROWS_AT_ONCE = 1000;
const LAST_COLUMN = "Z";
const MOST_ROWS = 100_000;
const RANGE = /^\$?[A-Za-z]{1,3}\$?[1-9]\d{0,6}(?::\$?[A-Za-z]{1,3}\$?[1-9]\d{0,6})?$/;

/**
 * The sheets of pumps among the names of a workbook: "Pump curves" and "Pumps", or the first that begin so. Blank where
 * there is none.
 */
export function usualPlaces(names: readonly string[]): PumpPlaces {
  const named = (wanted: string): string =>
    names.find((name) => name.toLowerCase() === wanted) ??
    names.find((name) => name.toLowerCase().startsWith(`${wanted} (`)) ??
    "";
  return { curves: named("pump curves"), list: named("pumps") };
}

/**
 * Reads pumps from the workbook: a table of curves, one row a point, and where it is named a list of the pumps. Fails
 * with every mistake found, each with its cell; rejects where the host cannot read.
 */
export async function readPumpSheets(
  host: SheetHost,
  { curves: curvesAt, list: listAt }: PumpPlaces,
  unitSet: UnitSetName,
): Promise<Result<Candidates>> {
  const names = await host.sheetNames();
  const curvesTable = await tableAt(host, curvesAt, names, "curves");
  if (!curvesTable.ok) return curvesTable;
  const units = UNIT_SETS[unitSet];
  const curves = readCurveTable(curvesTable.value.rows, { place: curvesTable.value.place, units });
  const from = `“${curvesAt.trim()}”`;
  if (listAt.trim() === "") {
    if (!curves.ok) return curves;
    const drawn = curveFindings(curves.value.pumps, curvesTable.value.place);
    return succeed(candidatesOf(from, { curves: curves.value }, [...curves.findings, ...drawn]));
  }
  const listTable = await tableAt(host, listAt, names, "pump list");
  if (!listTable.ok) return fail([...curves.findings, ...listTable.findings]);
  const list = readPumpList(listTable.value.rows, { place: listTable.value.place, units });
  if (!curves.ok || !list.ok) return fail([...curves.findings, ...list.findings]);
  const drawn = curveFindings(curves.value.pumps, curvesTable.value.place);
  return succeed(
    candidatesOf(`${from} and “${listAt.trim()}”`, { curves: curves.value, list: list.value }, [
      ...curves.findings,
      ...list.findings,
      ...drawn,
    ]),
  );
}

interface SheetTable {
  readonly place: TablePlace;
  readonly rows: readonly (readonly Cell[])[];
}

async function tableAt(
  host: SheetHost,
  typed: string,
  names: readonly string[],
  subject: string,
): Promise<Result<SheetTable>> {
  const { sheet, range } = placeOf(typed);
  const name = names.find((other) => other.toLowerCase() === sheet.toLowerCase());
  if (name === undefined) {
    const near = nearestNames(sheet, names);
    const suggestions = near.length > 0 ? near : names.slice(0, 6);
    return fail([{ code: "name-unknown", kind: "error", subject: `${subject}: sheet`, given: sheet, suggestions }]);
  }
  if (range === undefined) {
    const place = { name: `“${name}”`, corner: { row: 0, column: 0 } };
    return succeed({ place, rows: await wholeSheet(host, name) });
  }
  if (!RANGE.test(range)) {
    const suggestions = ["a range such as A4:H220"];
    return fail([{ code: "wrong-kind", kind: "error", subject: `${subject}: range`, given: range, suggestions }]);
  }
  const { top, left } = boxOf(range);
  const [rows = []] = await host.read([`${quotedSheetName(name)}!${range}`]);
  return succeed({ place: { name: `“${name}”`, corner: { row: top, column: left } }, rows });
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
