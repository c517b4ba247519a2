import { quantity } from "../parameter.ts";
import { line } from "./line.ts";

/** Arguments of the functions that know where a line stands; levels are over one datum. */
export const ROUTE_PLACE = {
  dischargeLine: line("The line from the pump to its outlet, with levels"),
  startLevel: quantity("elevation", { about: "Level at which the line starts: the pump" }),
  startHead: quantity("elevation", {
    about: "Level of the energy line at the start: elevation + pressure head + velocity head",
    whenLeftOut: { value: null, shown: "marched back from the outlet" },
  }),
  outletLevel: quantity("elevation", {
    about: "Level of the outlet, or of the liquid over it",
    whenLeftOut: { value: null, shown: "the level of the line's last row" },
  }),
  sourceLevel: quantity("elevation", { about: "Level of the liquid at the source" }),
  sourcePressure: quantity("gaugePressure", {
    about: "Gauge pressure on the liquid at the source; negative for a vacuum",
    range: "no more vacuum than one standard atmosphere",
    whenLeftOut: { value: 0, shown: "0, open to the air" },
  }),
  outletPressure: quantity("gaugePressure", {
    about: "Gauge pressure over the outlet",
    range: "no more vacuum than one standard atmosphere",
    whenLeftOut: { value: 0, shown: "0, open to the air" },
  }),
  altitude: quantity("elevation", {
    about: "Height of the site above sea level; negative below it",
    whenLeftOut: { value: null, shown: "sea level, with a caution where there is vacuum" },
  }),
};
