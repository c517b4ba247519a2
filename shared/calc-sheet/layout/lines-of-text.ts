import type { LinesItem } from "../plan.ts";
import { divided, type Stretch, UNDER_RULE, WHOLE } from "./columns.ts";
import type { Page } from "./page.ts";

const [LABEL_AT, TEXT_AT] = divided([2, 8]) as readonly [Stretch, Stretch];

/** Live sentences under a heading, each after its label, all on one page. */
export function placeLines(page: Page, { heading, rows }: LinesItem): void {
  const top = page.row;
  page.space(4);
  page.merged(...WHOLE, { v: heading, style: "blockHead" });
  page.next();
  page.space(UNDER_RULE);
  for (const { key, label, text } of rows) {
    page.merged(...LABEL_AT, { v: label, style: "blockLabel" });
    page.result(key, TEXT_AT[0], `Summary: ${label}`);
    page.across(TEXT_AT, text, key, "said");
    page.next();
  }
  page.together(top, page.row - 1);
}
