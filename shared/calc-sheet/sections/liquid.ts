import { callById, type Expression, value } from "../expression.ts";
import type { PlanItem } from "../plan.ts";

const liquid = value("liquid");
const temperature = value("temperature");

/** The tail that most hydraulic functions end with: liquid, temperature. */
export const LIQUID_TAIL: readonly Expression[] = [liquid, temperature];

/** Properties at pumping temperature, and the air over the site. */
export const liquidAndSite: readonly PlanItem[] = [
  { kind: "section", id: "liquid", text: "Liquid and site" },
  {
    kind: "result",
    key: "density",
    label: "Density",
    quantity: "density",
    expression: callById("DENSITY", liquid, temperature),
    how: "At pumping temperature. Specific gravity is relative to 998.2 kg/m³, water at 20 °C.",
  },
  {
    kind: "result",
    key: "viscosity",
    label: "Dynamic viscosity",
    quantity: "dynamicViscosity",
    expression: callById("VISCOSITY", liquid, temperature),
    how: "At pumping temperature.",
  },
  {
    kind: "result",
    key: "vapourPressure",
    label: "Vapour pressure",
    quantity: "absolutePressure",
    expression: callById("VAPORPRESSURE", liquid, temperature),
    how: "Absolute, at pumping temperature.",
  },
  {
    kind: "result",
    key: "atmosphere",
    label: "Atmospheric pressure",
    quantity: "absolutePressure",
    expression: callById("ATMOSPHERE", value("altitude")),
    how: "Absolute, standard atmosphere at site altitude. Weather moves it by about ±3 kPa (±0.4 psi).",
  },
];
