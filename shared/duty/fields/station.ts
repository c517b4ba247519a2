import { operatingPointMethod } from "../../../src/station/operating-point.ts";
import { amount, oneOf } from "../field.ts";

/** How many pumps stand on site, and how. */
export const station = {
  pumpsRunning: amount({
    label: "Pumps running",
    quantity: "ratio",
    bounds: operatingPointMethod.inputs.pumps,
    isWhole: true,
    whenBlank: 1,
    help: "Pumps of the chosen kind that run together at the flow stated. Unlike ones beside them are further pumps, stated with the chosen one.",
  }),
  pumpsStandby: amount({
    label: "Standby pumps",
    quantity: "ratio",
    // As many as may run: house choice.
    bounds: { atLeast: 0, atMost: operatingPointMethod.inputs.pumps.atMost },
    isWhole: true,
    whenBlank: 0,
    help: "Pumps installed beside those that run. They count in the take-off and the price alone.",
  }),
  arrangement: oneOf(["parallel", "series"], {
    label: "Several pumps stand in",
    whenBlank: "parallel",
    help: "In parallel they share the flow, in series they add their heads.",
  }),
};
