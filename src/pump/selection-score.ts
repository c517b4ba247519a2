import type { Citation } from "../basis/citation.ts";

/** What a pump is scored by, each part from 0 (worst) to 1 (best). A part nobody can judge for any pump is left out. */
export interface ScoreParts {
  /** Power the duty needs in the liquid, over the shaft power at the operating point. */
  readonly efficiency: number;
  /** 1 at best efficiency flow, falling evenly to 0 at half and at one and a half of it. */
  readonly nearness: number;
  /** NPSH margin over twice the margin wanted, up to 1; nothing where NPSH available is not known. */
  readonly npshMargin: number | undefined;
  /** 1 for the impeller of the curve, falling evenly to 0 at 80 % of its diameter. */
  readonly trim: number;
}

/** What each part counts, none below 0 and not all 0; they are taken over their sum. */
export type ScoreWeights = Readonly<Record<keyof ScoreParts, number>>;

/** Weights where nobody states any. Choice of this product; no published rule weighs the parts against each other. */
export const SCORE_WEIGHTS: ScoreWeights = { efficiency: 45, nearness: 30, npshMargin: 15, trim: 10 };

/** What the parts are called. */
export const PART_NAMES: Readonly<Record<keyof ScoreParts, string>> = {
  efficiency: "efficiency",
  nearness: "nearness to best efficiency flow",
  npshMargin: "NPSH margin",
  trim: "little trim",
};

export const SCORE_PARTS = [
  "efficiency",
  "nearness",
  "npshMargin",
  "trim",
] as const satisfies readonly (keyof ScoreParts)[];

export const SCORE_RULE: Citation = {
  source: "house",
  at: "pumps within every rule first; then by 45 % efficiency on the duty, 30 % nearness to best efficiency flow, 15 % NPSH margin, 10 % little trim",
};

/** Weighted mean of the parts that are there, 0 to 1; 0 where none of them counts. Source: house choice. */
export function scoreOf(parts: ScoreParts, weights: ScoreWeights = SCORE_WEIGHTS): number {
  let [sum, whole] = [0, 0];
  for (const key of SCORE_PARTS) {
    const part = parts[key];
    if (part === undefined) continue;
    sum += weights[key] * part;
    whole += weights[key];
  }
  return whole > 0 ? sum / whole : 0;
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
