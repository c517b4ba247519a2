import { outOfRange } from "../../src/basis/method.ts";
import type { Quantity, UnitSet } from "../../src/basis/quantities.ts";
import { readQuantity } from "../../src/basis/quantity-text.ts";
import { type Finding, fail, type Result, succeed } from "../../src/basis/result.ts";
import type { Unit } from "../../src/basis/units.ts";
import type { PumpLimits } from "../../src/pump/offered-pump.ts";
import { type Cell, isAbsent } from "../cells/cell.ts";
import { wrongKind } from "../cells/refused-cell.ts";
import { LIMIT_COLUMNS, type LimitColumn, PUMP_COLUMNS, type PumpColumn } from "./columns.ts";
import { limitsContradict, type Rows } from "./curve-table.ts";
import { headingOf } from "./heading.ts";
import { cellPlace, rowNumber, type TablePlace } from "./place.ts";

type TextColumn = Exclude<PumpColumn, "pump" | LimitColumn | "greatestPressure" | "solidsPassage">;

/** What a maker's list says of a pump. Texts as written; a blank cell is no entry. */
export interface ListedPump extends PumpLimits, Readonly<Partial<Record<TextColumn, string>>> {
  readonly name: string;
  /** Gauge, Pa. */
  readonly greatestPressure?: number;
  /** Largest solid that passes, m. */
  readonly solidsPassage?: number;
}

export interface PumpList {
  readonly pumps: readonly ListedPump[];
  /** The unit each column was read in. */
  readonly units: Readonly<Partial<Record<PumpColumn, Unit>>>;
}

/**
 * Reads a list of pumps, one row a pump, its columns in any order. A size, a class or a material stays the text it is.
 * Fails with every mistake there is, each with its cell.
 */
export function readPumpList(
  rows: Rows,
  { place, units }: { readonly place: TablePlace; readonly units: UnitSet },
): Result<PumpList> {
  const heading = headingOf<PumpColumn>(rows, PUMP_COLUMNS, ["pump"], place);
  if (heading === undefined) {
    const suggestions = ["pump", "suction size", "greatest impeller"];
    return fail([{ code: "table-heading-missing", severity: "error", subject: place.name, suggestions }]);
  }
  if (!heading.ok) return heading;
  const { at, firstRow } = heading.value;
  const unitOf = (quantity: Quantity, key: PumpColumn): Unit => heading.value.units[key] ?? units[quantity];
  const columns = Object.entries(at) as [PumpColumn, number][];
  const pumps: ListedPump[] = [];
  const findings: Finding[] = [];
  const rowOf = new Map<string, number>();
  for (let index = firstRow; index < rows.length; index += 1) {
    const row = rows[index] as readonly Cell[];
    if (columns.every(([, column]) => isBlank(row[column] ?? null))) continue;
    const entry: Partial<Record<PumpColumn, string | number>> = {};
    for (const [key, column] of columns) {
      const cell = row[column] ?? null;
      const { name, quantity } = PUMP_COLUMNS[key] as { name: string; quantity?: Quantity };
      const subject = cellPlace(place, index, column, name);
      if (key === "pump" ? isBlank(cell) : isAbsent(cell)) continue;
      const read =
        quantity === undefined ? textOf(cell, subject) : amountOf(cell, quantity, unitOf(quantity, key), subject);
      if (!read.ok) findings.push(...read.findings);
      else if (read.value !== 0) entry[key] = read.value;
    }
    const { pump, ...rest } = entry;
    const subject = cellPlace(place, index, at.pump as number, PUMP_COLUMNS.pump.name);
    if (typeof pump !== "string") {
      findings.push({ code: "left-out", severity: "error", subject, suggestions: ["the name of the pump"] });
      continue;
    }
    const key = pump.toLowerCase();
    const first = rowOf.get(key);
    if (first !== undefined) {
      const facts = { first: rowNumber(place, first) };
      findings.push({ code: "table-pump-repeated", severity: "error", subject, given: pump, facts });
      continue;
    }
    rowOf.set(key, index);
    const listed = { name: pump, ...rest } as ListedPump;
    for (const [least, greatest] of limitsContradict(listed)) {
      const facts = { least: PUMP_COLUMNS[least].name, greatest: PUMP_COLUMNS[greatest].name };
      findings.push({ code: "table-limits-contradict", severity: "error", subject, given: pump, facts });
    }
    pumps.push(listed);
  }
  if (findings.length > 0) return fail(findings);
  if (pumps.length === 0) return fail([{ code: "table-no-rows", severity: "error", subject: place.name }]);
  const read = columns.flatMap(([key]) => {
    const { quantity } = PUMP_COLUMNS[key] as { quantity?: Quantity };
    return quantity === undefined ? [] : [[key, unitOf(quantity, key)] as const];
  });
  return succeed({ pumps, units: Object.fromEntries(read) });
}

/** The limits a list states for a pump; those it leaves open are left out. */
export function limitsOf(pump: ListedPump): PumpLimits {
  return Object.fromEntries(
    LIMIT_COLUMNS.flatMap((key) => (pump[key] === undefined ? [] : [[key, pump[key]] as const])),
  );
}

function isBlank(cell: Cell): boolean {
  return isAbsent(cell) || cell === 0;
}

function textOf(cell: Cell, subject: string): Result<string | number> {
  if (typeof cell === "string") return succeed(cell.trim());
  if (typeof cell === "number") return succeed(cell === 0 ? 0 : String(cell));
  return wrongKind(subject, cell, "a text");
}

/** A figure may not be negative; 0 may be a blank cell and is no entry. */
function amountOf(cell: Cell, quantity: Quantity, unit: Unit, subject: string): Result<number> {
  const read =
    typeof cell === "number"
      ? succeed(cell * unit.factor)
      : typeof cell === "string"
        ? readQuantity(cell, quantity, subject)
        : wrongKind(subject, cell, "a number");
  if (!read.ok || read.value >= 0) return read;
  return fail([outOfRange(subject, quantity, read.value, "at least", 0)]);
}
