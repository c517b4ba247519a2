import type { Quantity } from "../../../src/basis/quantities.ts";
import type { Cell, Scalar } from "../../cells/cell.ts";
import { isAbsent, isCellError } from "../../cells/cell.ts";

/** Whether a cell still holds what was written into it. Figures are compared as far as files keep them. */
export function isAsWritten(written: Scalar, now: Cell): boolean {
  if (isCellError(now)) return now.error === written;
  if (isAbsent(written) || isAbsent(now)) return isAbsent(written) && isAbsent(now);
  if (typeof written === "number" && typeof now === "number") return kept(written) === kept(now);
  return typeof written === typeof now && withPlainEnds(String(written)) === withPlainEnds(String(now));
}

/** Boxes of days; a spreadsheet turns what is typed there into a number. */
const DAYS: ReadonlySet<string> = new Set(["date", "preparedOn", "checkedOn", "approvedOn"]);

/** What a cell holds as it would be typed into its box, in the unit of the cell. */
export function textOfCell(now: Cell, place: string, quantity: Quantity | undefined): string {
  if (isCellError(now)) return now.error;
  if (now === null) return "";
  if (typeof now !== "number") return withPlainEnds(String(now));
  if (DAYS.has(place) && Number.isInteger(now) && now > 20_000 && now < 80_000) return dayOf(now);
  const text = String(kept(now));
  // A bare share up to 1 may be meant as a fraction; in a cell whose unit is % it is not.
  return quantity === "percent" && now > 0 && now < 1 ? `${text} %` : text;
}

function kept(figure: number): number {
  return Number(figure.toPrecision(15));
}

function withPlainEnds(text: string): string {
  return text.replace(/\r\n?/g, "\n");
}

/** "2026-11-29" of a day counted from 1900 as spreadsheets count. */
function dayOf(serial: number): string {
  return new Date(Date.UTC(1899, 11, 30) + serial * 86_400_000).toISOString().slice(0, 10);
}
