import { addressOf } from "../../ports/a1.ts";
import { tableCell } from "../expression.ts";
import { VERDICT_COUNT, type VerdictsItem } from "../plan.ts";
import { SIGNED } from "../verdicts/verdict-items.ts";
import { LABEL, LAST, REFERENCE, UNIT, VALUE } from "./columns.ts";
import type { Page } from "./page.ts";

const COLOURS = { fail: "#B3261E", open: "#5B3F8C", check: "#8A5A00", pass: "#1B6B3A" } as const;

/** The verdicts as live cells: sign, state and sentence, in colour besides. */
export function placeVerdicts(page: Page, { count, rows }: VerdictsItem): void {
  page.put(LABEL, { v: "Verdicts", style: "section" });
  page.across([VALUE, REFERENCE], count, VERDICT_COUNT, "section");
  page.height(18);
  page.row += 1;
  for (const { key, label, state, text } of rows) {
    page.put(LABEL, { v: label, style: "label" });
    page.formula(VALUE, state, key, "verdict");
    page.result(key, VALUE, `Verdict: ${label}`);
    const words = tableCell(key, 0, "text");
    page.across([UNIT, LAST], text, words, "finding");
    for (const [of, color] of Object.entries(COLOURS) as [keyof typeof COLOURS, string][]) {
      const ref = addressOf(page.row, VALUE);
      page.rule({ ref, when: `${ref}="${SIGNED[of]}"`, style: { color, bold: true } });
    }
    page.next();
  }
}
