import type { UnitSet } from "../../src/basis/quantities.ts";
import { andThen, type Finding, fail, type Result, succeed } from "../../src/basis/result.ts";
import type { Unit } from "../../src/basis/units.ts";
import type { PumpLimits } from "../../src/pump/offered-pump.ts";
import type { Rows } from "../tables/heading.ts";
import { rowNumber, type TablePlace } from "../tables/place.ts";
import { readTable, type Table, unitsRead } from "../tables/read-table.ts";
import { LIMIT_COLUMNS, type LimitColumn, PUMP_COLUMNS, type PumpColumn } from "./columns.ts";
import { limitsContradict } from "./pump-limits.ts";

type TextColumn = Exclude<PumpColumn, "pump" | LimitColumn | "solidsPassage">;

/** What a maker's list says of a pump. Texts as written; a blank cell is no entry. */
export interface ListedPump extends PumpLimits, Readonly<Partial<Record<TextColumn, string>>> {
  readonly name: string;
  /** Largest solid that passes, m. */
  readonly solidsPassage?: number;
}

export interface PumpList {
  readonly pumps: readonly ListedPump[];
  /** The unit each column was read in. */
  readonly units: Readonly<Partial<Record<PumpColumn, Unit>>>;
}

/**
 * Reads a list of pumps, one row a pump, its columns in any order. A size, a class or a material stays the text it is;
 * a figure of 0 may be a blank cell and is no entry. Fails with every mistake of its cells, and then with every one of
 * its rows.
 */
export function readPumpList(
  rows: Rows,
  { place, units }: { readonly place: TablePlace; readonly units: UnitSet },
): Result<PumpList> {
  return andThen(readTable(rows, PUMP_COLUMNS, { place, units }), (table) => {
    const findings = rowFindings(table, place);
    if (findings.length > 0) return fail(findings);
    const pumps = table.rows.map(({ values: { pump, ...rest } }): ListedPump => {
      const stated = Object.entries(rest).filter(([, value]) => value !== 0);
      return { name: pump, ...Object.fromEntries(stated) };
    });
    return succeed({ pumps, units: unitsRead(table.heading, PUMP_COLUMNS, units) });
  });
}

function rowFindings({ rows }: Table<typeof PUMP_COLUMNS>, place: TablePlace): readonly Finding[] {
  const rowOf = new Map<string, number>();
  return rows.flatMap(({ values, row, placeOf }): readonly Finding[] => {
    const given = values.pump;
    const subject = placeOf("pump");
    const first = rowOf.get(given.toLowerCase());
    if (first !== undefined) {
      return [
        { code: "table-pump-repeated", kind: "error", subject, given, facts: { first: rowNumber(place, first) } },
      ];
    }
    rowOf.set(given.toLowerCase(), row);
    return limitsContradict(values, subject, given);
  });
}

/** The limits a list states for a pump; those it leaves open are left out. */
export function limitsOf(pump: ListedPump): PumpLimits {
  return Object.fromEntries(
    LIMIT_COLUMNS.flatMap((key) => (pump[key] === undefined ? [] : [[key, pump[key]] as const])),
  );
}
