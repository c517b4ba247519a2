import { pumpCurveMethod } from "../../../src/pump/pump-curve-point.ts";
import { greatestSuctionLiftMethod } from "../../../src/suction/greatest-suction-lift.ts";
import { amount } from "../field.ts";

export const suction = {
  npshRequired: amount({
    label: "NPSH required",
    quantity: "head",
    bounds: pumpCurveMethod.inputs.npshRequired,
    help: "From the pump's curve at this flow, where no pump is chosen; the curve of a chosen pump decides.",
  }),
  npshMargin: amount({
    label: "NPSH margin wanted",
    quantity: "head",
    bounds: greatestSuctionLiftMethod.inputs.npshMargin,
    help: "Least difference between NPSH available and required that the order asks for. Blank: taken by service.",
  }),
};
