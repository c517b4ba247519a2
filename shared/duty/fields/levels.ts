import { amount, percent } from "../field.ts";
import { FLOW, LEVEL, PRESSURE } from "./bounds.ts";

export const levels = {
  flow: amount({ label: "Flow", quantity: "flow", bounds: FLOW, required: true, help: "Flow the pump must give." }),
  sourceLevel: amount({
    label: "Source liquid level",
    quantity: "elevation",
    bounds: LEVEL,
    required: true,
    help: "Lowest liquid surface pumped from, above any datum you like.",
  }),
  pumpLevel: amount({
    label: "Pump level",
    quantity: "elevation",
    bounds: LEVEL,
    required: true,
    help: "Shaft centre line of a horizontal pump, above the same datum.",
  }),
  deliveryLevel: amount({
    label: "Delivery level",
    quantity: "elevation",
    bounds: LEVEL,
    required: true,
    help: "Liquid surface pumped to, or centre line of a free outlet, above the same datum.",
  }),
  sourcePressure: amount({
    isSeldom: true,
    label: "Source pressure",
    quantity: "gaugePressure",
    bounds: PRESSURE,
    whenBlank: 0,
    help: "Gauge pressure over the source liquid, 0 where it is open to the air; or absolute, such as 12 psia.",
  }),
  deliveryPressure: amount({
    isSeldom: true,
    label: "Delivery pressure",
    quantity: "gaugePressure",
    bounds: PRESSURE,
    whenBlank: 0,
    help: "Gauge pressure at the delivery surface, 0 where it is open to the air; or absolute, such as 20 psia.",
  }),
  frictionMargin: percent({
    label: "Margin on friction losses",
    // Losses trebled: house choice.
    bounds: { atLeast: 0, atMost: 2 },
    whenBlank: 0,
    help: "Added to the losses of both lines as a line of its own, in percent.",
  }),
};
