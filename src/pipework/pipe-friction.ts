import { checkInputs, errorOf, type Method } from "../basis/method.ts";
import { type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { carrierOf, type LiquidState } from "../liquid/liquid.ts";
import {
  darcyFactor,
  frictionFactorMethod,
  inCriticalZone,
  isCritical,
  RELATIVE_ROUGHNESS,
} from "./friction-factor.ts";
import type { Pipe } from "./pipe.ts";
import { meanVelocity, pipeVelocityMethod, velocityHeadOf } from "./pipe-velocity.ts";

export interface PipeFrictionInputs {
  /** m³/s */
  readonly flow: number;
  readonly pipe: Pipe;
  /** Developed length, m. */
  readonly length: number;
  readonly liquid: LiquidState;
}

export const pipeFrictionMethod = {
  cites: [{ source: "darcy-weisbach", at: "head lost in a full pipe" }, ...frictionFactorMethod.cites],
  inputs: {
    ...pipeVelocityMethod.inputs,
    length: { name: "length", symbol: "L", quantity: "length", atLeast: 0 },
    roughness: { name: "roughness of the pipe", symbol: "ε", quantity: "size", atLeast: 0 },
    relativeRoughness: RELATIVE_ROUGHNESS,
    density: { name: "density", symbol: "ρ", quantity: "density", above: 0 },
    dynamicViscosity: { name: "dynamic viscosity", symbol: "μ", quantity: "dynamicViscosity", above: 0 },
  },
} as const satisfies Method<
  "flow" | "length" | "bore" | "roughness" | "relativeRoughness" | "density" | "dynamicViscosity"
>;

/** Flow in one pipe. At rest the velocity, the Reynolds number and the friction factor are 0. */
export interface PipeFriction {
  /** m/s */
  readonly velocity: number;
  /** V²/2g, m. */
  readonly velocityHead: number;
  readonly reynolds: number;
  readonly relativeRoughness: number;
  /** Darcy factor, with the multiplier of a corrugated hose in it. */
  readonly frictionFactor: number;
  /** Head lost to friction, m of the liquid. */
  readonly head: number;
}

/**
 * Head lost to friction in a full round pipe [m of the liquid], with the figures it comes of; of a slurry, the loss of
 * the liquid between its solids.
 * Formula: h_f = m f (L/D) V²/(2g), Re = ρ V D/μ, m the pipe's friction multiplier (corrugated hose), else 1
 * Fails: out-of-range inputs as the method bounds them; beyond-computation.
 * Warns: outside-usual-range above ε/D = 0.05 (a warning); critical-zone.
 * Source: Darcy–Weisbach equation; f as `frictionFactor`.
 */
export function pipeFriction({ flow, pipe, length, liquid }: PipeFrictionInputs): Result<PipeFriction> {
  const { bore, roughness } = pipe;
  const { density, dynamicViscosity } = carrierOf(liquid);
  const relativeRoughness = roughness / bore;
  const checked = checkInputs(pipeFrictionMethod, {
    flow,
    length,
    bore,
    roughness,
    relativeRoughness,
    density,
    dynamicViscosity,
  });
  if (!checked.ok) return checked;
  const velocity = meanVelocity(flow, bore);
  const velocityHead = velocityHeadOf(velocity);
  if (flow === 0) {
    return succeed({ velocity, velocityHead, reynolds: 0, relativeRoughness, frictionFactor: 0, head: 0 });
  }
  const reynolds = (density * velocity * bore) / dynamicViscosity;
  const frictionFactor = darcyFactor(reynolds, relativeRoughness) * (pipe.frictionMultiplier ?? 1);
  const head = headOver({ frictionFactor, velocityHead }, pipe, length);
  if (!Number.isFinite(head)) return fail([beyondComputation("friction head")]);
  const answer = { velocity, velocityHead, reynolds, relativeRoughness, frictionFactor, head };
  if (!isCritical(reynolds)) return succeed(answer, checked.findings);
  return succeed(answer, [...checked.findings, inCriticalZone("flow", reynolds)]);
}

/** Head lost by the factor over a length, m: what the same flow in the same pipe loses over another one, to the last digit. */
export function headOver(
  { frictionFactor, velocityHead }: Pick<PipeFriction, "frictionFactor" | "velocityHead">,
  { bore }: Pipe,
  length: number,
): number {
  return ((frictionFactor * length) / bore) * velocityHead;
}

/** What `pipeFriction` refuses of a length and of the head lost over it. */
export function wrongOver(length: number, head: number): Finding | undefined {
  const wrong = errorOf(pipeFrictionMethod.inputs.length, length);
  return wrong === undefined && !Number.isFinite(head) ? beyondComputation("friction head") : wrong;
}

/** The caution zero-may-be-blank on a length of nothing, more often a blank cell than a wish. */
export function zeroLength(length: number, subject: string): Finding | undefined {
  return length === 0 ? { code: "zero-may-be-blank", kind: "check", subject } : undefined;
}

/** The refusal of an answer too great for double precision. */
export function beyondComputation(subject: string): Finding {
  return { code: "beyond-computation", kind: "error", subject };
}
