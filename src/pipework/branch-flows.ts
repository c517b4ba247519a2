import { checkInputs, type Method } from "../basis/method.ts";
import { andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import type { LiquidState } from "../liquid/liquid.ts";
import { greatestOf } from "../numeric/extremes.ts";
import { holdsCheckValve } from "./check-valve.ts";
import { junctionGrade } from "./flow-at-loss.ts";
import type { Line } from "./line.ts";
import { type CarryingRun, carrying, lossOf, tooFew, unfitRuns } from "./parallel-runs.ts";

/** A run from the junction to where it ends. */
export interface Branch {
  readonly line: Line;
  /** Of the liquid where it ends, or of the middle of a free outlet, m over the datum of all. */
  readonly level: number;
}

export interface BranchFlowsInput {
  /** Brought to the junction, by a pump or a main, m³/s; below 0 what is drawn off there. */
  readonly flow: number;
  readonly branches: readonly Branch[];
  readonly liquid: LiquidState;
}

export interface BranchFlows {
  /** Energy grade at the junction, m over the datum. */
  readonly grade: number;
  /** In the order given; a flow below 0 runs from its end to the junction. */
  readonly branches: readonly CarryingRun[];
}

export const branchFlowsMethod = {
  cites: [
    { source: "white-fluid-mechanics", at: "multiple-pipe systems: reservoirs joined at a junction" },
    { source: "darcy-weisbach", at: "head lost in a full pipe" },
    { source: "brent-1973", at: "root between two signs" },
  ],
  inputs: {
    flow: { name: "flow", symbol: "Q", quantity: "flow" },
    level: { name: "level", symbol: "z", quantity: "elevation" },
  },
} as const satisfies Method<"flow" | "level">;

/**
 * Branches that meet at a junction and end at levels of their own: the grade at the junction and the flow of each. The
 * velocity head at the junction is left out.
 * Formula: ΣQ_j = Q, |G − z_j| = h_j(|Q_j|), from the junction where G > z_j; h_j as `lineLoss`
 * Fails: not-a-number; fewer-than-two with fewer than two branches; run-loses-nothing; runs-of-settling-slurry; as `lineLoss`.
 * Warns: branch-against-check-valve; as `lineLoss`, of each branch with its own flow.
 * Source: White, reservoirs joined at a junction; Brent 1973.
 */
export function branchFlows({ flow, branches, liquid }: BranchFlowsInput): Result<BranchFlows> {
  const lines = branches.map(({ line }) => line);
  for (const { level } of branches) {
    const checked = checkInputs(branchFlowsMethod, { flow, level });
    if (!checked.ok) return checked;
  }
  if (branches.length < 2) return fail([tooFew("branches")]);
  const wrong = unfitRuns(lines, liquid, flow);
  if (wrong.length > 0) return fail(wrong);
  const losses = branches.map(({ level, line }) => ({ level, lossAt: lossOf(line, liquid) }));
  const { grade, flows } = junctionGrade(losses, flow, scaleOf(lines));
  return andThen(carrying(lines, flows, liquid), (carried) =>
    succeed(
      { grade, branches: carried },
      branches.flatMap(({ line }, i) => againstCheckValve(line, flows[i] as number, i)),
    ),
  );
}

/** Flow of 1 m/s in the widest bore there is, m³/s. */
function scaleOf(lines: readonly Line[]): number {
  const bores = lines.flatMap((line) => line.map(({ pipe }) => pipe.bore));
  return (Math.PI / 4) * greatestOf(bores) ** 2;
}

function againstCheckValve(line: Line, flow: number, row: number): readonly Finding[] {
  if (flow >= 0 || !line.some(holdsCheckValve)) return [];
  return [{ code: "branch-against-check-valve", kind: "check", subject: "branches", facts: { branch: row + 1 } }];
}
