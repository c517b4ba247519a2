import type { Duty } from "../../duty/duty.ts";
import { type Expression, type Handle, handle } from "../expression.ts";
import { figure, type InputItem, type PlanItem, type ResultItem } from "../plan.ts";
import { stated } from "./stated-input.ts";

/** "Selling price, USD": money has no unit of ours, so the label says the currency. */
export function withCurrency({ currency }: Duty, label: string): string {
  return currency === undefined ? label : `${label}, ${currency}`;
}

/** Whether any amount on the sheet is named with the currency. */
export function hasMoney(duty: Duty, items: readonly PlanItem[]): boolean {
  const named = withCurrency(duty, "");
  return duty.currency !== undefined && items.some((item) => labelsOf(item).some((label) => label.includes(named)));
}

function labelsOf(item: PlanItem): readonly string[] {
  switch (item.kind) {
    case "input":
    case "result":
      return [item.label];
    case "inputTable":
    case "working":
    case "table":
      return item.columns.map(({ label }) => label);
    default:
      return [];
  }
}

/** Stated amounts of money as input cells, as far as they are stated. */
export function statedMoney(
  duty: Duty,
  ...keys: readonly ("directCost" | "firstCost" | "yearlyUpkeep")[]
): readonly InputItem[] {
  return stated(duty, ...keys).map((item) => ({ ...item, label: withCurrency(duty, item.label), money: "amount" }));
}

/** A worked amount of money. */
export function money(
  duty: Duty,
  { key }: Handle,
  label: string,
  expression: Expression,
  how: string,
  main?: "main",
): ResultItem {
  return { ...figure(handle(key, null), withCurrency(duty, label), expression, how, main), isMoney: true };
}
