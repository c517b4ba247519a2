import { SERVICES } from "../../../src/tables/services.ts";
import { quantity } from "../parameter.ts";
import { openChoice } from "./open-choice.ts";

/** What decides the head tolerance where neither it nor an acceptance grade is stated. */
export const ungradedPump = {
  service: openChoice(SERVICES, "What the pump is for", "not listed"),
  shaftPower: quantity("power", {
    about: "Maximum shaft power of one pump, for the default grade",
    range: "0 or more",
    whenLeftOut: { value: null, shown: "not known: the widest default, that of a pump to 10 kW" },
  }),
};
