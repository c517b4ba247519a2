import type { Citation } from "../basis/citation.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { type Finding, type Result, succeed } from "../basis/result.ts";
import type { Pipe } from "../pipework/pipe.ts";

export interface ThrustInputs {
  readonly pipe: Pipe;
  /** Gauge, Pa: against a shut valve, with surge and test, not while running. */
  readonly pressure: number;
  /** A bend's change of direction, rad; null for a dead end, a shut valve or the branch of a tee. */
  readonly angle: number | null;
  /** m³/s; null leaves the momentum out. */
  readonly flow: number | null;
  /** kg/m³ */
  readonly density: number;
}

export const thrustMethod = {
  cites: [{ source: "momentum-balance", at: "T = 2 (P A + ρ Q v) sin(θ/2) at a bend, P A at a dead end" }],
  inputs: {
    pressure: { name: "pressure", symbol: "P", quantity: "gaugePressure", above: 0, atMost: 1e9 },
    angle: { name: "angle", symbol: "θ", quantity: "angle", above: 0, atMost: Math.PI },
    flow: { name: "flow", symbol: "Q", quantity: "flow", atLeast: 0, atMost: 1e3 },
    density: { name: "density", symbol: "ρ", quantity: "density", above: 0, atMost: 2e4 },
  },
} as const satisfies Method<"pressure" | "angle" | "flow" | "density">;

const JOINT_RULE: Citation = {
  source: "practice",
  at: "push-on joints are pushed apart over their outside diameter, bolted and welded ones over their bore",
};

/**
 * Force that pushes a bend or a dead end out of its line, N: for a caution on restraint, not for the design of one.
 * Formula: T = 2 (P A + ρ Q v) sin(θ/2) at a bend, P A at a dead end; A of the bore, of the outside at push-on joints
 * Fails: out-of-range inputs as the method bounds them.
 * Warns: cautions thrust-for-caution (always), thrust-by-bore for hose.
 * Source: momentum balance; areas of joints by common practice.
 */
export function thrust({ pipe, pressure, angle, flow, density }: ThrustInputs): Result<number> {
  const checked = checkInputs(thrustMethod, { pressure, angle: angle ?? Math.PI, flow: flow ?? 0, density });
  if (!checked.ok) return checked;
  const isPushOn = pipe.make?.material === "ductile iron" && pipe.family !== "measured";
  const across = isPushOn ? (pipe.outsideDiameter ?? pipe.bore) : pipe.bore;
  const area = (Math.PI / 4) * across ** 2;
  const findings: Finding[] = [
    { code: "thrust-for-caution", kind: "check", subject: "thrust", cites: JOINT_RULE },
    ...(pipe.make?.material === "hose"
      ? [{ code: "thrust-by-bore", kind: "check", subject: "thrust", given: pipe.name } as const]
      : []),
  ];
  if (angle === null) return succeed(pressure * area, findings);
  const momentum = (density * (flow ?? 0) ** 2) / ((Math.PI / 4) * pipe.bore ** 2);
  return succeed(2 * (pressure * area + momentum) * Math.sin(angle / 2), findings);
}
