import { fieldsOf } from "../../../../shared/duty/fields.ts";
import { stagePressures } from "../../../../shared/package/stage-pressures.ts";
import { stageBars } from "../../pictures/stage-bars.ts";
import { packageStep } from "./package-step.ts";

export const pressure = packageStep({
  key: "pressure",
  title: "Pressure and flanges",
  fields: fieldsOf("pressure"),
  picture: (duty, width) => {
    const pressures = stagePressures(duty);
    return pressures === undefined ? undefined : stageBars(pressures, duty.unitSet, width);
  },
  missing: "Choose a pump: the greatest pressure comes of its curve.",
  caution:
    "A casing or flange above its pressure bursts: check each nozzle, seal and hose, and test with people clear.",
});
