import type { PackageSection } from "../package-section.ts";
import { statement } from "../plan.ts";
import { billOfQuantities } from "./bill-of-quantities.ts";
import { driveSection } from "./drive.ts";
import { lifeCycle } from "./life-cycle.ts";
import { offerPrice } from "./offer-price.ts";
import { runningCost } from "./running-cost.ts";

const OF_MOTOR = statement(
  "Energy holds at the operating points above: charges for demand, standing charges, taxes, starting and the part load of a motor are not counted.",
);
const OF_ENGINE = statement(
  "Fuel holds at the operating points above: urea solution (3 % to 6 % of the diesel), oil and filters (1 % to 2 % of its cost), delivery, taxes and idling are not counted; common practice.",
);
const OF_PRICE = statement(
  "Prices are those stated on the day of their basis. Tax, freight, permits, rental and financing are not counted, and a price is no offer until someone answers for it.",
);

/** What the lines are made of, what running costs, what the package is sold for, and what it costs over its years. */
export const estimateSection: PackageSection = {
  id: "estimate",
  title: "Quantities and cost",
  // Quantities are ordered from it, and direct cost and margin are not for every reader.
  newPage: true,
  missing: "State both lines: the quantities come of them.",
  caution:
    "Quantities are those of the lines as stated, for an estimate and not for an order: check them on a drawing.",
  decidedBy: driveSection.decidedBy,
  isOfPump: true,
  items: (duty) => {
    const running = runningCost(duty);
    const priced = [...offerPrice(duty), ...lifeCycle(duty)];
    return [
      ...billOfQuantities(duty),
      ...running,
      ...priced,
      ...(running.some(({ kind }) => kind === "result") ? [duty.driver === "motor" ? OF_MOTOR : OF_ENGINE] : []),
      ...(priced.length > 0 ? [OF_PRICE] : []),
    ];
  },
};
