import type { Citation } from "../basis/citation.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { amount, type Result, succeed } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";
import { betweenRows } from "../numeric/between-rows.ts";

const GRAM_PER_KILOWATT_HOUR = unitOf("g/kWh").factor;
const KILOWATT = unitOf("kW").factor;

/** Density of diesel fuel at 15 °C, kg/m³. EN 590 allows 820 to 845; a US No. 2 fuel of 7.1 lb/gal has 851. */
export const DIESEL_DENSITY = 840;

export interface FuelRateInput {
  /** At the engine's flywheel, W. */
  readonly shaftPower: number;
  /** Fuel per energy delivered, kg/J; `usualConsumption` where not known. */
  readonly specificConsumption: number | null;
  /** Of the fuel, kg/m³; `DIESEL_DENSITY` where left out. */
  readonly fuelDensity?: number;
}

export const fuelRateMethod = {
  cites: [
    { source: "practice", at: "V̇ = P b / ρ; b 195 to 280 g/kWh (0.32 to 0.46 lb/hp-h) at 75 % to 100 % load" },
    { source: "en-590", at: "density of diesel fuel at 15 °C, 820 kg/m³ to 845 kg/m³", unverified: true },
  ],
  inputs: {
    shaftPower: { name: "shaft power", symbol: "P", quantity: "power", above: 0, atMost: 1e8 },
    specificConsumption: {
      name: "specific consumption",
      symbol: "b",
      quantity: "specificConsumption",
      atLeast: 180 * GRAM_PER_KILOWATT_HOUR,
      atMost: 400 * GRAM_PER_KILOWATT_HOUR,
    },
    fuelDensity: { name: "fuel density", symbol: "ρ", quantity: "density", atLeast: 700, atMost: 1000 },
  },
} as const satisfies Method<keyof FuelRateInput>;

const CONSUMPTION_RULE: Citation = {
  source: "practice",
  at: "250 to 280 g/kWh small engines, 215 to 240 middling, 195 to 215 large turbocharged, at 75 % to 100 % load",
};

/** Middle of the usual band by power: small, middling, large. Straight lines in the logarithm of power between. */
const USUAL_CONSUMPTION = [
  [30, 265],
  [110, 228],
  [400, 205],
] as const;

/** Fuel per energy that engines of this power usually burn near full load, kg/J. Common practice. */
export function usualConsumption(shaftPower: number): number {
  const kilowatts = shaftPower / KILOWATT;
  const [small, middling, large] = USUAL_CONSUMPTION;
  if (kilowatts <= small[0]) return small[1] * GRAM_PER_KILOWATT_HOUR;
  if (kilowatts >= large[0]) return large[1] * GRAM_PER_KILOWATT_HOUR;
  const [[p0, b0], [p1, b1]] = kilowatts < middling[0] ? [small, middling] : [middling, large];
  return (b0 + ((b1 - b0) * Math.log(kilowatts / p0)) / Math.log(p1 / p0)) * GRAM_PER_KILOWATT_HOUR;
}

/**
 * Fuel an engine burns at the load that b is for, m³/s; below half load b rises (`partLoadFactor`).
 * Formula: V̇ = P b / ρ
 * Fails: inputs outside the method's bounds (b 180 to 400 g/kWh).
 * Warns: caution where the usual b stands in.
 * Source: common practice; density of EN 590 (from memory).
 */
export function fuelRate(input: FuelRateInput): Result<number> {
  const { shaftPower, fuelDensity = DIESEL_DENSITY } = input;
  const specificConsumption = input.specificConsumption ?? usualConsumption(shaftPower);
  const checked = checkInputs(fuelRateMethod, { shaftPower, specificConsumption, fuelDensity });
  if (!checked.ok) return checked;
  const rate = (shaftPower * specificConsumption) / fuelDensity;
  if (input.specificConsumption !== null) return succeed(rate);
  const found = amount("specificConsumption", specificConsumption);
  const subject = "specific consumption";
  return succeed(rate, [
    { code: "fuel-consumption-assumed", kind: "assumed", subject, found, cites: CONSUMPTION_RULE },
  ]);
}

/** Rise of specific consumption by load: share of full load, factor. Common practice; straight lines between. */
export const PART_LOAD = [
  [0.25, 1.3],
  [0.4, 1.1],
  [0.5, 1],
] as const;

export const partLoadMethod = {
  cites: [{ source: "practice", at: "× 1.1 at 40 % load, × 1.3 at 25 %" }],
  inputs: { load: { name: "load", quantity: "percent", atLeast: PART_LOAD[0][0], atMost: 1.1 } },
} as const satisfies Method<"load">;

/**
 * Factor on specific consumption at a share of full load; 1 from half load up.
 * Fails: load below 0.25 or above 1.1.
 * Source: common practice.
 */
export function partLoadFactor(load: number): Result<number> {
  const checked = checkInputs(partLoadMethod, { load });
  if (!checked.ok) return checked;
  return succeed(betweenRows(PART_LOAD, load));
}
