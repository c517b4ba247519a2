import { tableCell } from "../calc-sheet/expression.ts";
import { LIFE_CYCLE, type LifePart, lifeParts } from "../calc-sheet/sections/life-cycle.ts";
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
  const { cell, figureWhereGiven } = workedDuty(duty);
  if (figureWhereGiven("lifeCycleCost") === undefined) return undefined;
  const names: Readonly<Record<LifePart, string>> = {
    firstCost: "First cost",
    running: duty.driver === "motor" ? "Electricity" : "Fuel",
    upkeep: "Upkeep",
    whole: "Life cycle",
  };
  const costs = lifeParts(duty).map((part, row) => ({ part, cost: cell(tableCell(LIFE_CYCLE, row, "cost")) }));
  const parts: { name: string; cost: number }[] = [];
  for (const { part, cost } of costs) {
    if (typeof cost !== "number") return undefined;
    if (part === "whole") return { currency: duty.currency ?? "", parts, whole: cost };
    parts.push({ name: names[part], cost });
  }
  return undefined;
}
