import { type Quantity, UNIT_SETS, type UnitSetName } from "../../src/basis/quantities.ts";
import { readNumber, splitAmount } from "../../src/basis/quantity-text.ts";
import { type Result, succeed } from "../../src/basis/result.ts";
import { amountOf } from "../cells/amount-cell.ts";
import { isTooLong, readShort } from "../cells/long-text.ts";

/** Reads what was typed into a box: a plain number in the unit set, or a number with its own unit. Engine unit. */
export function readAmount(typed: string, quantity: Quantity, units: UnitSetName, subject: string): Result<number> {
  const read = readShort(typed, subject, (text) => amountOf(text, quantity, UNIT_SETS[units][quantity], subject));
  if (!read.ok) return read;
  // A box holds nothing but text, so a number without a unit needs no remark.
  const findings = read.findings.filter(({ code }) => code !== "number-as-text");
  return succeed(read.value, findings);
}

/** The number of a text that states no unit; nothing for one that is too long to be read. */
export function bareNumber(typed: string): number | undefined {
  if (isTooLong(typed)) return undefined;
  const parts = splitAmount(typed);
  if (parts?.unit !== "") return undefined;
  const read = readNumber(parts.number, "number");
  return read.ok ? read.value : undefined;
}
