import { checkInputs, type Method } from "../basis/method.ts";
import { type Result, succeed } from "../basis/result.ts";

export interface ShaftTorqueInput {
  /** W */
  readonly shaftPower: number;
  /** r/s */
  readonly speed: number;
}

export const shaftTorqueMethod = {
  cites: [{ source: "iso-17769-1", at: "shaft torque; pump power input; speed of rotation" }],
  inputs: {
    shaftPower: { name: "shaft power", symbol: "P", quantity: "power", atLeast: 0, atMost: 1e8 },
    speed: { name: "speed", symbol: "n", quantity: "speed", above: 0, atMost: 1000 },
  },
} as const satisfies Method<keyof ShaftTorqueInput>;

/**
 * Mean torque in a shaft, N·m; an engine's pulses about it (see `COUPLING_FACTORS`).
 * Formula: T = P / (2 π n)
 * Fails: inputs outside the method's bounds.
 * Source: ISO 17769-1.
 */
export function shaftTorque(input: ShaftTorqueInput): Result<number> {
  const checked = checkInputs(shaftTorqueMethod, { shaftPower: input.shaftPower, speed: input.speed });
  if (!checked.ok) return checked;
  return succeed(input.shaftPower / (2 * Math.PI * input.speed), checked.findings);
}
