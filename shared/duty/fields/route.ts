import { OUTLETS, SUMMIT_VALVES } from "../../../src/route/siphon.ts";
import { amount, oneOf } from "../field.ts";
import { FLOW } from "./bounds.ts";

export const route = {
  outlet: oneOf(OUTLETS, {
    label: "Outlet",
    whenBlank: "free",
    also: { open: "free", drowned: "submerged" },
    help: "submerged where it ends at least one bore under the liquid: only a sealed outlet keeps a siphon.",
  }),
  summitValve: oneOf(SUMMIT_VALVES, {
    label: "Valves at the summits",
    whenBlank: "none",
    also: { "combination valve": "air valve", "vacuum breaker": "air valve", "air release": "release only" },
    help: "An air valve lets air in and ends a siphon; release only shuts under vacuum; a vacuum primer draws the air off.",
  }),
  fillingFlow: amount({
    label: "Minimum filling flow",
    quantity: "flow",
    bounds: FLOW,
    help: "Flow that must still go over the highest place while the line fills. Blank: the filling velocity of the settings in the largest bore.",
  }),
};
