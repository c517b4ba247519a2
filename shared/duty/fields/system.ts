import { amount } from "../field.ts";
import { FLOW } from "./bounds.ts";

export const system = {
  curveFlow: amount({
    label: "System curve up to",
    quantity: "flow",
    bounds: FLOW,
    help: "Greatest flow of the system curve; one and a half times the flow where left blank.",
  }),
};
