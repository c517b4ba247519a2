import { partsThousands } from "../../src/basis/customary.ts";
import type { Quantity } from "../../src/basis/quantities.ts";
import {
  readAs,
  readNumber,
  readQuantity,
  splitAmount,
  thousandsIn,
  unitsThatDo,
} from "../../src/basis/quantity-text.ts";
import { andThen, type Result, succeed } from "../../src/basis/result.ts";
import { toEngine, type Unit } from "../../src/basis/units.ts";
import type { Cell } from "./cell.ts";
import { wrongKind } from "./refused-cell.ts";

/**
 * A filled cell as an amount in the engine's unit: a number in the unit given, or a text with its own unit. A text that
 * is a number and nothing else is that number, with a caution where the quantity has units to doubt; "1,200" is twelve hundred
 * where the unit is one of those with which a comma parts thousands.
 */
export function amountOf(cell: Cell, quantity: Quantity, unit: Unit, subject: string): Result<number> {
  if (typeof cell === "number") return succeed(toEngine(cell, unit));
  if (typeof cell !== "string") {
    return wrongKind(subject, cell, `a number or a text with a unit (${unitsThatDo(quantity)})`);
  }
  const parts = splitAmount(cell);
  if (parts === undefined || parts.unit !== "") return readQuantity(cell, quantity, subject);
  const thousands = partsThousands(unit) ? thousandsIn(parts.number) : undefined;
  if (thousands !== undefined) {
    const value = toEngine(thousands, unit);
    return succeed(value, [readAs(subject, cell, quantity, value)]);
  }
  return andThen(readNumber(parts.number, subject), (number) => {
    const value = toEngine(number, unit);
    if (quantity === "ratio") return succeed(value);
    const found = { quantity, value };
    return succeed(value, [{ code: "number-as-text", kind: "check", subject, given: cell.trim(), found }]);
  });
}

/** A number kept as text, as a number; any other cell as it is. */
export function withoutText(cell: Cell): Cell {
  if (typeof cell !== "string") return cell;
  const read = readNumber(cell, "");
  return read.ok ? read.value : cell;
}
