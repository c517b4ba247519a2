import type { Finding } from "../../src/basis/result.ts";
import type { OfferedCurve, OfferedPump, PumpLimits } from "../../src/pump/offered-pump.ts";
import { LIMIT_COLUMNS, type LimitColumn } from "./columns.ts";
import type { CurveTable } from "./curve-table.ts";
import { limitsOf, type PumpList } from "./pump-list.ts";

/** Pumps as one sheet or file has them: their curves, a list of them, or both. */
export interface PumpTables {
  /** Name of the sheet or file. */
  readonly source: string;
  readonly curves?: CurveTable;
  readonly list?: PumpList;
}

export interface JoinedPumps {
  readonly pumps: readonly OfferedPump[];
  readonly findings: readonly Finding[];
}

/**
 * The usable pumps of several tables, with the limits the lists state before those of their rows. A pump that a later
 * table has again with the same figures is taken once; with others it stands beside the first, named with its table.
 * Either is told.
 */
export function joinedPumps(tables: readonly PumpTables[]): JoinedPumps {
  const found: Finding[] = [];
  const listed = listedLimits(tables, found);
  const pumps = new Map<string, OfferedPump & { readonly source: string }>();
  for (const { source, curves } of tables) {
    const again = new Repeated(source);
    const apart = new Repeated(source);
    for (const { name, curves: own, limits, usable } of curves?.pumps ?? []) {
      if (!usable) continue;
      const stated = listed.get(name.toLowerCase());
      const pump = { name, curves: own, limits: { ...limits, ...stated }, source };
      const first = pumps.get(name.toLowerCase());
      if (first === undefined) pumps.set(name.toLowerCase(), pump);
      else if (isSamePump(first, pump)) again.add(first.source, name);
      else {
        const named = freeName(pumps, `${name} (${source})`);
        pumps.set(named.toLowerCase(), { ...pump, name: named });
        apart.add(first.source, name);
      }
    }
    found.push(...again.findings("table-pumps-again"), ...apart.findings("table-pumps-differ"));
  }
  return { pumps: [...pumps.values()], findings: found };
}

/** Names of one table that earlier tables have, by the table that had them first. */
class Repeated {
  readonly #subject: string;
  readonly #byOther = new Map<string, string[]>();

  constructor(source: string) {
    this.#subject = `“${source}”`;
  }

  add(source: string, name: string): void {
    const names = this.#byOther.get(source) ?? [];
    names.push(name);
    this.#byOther.set(source, names);
  }

  findings(code: "table-pumps-again" | "table-pumps-differ" | "table-lists-differ"): readonly Finding[] {
    return [...this.#byOther].map(([other, names]) => {
      const facts = { other: `“${other}”`, more: Math.max(0, names.length - NAMED) };
      return { code, kind: "check", subject: this.#subject, given: names.slice(0, NAMED).join("”, “"), facts };
    });
  }
}

/** As many pumps as a finding names before it counts the rest. */
const NAMED = 4;

/** By the lower-case name of each pump. Where two lists differ the narrower limit counts. */
function listedLimits(tables: readonly PumpTables[], found: Finding[]): ReadonlyMap<string, PumpLimits> {
  const listed = new Map<string, { readonly limits: PumpLimits; readonly source: string }>();
  for (const { source, list } of tables) {
    const differing = new Repeated(source);
    for (const pump of list?.pumps ?? []) {
      const limits = limitsOf(pump);
      const key = pump.name.toLowerCase();
      const first = listed.get(key);
      if (first === undefined) listed.set(key, { limits, source });
      else {
        if (!isSameLimits(first.limits, limits)) differing.add(first.source, pump.name);
        listed.set(key, { ...first, limits: narrower(first.limits, limits) });
      }
    }
    found.push(...differing.findings("table-lists-differ"));
  }
  return new Map([...listed].map(([name, { limits }]) => [name, limits]));
}

function narrower(one: PumpLimits, other: PumpLimits): PumpLimits {
  const both: { [K in LimitColumn]?: number } = { ...other, ...one };
  for (const key of LIMIT_COLUMNS) {
    const [a, b] = [one[key], other[key]];
    if (a === undefined || b === undefined) continue;
    both[key] = key.startsWith("least") ? Math.max(a, b) : Math.min(a, b);
  }
  return both;
}

function isSamePump(one: OfferedPump, other: OfferedPump): boolean {
  return (
    isSameLimits(one.limits, other.limits) &&
    one.curves.length === other.curves.length &&
    one.curves.every((curve, i) => isSameCurve(curve, other.curves[i] as OfferedCurve))
  );
}

function isSameCurve(one: OfferedCurve, other: OfferedCurve): boolean {
  return (
    isSame(one.speed, other.speed) &&
    isSame(one.diameter, other.diameter) &&
    one.points.length === other.points.length &&
    one.points.every((point, i) =>
      (["flow", "head", "efficiency", "npshRequired", "power"] as const).every((key) =>
        isSame(point[key], other.points[i]?.[key]),
      ),
    )
  );
}

function isSameLimits(one: PumpLimits, other: PumpLimits): boolean {
  return LIMIT_COLUMNS.every((key) => isSame(one[key], other[key]));
}

/** But for the dust of having been converted from another unit. */
function isSame(one: number | undefined, other: number | undefined): boolean {
  if (one === undefined || other === undefined) return one === other;
  return Math.abs(one - other) <= 1e-9 * Math.max(Math.abs(one), Math.abs(other));
}

function freeName(pumps: ReadonlyMap<string, unknown>, name: string): string {
  let free = name;
  for (let n = 2; pumps.has(free.toLowerCase()); n += 1) free = `${name} ${n}`;
  return free;
}
