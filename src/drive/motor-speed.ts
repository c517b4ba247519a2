import { checkInputs, type Method } from "../basis/method.ts";
import { amount, fail, type Result, succeed } from "../basis/result.ts";

export const FREQUENCIES = [50, 60] as const;
export type Frequency = (typeof FREQUENCIES)[number];
export const POLES = [2, 4, 6, 8] as const;
export type Poles = (typeof POLES)[number];

export const motorSpeedMethod = {
  cites: [{ source: "nema-mg1", at: "synchronous speed and slip of induction motors", unverified: true }],
  inputs: {
    speed: { name: "speed", symbol: "n", quantity: "speed", above: 0, atMost: 1000 },
  },
} as const satisfies Method<"speed">;

/** Synchronous speed, r/s: n_s = 2 f / p. */
export function synchronousSpeed(frequency: Frequency, poles: Poles): number {
  return (2 * frequency) / poles;
}

/**
 * Slip of an induction motor at a speed, as a share of synchronous speed; 0.5 % to 2.5 % at full load, 4 kW to 200 kW.
 * Formula: s = 1 − n / n_s
 * Fails: speed outside the method's bounds or above synchronous.
 * Source: NEMA MG 1 (from memory).
 */
export function slip(speed: number, frequency: Frequency, poles: Poles): Result<number> {
  const checked = checkInputs(motorSpeedMethod, { speed });
  if (!checked.ok) return checked;
  const synchronous = synchronousSpeed(frequency, poles);
  if (speed > synchronous) {
    const limit = { quantity: "speed", value: synchronous, side: "at most" } as const;
    return fail([
      { code: "speed-above-synchronous", kind: "error", subject: "speed", found: amount("speed", speed), limit },
    ]);
  }
  return succeed(1 - speed / synchronous);
}

/** Most slip a motor runs with at full load: small motors, common practice. */
const MOST_SLIP = 0.05;

export interface MotorOfSpeed {
  readonly frequency: Frequency;
  readonly poles: Poles;
  /** r/s */
  readonly synchronous: number;
}

/** The motors that run at a speed on the mains: within 5 % below synchronous; nearest first, none where there is none. */
export function motorsOfSpeed(speed: number): readonly MotorOfSpeed[] {
  return FREQUENCIES.flatMap((frequency) =>
    POLES.map((poles) => ({ frequency, poles, synchronous: synchronousSpeed(frequency, poles) })),
  )
    .filter(({ synchronous }) => speed <= synchronous * (1 + 1e-9) && speed >= synchronous * (1 - MOST_SLIP))
    .sort((a, b) => a.synchronous - b.synchronous);
}
