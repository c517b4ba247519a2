import { ATMOSPHERE, DENSITY, VAPORPRESSURE, VISCOSITY } from "../../catalogue/entries/liquid-and-site.ts";
import type { Duty } from "../../duty/duty.ts";
import { callOf, handles } from "../expression.ts";
import { FIELD, LIQUID } from "../field-handles.ts";
import { figure, type PlanItem } from "../plan.ts";
import { asPumpedItems } from "./as-pumped.ts";

/** Worked cells of this section. */
export const LIQUID_FIGURES = handles({
  density: "density",
  viscosity: "dynamicViscosity",
  vapourPressure: "absolutePressure",
  atmosphere: "absolutePressure",
});

/** Properties at pumping temperature, and the air over the site. */
export function liquidAndSite(duty: Duty): readonly PlanItem[] {
  return [{ kind: "section", id: "liquid", text: "Liquid and site" }, ...asPumpedItems(duty), ...PROPERTIES];
}

const PROPERTIES: readonly PlanItem[] = [
  figure(
    LIQUID_FIGURES.density,
    "Density",
    callOf(DENSITY, LIQUID),
    "At pumping temperature; SG is over 998.2 kg/m³ (20 °C).",
  ),
  figure(
    LIQUID_FIGURES.viscosity,
    "Dynamic viscosity",
    callOf(VISCOSITY, LIQUID),
    "At pumping temperature; of a slurry, that of its liquid.",
  ),
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
    "Standard, at site altitude; weather ±3 kPa (±0.4 psi).",
  ),
];
