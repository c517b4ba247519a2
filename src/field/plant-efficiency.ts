import { STANDARD_GRAVITY } from "../basis/constants.ts";
import { checkInputs, type Method, outOfRange } from "../basis/method.ts";
import { amount, andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { DIESEL_DENSITY, fuelRateMethod } from "../drive/fuel-rate.ts";
import { CONSUMPTION_UNCERTAINTY } from "../tables/field-instruments.ts";
import { ELECTRIC_CRITERION, type PlantCriterion } from "../tables/pumping-plant-criteria.ts";
import { rootSumSquare, type Uncertainty, uncertaintyOf } from "./uncertainty.ts";

/** What the water takes up, as measured. */
export interface WaterSide {
  /** m³/s */
  readonly flow: number;
  readonly flowInstrument: Uncertainty | null;
  /** m */
  readonly head: number;
  /** Of the head, m. */
  readonly headUncertainty: number;
  /** kg/m³ */
  readonly density: number;
}

const SHARE = { quantity: "percent", above: 0, atMost: 1 } as const;

export const plantEfficiencyMethod = {
  cites: [
    { source: "iso-17769-1", at: "pump power output, pump and overall efficiency" },
    { source: "jcgm-100", at: "5.1.6, relative uncertainty of a product" },
    { source: "nebraska-criteria", at: "water power and energy from a unit of fuel or electricity" },
    ...fuelRateMethod.cites,
  ],
  inputs: {
    flow: { name: "flow", symbol: "Q", quantity: "flow", above: 0 },
    head: { name: "head", symbol: "H", quantity: "head", above: 0 },
    headUncertainty: { name: "head uncertainty", quantity: "head", atLeast: 0 },
    density: { name: "density", symbol: "ρ", quantity: "density", above: 0 },
    power: { name: "electric power", quantity: "electricPower", above: 0, atMost: 1e9 },
    motorEfficiency: { ...SHARE, name: "motor efficiency", symbol: "η_m" },
    driveEfficiency: { ...SHARE, name: "drive efficiency", symbol: "η_d" },
    fuelFlow: { name: "fuel flow", quantity: "fuelFlow", above: 0 },
  },
} as const satisfies Method<string>;

const WHOLE = {
  power: 1,
  motorEfficiency: 1,
  driveEfficiency: 1,
  fuelFlow: 1,
};

export interface ElectricPlantInput extends WaterSide {
  /** At the meter, W. */
  readonly power: number;
  readonly powerInstrument: Uncertainty | null;
  /** At its load, 0 to 1; null where it is not known: the pump's own efficiency stays open. */
  readonly motorEfficiency: number | null;
  /** Of frequency converter, belts and gear together, 0 to 1; 1 where it is coupled. */
  readonly driveEfficiency: number;
}

export interface ElectricPlant {
  /** W */
  readonly waterPower: number;
  /** From the meter to the water, 0 to 1. */
  readonly wireToWater: number;
  /** Water power and energy over those of a plant in good order. */
  readonly ofCriterion: number;
  /** W */
  readonly shaftPower: number | null;
  readonly pumpEfficiency: number | null;
  /** Of either efficiency and of the power, each of its own figure, at two standard deviations. */
  readonly efficiencyUncertainty: number;
  readonly powerUncertainty: number;
}

/**
 * Efficiency of a pumping plant on electricity, from meter to water, and of its pump where the motor's is known.
 * Formula: P_w = ρ g Q H; η = P_w/P_wire; η_pump = P_w/(P_wire η_m η_d); (u_η/η)² = (u_Q/Q)² + (u_H/H)² + (u_P/P)²
 * Fails: out-of-range inputs; efficiency-above-one, more at the water than at the meter.
 * Warns: pump-efficiency-above-one; instrument-assumed.
 * Source: ISO 17769-1; JCGM 100, 5.1.6; Nebraska pumping plant performance criteria.
 */
export function electricPlant(input: ElectricPlantInput): Result<ElectricPlant> {
  const { power, motorEfficiency, driveEfficiency } = input;
  const shares = { motorEfficiency: motorEfficiency ?? 1, driveEfficiency };
  return andThen(waterPowerOf(input, { power, ...shares }), (waterPower) => {
    const wireToWater = waterPower / power;
    if (wireToWater >= 1) return fail([outOfRange("wire-to-water efficiency", "percent", wireToWater, "below", 1)]);
    return andThen(uncertaintyOf(power, input.powerInstrument, "power"), (ofPower) =>
      andThen(uncertaintyOf(input.flow, input.flowInstrument, "flow"), (ofFlow) => {
        const shaftPower = motorEfficiency === null ? null : power * motorEfficiency * driveEfficiency;
        const pumpEfficiency = shaftPower === null ? null : waterPower / shaftPower;
        const powerUncertainty = ofPower / power;
        return succeed(
          {
            waterPower,
            wireToWater,
            ofCriterion: wireToWater / ELECTRIC_CRITERION,
            shaftPower,
            pumpEfficiency,
            efficiencyUncertainty: rootSumSquare(ofFlow / input.flow, relativeOfHead(input), powerUncertainty),
            powerUncertainty,
          },
          aboveOne(pumpEfficiency),
        );
      }),
    );
  });
}

export interface EnginePlantInput extends WaterSide {
  readonly fuel: PlantCriterion;
  /** m³/s */
  readonly fuelFlow: number;
  readonly fuelInstrument: Uncertainty | null;
  /** kg/J; null where it is not known: the pump's own efficiency stays open. */
  readonly specificConsumption: number | null;
  /** Of belts and gear together, 0 to 1; 1 where it is coupled. */
  readonly driveEfficiency: number;
}

export interface EnginePlant {
  /** W */
  readonly waterPower: number;
  /** Energy of the water from a unit of fuel, J/m³. */
  readonly waterEnergy: number;
  /** Over that of a plant in good order. */
  readonly ofCriterion: number;
  /** From the heating value of the fuel to the water, 0 to 1. */
  readonly fuelToWater: number | null;
  /** W */
  readonly shaftPower: number | null;
  readonly pumpEfficiency: number | null;
  readonly plantUncertainty: number;
  /** Of the pump's own efficiency and of the shaft power: that of the specific consumption with them. */
  readonly efficiencyUncertainty: number;
  readonly powerUncertainty: number;
}

/**
 * Performance of a pumping plant on an engine: energy of the water from its fuel, and the pump's efficiency where the
 * specific consumption of a diesel is known.
 * Formula: e = P_w/V̇; P_shaft = V̇ ρ_fuel/b × η_d; (u/η)² = (u_Q/Q)² + (u_H/H)² + (u_V/V)² (+ (8 %)² of b)
 * Fails: out-of-range inputs; specific-consumption-of-diesel, one stated for another fuel.
 * Warns: pump-efficiency-above-one; instrument-assumed.
 * Source: Nebraska pumping plant performance criteria; density of EN 590 (from memory).
 */
export function enginePlant(input: EnginePlantInput): Result<EnginePlant> {
  const { fuel, fuelFlow, specificConsumption, driveEfficiency } = input;
  return andThen(waterPowerOf(input, { fuelFlow, driveEfficiency }), (waterPower) => {
    const isDiesel = fuel.fuel === "diesel";
    if (specificConsumption !== null && !isDiesel) {
      return fail([{ code: "specific-consumption-of-diesel", kind: "error", subject: "fuel", given: fuel.fuel }]);
    }
    const b = fuelRateMethod.inputs.specificConsumption;
    const bounded = checkInputs(
      { cites: plantEfficiencyMethod.cites, inputs: { specificConsumption: b } },
      { specificConsumption: specificConsumption ?? b.atLeast },
    );
    if (!bounded.ok) return bounded;
    return andThen(uncertaintyOf(fuelFlow, input.fuelInstrument ?? FUEL_BY_VOLUME, "power"), (ofFuel) =>
      andThen(uncertaintyOf(input.flow, input.flowInstrument, "flow"), (ofFlow) => {
        const waterEnergy = waterPower / fuelFlow;
        const shaftPower =
          specificConsumption === null ? null : ((fuelFlow * DIESEL_DENSITY) / specificConsumption) * driveEfficiency;
        const pumpEfficiency = shaftPower === null ? null : waterPower / shaftPower;
        const plantUncertainty = rootSumSquare(ofFlow / input.flow, relativeOfHead(input), ofFuel / fuelFlow);
        return succeed(
          {
            waterPower,
            waterEnergy,
            ofCriterion: waterEnergy / fuel.waterEnergy,
            fuelToWater: fuel.heatingValue === null ? null : waterEnergy / fuel.heatingValue,
            shaftPower,
            pumpEfficiency,
            plantUncertainty,
            efficiencyUncertainty: rootSumSquare(plantUncertainty, CONSUMPTION_UNCERTAINTY),
            powerUncertainty: rootSumSquare(ofFuel / fuelFlow, CONSUMPTION_UNCERTAINTY),
          },
          aboveOne(pumpEfficiency),
        );
      }),
    );
  });
}

/** Fuel measured by its volume in a time. Common practice. */
const FUEL_BY_VOLUME: Uncertainty = { kind: "part", part: 0.03 };

function waterPowerOf(
  { flow, head, headUncertainty, density }: WaterSide,
  others: Partial<typeof WHOLE>,
): Result<number> {
  const checked = checkInputs(plantEfficiencyMethod, { flow, head, headUncertainty, density, ...WHOLE, ...others });
  return checked.ok ? succeed(density * STANDARD_GRAVITY * flow * head, checked.findings) : checked;
}

function relativeOfHead({ head, headUncertainty }: WaterSide): number {
  return headUncertainty / head;
}

function aboveOne(pumpEfficiency: number | null): readonly Finding[] {
  if (pumpEfficiency === null || pumpEfficiency < 1) return [];
  const found = amount("percent", pumpEfficiency);
  return [{ code: "pump-efficiency-above-one", kind: "check", subject: "pump efficiency", found }];
}
