import { append } from "../basis/append.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import type { LiquidState } from "../liquid/liquid.ts";
import { settles } from "../slurry/run-friction.ts";
import { type LossAt, sharedLoss } from "./flow-at-loss.ts";
import type { Line } from "./line.ts";
import { type LineLoss, lineLoss } from "./line-loss.ts";
import { beyondComputation } from "./pipe-friction.ts";

export interface ParallelRunsInput {
  /** Of all runs together, m³/s. */
  readonly flow: number;
  /** Each from the place where the flow divides to that where it meets again. */
  readonly runs: readonly Line[];
  readonly liquid: LiquidState;
}

/** What a run carries, m³/s, and what it loses with that. */
export interface CarryingRun {
  readonly flow: number;
  /** The fastest of its rows, m/s. */
  readonly velocity: number;
  readonly loss: LineLoss;
}

export interface ParallelRuns {
  /** Lost in each of them, m of the liquid. */
  readonly head: number;
  readonly runs: readonly (CarryingRun & {
    /** Of the whole flow; null at rest. */
    readonly share: number | null;
  })[];
}

export const parallelRunsMethod = {
  cites: [
    { source: "white-fluid-mechanics", at: "multiple-pipe systems: pipes in parallel" },
    { source: "darcy-weisbach", at: "head lost in a full pipe" },
    { source: "brent-1973", at: "root between two signs" },
  ],
  inputs: {
    flow: { name: "flow", symbol: "Q", quantity: "flow", atLeast: 0 },
  },
} as const satisfies Method<"flow">;

/**
 * Unlike runs side by side: how the flow divides between them, and the head each loses [m of the liquid].
 * Formula: h_1(Q_1) = h_2(Q_2) = … = h, ΣQ_j = Q; h_j as `lineLoss`
 * Fails: out-of-range below 0; fewer-than-two with fewer than two runs; run-loses-nothing; runs-of-settling-slurry; as `lineLoss`.
 * Warns: as `lineLoss`, of each run with its own flow.
 * Source: White, pipes in parallel; Brent 1973.
 */
export function parallelRuns({ flow, runs, liquid }: ParallelRunsInput): Result<ParallelRuns> {
  return andThen(checkInputs(parallelRunsMethod, { flow }), () => {
    if (runs.length < 2) return fail([tooFew("runs")]);
    const wrong = unfitRuns(runs, liquid, flow);
    if (wrong.length > 0) return fail(wrong);
    const { head, flows } =
      flow === 0
        ? { head: 0, flows: runs.map(() => 0) }
        : sharedLoss(
            runs.map((run) => lossOf(run, liquid)),
            flow,
          );
    return andThen(carrying(runs, flows, liquid), (carried) =>
      succeed({ head, runs: carried.map((run) => ({ ...run, share: flow === 0 ? null : run.flow / flow })) }),
    );
  });
}

/** The loss of a run; NaN where it has none to tell. */
export function lossOf(line: Line, liquid: LiquidState): LossAt {
  return (flow) => {
    const loss = lineLoss({ flow, line, liquid });
    return loss.ok ? loss.value.total : Number.NaN;
  };
}

/** A flow to try a run with that stands still, m³/s. */
const TRIED = 1e-3;

/**
 * Why runs that meet cannot be worked out: run-loses-nothing, since such a run takes all there is;
 * runs-of-settling-slurry, since what is lost then falls with the flow at first; as `lineLoss`.
 */
export function unfitRuns(runs: readonly Line[], liquid: LiquidState, flow: number): readonly Finding[] {
  if (settles(liquid)) return [{ code: "runs-of-settling-slurry", kind: "error", subject: "liquid" }];
  return runs.flatMap((line, i): readonly Finding[] => {
    const loss = lineLoss({ flow: flow === 0 ? TRIED : Math.abs(flow), line, liquid });
    if (!loss.ok) return loss.findings;
    const facts = { run: i + 1 };
    return loss.value.total > 0 ? [] : [{ code: "run-loses-nothing", kind: "error", subject: "length", facts }];
  });
}

/** Each run with the flow in it, taken in the direction it has. */
export function carrying(
  runs: readonly Line[],
  flows: readonly number[],
  liquid: LiquidState,
): Result<readonly CarryingRun[]> {
  if (!flows.every(Number.isFinite)) return fail([beyondComputation("flow in the runs")]);
  const findings: Finding[] = [];
  const carried: CarryingRun[] = [];
  for (const [i, line] of runs.entries()) {
    const flow = flows[i] as number;
    const loss = lineLoss({ flow: Math.abs(flow), line, liquid });
    append(findings, loss.findings);
    if (!loss.ok) return fail(findings);
    const velocity = loss.value.segments.reduce((most, one) => Math.max(most, one.friction.velocity), 0);
    carried.push({ flow, velocity, loss: loss.value });
  }
  return succeed(carried, findings);
}

/** The refusal of fewer than two that meet. */
export function tooFew(subject: string): Finding {
  return { code: "fewer-than-two", kind: "error", subject, suggestions: ["two rows or more: pipe, length, fittings"] };
}
