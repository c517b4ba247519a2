import type { FieldKey } from "../../../../shared/duty/duty-text.ts";
import { costParts } from "../../../../shared/package/cost-parts.ts";
import { costBars } from "../../pictures/cost-bars.ts";
import { findingsAt } from "../findings.ts";
import { packageStep } from "./package-step.ts";

/** The price of energy the driver does not take. A driver not stated is a motor; one half typed may become either. */
export function priceWithoutUse(driver: string): readonly FieldKey[] {
  const named = driver.trim().toLowerCase();
  if (named === "engine") return ["tariff"];
  return named === "" || named === "motor" ? ["fuelPrice"] : [];
}

export const estimate = packageStep({
  key: "estimate",
  title: "Quantities and cost",
  fields: [
    "currency",
    "runningHours",
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
  ],
  // A field that holds something unreadable stays, for the duty is not complete until it is mended.
  without: (context) =>
    priceWithoutUse(context.state.duty.fields.driver).filter(
      (field) => !findingsAt(context, field).some(({ severity }) => severity === "error"),
    ),
  picture: (duty, width) => {
    const costs = costParts(duty);
    return costs === undefined ? undefined : costBars(costs, width);
  },
  missing: "State both lines: the quantities come of them.",
  caution:
    "Quantities are those of the lines as stated, for an estimate and not for an order: check them on a drawing.",
});
