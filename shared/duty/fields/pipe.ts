import { pipeCollapseMethod } from "../../../src/estimate/pipe-collapse.ts";
import { amount } from "../field.ts";
import { RATED_PRESSURE } from "./bounds.ts";

export const pipe = {
  suctionHoseRating: amount({
    label: "Suction hose rating",
    quantity: "gaugePressure",
    bounds: RATED_PRESSURE,
    help: "Working pressure of hose and pipe without a standard in the suction line: the lowest of hose, coupling and clamp, at 23 °C (73 °F), by their makers.",
  }),
  dischargeHoseRating: amount({
    label: "Discharge hose rating",
    quantity: "gaugePressure",
    bounds: RATED_PRESSURE,
    help: "Working pressure of hose and pipe without a standard in the discharge line: the lowest of hose, coupling and clamp, at 23 °C (73 °F), by their makers.",
  }),
  vacuumDuration: amount({
    isSeldom: true,
    label: "Vacuum lasts",
    quantity: "hours",
    bounds: pipeCollapseMethod.inputs.duration,
    help: "Hours that the suction line stands under vacuum without hours of rest: polyethylene yields with time. 50 years where left blank.",
  }),
};
