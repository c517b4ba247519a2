import { brent } from "../numeric/brent.ts";
import { greatestOf, leastOf } from "../numeric/extremes.ts";

/** Head that a run loses, m, at a flow in it, m³/s: nothing at rest, and more with every flow. */
export type LossAt = (flow: number) => number;

/**
 * Flow at which a run loses so much, m³/s; `most` where it loses no more than that with `most`.
 * Source: Brent 1973, over the square of the flow, to which the loss of turbulent flow is nearly proportional.
 */
export function flowAtLoss(lossAt: LossAt, head: number, most: number): number {
  if (lossAt(most) <= head) return most;
  const square = brent((of) => lossAt(Math.sqrt(of)) - head, 0, most * most);
  return square === undefined ? Number.NaN : Math.sqrt(square);
}

/**
 * Head that several runs side by side lose in common with so much flow through all of them, m, and the flow of each.
 * Formula: h_1(Q_1) = h_2(Q_2) = … = h, ΣQ_j = Q
 * Source: Brent 1973, over the root of the head.
 */
export function sharedLoss(
  losses: readonly LossAt[],
  flow: number,
): { readonly head: number; readonly flows: readonly number[] } {
  const flowsAt = (head: number): readonly number[] => losses.map((lossAt) => flowAtLoss(lossAt, head, flow));
  // With the least of these, one run alone carries all of the flow.
  const most = leastOf(losses.map((lossAt) => lossAt(flow)));
  const root = brent((of) => sum(flowsAt(of * of)) - flow, 0, Math.sqrt(most));
  const head = root === undefined ? Number.NaN : root * root;
  return { head, flows: flowsAt(head) };
}

/** A run from a junction to a level, m over one datum. */
export interface BranchLoss {
  readonly level: number;
  readonly lossAt: LossAt;
}

/**
 * Grade of a junction, m, from which so much flows into its branches, and the flow of each; below 0 of a branch that
 * feeds the junction. `scale` is a flow of the size of those in the branches, m³/s.
 * Formula: ΣQ_j = Q, Q_j = sign(G − z_j) h_j⁻¹(|G − z_j|)
 * Source: Brent 1973, between the least and the greatest grade there can be.
 */
export function junctionGrade(
  branches: readonly BranchLoss[],
  flow: number,
  scale: number,
): { readonly grade: number; readonly flows: readonly number[] } {
  const flowsAt = (grade: number): readonly number[] =>
    branches.map(({ level, lossAt }) => {
      const head = Math.abs(grade - level);
      if (head === 0) return 0;
      return Math.sign(grade - level) * flowAtLoss(lossAt, head, flowBeyond(lossAt, head, scale));
    });
  const levels = branches.map(({ level }) => level);
  const alone = branches.map(({ level, lossAt }) => level + Math.sign(flow) * lossAt(Math.abs(flow)));
  // Without a flow the grade lies between the levels; with one, where a branch alone takes it all, nothing flows back.
  const low = flow < 0 ? Math.min(leastOf(levels), greatestOf(alone)) : leastOf(levels);
  const high = flow > 0 ? Math.max(greatestOf(levels), leastOf(alone)) : greatestOf(levels);
  const grade = low === high ? low : (brent((of) => sum(flowsAt(of)) - flow, low, high) ?? Number.NaN);
  return { grade, flows: flowsAt(grade) };
}

/** Doublings of a flow until a run loses more than any head there is. */
const MOST_DOUBLINGS = 100;

function flowBeyond(lossAt: LossAt, head: number, from: number): number {
  let flow = from;
  for (let i = 0; i < MOST_DOUBLINGS && lossAt(flow) < head; i += 1) flow *= 2;
  return flow;
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
