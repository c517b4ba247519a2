import { checkInputs, type Method } from "../basis/method.ts";
import { type Result, succeed } from "../basis/result.ts";

/** A length as the trade says it, in both systems. */
export interface Tolerance {
  /** m */
  readonly value: number;
  readonly printed: string;
}

const TWO_MIL: Tolerance = { value: 0.05e-3, printed: "0.05 mm (0.002 in)" };
const ONE_MIL: Tolerance = { value: 0.025e-3, printed: "0.025 mm (0.001 in)" };

/** What a coupling is set to, shaft to shaft, hot. Common practice, no source. */
export const ALIGNMENT = {
  /** Angle between the shafts, rad. */
  angle: 0.5e-3,
  softFoot: TWO_MIL,
  /** Movement of the coupling when the pipes are bolted up. */
  pipeStrain: TWO_MIL,
} as const;

/** Greatest parallel offset of two coupled shafts at a speed in r/s: 0.05 mm to 1800 r/min, 0.025 mm above. */
export function parallelOffset(speed: number): Tolerance {
  return speed <= 30 ? TWO_MIL : ONE_MIL;
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
