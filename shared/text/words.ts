import type { FindingCode } from "../../src/basis/finding-code.ts";
import { type Amount, printedUnit, QUANTITIES, UNIT_SETS, type UnitSetName } from "../../src/basis/quantities.ts";
import type { Finding } from "../../src/basis/result.ts";
import { fromEngine } from "../../src/basis/units.ts";

/** Says amounts in the reader's units while a finding is put into words. */
export interface Say {
  /** "45.2 ft" */
  readonly amount: (amount: Amount | undefined) => string;
  /** "“a”, “b” or “c”" from what would do. */
  readonly suggestions: () => string;
  /** Two amounts of one quantity with as many digits as tell them apart: "7.63 m" and "7.62 m". */
  readonly apart: (found: Amount | undefined, limit: Amount | undefined) => readonly [string, string];
}

export type WordsOf<C extends FindingCode> = {
  readonly [K in C]: (finding: Finding<K>, say: Say) => string;
};

export function sayIn(units: UnitSetName, finding: Finding): Say {
  return {
    amount: (shown) => (shown === undefined ? "not known" : amountText(shown, units)),
    suggestions: () => inWords(finding.suggestions ?? []),
    apart: (found, limit) => {
      if (found === undefined || limit === undefined) return ["not known", "not known"];
      const unit = printedUnit(found.quantity, units);
      const inUnits = ({ value }: Amount): number => fromEngine(value, UNIT_SETS[units][found.quantity]);
      const [one, other] = apart(inUnits(found), inUnits(limit));
      return unit === "" ? [one, other] : [`${one} ${unit}`, `${other} ${unit}`];
    },
  };
}

const FEWEST_DIGITS = 4;
const MOST_DIGITS = 15;

/** Two figures with as many digits as tell them apart. */
export function apart(one: number, other: number): readonly [string, string] {
  const [first, second] = [figures(one), figures(other)];
  if (first !== second) return [first, second];
  for (let digits = FEWEST_DIGITS + 1; digits < MOST_DIGITS; digits += 1) {
    const pair = [one, other].map((value) => String(Number(value.toPrecision(digits)))) as [string, string];
    if (pair[0] !== pair[1]) return pair;
  }
  return [String(one), String(other)];
}

/** "45.23 ft": four significant figures and the unit. */
export function amountText({ quantity, value }: Amount, units: UnitSetName): string {
  const number = figures(fromEngine(value, UNIT_SETS[units][quantity]));
  const unit = printedUnit(quantity, units);
  if (unit === "") return number;
  return QUANTITIES[quantity].dimension === "angle" ? `${number}${unit}` : `${number} ${unit}`;
}

/** Four significant figures, whole numbers up to a million in full. */
export function figures(value: number): string {
  const size = Math.abs(value);
  if (size >= 1000 && size < 1e6) return String(Math.round(value));
  const rounded = Number(value.toPrecision(4));
  // The greatest numbers there are round past themselves.
  if (!Number.isFinite(rounded)) return value < 0 ? "less than -1e308" : "more than 1e308";
  return String(rounded);
}

/** "a, b or c". */
export function inWords(items: readonly string[]): string {
  if (items.length < 2) return items[0] ?? "";
  return `${items.slice(0, -1).join(", ")} or ${items.at(-1)}`;
}
