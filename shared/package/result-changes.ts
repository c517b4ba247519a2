import { UNIT_SETS, type UnitSetName } from "../../src/basis/quantities.ts";
import { toEngine } from "../../src/basis/units.ts";
import type { PlanItem, ResultItem } from "../calc-sheet/plan.ts";
import { isCellError, isRange } from "../cells/cell.ts";
import type { Change } from "../duty/change.ts";
import type { Duty } from "../duty/duty.ts";
import { figures } from "../text/figure.ts";
import { amountFigure } from "../text/words.ts";
import { shownVerdicts } from "./verdicts.ts";
import { type WorkedDuty, workedDuty } from "./worked-duty.ts";

/**
 * The headline figures of the sheet that are printed otherwise for a later state of a duty, both in the units of that;
 * a figure that one of them does not have is blank there, and one that could not be worked out says so.
 */
export function resultChanges(before: Duty, after: Duty): readonly Change[] {
  const was = headlines(workedDuty(before), after.unitSet);
  const is = headlines(workedDuty(after), after.unitSet);
  return [...new Set([...is.keys(), ...was.keys()])].flatMap((key) => {
    const [one, other] = [was.get(key), is.get(key)];
    const { label = "", isInternal = false } = other ?? one ?? {};
    return changed({ label, before: one?.text ?? "", after: other?.text ?? "", isInternal });
  });
}

/** The verdicts of another state, or that do not pass and are decided by something else, by their sentences. */
export function verdictChanges(before: Duty, after: Duty): readonly Change[] {
  const [was, is] = [shownVerdicts(before), shownVerdicts(after)];
  const subjects = [...new Set([...is, ...was].map(({ subject }) => subject))];
  return subjects.flatMap((of) => {
    const [one, other] = [was, is].map((verdicts) => verdicts.find(({ subject }) => subject === of));
    if (one?.state === other?.state && (other?.state === "pass" || one?.where === other?.where)) return [];
    return changed({
      label: (other ?? one)?.name ?? of,
      before: one?.text ?? "",
      after: other?.text ?? "",
      isInternal: false,
    });
  });
}

function changed(change: Change): readonly Change[] {
  return change.before === change.after ? [] : [change];
}

interface Headline {
  readonly label: string;
  readonly text: string;
  readonly isInternal: boolean;
}

/** By the key of its cell. */
function headlines(of: WorkedDuty, unitSet: UnitSetName): ReadonlyMap<string, Headline> {
  const found = new Map<string, Headline>();
  let isInternal = false;
  for (const item of of.plan.items) {
    if (item.kind === "section") isInternal = item.sheet === "estimate";
    if (!isHeadline(item)) continue;
    const text = headlineText(of, item, unitSet);
    if (text !== "") found.set(item.key, { label: item.label, text, isInternal });
  }
  return found;
}

function isHeadline(item: PlanItem): item is ResultItem {
  return item.kind === "result" && item.main === true;
}

function headlineText({ plan, worked }: WorkedDuty, { key, quantity }: ResultItem, unitSet: UnitSetName): string {
  const cell = worked.cells.get(key) ?? null;
  if (cell === null || isRange(cell)) return "";
  if (isCellError(cell)) return "not worked out";
  if (typeof cell !== "number") return String(cell);
  if (quantity === undefined) return figures(cell);
  return amountFigure({ quantity, value: toEngine(cell, UNIT_SETS[plan.unitSet][quantity]) }, unitSet);
}
