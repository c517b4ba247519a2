import { fieldsOf } from "../../../../shared/duty/fields.ts";
import { costParts } from "../../../../shared/package/cost-parts.ts";
import { costBars } from "../../pictures/cost-bars.ts";
import { packageStep } from "./package-step.ts";

export const estimate = packageStep({
  key: "estimate",
  title: "Quantities and cost",
  fields: fieldsOf("costs"),
  picture: (duty, width) => {
    const costs = costParts(duty);
    return costs === undefined ? undefined : costBars(costs, width);
  },
  missing: "State both lines: the quantities come of them.",
  caution:
    "Quantities are those of the lines as stated, for an estimate and not for an order: check them on a drawing.",
});
