import type { Duty } from "../../../duty/duty.ts";
import { type PlanItem, statement } from "../../plan.ts";
import { verdictBlock } from "../../verdicts/verdict-items.ts";
import { cautionsInShort } from "../cautions.ts";
import { graveList, toConfirm } from "../found-lists.ts";
import { furtherCharts, headChart } from "./charts.ts";
import { figures } from "./figures.ts";
import { earlierRevisions, excluded, titleBlock } from "./job.ts";
import { packageLines } from "./package-lines.ts";
import { standingIn } from "./standing.ts";
import { statesInShort } from "./states.ts";

/**
 * The two pages at the head of the sheet, drawn from all that follows: the answer; then what it rests on, what is wrong
 * with it and what it leaves out.
 */
export function summary(duty: Duty, items: readonly PlanItem[]): readonly PlanItem[] {
  const stands = standingIn(items);
  const { pump } = duty;
  return [
    { kind: "section", id: "summary", text: "Summary", summary: "first" },
    titleBlock(duty),
    verdictBlock(duty),
    figures(duty, stands),
    headChart(duty, stands),
    ...packageLines(duty, stands),
    statement(cautionsInShort(duty), "caution"),
    ...toConfirm(duty, items),
    ...graveList(),
    ...(pump === undefined ? [] : furtherCharts(duty, pump)),
    ...statesInShort(duty, items),
    ...excluded(duty),
    ...earlierRevisions(duty),
  ];
}
