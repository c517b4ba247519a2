import { checkInputs, type Method } from "../basis/method.ts";
import { fail, type Result, succeed } from "../basis/result.ts";
import type { Pipe } from "./pipe.ts";
import { beyondComputation } from "./pipe-friction.ts";
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
