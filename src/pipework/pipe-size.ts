import type { FactsOf } from "../basis/finding-code.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { amount, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import type { LiquidState } from "../liquid/liquid.ts";
import { runFriction } from "../slurry/run-friction.ts";
import type { Pipe } from "./pipe.ts";

export interface PipeSizeInputs {
  /** m³/s */
  readonly flow: number;
  /** Name of the family, for what is said of it. */
  readonly family: string;
  /** Its sizes, in any order. */
  readonly pipes: readonly Pipe[];
  /** m/s */
  readonly maxVelocity: number;
  /** Friction head over length; null for no limit. */
  readonly maxGradient: number | null;
  readonly liquid: LiquidState;
}

export const pipeSizeMethod = {
  cites: [
    { source: "practice", at: "2.4 m/s (8 ft/s) as the limit where none is given" },
    { source: "darcy-weisbach", at: "head lost in a full pipe" },
  ],
  inputs: {
    flow: { name: "flow", symbol: "Q", quantity: "flow", above: 0 },
    maxVelocity: { name: "maximum velocity", quantity: "velocity", above: 0 },
    maxGradient: { name: "maximum gradient", quantity: "percent", above: 0 },
  },
} as const satisfies Method<"flow" | "maxVelocity" | "maxGradient">;

/**
 * The smallest bore of a family in which the flow keeps within a mean velocity and, where one is given, within a
 * friction head per length. Fittings are not counted.
 * Fails: out-of-range inputs as the method bounds them; no-size-meets, with the largest; as `runFriction`.
 * Warns: as `runFriction`.
 * Source: Darcy–Weisbach equation.
 */
export function pipeSize(inputs: PipeSizeInputs): Result<Pipe> {
  const { flow, family, pipes, maxVelocity, maxGradient, liquid } = inputs;
  const checked = checkInputs(pipeSizeMethod, { flow, maxVelocity, maxGradient: maxGradient ?? 1 });
  if (!checked.ok) return checked;
  let largest: FactsOf["no-size-meets"]["largest"];
  for (const pipe of pipes.toSorted((a, b) => a.bore - b.bore)) {
    const friction = runFriction({ flow, pipe, length: 1, liquid });
    if (!friction.ok) return friction;
    const { velocity, head } = friction.value;
    if (velocity <= maxVelocity && (maxGradient === null || head <= maxGradient))
      return succeed(pipe, friction.findings);
    largest = { pipe: pipe.name, velocity: amount("velocity", velocity), gradient: amount("percent", head) };
  }
  const missed: Finding = {
    code: "no-size-meets",
    kind: "error",
    subject: "family",
    given: family,
    facts: largest === undefined ? {} : { largest },
  };
  return fail([missed]);
}
