import { QUANTITIES, type Quantity, UNIT_SETS, type UnitSetName } from "../../src/basis/quantities.ts";
import { readNumber, splitAmount } from "../../src/basis/quantity-text.ts";
import { fail, type Result, succeed } from "../../src/basis/result.ts";
import { amountOf } from "../cells/amount-cell.ts";
import { isTooLong, readShort } from "../cells/long-text.ts";
import { otherReadings, sumIn } from "./sums/written-sum.ts";

/**
 * Reads what was typed into a box: a plain number in the unit set, a number with its own unit, or a sum with what it comes to.
 * Engine unit. Fails: number-ambiguous for two figures that may be more than a sum; sum-pending; as `readShort` and `amountOf`.
 */
export function readAmount(typed: string, quantity: Quantity, units: UnitSetName, subject: string): Result<number> {
  const read = readShort(typed, subject, (text) => readText(text, quantity, units, subject));
  if (!read.ok) return read;
  // A box holds nothing but text, so a number without a unit needs no remark.
  const findings = read.findings.filter(({ code }) => code !== "number-as-text");
  return succeed(read.value, findings);
}

function readText(typed: string, quantity: Quantity, units: UnitSetName, subject: string): Result<number> {
  const suggestions = otherReadings(typed, QUANTITIES[quantity].dimension === "length");
  if (suggestions !== undefined) {
    return fail([{ code: "number-ambiguous", kind: "error", subject, given: typed.trim(), suggestions }]);
  }
  const sum = sumIn(typed);
  const read = amountOf(sum?.answer ?? typed, quantity, UNIT_SETS[units][quantity], subject);
  const isPending = !read.ok && sum !== undefined && sum.answer === undefined;
  return isPending ? fail([{ code: "sum-pending", kind: "error", subject, given: typed.trim() }]) : read;
}

/** The number of a text that states no unit, or that a sum without units comes to; nothing for one that is too long to be read. */
export function bareNumber(typed: string): number | undefined {
  if (isTooLong(typed)) return undefined;
  const parts = splitAmount(sumIn(typed)?.answer ?? typed);
  if (parts?.unit !== "") return undefined;
  const read = readNumber(parts.number, "number");
  return read.ok ? read.value : undefined;
}
