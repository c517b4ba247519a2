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
}

export type WordsOf<C extends FindingCode> = {
  readonly [K in C]: (finding: Finding<K>, say: Say) => string;
};

export function sayIn(units: UnitSetName, finding: Finding): Say {
  return {
    amount: (shown) => (shown === undefined ? "not known" : amountText(shown, units)),
    suggestions: () => inWords(finding.suggestions ?? []),
  };
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
