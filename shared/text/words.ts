import type { FindingCode } from "../../src/basis/finding-code.ts";
import {
  type Amount,
  printedUnit,
  QUANTITIES,
  type Quantity,
  UNIT_SETS,
  type UnitSetName,
} from "../../src/basis/quantities.ts";
import type { Finding } from "../../src/basis/result.ts";
import { fromEngine } from "../../src/basis/units.ts";
import { figureIn, figureSaid, sayingApart } from "./figure.ts";

/** Says amounts in the reader's units while a finding is put into words. */
export interface Say {
  /** "45.2 ft"; with as many digits as tell it from the other amounts of the finding. */
  readonly amount: (amount: Amount | undefined) => string;
  /** "“a”, “b” or “c”" from what would do. */
  readonly suggestions: () => string;
}

export type WordsOf<C extends FindingCode> = {
  readonly [K in C]: (finding: Finding<K>, say: Say) => string;
};

export function sayIn(units: UnitSetName, finding: Finding): Say {
  const amounts = amountsIn(finding);
  const say = (shown: Amount): string => {
    const unit = UNIT_SETS[units][shown.quantity];
    const alike = amounts.filter(({ quantity }) => quantity === shown.quantity);
    const saying = sayingApart(
      printedUnit(shown.quantity, units),
      alike.map(({ value }) => fromEngine(value, unit)),
    );
    return withUnit(saying(fromEngine(shown.value, unit)), shown.quantity, units);
  };
  return {
    amount: (shown) => (shown === undefined ? "not known" : say(shown)),
    suggestions: () => inWords(finding.suggestions ?? []),
  };
}

/** The amounts a sentence about a finding may name. */
function amountsIn({ found, limit, facts }: Finding): readonly Amount[] {
  return [found, limit, ...Object.values(facts ?? {})].filter(isAmount);
}

function isAmount(fact: unknown): fact is Amount {
  return typeof fact === "object" && fact !== null && "quantity" in fact && "value" in fact;
}

/** "45.2 ft", in a sentence. */
export function amountText({ quantity, value }: Amount, units: UnitSetName): string {
  return withUnit(
    figureSaid(printedUnit(quantity, units), fromEngine(value, UNIT_SETS[units][quantity])),
    quantity,
    units,
  );
}

/** "45.2 ft", as a figure of its own. */
export function amountFigure({ quantity, value }: Amount, units: UnitSetName): string {
  return withUnit(bareFigure({ quantity, value }, units), quantity, units);
}

/** "45.2", its unit in the heading. */
export function bareFigure({ quantity, value }: Amount, units: UnitSetName): string {
  return figureIn(printedUnit(quantity, units), fromEngine(value, UNIT_SETS[units][quantity]));
}

function withUnit(number: string, quantity: Quantity, units: UnitSetName): string {
  const unit = printedUnit(quantity, units);
  if (unit === "") return number;
  return QUANTITIES[quantity].dimension === "angle" ? `${number}${unit}` : `${number} ${unit}`;
}

/** "a, b or c", or "a, b and c". */
export function inWords(items: readonly string[], joint: "or" | "and" = "or"): string {
  if (items.length < 2) return items[0] ?? "";
  return `${items.slice(0, -1).join(", ")} ${joint} ${items.at(-1)}`;
}
