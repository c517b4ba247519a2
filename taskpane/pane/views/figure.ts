import { html, type TemplateResult } from "lit";
import type { CellError } from "../../../shared/cells/cell.ts";
import type { Worked } from "../../../shared/package/head-and-suction.ts";
import { amountFigure, bareFigure } from "../../../shared/text/words.ts";
import type { Amount, Quantity, UnitSetName } from "../../../src/basis/quantities.ts";
import { amount } from "../../../src/basis/result.ts";

/** Stands for a figure whose box is still to be filled or mended; which, is said once for all of them. */
const WAITING = "–";

/** Whether a figure waits for a box of the pane. */
export function isWaiting(worked: Worked): boolean {
  return typeof worked !== "number" && worked.waitsFor !== undefined;
}

/** How an amount is put: as a figure, as a margin, as a difference from what is asked. */
export type AmountWords = (shown: Amount, units: UnitSetName) => string;

/** A worked figure with its unit, or the words of the error that stands in its place. */
export function figureText(
  worked: Worked,
  quantity: Quantity,
  units: UnitSetName,
  words: AmountWords = amountFigure,
): string {
  if (typeof worked === "number") return words(amount(quantity, worked), units);
  return worked.waitsFor === undefined ? (worked.message ?? worked.error) : WAITING;
}

/** A worked figure with its unit in the heading. */
export function cellText(
  worked: Worked | undefined,
  quantity: Quantity,
  units: UnitSetName,
  words: AmountWords = bareFigure,
): string {
  return typeof worked === "number" ? words(amount(quantity, worked), units) : WAITING;
}

/** The reasons that a step has given for figures it has not: one that stands already is not said again. */
export class SaidReasons {
  readonly #said = new Set<string>();

  /** Whether this one was said before; from now on it was. */
  has({ message = "" }: CellError): boolean {
    // The same box is refused by the line that holds it, with its row, and by its own cell.
    const reason = message.replace(/^[^“:]* row \d+: /, "").toLowerCase();
    if (this.#said.has(reason)) return true;
    if (reason !== "") this.#said.add(reason);
    return false;
  }
}

/** A result as a line of label and figure. */
export function figureView(
  label: string,
  worked: Worked,
  quantity: Quantity,
  units: UnitSetName,
  {
    main = false,
    words = amountFigure,
    said,
  }: { readonly main?: boolean; readonly words?: AmountWords; readonly said?: SaidReasons } = {},
): TemplateResult {
  const isSaid = typeof worked !== "number" && said?.has(worked) === true;
  const failed = typeof worked !== "number" && !isWaiting(worked) && !isSaid;
  return html`<div class="figure ${main ? "main" : ""} ${failed ? "failed" : ""}">
    <dt>${label}</dt>
    <dd>${isSaid ? WAITING : figureText(worked, quantity, units, words)}</dd>
  </div>`;
}
