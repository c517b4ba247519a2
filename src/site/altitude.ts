import type { Input } from "../basis/method.ts";
import { amount, type Finding } from "../basis/result.ts";

/** Altitude of the site above sea level, m: within the first layer of the standard atmosphere. */
export const altitudeInput: Input = {
  name: "altitude",
  symbol: "Z",
  quantity: "elevation",
  atLeast: -5000,
  atMost: 11_000,
};

/** The lowest and highest dry land, m, with some to spare. */
const LOWEST = -500;
const HIGHEST = 9000;

/** A caution beyond dry land, where the unit is likely wrong. */
export function remarkOnAltitude(altitude: number): readonly Finding[] {
  if (altitude >= LOWEST && altitude <= HIGHEST) return [];
  return [{ code: "altitude-unusual", severity: "caution", subject: "altitude", found: amount("elevation", altitude) }];
}
