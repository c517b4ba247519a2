import { LIFECYCLECOST } from "../../catalogue/entries/estimate.ts";
import type { Duty } from "../../duty/duty.ts";
import { callOf, constant, type Expression, handles, join, over, product, ratio, sum, under } from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { figure, type PlanItem, statement, type TableItem } from "../plan.ts";
import { money, statedMoney, withCurrency } from "./money.ts";
import { hasPrice, OFFER_PRICE } from "./offer-price.ts";
import { energyName, hasRunningCost, RUNNING, whereNumber } from "./running-cost.ts";
import { stated } from "./stated-input.ts";

/** Worked cells of this section. */
export const LIFE = handles({ presentValueFactor: "ratio", lifeCycleCost: null });

/** The life-cycle cost by part, the whole in the last row. */
export const LIFE_PARTS = { key: "lifeCycle", columns: [{ key: "cost" }, { key: "what" }, { key: "share" }] } as const;

export function hasLifeCycle(duty: Duty): boolean {
  const { state } = duty;
  const isFirst = state.firstCost !== "blank" || hasPrice(duty);
  return isFirst && state.years !== "blank" && state.discountRate !== "blank" && hasRunningCost(duty);
}

/**
 * Present value of the first cost, of energy and of upkeep over the years in service, and what energy cheaper or dearer
 * makes of it. The cost of energy ends a chain of functions, so the function gives the present-value factor alone.
 */
export function lifeCycle(duty: Duty): readonly PlanItem[] {
  const { state } = duty;
  if (!hasLifeCycle(duty)) {
    const isAsked = (["firstCost", "years", "discountRate"] as const).some((key) => state[key] !== "blank");
    const wanted = statement(
      "No life-cycle cost is worked out: it needs running hours, the price of energy, a first cost or a selling price, years in service and a discount rate.",
    );
    return [...(isAsked ? [wanted] : []), ...(hasRunningCost(duty) ? [...sensitivity(duty)] : [])];
  }
  const firstCost = (): PlanItem =>
    money(
      duty,
      FIELD.firstCost,
      "Initial cost to the buyer",
      OFFER_PRICE.sellingPrice,
      "The selling price above, without installation and tax.",
    );
  return [
    ...(state.firstCost === "blank" ? [firstCost()] : []),
    ...statedMoney(duty, "firstCost", "yearlyUpkeep"),
    ...stated(duty, "years", "discountRate"),
    figure(
      LIFE.presentValueFactor,
      "Present-value factor",
      callOf(LIFECYCLECOST, {
        firstCost: constant(0),
        yearlyCost: constant(1),
        years: FIELD.years,
        discountRate: FIELD.discountRate,
      }),
      "(1 − (1 + i)^−n)/i: present value of 1 at the end of each year.",
    ),
    money(
      duty,
      LIFE.lifeCycleCost,
      "Life-cycle cost",
      whereNumber(RUNNING.runningCost, wholeAt(duty, RUNNING.runningCost)),
      "First cost + (energy + upkeep in a year) × present-value factor.",
      "main",
    ),
    partTable(duty),
    ...sensitivity(duty),
  ];
}

function hasUpkeep({ state }: Duty): boolean {
  return state.yearlyUpkeep !== "blank";
}

/** First cost and all yearly costs, with this much for energy. */
function wholeAt(duty: Duty, running: Expression): Expression {
  const yearly = hasUpkeep(duty) ? sum(running, FIELD.yearlyUpkeep) : running;
  return sum(FIELD.firstCost, product(yearly, LIFE.presentValueFactor));
}

function partTable(duty: Duty): TableItem {
  const row = (label: string, what: string, cost: Expression, shown = cost): TableItem["rows"][number] => {
    const share = product(ratio(cost, LIFE.lifeCycleCost), constant(100));
    return { label, cells: [shown, constant(what), whereNumber(LIFE.lifeCycleCost, share)] };
  };
  const yearly = "annual × factor";
  const running = product(RUNNING.runningCost, LIFE.presentValueFactor);
  return {
    kind: "table",
    key: LIFE_PARTS.key,
    heading: "present value by item",
    columns: [
      { key: "cost", label: withCurrency(duty, "cost"), isMoney: true },
      { key: "what", label: "how" },
      { key: "share", label: "share", quantity: "percent" },
    ],
    rows: [
      row("First cost", "at the start", FIELD.firstCost),
      row(energyName(duty), yearly, running, whereNumber(RUNNING.runningCost, running)),
      ...(hasUpkeep(duty) ? [row("Upkeep", yearly, product(FIELD.yearlyUpkeep, LIFE.presentValueFactor))] : []),
      row("Life-cycle cost", "sum", LIFE.lifeCycleCost),
    ],
  };
}

/** The same with energy cheaper and dearer. */
function sensitivity(duty: Duty): readonly PlanItem[] {
  const isWhole = hasLifeCycle(duty);
  const price = duty.driver === "motor" ? "tariff" : "fuel price";
  const table: TableItem = {
    kind: "table",
    key: "sensitivity",
    heading: "if the price of energy moves",
    columns: [
      { key: "running", label: withCurrency(duty, "a year"), isMoney: true },
      { key: "what", label: "how" },
      ...(isWhole ? [{ key: "whole", label: withCurrency(duty, "life cycle"), isMoney: true as const }] : []),
    ],
    rows: [
      { label: "Energy price cheaper", times: under(FIELD.priceSwing), sign: "−" },
      { label: "Energy price dearer", times: over(FIELD.priceSwing), sign: "+" },
    ].map(({ label, times, sign }) => {
      const running = product(RUNNING.runningCost, times);
      return {
        label,
        cells: [
          whereNumber(RUNNING.runningCost, running),
          join(constant(`${price} ${sign} `), FIELD.priceSwing, constant(" %")),
          ...(isWhole ? [whereNumber(RUNNING.runningCost, wholeAt(duty, running))] : []),
        ],
      };
    }),
  };
  return [...stated(duty, "priceSwing"), table];
}
