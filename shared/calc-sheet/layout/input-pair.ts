import { printedUnit } from "../../../src/basis/quantities.ts";
import { isCellError, type Scalar } from "../../cells/cell.ts";
import { fieldOfBox } from "../../duty/box-field.ts";
import { roomIn } from "../../ports/column-room.ts";
import { linesIn } from "../../ports/text-width.ts";
import type { InputItem, PlanItem } from "../plan.ts";
import { ASSUMED, ASSUMED_WORD, GENERAL_BASES } from "../sections/stated-input.ts";
import { COLUMNS, LABEL, LAST, REFERENCE, REMARK, UNIT, VALUE } from "./columns.ts";
import { boxOfInput } from "./input-book.ts";
import type { Page } from "./page.ts";

/** Columns of the input at the right: its label, figure and unit; what is said of both stands after it. */
const RIGHT = { label: REMARK, toLabel: REMARK + 1, value: REMARK + 2, unit: REMARK + 3 } as const;

/** Whether two inputs stand side by side: nothing particular is said of where they come from, and both are short. */
export function isPair(left: PlanItem, right: PlanItem | undefined): right is InputItem {
  if (left.kind !== "input" || right?.kind !== "input") return false;
  if (left.basis !== right.basis || !GENERAL_BASES.has(left.basis)) return false;
  return fits(left, LABEL, LABEL, VALUE, UNIT) && fits(right, RIGHT.label, RIGHT.toLabel, RIGHT.value, RIGHT.unit);
}

function fits({ label, value }: InputItem, from: number, to: number, first: number, last: number): boolean {
  const isOneLine = (text: string, a: number, b: number, indent: number): boolean =>
    linesIn(text, roomIn(COLUMNS.slice(a, b + 1), indent), {}) === 1;
  if (isCellError(value)) return false;
  return isOneLine(label, from, to, 0) && (typeof value !== "string" || isOneLine(value, first, last, 1));
}

/** Two inputs in one row, and after them that both were stated, or taken for want of it. */
export function placePair(page: Page, left: InputItem, right: InputItem): void {
  page.number(left);
  page.put(LABEL, { v: left.label, style: "label" });
  page.merged(RIGHT.label, RIGHT.toLabel, { v: right.label, style: "label" });
  placeBox(page, left, VALUE, UNIT);
  placeBox(page, right, RIGHT.value, RIGHT.unit);
  if (left.basis === ASSUMED) {
    const said = page.whileAsWritten([left.key, right.key], ASSUMED_WORD, pairWords);
    page.merged(LAST, REFERENCE, { ...said, style: "how" });
  } else page.put(LAST, { v: left.basis, style: "how" });
  page.next();
}

/** "stated", or of each in turn where one alone was changed. */
function pairWords(changed: readonly boolean[]): string {
  return changed.includes(false) ? changed.map((is) => (is ? "stated" : ASSUMED_WORD)).join(", ") : "stated";
}

/** The cell of an input, with its name and what its box may hold; with the basis where that stands in a cell of its own. */
export function placeBox(page: Page, item: InputItem, at: number, unit: number, basis?: string): void {
  const { key, label, quantity, value } = item;
  const written: Scalar = isCellError(value) ? value.error : value;
  if (typeof value === "string") page.merged(at, unit, { v: value, style: "inputText" });
  else {
    page.put(at, { v: written, style: page.inputStyle(written, item.money) });
    if (quantity !== undefined) page.put(unit, { v: printedUnit(quantity, page.plan.unitSet), style: "unit" });
  }
  const box = boxOfInput(item);
  page.input(key, at, {
    label,
    ...box,
    written,
    ...(quantity === undefined ? {} : { quantity }),
    ...(basis === undefined ? {} : { basis }),
  });
  if (box.place !== undefined) page.offer(at, fieldOfBox(box.place));
}
