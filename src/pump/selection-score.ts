import type { Citation } from "../basis/citation.ts";

/** What a pump is scored by, each part from 0 (worst) to 1 (best). A part nobody can judge for any pump is left out. */
export interface ScoreParts {
  /** Power the duty needs in the liquid, over the shaft power at the operating point. */
  readonly efficiency: number;
  /** 1 at best efficiency flow, falling evenly to 0 at half and at one and a half of it. */
  readonly nearness: number;
  /** NPSH margin over twice the margin wanted, up to 1; left out where NPSH available is not known. */
  readonly npshMargin?: number;
  /** 1 for the impeller of the curve, falling evenly to 0 at 80 % of its diameter. */
  readonly trim: number;
}

/** Weights of the parts. Choice of this product; no published rule weighs them against each other. */
export const SCORE_WEIGHTS = { efficiency: 0.45, nearness: 0.3, npshMargin: 0.15, trim: 0.1 } as const;

export const SCORE_RULE: Citation = {
  source: "house",
  at: "pumps within every rule first; then by 45 % efficiency on the duty, 30 % nearness to best efficiency flow, 15 % NPSH margin, 10 % little trim",
};

/** Weighted mean of the parts that are there, 0 to 1. Source: house choice. */
export function scoreOf(parts: ScoreParts): number {
  const { efficiency, nearness, npshMargin, trim } = parts;
  const weights = SCORE_WEIGHTS;
  const sum = weights.efficiency * efficiency + weights.nearness * nearness + weights.trim * trim;
  if (npshMargin === undefined) return sum / (1 - weights.npshMargin);
  return sum + weights.npshMargin * npshMargin;
}

/** Nearness to best efficiency flow, 0 to 1; 0 where that flow is not known. */
export function nearnessOf(bestFlowRatio: number | undefined): number {
  if (bestFlowRatio === undefined) return 0;
  return Math.max(0, 1 - Math.abs(bestFlowRatio - 1) / 0.5);
}

/** Little trim, 1 for the impeller of the curve to 0 at 80 % of its diameter. */
export function trimPart(trimRatio: number): number {
  return Math.max(0, 1 - (1 - trimRatio) / 0.2);
}
