import { type Quantity, UNIT_SETS, type UnitSetName } from "../../src/basis/quantities.ts";
import { readNumber, readQuantity, splitAmount } from "../../src/basis/quantity-text.ts";
import { andThen, type Result, succeed } from "../../src/basis/result.ts";
import { toEngine } from "../../src/basis/units.ts";

/** Reads what was typed into a box: a plain number in the unit set, or a number with its own unit. Engine unit. */
export function readAmount(typed: string, quantity: Quantity, units: UnitSetName, subject: string): Result<number> {
  const parts = splitAmount(typed);
  if (parts === undefined || parts.unit !== "") return readQuantity(typed, quantity, subject);
  return andThen(readNumber(parts.number, subject), (value) => succeed(toEngine(value, UNIT_SETS[units][quantity])));
}

/** The number of a text that states no unit. */
export function bareNumber(typed: string): number | undefined {
  const parts = splitAmount(typed);
  if (parts?.unit !== "") return undefined;
  const read = readNumber(parts.number, "number");
  return read.ok ? read.value : undefined;
}
