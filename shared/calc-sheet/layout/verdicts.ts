import { addressOf } from "../../ports/a1.ts";
import { tableCell } from "../expression.ts";
import { VERDICT_COUNT, type VerdictsItem } from "../plan.ts";
import { SIGNED } from "../verdicts/verdict-items.ts";
import { divided, type Stretch } from "./columns.ts";
import type { Page } from "./page.ts";
import { rangeName } from "./range-name.ts";

const COLOURS = { fail: "#B3261E", open: "#5B3F8C", check: "#8A5A00", pass: "#1B6B3A" } as const;

const [SUBJECT, STATE, WORDS] = divided([2.5, 1, 6.5]) as readonly [Stretch, Stretch, Stretch];

/** The verdicts as live cells: sign, state and sentence, in colour besides. */
export function placeVerdicts(page: Page, { count, rows }: VerdictsItem): void {
  page.space(4);
  page.merged(...SUBJECT, { v: "Verdicts", style: "section" });
  page.across([STATE[0], WORDS[1]], count, VERDICT_COUNT, "section");
  page.height(HEAD_HEIGHT);
  page.row += 1;
  for (const { key, label, state, text } of rows) {
    page.merged(...SUBJECT, { v: label, style: "verdictOf" });
    page.across(STATE, state, key, "verdictState");
    page.result(key, STATE[0], `Verdict: ${label}`);
    const words = tableCell(key, 0, "text");
    page.across(WORDS, text, words, "said");
    page.workedColumns(rangeName(key), {
      label: `Verdict: ${label}`,
      rows: 1,
      headings: 0,
      columns: [{ across: WORDS[0] - STATE[0], label: "its sentence", filled: 1 }],
    });
    for (const [of, color] of Object.entries(COLOURS) as [keyof typeof COLOURS, string][]) {
      const ref = addressOf(page.row, STATE[0]);
      page.rule({ ref, when: `${ref}="${SIGNED[of]}"`, style: { color, bold: true } });
    }
    page.next();
  }
}

const HEAD_HEIGHT = 16;
