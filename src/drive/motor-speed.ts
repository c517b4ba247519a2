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
/** Conversion may put a speed a rounding above synchronous. */
const ROUNDING = 1e-9;

export interface MotorOfSpeed {
  readonly frequency: Frequency;
  readonly poles: Poles;
  /** r/s */
  readonly synchronous: number;
}

/** The motors that run at a speed on the mains, of one frequency or of both: within 5 % below synchronous. */
export function motorsOfSpeed(speed: number, frequencies: readonly Frequency[] = FREQUENCIES): readonly MotorOfSpeed[] {
  return motorsOf(frequencies)
    .filter(({ synchronous }) => speed <= synchronous * (1 + ROUNDING) && speed >= synchronous * (1 - MOST_SLIP))
    .sort((a, b) => a.synchronous - b.synchronous);
}

function motorsOf(frequencies: readonly Frequency[]): readonly MotorOfSpeed[] {
  return frequencies.flatMap((frequency) =>
    POLES.map((poles) => ({ frequency, poles, synchronous: synchronousSpeed(frequency, poles) })),
  );
}

/** How a pump comes by its speed. */
export const TRANSMISSIONS = ["coupling", "belts"] as const;
export type Transmission = (typeof TRANSMISSIONS)[number];

/** A motor as it drives a pump. */
export interface DrivingMotor extends MotorOfSpeed {
  /** At its own speed on the mains; slower or faster by a variable-frequency drive; at its own speed through belts. */
  readonly way: "line" | "slowed" | "raised" | "belts";
  /** Share of its rating that it gives at the pump's speed. */
  readonly speedFactor: number;
}

/** Speed over synchronous to which a motor is run by its drive before one of fewer poles is taken. House choice. */
const MOST_RAISED = 1.1;

/**
 * The motor of a supply that drives a pump at a speed: one that runs there on the mains; else the slowest that a
 * variable-frequency drive slows to it, or raises by no more than 10 %; through belts one of four poles. Slowed, it
 * gives its torque and so less power, in proportion to speed; raised, its rating.
 * Formula: share of the rating = n / n_s, at most 1; n_s lies above the full-load speed, on the careful side
 * Source: common practice.
 */
export function drivingMotor(speed: number, frequency: Frequency, transmission: Transmission): DrivingMotor {
  const motors = motorsOf([frequency]).toSorted((a, b) => a.synchronous - b.synchronous);
  if (transmission === "belts") {
    const four = motors.find(({ poles }) => poles === 4) as MotorOfSpeed;
    return { ...four, way: "belts", speedFactor: 1 };
  }
  const [mains] = motorsOfSpeed(speed, [frequency]);
  if (mains !== undefined) return { ...mains, way: "line", speedFactor: 1 };
  const reaching = motors.find(({ synchronous }) => speed <= synchronous * MOST_RAISED);
  const motor = reaching ?? (motors.at(-1) as MotorOfSpeed);
  if (speed > motor.synchronous) return { ...motor, way: "raised", speedFactor: 1 };
  return { ...motor, way: "slowed", speedFactor: speed / motor.synchronous };
}
