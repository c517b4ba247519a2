import type { Citation } from "../basis/citation.ts";
import { SPECIFIC_GRAVITY_REFERENCE } from "../basis/constants.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { amount, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import type { LiquidState } from "../liquid/liquid.ts";
import type { Pipe } from "./pipe.ts";
import { beyondComputation, type PipeFriction, type PipeFrictionInputs, pipeFriction } from "./pipe-friction.ts";
import { meanVelocity } from "./pipe-velocity.ts";

export interface HazenWilliamsInputs {
  /** m³/s */
  readonly flow: number;
  readonly pipe: Pipe;
  /** Developed length, m. */
  readonly length: number;
  /** Hazen–Williams coefficient, about 140 for new steel and plastic, 100 for old steel. */
  readonly coefficient: number;
}

export const hazenWilliamsMethod = {
  cites: [
    { source: "hazen-williams", at: "V = 1.318 C R^0.63 S^0.54 (ft, s), solved for S without rounding" },
    { source: "practice", at: "C from 40 to 160, bores from 50 mm (2 in), 0.3 to 3 m/s (1 to 10 ft/s)" },
  ],
  inputs: {
    flow: { name: "flow", symbol: "Q", quantity: "flow", atLeast: 0 },
    length: { name: "length", symbol: "L", quantity: "length", atLeast: 0 },
    coefficient: { name: "C", symbol: "C", quantity: "ratio", above: 0, usual: { atLeast: 40, atMost: 160 } },
    bore: { name: "bore of the pipe", symbol: "D", quantity: "size", above: 0, usual: { atLeast: 0.05 } },
    velocity: { name: "velocity", symbol: "V", quantity: "velocity", usual: { atLeast: 0.3, atMost: 3 } },
  },
} as const satisfies Method<"flow" | "length" | "coefficient" | "bore" | "velocity">;

const METRES_PER_FOOT = 0.3048;
/** The published 1.318 carried from feet to metres: the radius stands to the power 0.63. */
const COEFFICIENT = 1.318 * METRES_PER_FOOT ** (1 - 0.63);

/**
 * Friction head of water near 15 °C in turbulent flow [m]; the formula knows no viscosity.
 * Formula: V = 1.318 C R^0.63 S^0.54 in ft and s, R = D/4, solved for S; h_f = L S
 * Fails: out-of-range inputs as the method bounds them; beyond-computation.
 * Warns: outside-usual-range of C (40 to 160), of the bore (under 50 mm) and of the velocity (0.3 to 3 m/s).
 * Source: Williams and Hazen 1905; the usual ranges, common practice.
 */
export function hazenWilliamsHead({ flow, pipe, length, coefficient }: HazenWilliamsInputs): Result<number> {
  const { bore } = pipe;
  const velocity = meanVelocity(flow, bore);
  const checked = checkInputs(hazenWilliamsMethod, { flow, length, coefficient, bore, velocity });
  if (!checked.ok) return checked;
  if (flow === 0) return succeed(0);
  const slope = (velocity / (COEFFICIENT * coefficient * (bore / 4) ** 0.63)) ** (1 / 0.54);
  const head = length * slope;
  return Number.isFinite(head) ? succeed(head, checked.findings) : fail([beyondComputation("friction head")]);
}

/** What Hazen–Williams was made for: water of 5 to 25 °C by its kinematic viscosity, m²/s, and at most what it may bear. */
const WATER_AT_25 = 0.893e-6;
const WATER_AT_5 = 1.52e-6;
const MOST_VISCOUS = 2e-6;
const LIGHTEST = 0.97;
const HEAVIEST = 1.03;

const WATER_ALONE: Citation = {
  source: "house",
  at: "Hazen–Williams up to 2 cSt and for an SG of 0.97 to 1.03; made for water of 5 to 25 °C (41 to 77 °F)",
};

/**
 * Head lost to friction in a pipe that states its C, m, with the figures of `pipeFriction` and the Darcy factor that
 * gives the same head.
 * Fails: hazen-williams-for-water above 2 cSt, outside an SG of 0.97 to 1.03 and for a slurry; as `pipeFriction` and
 * `hazenWilliamsHead`.
 * Warns: hazen-williams-off-cold outside the viscosities of water of 5 to 25 °C; as `hazenWilliamsHead`.
 * Source: as `hazenWilliamsHead`; the bounds of the liquid are a house choice.
 */
export function hazenWilliamsFriction(inputs: PipeFrictionInputs, coefficient: number): Result<PipeFriction> {
  const { flow, pipe, length, liquid } = inputs;
  const darcy = pipeFriction(inputs);
  if (!darcy.ok) return darcy;
  const wrong = notWater(liquid, coefficient);
  if (wrong?.kind === "error") return fail([wrong]);
  const gradient = hazenWilliamsHead({ flow, pipe, length: 1, coefficient });
  if (!gradient.ok) return gradient;
  const { velocityHead } = darcy.value;
  const head = gradient.value * length;
  if (!Number.isFinite(head)) return fail([beyondComputation("friction head")]);
  const frictionFactor = velocityHead === 0 ? 0 : (gradient.value * pipe.bore) / velocityHead;
  const { findings } = gradient;
  return succeed({ ...darcy.value, frictionFactor, head }, wrong === undefined ? findings : [...findings, wrong]);
}

function notWater({ density, dynamicViscosity, solids }: LiquidState, coefficient: number): Finding | undefined {
  const viscosity = dynamicViscosity / density;
  const gravity = density / SPECIFIC_GRAVITY_REFERENCE;
  const isFar = solids !== undefined || viscosity > MOST_VISCOUS || gravity < LIGHTEST || gravity > HEAVIEST;
  if (!isFar && viscosity >= WATER_AT_25 && viscosity <= WATER_AT_5) return undefined;
  const found = amount("kinematicViscosity", viscosity);
  const facts = { coefficient, gravity: Math.round(gravity * 1000) / 1000 };
  return isFar
    ? { code: "hazen-williams-for-water", kind: "error", subject: "C", found, facts, cites: WATER_ALONE }
    : { code: "hazen-williams-off-cold", kind: "check", subject: "C", found, facts, cites: WATER_ALONE };
}

/** The refusal of a method that goes by roughness for a pipe that states a C. */
export function needsRoughness({ name, hazenWilliams }: Pipe): Finding | undefined {
  if (hazenWilliams === undefined) return undefined;
  return { code: "pipe-c-not-roughness", kind: "error", subject: "pipe", given: name };
}
