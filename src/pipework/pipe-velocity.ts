import { STANDARD_GRAVITY } from "../basis/constants.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { type Finding, type Result, succeed } from "../basis/result.ts";
import type { Pipe } from "./pipe.ts";

export interface PipeVelocityInputs {
  /** m³/s */
  readonly flow: number;
  readonly pipe: Pipe;
}

export const pipeVelocityMethod = {
  cites: [{ source: "iso-17769-1", at: "mean velocity at a section" }],
  inputs: {
    flow: { name: "flow", symbol: "Q", quantity: "flow", atLeast: 0 },
    bore: { name: "bore of the pipe", symbol: "D", quantity: "size", above: 0 },
  },
} as const satisfies Method<"flow" | "bore">;

/**
 * Mean velocity in a pipe that runs full [m/s].
 * Formula: V = Q/(π D²/4)
 * Fails: out-of-range inputs as the method bounds them.
 * Source: ISO 17769-1, mean velocity at a section.
 */
export function pipeVelocity({ flow, pipe }: PipeVelocityInputs): Result<number> {
  const checked = checkInputs(pipeVelocityMethod, { flow, bore: pipe.bore });
  return checked.ok ? succeed(meanVelocity(flow, pipe.bore)) : checked;
}

/** Mean velocity of checked inputs [m/s]. */
export function meanVelocity(flow: number, bore: number): number {
  return flow / ((Math.PI / 4) * bore * bore);
}

/** Velocity head V²/(2g) [m]. */
export function velocityHeadOf(velocity: number): number {
  return (velocity * velocity) / (2 * STANDARD_GRAVITY);
}

/** Faster than this a line wears, hammers and hums, m/s. */
const FAST = 6;

/** The caution velocity-high on a liquid faster than 6 m/s; nothing below. Source: common practice. */
export function tooFast(velocity: number, pipe: Pipe): Finding | undefined {
  if (velocity <= FAST) return undefined;
  return {
    code: "velocity-high",
    kind: "check",
    subject: pipe.name,
    found: { quantity: "velocity", value: velocity },
    limit: { quantity: "velocity", value: FAST, side: "at most" },
    cites: { source: "practice", at: "discharge lines up to 6 m/s (20 ft/s)" },
  };
}
