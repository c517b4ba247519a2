import type { Citation } from "../basis/citation.ts";
import { STANDARD_ATMOSPHERE, STANDARD_GRAVITY } from "../basis/constants.ts";
import { amount, type Finding } from "../basis/result.ts";

/** Greatest suction lift offered at sea level with cold water, 25 ft in m: what priming devices reach in practice. */
export const GREATEST_PRACTICAL_LIFT = 7.62;

/** Vapour pressure of water at 60 °C (IAPWS R7-97, region 4: 19.946 kPa), Pa. Hotter, a lift is not offered. */
export const HOT_VAPOUR_PRESSURE = 19_946;

/** Absolute pressure at the pump inlet under which dissolved air starts to cost performance, Pa. */
export const LEAST_INLET_PRESSURE = 60_000;

const LIFT_PRACTICE: Citation = {
  source: "practice",
  at: "suction lift up to 7.62 m (25 ft) at sea level with cold water, less the head the atmosphere loses with altitude",
};
const HOT_PRACTICE: Citation = { source: "practice", at: "no suction lift for water above about 60 °C (140 °F)" };
const GAS_CHOICE: Citation = {
  source: "house",
  at: "absolute pressure at the pump inlet at least 60 kPa (8.7 psia), for dissolved air comes out below it",
};

export const suctionPractice = { hot: HOT_PRACTICE, gas: GAS_CHOICE } as const;

/**
 * Greatest practical lift from a surface under this absolute pressure [m]; none is left under a deep vacuum.
 * Formula: z = 7.62 m − (p_0 − p_s)/(ρ g), at least 0; p_0 the standard atmosphere
 * Source: common practice.
 */
export function practicalLift(surfacePressure: number, density: number): number {
  const lost = (STANDARD_ATMOSPHERE - surfacePressure) / (density * STANDARD_GRAVITY);
  return Math.max(0, GREATEST_PRACTICAL_LIFT - lost);
}

/**
 * A lift that priming does not reach in practice, and a lift of hot liquid.
 * Warns: lift-beyond-practice, suction-liquid-hot.
 * Source: common practice.
 */
export function liftRemarks(
  subject: string,
  lift: number,
  surfacePressure: number,
  density: number,
  vapourPressure: number,
): readonly Finding[] {
  const findings: Finding[] = [];
  const most = practicalLift(surfacePressure, density);
  if (lift > 0 && lift > most) {
    findings.push({
      code: "lift-beyond-practice",
      kind: "check",
      subject,
      found: amount("head", lift),
      limit: { quantity: "head", value: most, side: "at most" },
      cites: LIFT_PRACTICE,
    });
  }
  if (lift > 0) findings.push(...hotRemarks(subject, vapourPressure));
  return findings;
}

/** A liquid too hot to be lifted. Warns: suction-liquid-hot. Source: common practice. */
export function hotRemarks(subject: string, vapourPressure: number): readonly Finding[] {
  if (vapourPressure <= HOT_VAPOUR_PRESSURE) return [];
  const found = amount("absolutePressure", vapourPressure);
  const limit = { quantity: "absolutePressure", value: HOT_VAPOUR_PRESSURE, side: "at most" } as const;
  return [{ code: "suction-liquid-hot", kind: "check", subject, found, limit, cites: HOT_PRACTICE }];
}

/** Absolute pressure at the inlet so low, under 60 kPa, that dissolved air comes out. Warns: inlet-pressure-low. */
export function gasRemarks(inletPressure: number): readonly Finding[] {
  if (!(inletPressure < LEAST_INLET_PRESSURE)) return [];
  const found = amount("absolutePressure", inletPressure);
  const limit = { quantity: "absolutePressure", value: LEAST_INLET_PRESSURE, side: "at least" } as const;
  return [
    {
      code: "inlet-pressure-low",
      kind: "check",
      subject: "pump inlet",
      found,
      limit,
      cites: GAS_CHOICE,
    },
  ];
}
