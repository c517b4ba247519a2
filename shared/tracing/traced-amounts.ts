import type { Quantity, UnitSetName } from "../../src/basis/quantities.ts";
import { QUANTITIES } from "../../src/basis/quantities.ts";
import type { UnitSymbol } from "../../src/basis/units.ts";
import { CURVE_COLUMNS } from "../pump-table/columns.ts";

/** What can be traced against the flow: columns of a table of pump curves. */
export const TRACED_KEYS = ["head", "efficiency", "npshRequired", "power"] as const;
export type TracedKey = (typeof TRACED_KEYS)[number];
export type AxisKey = "flow" | TracedKey;

/** Units a printed curve may be drawn in, by what its axis measures. */
const PRINTED_UNITS = {
  flow: ["US gpm", "m³/h", "L/s", "L/min", "m³/min", "m³/s", "imp gpm", "MGD", "ft³/s", "ML/d"],
  head: ["ft", "m"],
  percent: ["%"],
  power: ["hp", "kW", "hp metric", "W"],
  size: ["in", "mm"],
  speed: ["rpm"],
} as const satisfies Partial<Record<Quantity, readonly UnitSymbol[]>>;

export function axisName(key: AxisKey): string {
  return `${CURVE_COLUMNS[key].name} axis`;
}

export function unitsOfAxis(key: AxisKey): readonly UnitSymbol[] {
  return PRINTED_UNITS[CURVE_COLUMNS[key].quantity];
}

export const DIAMETER_UNITS: readonly UnitSymbol[] = PRINTED_UNITS.size;

/** The reader's own unit, which the axis of a new picture starts with. */
export function usualUnit(key: AxisKey | "diameter", units: UnitSetName): UnitSymbol {
  return QUANTITIES[CURVE_COLUMNS[key].quantity][units];
}
