import { GREATEST_SPECIFIC_GRAVITY, SPECIFIC_GRAVITY_REFERENCE, STANDARD_GRAVITY } from "../basis/constants.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { andThen, type Result, succeed } from "../basis/result.ts";

export interface ShaftPowerInput {
  /** m³/s */
  readonly flow: number;
  /** m of the pumped liquid. */
  readonly head: number;
  /** Of the pump, above 0 and at most 1. */
  readonly efficiency: number;
  /** Relative to 998.2 kg/m³. */
  readonly specificGravity: number;
}

/** Specific gravity of what is pumped, wherever a pump method takes one. */
export const SPECIFIC_GRAVITY = {
  name: "SG",
  symbol: "S",
  quantity: "ratio",
  above: 0,
  atMost: GREATEST_SPECIFIC_GRAVITY,
  usual: { atLeast: 0.6, atMost: 2.2 },
} as const;

export const shaftPowerMethod = {
  cites: [{ source: "iso-17769-1", at: "pump power input; pump power output; pump efficiency" }],
  inputs: {
    flow: { name: "flow", symbol: "Q", quantity: "flow", atLeast: 0 },
    head: { name: "head", symbol: "H", quantity: "head", atLeast: 0 },
    efficiency: { name: "efficiency", symbol: "η", quantity: "percent", above: 0, atMost: 1, usual: { atMost: 0.92 } },
    specificGravity: SPECIFIC_GRAVITY,
  },
} as const satisfies Method<keyof ShaftPowerInput>;

/**
 * Power a pump takes at its shaft, W; an efficiency of 1 gives the hydraulic power.
 * Formula: P = ρ g Q H/η, ρ = SG × 998.2 kg/m³
 * Fails: out-of-range inputs as the method bounds them.
 * Warns: cautions outside-usual-range: efficiency above 0.92, SG outside 0.6 to 2.2.
 * Source: ISO 17769-1, pump power input.
 */
export function shaftPower(input: ShaftPowerInput): Result<number> {
  const { flow, head, efficiency, specificGravity } = input;
  return andThen(checkInputs(shaftPowerMethod, input), () =>
    succeed((SPECIFIC_GRAVITY_REFERENCE * specificGravity * STANDARD_GRAVITY * flow * head) / efficiency),
  );
}
