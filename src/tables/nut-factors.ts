/**
 * Nut factor K of T = K d F by finish and lubricant of bolt and nut: least, usual, greatest.
 *
 * Verified: usual figures read on one to three trade pages or from memory, ranges from memory; common practice. A second
 * way to them, K = (0.159 P + 0.577 d₂ μ + 0.5 D μ)/d with M20: 0.115 at a friction of 0.08, 0.162 at 0.12, 0.198 at 0.15,
 * 0.258 at 0.20. Measured means of published sets lie from 0.086 to 0.52; the maker of a coating or paste comes first.
 */
export interface NutFactor {
  readonly low: number;
  readonly typical: number;
  readonly high: number;
}

const factor = (low: number, typical: number, high: number): NutFactor => ({ low, typical, high });

export const NUT_FACTORS = {
  "plain steel, as received": factor(0.18, 0.2, 0.25),
  "plain steel, oiled": factor(0.14, 0.15, 0.18),
  "plain steel, dry or rusty": factor(0.25, 0.3, 0.4),
  "zinc plated, dry": factor(0.17, 0.2, 0.24),
  "zinc plated, oiled or waxed": factor(0.13, 0.15, 0.18),
  "hot-dip galvanised, dry": factor(0.22, 0.25, 0.3),
  "hot-dip galvanised, waxed or greased": factor(0.12, 0.15, 0.19),
  "molybdenum disulphide paste": factor(0.1, 0.12, 0.15),
  "PTFE coated": factor(0.1, 0.12, 0.16),
  "nickel or copper anti-seize": factor(0.13, 0.15, 0.18),
  "stainless, dry": factor(0.25, 0.3, 0.5),
  "stainless, anti-seize": factor(0.14, 0.17, 0.21),
} as const satisfies Readonly<Record<string, NutFactor>>;

export type BoltFinish = keyof typeof NUT_FACTORS;

/** Where neither factor nor finish is stated: 0.25 for what is reached, 0.16 for what is overloaded. House choice. */
export const NUT_FACTOR_UNSTATED: NutFactor = factor(0.16, 0.2, 0.25);
