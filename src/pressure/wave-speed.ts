import { checkInputs, type Method } from "../basis/method.ts";
import { amount, andThen, type Finding, type Result, succeed } from "../basis/result.ts";

/** How a line is held lengthwise. */
export type Restraint = "expansion joints" | "anchored upstream" | "anchored throughout";

/** The wall of a pipe as surge sees it. */
export interface PipeWall {
  /** m */
  readonly bore: number;
  readonly thickness: number;
  /** Elastic modulus, Pa, and Poisson's ratio. */
  readonly modulus: number;
  readonly poisson: number;
}

export interface WaveSpeedInput {
  /** kg/m³ */
  readonly density: number;
  /** Of the liquid, Pa. */
  readonly bulkModulus: number;
  /** Left out for a rigid wall. */
  readonly wall?: PipeWall;
  readonly restraint: Restraint;
}

export const waveSpeedMethod = {
  cites: [
    { source: "korteweg-1878", at: "elastic tube filled with liquid" },
    { source: "wylie-streeter", at: "restraint of the pipe; thick walls", unverified: true },
  ],
  inputs: {
    density: { name: "liquid density", symbol: "ρ", quantity: "density", above: 0 },
    bulkModulus: { name: "bulk modulus of the liquid", symbol: "K", quantity: "stress", above: 0 },
    bore: { name: "bore of the pipe", symbol: "D", quantity: "size", above: 0 },
    thickness: { name: "wall of the pipe", symbol: "e", quantity: "size", above: 0 },
    modulus: { name: "elastic modulus of the pipe", symbol: "E", quantity: "stress", above: 0 },
    poisson: { name: "Poisson's ratio", symbol: "μ", quantity: "ratio", atLeast: 0, atMost: 0.5 },
  },
} as const satisfies Method<"density" | "bulkModulus" | keyof PipeWall>;

/** Bore over wall below which a wall is thick. */
const THICK_BELOW = 10;

/** Wave speeds outside this come of a unit slip, m/s. */
const USUAL_SPEED = { atLeast: 30, atMost: 1500 };

/**
 * Speed of a pressure wave in a pipe, m/s; free air slows it, so the answer is the upper bound. Rigid wall: √(K/ρ).
 * Formula: a = √(K/ρ) / √(1 + c K D/(E e));  D/e below 10: c becomes (2 e/D)(1 + μ) + c D/(D + e)
 *          c = 1 with expansion joints, 1 − μ/2 anchored upstream, 1 − μ² anchored throughout
 * Fails: inputs outside the method's bounds.
 * Warns: caution outside 30 to 1500 m/s.
 * Source: Korteweg 1878; Wylie and Streeter (from memory).
 */
export function waveSpeed({ density, bulkModulus, wall, restraint }: WaveSpeedInput): Result<number> {
  const rigid = { bore: 1, thickness: 1, modulus: 1, poisson: 0 };
  return andThen(checkInputs(waveSpeedMethod, { density, bulkModulus, ...(wall ?? rigid) }), () => {
    const unconfined = Math.sqrt(bulkModulus / density);
    const speed =
      wall === undefined
        ? unconfined
        : unconfined /
          Math.sqrt(1 + (restraintFactor(wall, restraint) * bulkModulus * wall.bore) / (wall.modulus * wall.thickness));
    return succeed(speed, unusual(speed));
  });
}

function restraintFactor({ bore, thickness, poisson }: PipeWall, restraint: Restraint): number {
  const thin = { "expansion joints": 1, "anchored upstream": 1 - poisson / 2, "anchored throughout": 1 - poisson ** 2 };
  const factor = thin[restraint];
  if (bore / thickness >= THICK_BELOW) return factor;
  return ((2 * thickness) / bore) * (1 + poisson) + (factor * bore) / (bore + thickness);
}

function unusual(speed: number): readonly Finding[] {
  const { atLeast, atMost } = USUAL_SPEED;
  if (speed >= atLeast && speed <= atMost) return [];
  const side = speed < atLeast ? "at least" : "at most";
  const limit = { quantity: "velocity", value: speed < atLeast ? atLeast : atMost, side } as const;
  return [
    {
      code: "wave-speed-unusual",
      kind: "check",
      subject: "wave speed",
      found: amount("velocity", speed),
      limit,
    },
  ];
}
