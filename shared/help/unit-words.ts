import { printedUnit, type Quantity, UNIT_SET_NAMES, UNIT_SETS, type UnitSetName } from "../../src/basis/quantities.ts";
import type { Entry, Example } from "../catalogue/entry.ts";
import { HOW_READ } from "../catalogue/parameters/share.ts";

/** "ft (US) or m (SI, METRIC)". */
export function unitsOf(quantity: Quantity): string {
  if (quantity === "ratio") return "plain number";
  if (quantity === "percent") return `%: ${HOW_READ}`;
  return unitOfEachSet(quantity);
}

export function unitOfEachSet(quantity: Quantity): string {
  const symbols = UNIT_SET_NAMES.map((set) => printedUnit(quantity, set) || UNIT_SETS[set][quantity].symbol);
  const different = [...new Set(symbols)];
  if (different.length === 1) return symbols[0] as string;
  return different
    .map((symbol) => `${symbol} (${UNIT_SET_NAMES.filter((_, i) => symbols[i] === symbol).join(", ")})`)
    .join(", ");
}

/** The unit set a call is made in. */
export function unitSetOf({ unitsAt, unitless }: Entry, args: Example["args"]): UnitSetName {
  const given = unitless ? undefined : args[unitsAt];
  return UNIT_SET_NAMES.find((name) => typeof given === "string" && given.toUpperCase() === name) ?? "US";
}
