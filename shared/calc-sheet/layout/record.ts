import { RECORD_NAME, WORKINGS_NAME } from "../../ports/sheet-record.ts";
import { PRICES_NAME, pricesTexts } from "../open-again/prices.ts";
import { recordWords, type SavedWith } from "../open-again/record.ts";
import { LABEL, LAST, ROW_HEIGHT } from "./columns.ts";
import type { InputBook } from "./input-book.ts";
import type { Page } from "./page.ts";

/** The cell by which a sheet is known for one of a duty, in small print at its end. */
export function placeRecord(page: Page, saved: SavedWith): void {
  page.name(RECORD_NAME, LABEL);
  page.merged(LABEL, LAST, { v: recordWords(saved), style: "record" });
  page.height(ROW_HEIGHT);
  page.row += 1;
}

/** The same on the workings, below all that stands there. */
export function markWorkings(workings: Page, saved: SavedWith): void {
  const cell = { top: workings.row, left: 0, bottom: workings.row, right: 0 };
  for (const name of [RECORD_NAME, WORKINGS_NAME]) workings.nameRange(name, cell);
  workings.put(0, { v: recordWords(saved), style: "record" });
  workings.row += 2;
}

/** What the estimate alone holds of the record, below what is printed. */
export function placePrices(estimate: Page, { prices }: SavedWith, inputs: InputBook): void {
  inputs.blocks.push(...estimate.blocks());
  const texts = pricesTexts(prices, inputs);
  const top = estimate.row;
  for (const v of texts) {
    estimate.put(LABEL, { v, style: "record" });
    estimate.height(ROW_HEIGHT);
    estimate.row += 1;
  }
  estimate.nameRange(PRICES_NAME, { top, left: LABEL, bottom: estimate.row - 1, right: LABEL });
  estimate.row += 2;
}
