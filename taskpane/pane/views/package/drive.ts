import { packageStep } from "./package-step.ts";

export const drive = packageStep({
  key: "drive",
  title: "Drive",
  fields: ["driver", "serviceFactor", "engineRating", "airTemperature", "aspiration", "specificConsumption"],
  missing: "Choose a pump whose curve gives efficiency or power.",
  caution:
    "Guard every turning part, lock out before work, and keep exhaust and hot surfaces away from people and fuel.",
});
