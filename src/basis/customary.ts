import { QUANTITIES, UNIT_SETS } from "./quantities.ts";
import type { Unit } from "./units.ts";

/** Used nowhere but where a comma parts thousands, beside those that the US unit set alone has. */
const OTHERS = [
  "psig",
  "psia",
  "US gal/s",
  "US gal/d",
  "MGD",
  "ft³/s",
  "bbl/d",
  "bbl/h",
  "yd",
  "mi",
  "ft²",
  "US gal",
  "ft³",
  "yd³",
  "acre-ft",
  "ftH2O",
  "ft/min",
  "lb/h",
  "short ton",
  // No pump is given with thousandths of a revolution a minute.
  "rpm",
];

/**
 * Units with which "1,200" is twelve hundred. Inches are none: "6,065 in" is a bore with a decimal comma, and no size of a pipe or
 * an impeller has thousands of inches.
 */
const CUSTOMARY: ReadonlySet<string> = new Set([
  ...OTHERS,
  ...(Object.keys(QUANTITIES) as (keyof typeof QUANTITIES)[])
    .filter((quantity) => UNIT_SETS.US[quantity] !== UNIT_SETS.SI[quantity])
    .map((quantity) => UNIT_SETS.US[quantity].symbol)
    .filter((symbol) => !symbol.startsWith("in") && symbol !== "kW" && symbol !== "cP"),
]);

/** Whether a comma before three digits parts thousands, in a number with this unit. */
export function partsThousands({ symbol }: Unit): boolean {
  return CUSTOMARY.has(symbol);
}
