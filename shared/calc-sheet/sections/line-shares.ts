import { type Duty, type DutySegment, pumpsSideBySide } from "../../duty/duty.ts";
import type { LineKey } from "../../duty/duty-text.ts";
import { constant, type Expression, least, product, ratio } from "../expression.ts";
import { byArrangement, pumpsOfAll } from "./station.ts";

/** Whether the line tables say what each row carries: where pumps share the flow, or a row takes a part of it. */
export function hasShares(duty: Duty): boolean {
  const runsSeveral = [duty, ...duty.cases.map((one) => one.duty)].some((one) => pumpsSideBySide(one) > 1);
  if (runsSeveral || duty.pumpsRunning === undefined) return true;
  return rowsOf(duty).some(({ typed, share }) => share === undefined || (typed.share ?? "").trim() !== "");
}

/** Whether the table of a line says at what level each row ends. */
export function hasLevels(duty: Duty, line: LineKey): boolean {
  return duty[line].some(({ typed }) => (typed.level ?? "").trim() !== "");
}

function rowsOf({ suctionLine, dischargeLine }: Duty): readonly DutySegment[] {
  return [...suctionLine, ...dischargeLine];
}

/** Whether a row carries another share once other pumps run than stated: each pump's own, and a piece of header. */
export function changesWithPumps({ share, isHeader }: DutySegment): boolean {
  return share === "each" || isHeader;
}

/** What each of so many pumps carries: the whole flow in series. */
export function shareOfEach(duty: Duty, pumps: Expression = pumpsOfAll(duty)): Expression {
  return byArrangement(duty, constant(1), ratio(constant(1), pumps));
}

/**
 * What a row carries once so many of the pumps share the flow, of what it carries with all running: a piece of header
 * behind more pumps than are left carries all of it.
 */
export function shareWith(
  duty: Duty,
  sideBySide: Expression,
  { share, isHeader }: DutySegment,
  asStated: Expression,
): Expression {
  if (share === "each") return ratio(constant(1), sideBySide);
  if (!isHeader) return asStated;
  return ratio(least(product(asStated, pumpsOfAll(duty)), sideBySide), sideBySide);
}
