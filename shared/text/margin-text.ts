import type { Amount, UnitSetName } from "../../src/basis/quantities.ts";
import { amountFigure, bareFigure } from "./words.ts";

/** A margin: "3.4 ft", "short by 2.1 ft". No sign is its only teller. */
export function marginText(margin: Amount, units: UnitSetName): string {
  return margin.value < 0 ? shortBy(amountFigure(sizeOf(margin), units)) : amountFigure(margin, units);
}

/** The same with its unit in the heading. */
export function bareMargin(margin: Amount, units: UnitSetName): string {
  return margin.value < 0 ? shortBy(bareFigure(sizeOf(margin), units)) : bareFigure(margin, units);
}

/** A difference from what is asked: "12 % above", "11.3 ft below"; nought without a side. */
export function differenceText(difference: Amount, units: UnitSetName): string {
  const size = amountFigure(sizeOf(difference), units);
  if (/^0(?![.\d])/.test(size)) return size;
  return `${size} ${difference.value < 0 ? "below" : "above"}`;
}

function shortBy(size: string): string {
  return /^0(?![.\d])/.test(size) ? size : `short by ${size}`;
}

function sizeOf({ quantity, value }: Amount): Amount {
  return { quantity, value: Math.abs(value) };
}
