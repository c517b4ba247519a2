import { SPECIFIC_GRAVITY_REFERENCE, STANDARD_GRAVITY } from "../basis/constants.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { fail, type Result, succeed } from "../basis/result.ts";
import type { LiquidState } from "../liquid/liquid.ts";
import { doNotSettle, PACKED, SOLIDS_SG, sizeDoubted } from "./solids.ts";

export const particleSettlingMethod = {
  cites: [
    { source: "ferguson-church-2004", at: "universal equation, C1 = 18; C2 = 1.0 for natural grains, 0.4 for spheres" },
    { source: "richardson-zaki-1954", at: "hindered settling, exponent by particle Reynolds number" },
  ],
  inputs: {
    particleSize: { name: "particle size", symbol: "d", quantity: "size", above: 0, atMost: 1 },
    solidsSG: SOLIDS_SG,
    solidsByVolume: { name: "solids by volume", symbol: "C_v", quantity: "percent", atLeast: 0, below: PACKED },
  },
} as const satisfies Method<"particleSize" | "solidsSG" | "solidsByVolume">;

/** C2 of the equation: drag of the grain at high speed. */
const DRAG = { grain: 1.0, sphere: 0.4 } as const;
export type ParticleShape = keyof typeof DRAG;

export interface ParticleSettlingInputs {
  /** m */
  readonly particleSize: number;
  readonly solidsSG: number;
  /** Volume fraction of the solids around the particle; 0 for one alone. */
  readonly solidsByVolume: number;
  readonly shape: ParticleShape;
  readonly liquid: LiquidState;
}

export interface ParticleSettling {
  /** Of one particle alone, m/s. */
  readonly alone: number;
  /** Among the others, m/s. */
  readonly hindered: number;
}

/**
 * Velocity at which particles fall in still liquid, m/s, alone and among others.
 * Formula: w = R g d²/(18 ν + √(0.75 C2 R g d³)), R = (ρ_s − ρ_l)/ρ_l, w_h = w (1 − C_v)^n
 *          n from 4.65 (creeping) to 2.39 (Re = w d/ν of 500 and more), with steps of some 2 % as published
 * Fails: out-of-range inputs as the method bounds them; solids-do-not-settle.
 * Warns: caution particle-size-doubted.
 * Source: Ferguson and Church 2004; Richardson and Zaki 1954.
 */
export function particleSettling(inputs: ParticleSettlingInputs): Result<ParticleSettling> {
  const { particleSize, solidsSG, solidsByVolume, shape, liquid } = inputs;
  const checked = checkInputs(particleSettlingMethod, { particleSize, solidsSG, solidsByVolume });
  if (!checked.ok) return checked;
  const liquidSG = liquid.density / SPECIFIC_GRAVITY_REFERENCE;
  if (solidsSG <= liquidSG) return fail([doNotSettle(solidsSG, liquidSG)]);

  const viscosity = liquid.dynamicViscosity / liquid.density;
  const weight = (solidsSG / liquidSG - 1) * STANDARD_GRAVITY;
  const alone =
    (weight * particleSize ** 2) / (18 * viscosity + Math.sqrt(0.75 * DRAG[shape] * weight * particleSize ** 3));
  const exponent = hinderedExponent((alone * particleSize) / viscosity);
  const hindered = alone * (1 - solidsByVolume) ** exponent;
  return succeed({ alone, hindered }, sizeDoubted("particle size", particleSize));
}

function hinderedExponent(reynolds: number): number {
  if (reynolds < 0.2) return 4.65;
  if (reynolds < 1) return 4.35 * reynolds ** -0.03;
  if (reynolds < 500) return 4.45 * reynolds ** -0.1;
  return 2.39;
}
