import { PART_NAMES, SCORE_WEIGHTS, type ScoreParts } from "../../../src/pump/selection-score.ts";
import { type AmountField, amount } from "../field.ts";
import { RATED_PRESSURE } from "./bounds.ts";

function weight(part: keyof ScoreParts, help: string): AmountField {
  return amount({
    label: `Weight of ${PART_NAMES[part]}`,
    quantity: "ratio",
    bounds: { atLeast: 0 },
    isSeldom: true,
    whenBlank: SCORE_WEIGHTS[part],
    help: `${help} Weights count over their sum; 0 leaves it out. Pumps that keep every rule come first, whatever the weights.`,
  });
}

/** What the pumps to choose from are ranked by. */
export const ranking = {
  weightEfficiency: weight("efficiency", "Liquid power asked over shaft power, at the operating point."),
  weightNearness: weight("nearness", "How near the pump runs to its best efficiency flow."),
  weightNpshMargin: weight("npshMargin", "NPSH margin over twice the margin required, up to 1."),
  weightTrim: weight("trim", "How little the impeller is cut."),
  pressureAllowed: amount({
    label: "Maximum pressure behind the pumps",
    quantity: "gaugePressure",
    bounds: RATED_PRESSURE,
    help: "What pipe, hose and fittings behind the pumps hold. A pump that gives more against a shut valve is left out of the ranking, and so is one above the working pressure of its own casing in the pump list.",
  }),
};
