import { type Quantity, unitFits } from "../../src/basis/quantities.ts";
import { readNumber, readQuantity, unitsThatDo } from "../../src/basis/quantity-text.ts";
import { type Result, succeed } from "../../src/basis/result.ts";
import { toEngine, type Unit, unitNamed } from "../../src/basis/units.ts";
import type { Cell } from "./cell.ts";
import { wrongKind } from "./refused-cell.ts";

/** A filled cell as an amount in the engine's unit: a number in the unit given, or a text with its own unit. */
export function amountOf(cell: Cell, quantity: Quantity, unit: Unit, subject: string): Result<number> {
  if (typeof cell === "number") return succeed(toEngine(cell, unit));
  if (typeof cell !== "string") {
    return wrongKind(subject, cell, `a number or a text with a unit (${unitsThatDo(quantity)})`);
  }
  return quantity === "ratio" ? ratioOf(cell, subject) : readQuantity(cell, quantity, subject);
}

/** A dimensionless text may do without a unit: "0.5", "50 %". */
function ratioOf(text: string, subject: string): Result<number> {
  const plain = readNumber(text, subject);
  if (plain.ok) return plain;
  const unit = unitNamed(text.replace(/^[+-]?[\d.,eE]+/, ""));
  return unit !== undefined && unitFits(unit, "ratio") ? readQuantity(text, "ratio", subject) : plain;
}

/** A number kept as text, as a number; any other cell as it is. */
export function withoutText(cell: Cell): Cell {
  if (typeof cell !== "string") return cell;
  const read = readNumber(cell, "");
  return read.ok ? read.value : cell;
}
