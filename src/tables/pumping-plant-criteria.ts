import { unitOf } from "../basis/units.ts";

const HORSEPOWER_HOUR = unitOf("hp").factor * unitOf("h").factor;
const GALLON = unitOf("US gal").factor;
const CUBIC_FOOT = unitOf("ft³").factor;

export interface PlantCriterion {
  readonly fuel: string;
  readonly also: readonly string[];
  /** Water horsepower-hours of a plant in good order from a unit of fuel: J of water from m³. */
  readonly waterEnergy: number;
  /** J/m³, lower; null where none is stated here. */
  readonly heatingValue: number | null;
}

/**
 * Nebraska pumping plant performance criteria: water horsepower-hours from a US gallon of fuel, or from 1000 ft³ of gas, by a
 * pump of 75 % on an engine in good order. University of Nebraska, CropWatch 2008, read on a public page.
 * Lower heating value of diesel 138,700 Btu/US gal, from memory; of the others none is stated here.
 */
export const PLANT_CRITERIA: readonly PlantCriterion[] = [
  {
    fuel: "diesel",
    also: ["gasoil", "gas oil"],
    waterEnergy: (12.5 * HORSEPOWER_HOUR) / GALLON,
    heatingValue: (138_700 * unitOf("Btu").factor) / GALLON,
  },
  {
    fuel: "gasoline",
    also: ["petrol"],
    waterEnergy: (8.6 * HORSEPOWER_HOUR) / GALLON,
    heatingValue: null,
  },
  {
    fuel: "propane",
    also: ["lpg", "lp gas"],
    waterEnergy: (6.89 * HORSEPOWER_HOUR) / GALLON,
    heatingValue: null,
  },
  {
    fuel: "natural gas",
    also: ["gas"],
    waterEnergy: (61.7 * HORSEPOWER_HOUR) / (1000 * CUBIC_FOOT),
    heatingValue: null,
  },
];

/** The same for electricity: J of water from J at the meter, 0.885 whp·h/kWh with a motor of 88 %. */
export const ELECTRIC_CRITERION = (0.885 * HORSEPOWER_HOUR) / unitOf("kWh").factor;
