import { CELSIUS_ZERO } from "../basis/constants.ts";

/** Stainless steels with a chloride limit of their own. */
export type Stainless = "304" | "316" | "duplex";

const celsius = (reading: number): number => reading + CELSIUS_ZERO;

/** °C, then the chloride up to which a stainless steel serves in flowing water of pH 6 to 9, mg/L. */
const LIMITS: Readonly<Record<Stainless, readonly (readonly [celsius: number, limit: number])[]>> = {
  "304": [
    [25, 200],
    [50, 60],
    [60, 60],
    [80, 30],
  ],
  "316": [
    [25, 1000],
    [50, 300],
    [60, 300],
    [80, 150],
  ],
  duplex: [
    [25, 3600],
    [50, 1000],
    [60, 1000],
    [80, 500],
  ],
};

/** Hottest water a stainless steel is judged in where it holds any chloride, K. */
export const HOTTEST_WITH_CHLORIDE: Readonly<Record<Stainless, number>> = {
  "304": celsius(60),
  "316": celsius(80),
  duplex: celsius(90),
};

/** pH up to which the neutral limits fall, and below which they say nothing; the limits hold to the third (house choice). */
const NEUTRAL_FROM = 6;
export const SCREENED_FROM = 4;
export const SCREENED_TO = 12;

/**
 * Chloride up to which a stainless steel serves, kg/m³, flowing, with natural oxygen, no crevices beyond a flange.
 * Formula: between the printed temperatures on a straight line of the logarithm, below and above them the end of it;
 *          from pH 6 down divided by 10^((6 − pH)/2), at pH 4 a tenth; a third where the water stands.
 * Source: 304 to 200 and 316 to 1000 mg/L cold, a nickel producers' guideline (11003) and a British stainless association;
 *         316 at 60 and 80 °C agrees with a plate-exchanger table; duplex 3600 not yet verified; the rest house choice.
 */
export function chlorideLimit(metal: Stainless, temperature: number, pH = NEUTRAL_FROM, isStanding = false): number {
  const divisor = 10 ** (Math.max(0, NEUTRAL_FROM - Math.max(pH, SCREENED_FROM)) / 2);
  return neutralLimit(metal, temperature) / 1000 / divisor / (isStanding ? 3 : 1);
}

function neutralLimit(metal: Stainless, temperature: number): number {
  const points = LIMITS[metal];
  const after = points.findIndex(([reading]) => temperature <= celsius(reading));
  if (after === 0) return points[0]?.[1] as number;
  const [to, high] = points.at(after) as (typeof points)[number];
  if (after < 0) return high;
  const [from, low] = points[after - 1] as (typeof points)[number];
  return low * (high / low) ** ((temperature - celsius(from)) / (to - from));
}
