import { greatestOf } from "../../../src/numeric/extremes.ts";
import { headerText } from "../../catalogue/call.ts";
import type { Block, BlockRow, BlocksItem } from "../plan.ts";
import { divided, type Stretch, UNDER_RULE } from "./columns.ts";
import type { Page } from "./page.ts";

/** Labels and figures of the three blocks, from the left. */
const PARTS = divided([29, 10, 20, 9, 18, 14]);

/** Short columns of figures side by side, each with its unit in its label. */
export function placeBlocks(page: Page, { blocks }: BlocksItem): void {
  const each = (visit: (block: Block, label: Stretch, value: Stretch) => void): void => {
    blocks.forEach((block, i) => {
      visit(block, PARTS[2 * i] as Stretch, PARTS[2 * i + 1] as Stretch);
    });
  };
  if (blocks.some(({ heading }) => heading !== undefined)) {
    page.space(4);
    each(({ heading = "" }, [from], [, to]) => {
      page.merged(from, to, { v: heading, style: "blockHead" });
    });
    page.next();
    page.space(UNDER_RULE);
  }
  const count = greatestOf(blocks.map(({ rows }) => rows.length));
  for (let i = 0; i < count; i += 1) {
    each(({ rows }, label, value) => {
      const row = rows[i];
      if (row !== undefined) placeRow(page, row, label, value);
    });
    page.next();
  }
}

function placeRow(page: Page, { key, label, quantity, expression, main }: BlockRow, of: Stretch, at: Stretch): void {
  const words = headerText(label, quantity, page.plan.unitSet);
  page.merged(...of, { v: words, style: main ? "blockLabelMain" : "blockLabel" });
  page.result(key, at[0], `Summary: ${label}`);
  page.across(at, expression, key, page.numberStyle(quantity, main ? "blockMain" : "block"));
}
