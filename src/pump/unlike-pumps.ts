import { amount, andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { brent } from "../numeric/brent.ts";
import { type CurveCrossing, curveCrossing } from "./curve-crossing.ts";
import type { HeadCurve } from "./head-curve.ts";
import { headOf } from "./pump-reading.ts";
import type { RunningPump } from "./running-pump.ts";

export interface NamedPump {
  readonly name: string;
  readonly pump: RunningPump;
}

export interface UnlikePumpsInput {
  readonly pumps: readonly NamedPump[];
  readonly system: HeadCurve;
}

export interface UnlikePumpsPoint extends CurveCrossing {
  /** Flow of each pump in the order given, m³/s. */
  readonly flows: readonly number[];
  /** Head of each pump in the order given, m. */
  readonly heads: readonly number[];
}

export const unlikePumpsMethod = {
  cites: [
    { source: "white-fluid-mechanics", at: "ch. 11, pumps combined in parallel; pumps combined in series" },
    { source: "pump-handbook", at: "parallel and series operation" },
  ],
} as const;

/** The falling part of a curve: from its greatest head to its end. */
interface FallingPart {
  readonly pump: RunningPump;
  readonly topFlow: number;
  readonly topHead: number;
  readonly endFlow: number;
  readonly endHead: number;
}

/**
 * Unlike pumps in parallel on a system, each with a check valve: flows add at equal head, m³/s and m. Each curve is
 * inverted on its falling part alone; a pump whose greatest head is below the common head, found by Brent, stays shut.
 * Fails: left-out; parallel-pumps-hunt, with no steady share; as `curveCrossing`.
 * Warns: pump-held-closed; as `curveCrossing`.
 * Source: White, Fluid Mechanics, ch. 11; Karassik and others, Pump Handbook, parallel and series operation.
 */
export function parallelPoint({ pumps, system }: UnlikePumpsInput): Result<UnlikePumpsPoint> {
  if (pumps.length === 0) return fail([noPumps()]);
  const parts = pumps.map(({ pump }) => fallingPartOf(pump));
  const group = inParallel(parts);
  return andThen(curveCrossing({ pump: group, system }), ({ flow, head }) => {
    const flows = parts.map((part) => flowAtHead(part, head));
    const sum = flows.reduce((total, each) => total + each, 0);
    // Where a drooping pump comes in, its flow jumps from nothing to that of its greatest head.
    if (Math.abs(sum - flow) > 1e-6 * flow) {
      const limit = { quantity: "head", value: head, side: "at most" } as const;
      const found = amount("flow", flow);
      return fail([{ code: "parallel-pumps-hunt", kind: "error", subject: "pumps", found, limit }]);
    }
    return succeed({ flow, head, flows, heads: flows.map(() => head) }, heldShut(pumps, parts, head));
  });
}

/**
 * Unlike pumps in series on a system: heads add at equal flow, over the flows all of them are given for; m³/s and m.
 * Fails: left-out; as `curveCrossing`.
 * Warns: caution series-casing-pressure; as `curveCrossing`.
 * Source: as `parallelPoint`.
 */
export function seriesPoint({ pumps, system }: UnlikePumpsInput): Result<UnlikePumpsPoint> {
  if (pumps.length === 0) return fail([noPumps()]);
  const group: HeadCurve = {
    leastFlow: Math.max(...pumps.map(({ pump }) => pump.leastFlow)),
    mostFlow: Math.min(...pumps.map(({ pump }) => pump.mostFlow)),
    headAt: (flow) => pumps.reduce((sum, { pump }) => sum + headOf(pump, flow), 0),
    knots: pumps.flatMap(({ pump }) => knotsOf(pump)),
  };
  return andThen(curveCrossing({ pump: group, system }), ({ flow, head }) => {
    const flows = pumps.map(() => flow);
    const heads = pumps.map(({ pump }) => headOf(pump, flow));
    return succeed({ flow, head, flows, heads }, [{ code: "series-casing-pressure", kind: "check", subject: "pumps" }]);
  });
}

function noPumps(): Finding {
  return { code: "left-out", kind: "error", subject: "pumps", suggestions: ["one pump or more"] };
}

function knotsOf({ curve, flowFactor }: RunningPump): readonly number[] {
  return curve.points.map(({ flow }) => flow * flowFactor);
}

/** A monotone interpolant has its greatest head at one of its points. */
function fallingPartOf(pump: RunningPump): FallingPart {
  const { points } = pump.curve;
  const top = points.reduce((best, point) => (point.head >= best.head ? point : best));
  return {
    pump,
    topFlow: top.flow * pump.flowFactor,
    topHead: top.head * pump.headFactor,
    endFlow: pump.mostFlow,
    endHead: headOf(pump, pump.mostFlow),
  };
}

/** Flow of a pump at a head on its falling part; nothing above its greatest head, its end below its least. */
function flowAtHead({ pump, topFlow, topHead, endFlow, endHead }: FallingPart, head: number): number {
  if (head > topHead) return 0;
  if (head <= endHead) return endFlow;
  return brent((flow) => headOf(pump, flow) - head, topFlow, endFlow) ?? endFlow;
}

/** The group as one curve of head against total flow, from the strongest pump alone to the first curve that ends. */
function inParallel(parts: readonly FallingPart[]): HeadCurve {
  const greatest = Math.max(...parts.map(({ topHead }) => topHead));
  const least = Math.max(...parts.map(({ endHead }) => endHead));
  const flowAt = (head: number): number => parts.reduce((sum, part) => sum + flowAtHead(part, head), 0);
  const heads = parts.flatMap(({ pump, topHead }) => [
    topHead,
    ...pump.curve.points.map((point) => point.head * pump.headFactor),
  ]);
  return {
    leastFlow: flowAt(greatest),
    mostFlow: flowAt(least),
    headAt: (flow) =>
      brent((head) => flowAt(head) - flow, least, greatest) ?? (flow > flowAt(greatest) ? least : greatest),
    knots: heads.filter((head) => head >= least && head <= greatest).map(flowAt),
  };
}

function heldShut(pumps: readonly NamedPump[], parts: readonly FallingPart[], head: number): readonly Finding[] {
  return parts.flatMap(({ topHead }, i): readonly Finding[] => {
    if (topHead >= head) return [];
    const found = amount("head", topHead);
    const limit = { quantity: "head", value: head, side: "at least" } as const;
    const cites = { source: "pump-handbook", at: "parallel operation" } as const;
    const { name } = pumps[i] as NamedPump;
    return [{ code: "pump-held-closed", kind: "limit", subject: name, found, limit, cites }];
  });
}
