import type { Duty } from "../../duty/duty.ts";
import type { PlanItem } from "../plan.ts";
import { billOfQuantities } from "./bill-of-quantities.ts";
import { lifeCycle } from "./life-cycle.ts";
import { offerPrice } from "./offer-price.ts";
import { runningCost } from "./running-cost.ts";

export const QUANTITIES_AND_COST = "Quantities and cost";

const OF_MOTOR =
  "Energy holds at the one operating point: charges for demand, standing charges, taxes, starting and part load are not counted.";
const OF_ENGINE =
  "Fuel holds at the one operating point: urea solution (3 % to 6 % of the diesel), oil and filters (1 % to 2 % of its cost), delivery, taxes and idling are not counted; common practice.";
const OF_PRICE =
  "Prices are those stated on the day of their basis. Tax, freight, permits, rental and financing are not counted, and a price is no offer until someone answers for it.";

/** What the lines are made of, what running costs, what the package is sold for, and what it costs over its years. */
export function estimate(duty: Duty, above: readonly PlanItem[]): readonly PlanItem[] {
  const running = runningCost(duty);
  const price = offerPrice(duty);
  const life = lifeCycle(duty);
  const isRunning = running.some(({ kind }) => kind === "result");
  const notCounted = [
    ...(isRunning ? [duty.driver === "motor" ? OF_MOTOR : OF_ENGINE] : []),
    ...(price.length + life.length > 0 ? [OF_PRICE] : []),
  ];
  return [
    // A page of its own: quantities are ordered from it, and direct cost and margin are not for every reader.
    { kind: "section", id: "estimate", text: QUANTITIES_AND_COST, newPage: true },
    ...billOfQuantities(duty, above),
    ...running,
    ...price,
    ...life,
    ...notCounted.map((text): PlanItem => ({ kind: "statement", text })),
  ];
}
