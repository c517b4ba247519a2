import { SPECIFIC_GRAVITY_REFERENCE } from "../basis/constants.ts";
import { checkInputs, type Method, outOfRange } from "../basis/method.ts";
import { amount, andThen, fail, type Result, succeed } from "../basis/result.ts";
import type { LiquidState } from "../liquid/liquid.ts";
import { needsRoughness } from "../pipework/hazen-williams.ts";
import type { Pipe } from "../pipework/pipe.ts";
import { pipeFriction } from "../pipework/pipe-friction.ts";

export const slurryFrictionMethod = {
  cites: [
    { source: "wilson-slurry", at: "heterogeneous flow, 0.22 (S_m − S_l) (V/V50)^−M" },
    { source: "wilson-slurry", at: "V50 from d50", unverified: true },
  ],
  inputs: {
    particleSize: { name: "d50", symbol: "d50", quantity: "size", above: 0 },
    coarseSize: { name: "d85", symbol: "d85", quantity: "size", above: 0 },
  },
} as const satisfies Method<"particleSize" | "coarseSize">;

/** Kinematic viscosity V50 is relative to, that of water at 20 °C, m²/s. */
const WATER_VISCOSITY = 1.0034e-6;

/** The bounds Wilson sets the exponent: broad grading, narrow grading. */
const EXPONENT = { least: 0.25, narrow: 1.7 };

/** Mechanical friction of sliding solids; half of it where half of them slide is the 0.22 of the formula. */
export const SLIDING_FRICTION = 0.44;

export interface SlurryFrictionInputs {
  /** Of the slurry, m³/s. */
  readonly flow: number;
  readonly pipe: Pipe;
  /** d50, m. */
  readonly particleSize: number;
  /** d85, m; null for narrowly graded solids. */
  readonly coarseSize: number | null;
  readonly solidsSG: number;
  /** Volume fraction. */
  readonly solidsByVolume: number;
  /** The carrier. */
  readonly liquid: LiquidState;
}

export interface SlurryFriction {
  /** m/s */
  readonly velocity: number;
  /** Velocity at which fluid carries half the solids, m/s. */
  readonly v50: number;
  readonly exponent: number;
  /** Gradient of the carrier alone, m of water per m. */
  readonly carrierGradient: number;
  /** Gradient of the slurry, m of water per m. */
  readonly waterGradient: number;
  /** The same in m of slurry per m. */
  readonly slurryGradient: number;
}

/**
 * Friction gradient of a settling slurry that moves without a bed, m of water and m of slurry per m, by itself: whether
 * a bed lies, `slurryLine` says.
 * Formula: i_m = i_l + 0.22 (S_m − S_l) (V/V50)^−M in m of water, M by `gradingExponent`; the share of solids that
 *          slides, (V/V50)^−M/2, held at 1
 *          V50 = 3.93 d50^0.35 ((S_s − 1)/1.65)^0.45 ν_r^−0.25 in m/s, d50 in mm
 * Fails: pipe-c-not-roughness; as `gradingExponent` and `pipeFriction`.
 * Warns: as these.
 * Source: Wilson and others, Slurry Transport Using Centrifugal Pumps (V50 from memory).
 */
export function slurryFriction(inputs: SlurryFrictionInputs): Result<SlurryFriction> {
  const { flow, pipe, particleSize, coarseSize, solidsSG, solidsByVolume, liquid } = inputs;
  const checked = checkInputs(slurryFrictionMethod, { particleSize, coarseSize: coarseSize ?? 1 });
  if (!checked.ok) return checked;
  const statesC = needsRoughness(pipe);
  if (statesC !== undefined) return fail([statesC]);
  return andThen(gradingExponent(particleSize, coarseSize), (exponent) =>
    andThen(pipeFriction({ flow, pipe, length: 1, liquid }), ({ velocity, head }) => {
      const liquidSG = liquid.density / SPECIFIC_GRAVITY_REFERENCE;
      const v50 = halfSuspendedVelocity(particleSize, solidsSG, liquid);
      const carrierGradient = head * liquidSG;
      const sliding = Math.min(1, 0.5 * (velocity / v50) ** -exponent);
      const submerged = solidsByVolume * (solidsSG - liquidSG);
      const waterGradient = carrierGradient + SLIDING_FRICTION * sliding * submerged;
      const slurryGradient = waterGradient / (liquidSG + submerged);
      return succeed({ velocity, v50, exponent, carrierGradient, waterGradient, slurryGradient });
    }),
  );
}

function halfSuspendedVelocity(size: number, solidsSG: number, liquid: LiquidState): number {
  const relativeViscosity = liquid.dynamicViscosity / liquid.density / WATER_VISCOSITY;
  return 3.93 * (size * 1e3) ** 0.35 * ((solidsSG - 1) / 1.65) ** 0.45 * relativeViscosity ** -0.25;
}

/**
 * Exponent M of the grading; 1.7 without d85.
 * Formula: M = 1/ln(d85/d50), held between 0.25 and 1.7
 * Fails: a d85 below d50.
 * Warns: caution grading-exponent-held.
 * Source: as `slurryFriction`.
 */
export function gradingExponent(d50: number, d85: number | null): Result<number> {
  if (d85 === null) return succeed(EXPONENT.narrow);
  const subject = "d85";
  if (d85 < d50) return fail([outOfRange(subject, "size", d85, "at least", d50)]);
  const free = 1 / Math.log(d85 / d50);
  const held = Math.min(EXPONENT.narrow, Math.max(EXPONENT.least, free));
  if (held === free || d85 === d50) return succeed(held);
  const facts = { free: amount("ratio", free), held };
  return succeed(held, [{ code: "grading-exponent-held", kind: "check", subject, facts }]);
}
