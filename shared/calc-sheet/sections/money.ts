import type { Duty } from "../../duty/duty.ts";
import type { Expression } from "../expression.ts";
import type { InputItem, ResultItem } from "../plan.ts";
import { stated } from "./stated-input.ts";

/** "Selling price, USD": money has no unit of ours, so the label says the currency. */
export function withCurrency({ currency }: Duty, label: string): string {
  return currency === undefined ? label : `${label}, ${currency}`;
}

/** A stated amount of money as an input cell; none where it was not stated. */
export function statedMoney(duty: Duty, key: "directCost" | "firstCost" | "yearlyUpkeep"): readonly InputItem[] {
  return stated(duty, key).map((item) => ({ ...item, label: withCurrency(duty, item.label) }));
}

/** A worked amount of money. */
export function money(
  duty: Duty,
  key: string,
  label: string,
  expression: Expression,
  how: string,
  main = false,
): ResultItem {
  return { kind: "result", key, label: withCurrency(duty, label), expression, how, ...(main && { main }) };
}
