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
