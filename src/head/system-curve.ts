import { checkInputs, type Method } from "../basis/method.ts";
import { amount, andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { headAt, type PumpingSystem } from "./total-head.ts";

export interface SystemCurveInput extends PumpingSystem {
  /** Flow of the last point, m³/s. */
  readonly greatestFlow: number;
  /** How many points, from zero flow to the greatest. */
  readonly points: number;
  /** Pressure over the destination less pressure over the source, Pa. */
  readonly pressureDifference: number;
}

/** m³/s and m of the pumped liquid. */
export interface SystemPoint {
  readonly flow: number;
  readonly head: number;
}

export const systemCurveMethod = {
  cites: [{ source: "white-fluid-mechanics", at: "steady-flow energy equation; matching a pump to a system" }],
  inputs: {
    staticHead: { name: "static head", symbol: "z_d − z_s", quantity: "head" },
    greatestFlow: { name: "maximum flow", symbol: "Q_max", quantity: "flow", above: 0 },
    points: { name: "number of points", quantity: "ratio", atLeast: 2, atMost: 200 },
    pressureDifference: { name: "pressure difference", symbol: "p_d − p_s", quantity: "pressureDifference" },
  },
} as const satisfies Method<"staticHead" | "greatestFlow" | "points" | "pressureDifference">;

/**
 * Total head the system asks for at evenly spaced flows, both ends included [m], friction anew at each. A parabola
 * through one flow under-reads friction at half that flow by 5 to 9 % in new steel pipe of 4 to 12 in.
 * Formula: as `totalHead`, at each flow
 * Fails: out-of-range inputs as the method bounds them; not-a-whole-number; as `headAt`.
 * Warns: as `headAt`, each remark once, at the greatest flow it applies to.
 * Source: White, steady-flow energy equation; matching a pump to a system.
 */
export function systemCurve(input: SystemCurveInput): Result<readonly SystemPoint[]> {
  const { staticHead, greatestFlow, points, pressureDifference } = input;
  return andThen(checkInputs(systemCurveMethod, { staticHead, greatestFlow, points, pressureDifference }), () => {
    if (!Number.isInteger(points)) {
      const found = amount("ratio", points);
      return fail([{ code: "not-a-whole-number", kind: "error", subject: "number of points", found }]);
    }
    const curve: SystemPoint[] = [];
    const findings = new Map<string, Finding>();
    for (let i = 0; i < points; i += 1) {
      const flow = i === points - 1 ? greatestFlow : (greatestFlow / (points - 1)) * i;
      const head = headAt(input, flow, pressureDifference);
      if (!head.ok) return head;
      curve.push({ flow, head: head.value.total });
      for (const finding of head.findings) findings.set(`${finding.code} ${finding.subject}`, finding);
    }
    return succeed(curve, [...findings.values()]);
  });
}
