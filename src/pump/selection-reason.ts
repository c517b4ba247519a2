import type { Amount } from "../basis/quantities.ts";
import type { Finding } from "../basis/result.ts";

/** Speaks for a pump. */
export type ReasonForCode =
  | "right-at-duty"
  | "near-best-efficiency"
  | "in-preferred-region"
  | "efficient-here"
  | "npsh-margin-kept"
  | "no-trim"
  | "speed-for-each-case"
  | "speed-in-hand"
  | "impeller-in-hand";

/** Speaks against a pump that meets the duty. The first few break a rule and put it after those that break none. */
export type ReasonAgainstCode =
  | "outside-region"
  | "npsh-margin-below-wanted"
  | "cannot-start"
  | "much-more-than-asked"
  | "little-flow"
  | "more-than-asked"
  | "speed-lowered"
  | "speed-above-curve"
  | "impeller-trimmed"
  | "efficiency-not-given"
  | "npshr-not-given"
  | "shutoff-not-given"
  | "peak-at-end-of-curve"
  | "curve-doubted";

/** Why a pump is not in the ranking. */
export type LeftOutCode =
  | "head-too-low"
  | "curve-ends-before"
  | "curve-begins-after"
  | "point-beyond-curve"
  | "far-too-large"
  | "pressure-too-high"
  | "npsh-too-high"
  | "does-not-fill"
  | "far-below-best"
  | "outside-its-limits"
  | "curve-not-usable";

/** Why a pump ranks where it does: a code with raw amounts, worded at the edge. */
export interface Reason<C extends ReasonCode = ReasonCode> {
  readonly code: C;
  /** The case it is taken from, of several the one that decides. */
  readonly inCase?: string;
  readonly found?: Amount;
  readonly limit?: Amount;
  readonly facts?: Readonly<Record<string, Amount>>;
  /** What was found wrong or doubtful when the curve was drawn. */
  readonly findings?: readonly Finding[];
}

export type ReasonCode = ReasonForCode | ReasonAgainstCode | LeftOutCode;
