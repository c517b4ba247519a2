import { headerText } from "../../catalogue/call.ts";
import type { Block, BlockRow, BlocksItem } from "../plan.ts";
import { divided, type Stretch } from "./columns.ts";
import type { Page } from "./page.ts";

/** Shares of a block that its labels and its figures take. */
const LABEL_TO_VALUE = [5, 4] as const;

/** Short columns of figures side by side, each with its unit in its label. */
export function placeBlocks(page: Page, { blocks }: BlocksItem): void {
  const parts = divided(blocks.map(() => 1)).map((part) => divided(LABEL_TO_VALUE, part));
  const each = (visit: (block: Block, label: Stretch, value: Stretch) => void): void => {
    blocks.forEach((block, i) => {
      const [label, value] = parts[i] as readonly [Stretch, Stretch];
      visit(block, label, value);
    });
  };
  if (blocks.some(({ heading }) => heading !== undefined)) {
    each(({ heading = "" }, [from], [, to]) => {
      page.merged(from, to, { v: heading, style: "blockHead" });
    });
    page.next();
  }
  const count = Math.max(...blocks.map(({ rows }) => rows.length));
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
