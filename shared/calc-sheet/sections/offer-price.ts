import { SELLINGPRICE } from "../../catalogue/entries/price.ts";
import type { Duty } from "../../duty/duty.ts";
import { callOf, constant, type Expression, handles, part, spillOf } from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { figure, type PlanItem, spill, statement } from "../plan.ts";
import { money, statedMoney } from "./money.ts";
import { stated } from "./stated-input.ts";
import { hasStandby } from "./station.ts";

/** Worked cells of this section. */
export const OFFER_PRICE = handles({
  overheadCost: null,
  contingencyCost: null,
  packageCost: null,
  profitOnPrice: null,
  sellingPrice: null,
  markupOnCost: "percent",
});

const RECORD = spillOf("priceLines", SELLINGPRICE);

const OF_INSTALLED = statement(
  "The direct cost is taken as that of all pumps installed, standby ones among them, with their suctions and branches.",
);

export function hasPrice({ state }: Duty): boolean {
  return state.directCost !== "blank" && state.margin !== "blank";
}

/** The price of the package, line by line in the order it is rolled up; wants a direct cost and a margin. */
export function offerPrice(duty: Duty): readonly PlanItem[] {
  const { state } = duty;
  const inputs = [...statedMoney(duty, "directCost"), ...stated(duty, "overhead", "contingency", "margin")];
  if (!hasPrice(duty)) {
    const wanted = statement("No selling price is worked out: it needs a direct cost and a margin.");
    return inputs.length === 0 ? [] : [...inputs, wanted];
  }
  const share = (key: "overhead" | "contingency"): Expression => (state[key] === "blank" ? constant(0) : FIELD[key]);
  const call = callOf(SELLINGPRICE, {
    directCost: FIELD.directCost,
    overhead: share("overhead"),
    contingency: share("contingency"),
    profit: FIELD.margin,
    profitOn: constant("margin"),
  });
  const line = (of: "overhead" | "contingency", how: string): PlanItem =>
    money(duty, OFFER_PRICE[`${of}Cost`], of === "overhead" ? "Overhead" : "Contingency", part(RECORD, of), how);
  return [
    ...inputs,
    ...(hasStandby(duty) ? [OF_INSTALLED] : []),
    spill(RECORD, "Price", call),
    ...(state.overhead === "blank" ? [] : [line("overhead", "Direct cost × overhead.")]),
    ...(state.contingency === "blank" ? [] : [line("contingency", "(Direct cost + overhead) × contingency.")]),
    money(
      duty,
      OFFER_PRICE.packageCost,
      "Cost",
      part(RECORD, "cost"),
      "Direct cost + overhead + contingency, as far as they are stated.",
    ),
    money(duty, OFFER_PRICE.profitOnPrice, "Profit", part(RECORD, "profit"), "Selling price less cost."),
    money(
      duty,
      OFFER_PRICE.sellingPrice,
      "Selling price",
      part(RECORD, "sellingPrice"),
      "Cost / (1 − margin). Before tax.",
      "main",
    ),
    figure(OFFER_PRICE.markupOnCost, "Equivalent markup on cost", part(RECORD, "markup"), "Margin / (1 − margin)."),
  ];
}
