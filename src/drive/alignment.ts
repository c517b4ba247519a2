import { checkInputs, type Method } from "../basis/method.ts";
import { type Result, succeed } from "../basis/result.ts";

/** What a coupling is set to, shaft to shaft, hot. Common practice, no source. Lengths in m. */
export const ALIGNMENT = {
  /** Angle between the shafts, rad. */
  angle: 0.5e-3,
  softFoot: 0.05e-3,
  /** Movement of the coupling when the pipes are bolted up. */
  pipeStrain: 0.05e-3,
} as const;

const OFFSET_AT_1800 = 0.05e-3;
const OFFSET_AT_3600 = 0.025e-3;

/** Greatest parallel offset of two coupled shafts at a speed in r/s, m: 0.05 mm to 1800 r/min, 0.025 mm above. */
export function parallelOffset(speed: number): number {
  return speed <= 30 ? OFFSET_AT_1800 : OFFSET_AT_3600;
}

/** Growth of iron and steel, per K: the middle of 11 to 12 × 10⁻⁶. */
const EXPANSION = 11.5e-6;

export const thermalGrowthMethod = {
  title: "Rise of a shaft as a machine warms up",
  cites: [{ source: "practice", at: "α L ΔT, iron and steel 11 to 12 × 10⁻⁶ per K" }],
  inputs: {
    height: { name: "height of the shaft", symbol: "L", quantity: "length", above: 0, atMost: 10 },
    rise: { name: "temperature rise", symbol: "ΔT", quantity: "temperatureDifference", atLeast: -200, atMost: 500 },
  },
} as const satisfies Method<"height" | "rise">;

/** How much a shaft rises above its feet as the machine warms up, m: α L ΔT. */
export function thermalGrowth(height: number, rise: number): Result<number> {
  const checked = checkInputs(thermalGrowthMethod, { height, rise });
  return checked.ok ? succeed(EXPANSION * height * rise) : checked;
}
