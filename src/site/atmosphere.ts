import { STANDARD_ATMOSPHERE, STANDARD_GRAVITY } from "../basis/constants.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { amount, type Result, succeed } from "../basis/result.ts";

export const atmosphereMethod = {
  cites: [
    { source: "us-standard-atmosphere", at: "equations 18, 23, 33a and 42, first layer (ISO 2533 is the same there)" },
  ],
  inputs: {
    /** Above sea level, within the first layer of the standard atmosphere. */
    altitude: { name: "altitude", symbol: "Z", quantity: "elevation", atLeast: -5000, atMost: 11_000 },
  },
} as const satisfies Method<"altitude">;

/** The lowest and highest dry land, m, with some to spare. */
const LOWEST = -500;
const HIGHEST = 9000;

// U.S. Standard Atmosphere 1976, tables 2 and 4.
const EARTH_RADIUS = 6_356_766;
const SEA_LEVEL_TEMPERATURE = 288.15;
const LAPSE_RATE = 0.0065;
const GAS_CONSTANT = 8.31432;
const MOLAR_MASS_OF_AIR = 0.0289644;

/** Air at rest in the standard atmosphere. */
export interface StandardAir {
  /** Absolute, Pa. */
  readonly pressure: number;
  /** K */
  readonly temperature: number;
  /** kg/m³ */
  readonly density: number;
}

/**
 * Pressure, temperature and density of the standard atmosphere at a geometric altitude [Pa, K, kg/m³]. Weather moves
 * the pressure by some 3 kPa either way.
 * Formula: h = r₀Z/(r₀ + Z), T = 288.15 − 0.0065 h, p = 101 325 (T/288.15)^(g₀M/(R*L)), ρ = pM/(R*T)
 * Fails: out-of-range inputs as the method bounds them.
 * Warns: altitude-unusual beyond dry land, −500 m to 9000 m, where the unit is likely wrong.
 * Source: U.S. Standard Atmosphere 1976, eqs. 18, 23, 33a and 42.
 */
export function standardAir(altitude: number): Result<StandardAir> {
  const checked = checkInputs(atmosphereMethod, { altitude });
  if (!checked.ok) return checked;
  const geopotential = (EARTH_RADIUS * altitude) / (EARTH_RADIUS + altitude);
  const temperature = SEA_LEVEL_TEMPERATURE - LAPSE_RATE * geopotential;
  const exponent = (STANDARD_GRAVITY * MOLAR_MASS_OF_AIR) / (GAS_CONSTANT * LAPSE_RATE);
  const pressure = STANDARD_ATMOSPHERE * (temperature / SEA_LEVEL_TEMPERATURE) ** exponent;
  const density = (pressure * MOLAR_MASS_OF_AIR) / (GAS_CONSTANT * temperature);
  const air = { pressure, temperature, density };
  if (altitude >= LOWEST && altitude <= HIGHEST) return succeed(air);
  const found = amount("elevation", altitude);
  return succeed(air, [{ code: "altitude-unusual", kind: "check", subject: "altitude", found }]);
}

/** Absolute pressure of the standard atmosphere at an altitude in m [Pa]. Fails and warns as `standardAir`. */
export function standardAtmosphere(altitude: number): Result<number> {
  const air = standardAir(altitude);
  return air.ok ? succeed(air.value.pressure, air.findings) : air;
}
