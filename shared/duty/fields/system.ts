import { amount } from "../field.ts";
import { FLOW } from "./bounds.ts";

export const system = {
  curveFlow: amount({
    label: "System curve, maximum flow",
    quantity: "flow",
    bounds: FLOW,
    help: "System curve, maximum flow; one and a half times the flow where left blank.",
  }),
};
