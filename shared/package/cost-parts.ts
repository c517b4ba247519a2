import { cell } from "../calc-sheet/expression.ts";
import { LIFE, LIFE_PARTS } from "../calc-sheet/sections/life-cycle.ts";
import type { Duty } from "../duty/duty.ts";
import { workedDuty } from "./worked-duty.ts";

/** The life-cycle cost of a duty by part, in the money of its currency. */
export interface CostParts {
  readonly currency: string;
  readonly parts: readonly { readonly name: string; readonly cost: number }[];
  readonly whole: number;
}

/** What the parts of the life-cycle cost are; undefined where it is not worked out. */
export function costParts(duty: Duty): CostParts | undefined {
  const { plan, figure, figureWhereGiven } = workedDuty(duty);
  const whole = figureWhereGiven(LIFE.lifeCycleCost);
  const table = plan.items.find((item) => item.kind === "table" && item.key === LIFE_PARTS.key);
  if (typeof whole !== "number" || table?.kind !== "table") return undefined;
  const parts: { name: string; cost: number }[] = [];
  for (const [row, { label }] of table.rows.slice(0, -1).entries()) {
    const cost = figure(cell(LIFE_PARTS, row, "cost"));
    if (typeof cost !== "number") return undefined;
    parts.push({ name: label, cost });
  }
  return { currency: duty.currency ?? "", parts, whole };
}
