import { ATMOSPHERE, DENSITY, VAPORPRESSURE, VISCOSITY } from "../../catalogue/entries/liquid-and-site.ts";
import { callOf, handles } from "../expression.ts";
import { FIELD, LIQUID } from "../field-handles.ts";
import { figure, type PlanItem } from "../plan.ts";

/** Worked cells of this section. */
export const LIQUID_FIGURES = handles({
  density: "density",
  viscosity: "dynamicViscosity",
  vapourPressure: "absolutePressure",
  atmosphere: "absolutePressure",
});

/** Properties at pumping temperature, and the air over the site. */
export const liquidAndSite: readonly PlanItem[] = [
  { kind: "section", id: "liquid", text: "Liquid and site" },
  figure(
    LIQUID_FIGURES.density,
    "Density",
    callOf(DENSITY, LIQUID),
    "At pumping temperature. Specific gravity is relative to 998.2 kg/m³, water at 20 °C.",
  ),
  figure(LIQUID_FIGURES.viscosity, "Dynamic viscosity", callOf(VISCOSITY, LIQUID), "At pumping temperature."),
  figure(
    LIQUID_FIGURES.vapourPressure,
    "Vapour pressure",
    callOf(VAPORPRESSURE, LIQUID),
    "Absolute, at pumping temperature.",
  ),
  figure(
    LIQUID_FIGURES.atmosphere,
    "Atmospheric pressure",
    callOf(ATMOSPHERE, { altitude: FIELD.altitude }),
    "Absolute, standard atmosphere at site altitude. Weather moves it by about ±3 kPa (±0.4 psi).",
  ),
];
