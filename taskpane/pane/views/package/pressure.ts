import { packageStep } from "./package-step.ts";

export const pressure = packageStep({
  key: "pressure",
  title: "Pressure and flanges",
  fields: ["greatestSuctionPressure", "casingMaterial", "flangeClass", "casingWorkingPressure"],
  missing: "Choose a pump: the greatest pressure comes of its curve.",
  caution:
    "A casing or flange above its pressure bursts: check each nozzle, seal and hose, and test with people clear.",
});
