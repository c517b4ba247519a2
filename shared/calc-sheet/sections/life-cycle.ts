import type { Duty } from "../../duty/duty.ts";
import { callById, constant, type Expression, ifNumber, product, ratio, sum, value } from "../expression.ts";
import type { PlanItem, TableItem } from "../plan.ts";
import { money, statedMoney, withCurrency } from "./money.ts";
import { hasPrice, SELLING_PRICE } from "./offer-price.ts";
import { hasRunningCost, NOT_WORKED_OUT, RUNNING_COST, whereNumber } from "./running-cost.ts";
import { stated } from "./stated-input.ts";

export const LIFE_CYCLE = "lifeCycle";
/** Rows of that table by what they are; upkeep only where it is stated. */
export type LifePart = "firstCost" | "running" | "upkeep" | "whole";

/** A tariff is asked again this much lower and higher: common practice, no source. */
const SWING = 0.2;

const FACTOR = value("presentValueFactor");

export function hasLifeCycle(duty: Duty): boolean {
  const { firstCost, years, discountRate } = duty;
  const isFirst = firstCost !== undefined || hasPrice(duty);
  return isFirst && years !== undefined && discountRate !== undefined && hasRunningCost(duty);
}

export function lifeParts(duty: Duty): readonly LifePart[] {
  const upkeep = duty.yearlyUpkeep === undefined ? [] : (["upkeep"] as const);
  return ["firstCost", "running", ...upkeep, "whole"];
}

const LIFE_WANTS =
  "No life-cycle cost is worked out: it wants running hours, the price of energy, a first cost or a selling price, years in service and a discount rate.";

/**
 * Present value of the first cost, of energy and of upkeep over the years in service, and what energy 20 % cheaper or dearer
 * makes of it. The cost of energy ends a chain of functions, so the function gives the present-value factor alone.
 */
export function lifeCycle(duty: Duty): readonly PlanItem[] {
  const { firstCost, years, discountRate } = duty;
  if (!hasLifeCycle(duty)) {
    const isAsked = firstCost !== undefined || years !== undefined || discountRate !== undefined;
    return [
      ...(isAsked ? [{ kind: "statement", text: LIFE_WANTS } as const] : []),
      ...(hasRunningCost(duty) ? [sensitivity(duty)] : []),
    ];
  }
  return [
    ...(firstCost === undefined
      ? [
          money(
            duty,
            "firstCost",
            "First cost to the buyer",
            value(SELLING_PRICE),
            "The selling price above, without installation and tax.",
          ),
        ]
      : statedMoney(duty, "firstCost")),
    ...statedMoney(duty, "yearlyUpkeep"),
    ...stated(duty, "years", "discountRate"),
    {
      kind: "result",
      key: "presentValueFactor",
      label: "Present-value factor",
      quantity: "ratio",
      expression: callById(
        "LIFECYCLECOST",
        constant(0),
        constant(1),
        value("years"),
        ratio(value("discountRate"), constant(100)),
      ),
      how: "(1 − (1 + i)^−n)/i: today's worth of 1 at the end of each year.",
    },
    money(
      duty,
      "lifeCycleCost",
      "Life-cycle cost",
      whereNumber(RUNNING_COST, wholeAt(duty, value(RUNNING_COST))),
      "First cost + (energy + upkeep in a year) × present-value factor.",
      true,
    ),
    partTable(duty),
    sensitivity(duty),
  ];
}

/** First cost and all yearly costs, with this much for energy. */
function wholeAt(duty: Duty, running: Expression): Expression {
  const yearly = duty.yearlyUpkeep === undefined ? running : sum(running, value("yearlyUpkeep"));
  return sum(value("firstCost"), product(yearly, FACTOR));
}

function energyName(duty: Duty): string {
  return duty.driver === "motor" ? "Electricity" : "Fuel";
}

function partTable(duty: Duty): TableItem {
  const parts: Readonly<Record<LifePart, { label: string; what: string; cost: Expression }>> = {
    firstCost: { label: "First cost", what: "at the start", cost: value("firstCost") },
    running: {
      label: energyName(duty),
      what: "in a year × factor",
      cost: whereNumber(RUNNING_COST, product(value(RUNNING_COST), FACTOR)),
    },
    upkeep: { label: "Upkeep", what: "in a year × factor", cost: product(value("yearlyUpkeep"), FACTOR) },
    whole: { label: "Life-cycle cost", what: "sum", cost: value("lifeCycleCost") },
  };
  return {
    kind: "table",
    key: LIFE_CYCLE,
    heading: "today's worth, by part",
    columns: [
      { key: "cost", label: withCurrency(duty, "cost") },
      { key: "what", label: "how" },
      { key: "share", label: "share", quantity: "percent" },
    ],
    rows: lifeParts(duty).map((name) => {
      const { label, what, cost } = parts[name];
      const share = product(ratio(cost, value("lifeCycleCost")), constant(100));
      return { label, cells: [cost, constant(what), whereWhole(name === "running" ? shareOfRunning() : share)] };
    }),
  };
}

function shareOfRunning(): Expression {
  return product(ratio(product(value(RUNNING_COST), FACTOR), value("lifeCycleCost")), constant(100));
}

function whereWhole(met: Expression): Expression {
  return ifNumber(value("lifeCycleCost"), met, NOT_WORKED_OUT);
}

/** The same with energy cheaper and dearer. */
function sensitivity(duty: Duty): TableItem {
  const isWhole = hasLifeCycle(duty);
  const price = duty.driver === "motor" ? "tariff" : "fuel price";
  const rows = [
    { label: `Energy ${SWING * 100} % cheaper`, of: 1 - SWING },
    { label: `Energy ${SWING * 100} % dearer`, of: 1 + SWING },
  ];
  return {
    kind: "table",
    key: "sensitivity",
    heading: "if the price of energy moves",
    columns: [
      { key: "running", label: withCurrency(duty, "a year") },
      { key: "what", label: "how" },
      ...(isWhole ? [{ key: "whole", label: withCurrency(duty, "life cycle") }] : []),
    ],
    rows: rows.map(({ label, of }) => {
      const running = product(value(RUNNING_COST), constant(of));
      return {
        label,
        cells: [
          whereNumber(RUNNING_COST, running),
          constant(`${price} × ${of}`),
          ...(isWhole ? [whereNumber(RUNNING_COST, wholeAt(duty, running))] : []),
        ],
      };
    }),
  };
}
