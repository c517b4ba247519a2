import type { Finding } from "../../src/basis/result.ts";
import type { PumpLimits } from "../../src/pump/offered-pump.ts";
import { CURVE_COLUMNS, type LimitColumn } from "./columns.ts";

const LIMIT_PAIRS = [
  ["leastSpeed", "greatestSpeed"],
  ["leastImpeller", "greatestImpeller"],
] as const satisfies readonly (readonly [LimitColumn, LimitColumn])[];

/** Limits of a pump whose least is more than their greatest; 0 is none. */
export function limitsContradict(limits: PumpLimits, subject: string, given: string): readonly Finding[] {
  return LIMIT_PAIRS.filter(
    ([least, greatest]) => (limits[least] || 0) > (limits[greatest] || Number.POSITIVE_INFINITY),
  ).map(([least, greatest]) => ({
    code: "table-limits-contradict",
    kind: "error",
    subject,
    given,
    facts: { least: CURVE_COLUMNS[least].name, greatest: CURVE_COLUMNS[greatest].name },
  }));
}
