import { pumpCurveMethod } from "../../../src/pump/pump-curve-point.ts";
import { greatestSuctionLiftMethod } from "../../../src/suction/greatest-suction-lift.ts";
import { amount } from "../field.ts";

export const suction = {
  npshRequired: amount({
    label: "NPSH required",
    quantity: "head",
    bounds: pumpCurveMethod.inputs.npshRequired,
    help: "From the pump's curve at this flow, where no pump is selected; the curve of a selected pump decides.",
  }),
  npshMargin: amount({
    label: "NPSH margin required",
    quantity: "head",
    bounds: greatestSuctionLiftMethod.inputs.npshMargin,
    help: "Minimum difference between NPSH available and required that the order specifies. Blank: taken by service.",
  }),
};
