import { isGiven } from "../../duty/duty.ts";
import { type FieldKey, fieldsOf } from "../../duty/fields.ts";
import type { PackageSection } from "../package-section.ts";
import { type PlanItem, statement } from "../plan.ts";
import { billOfPieces, billOfQuantities } from "./bill-of-quantities.ts";
import { driveSection } from "./drive.ts";
import { lifeCycle } from "./life-cycle.ts";
import { offerPrice } from "./offer-price.ts";
import { costOfEnergy, energyOfYear } from "./running-cost.ts";

const OF_MOTOR = statement(
  "Energy holds at the operating points above: charges for demand, standing charges, taxes, starting and the part load of a motor are not counted.",
);
const OF_ENGINE = statement(
  "Fuel holds at the operating points above: urea solution (3 % to 6 % of the diesel), oil and filters (1 % to 2 % of its cost), delivery, taxes and idling are not counted; common practice.",
);
const OF_PRICE = statement(
  "Prices are those stated on the day of their basis. Tax, freight, permits, rental and financing are not counted, and this is not a quotation until authorised.",
);

const INTERNAL: ReadonlySet<FieldKey> = new Set([
  "tariff",
  "fuelPrice",
  "directCost",
  "overhead",
  "contingency",
  "margin",
  "firstCost",
  "yearlyUpkeep",
  "years",
  "discountRate",
  "priceSwing",
]);

/** Boxes that nobody outside is shown, not even among those of no use. */
export function isInternal(key: FieldKey): boolean {
  return INTERNAL.has(key);
}

/**
 * What the lines are made of and what energy is used, on the sheet of the duty; what that costs, what the package is sold
 * for, and what it costs over its years, on a sheet of their own, on which no other rests.
 */
export const estimateSection: PackageSection = {
  id: "estimate",
  heading: "Quantities and energy",
  isAskedFor: ({ state }) => fieldsOf("estimate").some((key) => isGiven(state[key])),
  missing: "State both lines: the quantities come of them.",
  caution:
    "Quantities are those of the lines as stated, for an estimate and not for an order: check them on a drawing.",
  decidedBy: driveSection.decidedBy,
  isOfPump: true,
  items: (duty) => {
    const energy = energyOfYear(duty);
    const priced = [...offerPrice(duty), ...lifeCycle(duty)];
    const internal = [...costOfEnergy(duty), ...priced];
    return [
      ...billOfQuantities(duty),
      ...energy,
      ...(energy.some(({ kind }) => kind === "result") ? [duty.driver === "motor" ? OF_MOTOR : OF_ENGINE] : []),
      ...billOfPieces(duty),
      ...(internal.length > 0 ? [ESTIMATE, ...internal] : []),
      ...(priced.length > 0 ? [OF_PRICE] : []),
    ];
  },
};

const ESTIMATE: PlanItem = { kind: "section", id: "estimate", text: "Cost and price", sheet: "estimate" };
