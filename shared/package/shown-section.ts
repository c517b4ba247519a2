import type { UnitSetName } from "../../src/basis/quantities.ts";
import { amount } from "../../src/basis/result.ts";
import type { PlanItem } from "../calc-sheet/plan.ts";
import { type Argument, isCellError, isRange } from "../catalogue/cell.ts";
import type { Duty } from "../duty/duty.ts";
import { amountText } from "../text/words.ts";
import { type WorkedDuty, workedDuty } from "./worked-duty.ts";

/** A section of the calc sheet in words, for a pane that has no cells. */
export interface ShownSection {
  readonly figures: readonly { readonly label: string; readonly text: string; readonly main: boolean }[];
  /** Ranked lines under their heading, best first. */
  readonly lists: readonly { readonly label: string; readonly lines: readonly string[] }[];
  /** What the section's calls remark, with reason and source. */
  readonly remarks: readonly string[];
}

/** What the sheet says under a heading; undefined where this duty has no such section. */
export function shownSection(duty: Duty, heading: string): ShownSection | undefined {
  const worked = workedDuty(duty);
  const { items } = worked.plan;
  const start = items.findIndex((item) => item.kind === "section" && item.text === heading);
  if (start < 0) return undefined;
  const after = items.slice(start + 1);
  const end = after.findIndex(({ kind }) => kind === "section");
  const inside = end < 0 ? after : after.slice(0, end);
  return {
    figures: inside.flatMap((item) => figureOf(item, worked, duty.unitSet)),
    lists: listsOf(inside, worked),
    remarks: [...new Set(inside.flatMap((item) => remarksOf(item, worked)))],
  };
}

function figureOf(item: PlanItem, { figure, worked }: WorkedDuty, units: UnitSetName): ShownSection["figures"] {
  if (item.kind !== "result") return [];
  const { key, label, quantity, main = false } = item;
  const found = quantity === undefined ? undefined : figure(key);
  const text =
    quantity !== undefined && typeof found === "number"
      ? amountText(amount(quantity, found), units)
      : textOf(worked.cells.get(key));
  return [{ label, text, main }];
}

/** Rows of a ranked list follow one another; only the first of them carries the label. */
function listsOf(items: readonly PlanItem[], { worked }: WorkedDuty): ShownSection["lists"] {
  const lists: { label: string; lines: string[] }[] = [];
  for (const item of items) {
    if (item.kind !== "finding" || item.expression.op !== "join") continue;
    const line = textOf(worked.cells.get(item.key));
    if (item.label !== "") lists.push({ label: item.label, lines: [line] });
    else lists.at(-1)?.lines.push(line);
  }
  return lists;
}

function remarksOf(item: PlanItem, { worked }: WorkedDuty): readonly string[] {
  if (item.kind === "statement") return [item.text];
  if (item.kind !== "finding" || item.expression.op !== "notes") return [];
  return textOf(worked.cells.get(item.key))
    .split("\n")
    .filter((line) => line !== "");
}

function textOf(answer: Argument | undefined): string {
  if (answer === undefined || answer === null || isRange(answer)) return "";
  return isCellError(answer) ? (answer.message ?? answer.error) : String(answer);
}
