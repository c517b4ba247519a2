import { amount, type Finding } from "../basis/result.ts";
import { curveCrossing } from "./curve-crossing.ts";
import { equalPumps, type HeadCurve } from "./head-curve.ts";
import { headOf } from "./pump-reading.ts";
import type { RunningPump } from "./running-pump.ts";

export interface ParallelInput {
  readonly pump: RunningPump;
  readonly system: HeadCurve;
  /** Two or more. */
  readonly pumps: number;
}

const CITES = { source: "pump-handbook", at: "parallel operation of pumps with drooping curves" } as const;

/** Relative; what is equal but for rounding is held. */
const EQUAL = 1e-9;

/**
 * Equal pumps side by side whose flow each [m³/s] lies on the rising part of their curve: whichever gets ahead takes the
 * flow of the others. From the flow of the greatest head on they share it.
 * Fails: parallel-point-not-held.
 * Source: Karassik and others, Pump Handbook, parallel operation.
 */
export function notHeld({ pump, pumps }: ParallelInput, pumpFlow: number): Finding | undefined {
  const { points } = pump.curve;
  const top = points.reduce((best, point) => (point.head >= best.head ? point : best));
  const topFlow = top.flow * pump.flowFactor;
  if (pumpFlow >= topFlow * (1 - EQUAL)) return undefined;
  const found = amount("flow", pumpFlow);
  const limit = { quantity: "flow", value: topFlow, side: "at least" } as const;
  return {
    code: "parallel-point-not-held",
    kind: "error",
    subject: "pumps",
    found,
    limit,
    facts: { pumps },
    cites: CITES,
  };
}

/** Whether the last of equal pumps opens its check valve beside the others; null where that is not known. */
export interface Joining {
  readonly joins: boolean | null;
  readonly findings: readonly Finding[];
}

/**
 * Holds the head of a pump at zero flow against the head at which the others run without it.
 * Warns: parallel-pump-not-joining, a limit.
 * Source: as `notHeld`.
 */
export function joining({ pump, system, pumps }: ParallelInput): Joining {
  const others = curveCrossing({ pump: equalPumps(pump, pumps - 1, "parallel"), system });
  if (pump.leastFlow > 0 || !others.ok) return { joins: null, findings: [] };
  const shutoff = headOf(pump, 0);
  const { head } = others.value;
  if (shutoff >= head * (1 - EQUAL)) return { joins: true, findings: [] };
  const found = amount("head", shutoff);
  const limit = { quantity: "head", value: head, side: "at least" } as const;
  const facts = { others: pumps - 1 };
  return {
    joins: false,
    findings: [
      { code: "parallel-pump-not-joining", kind: "limit", subject: "pump", found, limit, facts, cites: CITES },
    ],
  };
}
