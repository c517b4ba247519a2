import type { Duty } from "../../duty/duty.ts";
import { type Call, callById, constant, type Expression, partAt, value } from "../expression.ts";
import type { PlanItem, SpillItem } from "../plan.ts";
import { money, statedMoney } from "./money.ts";
import { stated } from "./stated-input.ts";

export const SELLING_PRICE = "sellingPrice";

const RECORD = "priceLines";

/** Columns of the record of SELLINGPRICE, in its order. */
const COLUMNS = [
  { key: "directCost" },
  { key: "overhead" },
  { key: "contingency" },
  { key: "cost" },
  { key: "profit" },
  { key: "sellingPrice" },
  { key: "tax" },
  { key: "withTax" },
  { key: "margin", quantity: "percent" },
  { key: "markup", quantity: "percent" },
] as const satisfies SpillItem["columns"];

function of(key: (typeof COLUMNS)[number]["key"]): Expression {
  return partAt(
    RECORD,
    COLUMNS.findIndex((column) => column.key === key),
  );
}

export function hasPrice({ directCost, margin }: Duty): boolean {
  return directCost !== undefined && margin !== undefined;
}

/** The price of the package, line by line in the order it is rolled up; wants a direct cost and a margin. */
export function offerPrice(duty: Duty): readonly PlanItem[] {
  const { overhead, contingency } = duty;
  const inputs = [...statedMoney(duty, "directCost"), ...stated(duty, "overhead", "contingency", "margin")];
  if (!hasPrice(duty)) {
    const text = "No selling price is worked out: it wants a direct cost and a margin.";
    return inputs.length === 0 ? [] : [...inputs, { kind: "statement", text }];
  }
  const share = (key: "overhead" | "contingency"): Expression => (duty[key] === undefined ? constant(0) : value(key));
  const call: Call = callById(
    "SELLINGPRICE",
    value("directCost"),
    share("overhead"),
    share("contingency"),
    value("margin"),
    constant("margin"),
  );
  return [
    ...inputs,
    { kind: "spill", key: RECORD, label: "Price", expression: call, rows: 2, columns: COLUMNS },
    ...(overhead === undefined
      ? []
      : [money(duty, "overheadCost", "Overhead", of("overhead"), "Direct cost × overhead.")]),
    ...(contingency === undefined
      ? []
      : [money(duty, "contingencyCost", "Contingency", of("contingency"), "(Direct cost + overhead) × contingency.")]),
    money(duty, "packageCost", "Cost", of("cost"), "Direct cost + overhead + contingency, as far as they are stated."),
    money(duty, "profitOnPrice", "Profit", of("profit"), "Selling price less cost."),
    money(duty, SELLING_PRICE, "Selling price", of("sellingPrice"), "Cost / (1 − margin). Before tax.", true),
    {
      kind: "result",
      key: "markupOnCost",
      label: "The same as a markup on cost",
      quantity: "percent",
      expression: of("markup"),
      how: "Margin / (1 − margin).",
    },
  ];
}
