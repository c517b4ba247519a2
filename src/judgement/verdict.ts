/** What a package is judged by, in the order of the calculation. */
export const VERDICT_SUBJECTS = [
  "head",
  "npsh",
  "sump",
  "region",
  "solids",
  "pressure",
  "pipe",
  "bolting",
  "driver",
  "priming",
  "materials",
  "field",
] as const;
export type VerdictSubject = (typeof VERDICT_SUBJECTS)[number];

/**
 * The gravest first. fail: a limit is broken. open: something needed is not stated. check: near a limit, beyond a
 * recommendation, or held by an assumed figure alone. pass: every limit kept on stated or derived figures.
 */
export const VERDICT_STATES = ["fail", "open", "check", "pass"] as const;
export type VerdictState = (typeof VERDICT_STATES)[number];

/** A figure against its limit, both in one unit. */
export interface Comparison {
  /** At the careful end of whatever is assumed. */
  readonly found: number;
  /** At the favourable end; as found where nothing is assumed. */
  readonly atBest?: number;
  readonly limit: number;
  readonly mustBe: "at most" | "at least";
  /** What breaking the limit means: a limit of a standard, maker or customer, or a recommendation. */
  readonly broken: "fail" | "check";
  /** The best that can be said while it is kept: check where an assumed figure decides. */
  readonly held: "pass" | "check";
}

/** Figures closer than this, relative to the greater, are equal. */
const EQUAL = 1e-9;

/** Whether two figures are one and the same but for rounding. */
export function isAtLimit({ found, limit }: Pick<Comparison, "found" | "limit">): boolean {
  return Math.abs(found - limit) <= EQUAL * Math.max(Math.abs(found), Math.abs(limit));
}

/**
 * The state of a comparison: broken even at the favourable end, what breaking it means; broken at the careful end alone,
 * check; kept, the best that can be said.
 */
export function stateOf(comparison: Comparison): VerdictState {
  const { found, atBest = found, broken, held } = comparison;
  if (isBroken(comparison, atBest)) return broken;
  return isBroken(comparison, found) ? "check" : held;
}

function isBroken({ limit, mustBe }: Comparison, found: number): boolean {
  return excessOf({ found, limit, mustBe }) > 0 && !isAtLimit({ found, limit });
}

/** How far the found figure lies beyond its limit, as a share of the greater of both; below 0 inside it. */
export function excessOf({ found, limit, mustBe }: Pick<Comparison, "found" | "limit" | "mustBe">): number {
  const size = Math.max(Math.abs(found), Math.abs(limit));
  if (size === 0) return 0;
  return (mustBe === "at most" ? found - limit : limit - found) / size;
}

/** One judgement among those a verdict is drawn from. */
export interface Judged {
  readonly subject: VerdictSubject;
  readonly state: VerdictState;
  /** Among those of one state, the greatest decides. */
  readonly excess: number;
  /** A recommendation, not a limit: it speaks for the subject only where no limit does. */
  readonly isAdvice: boolean;
}

/** What is said of a subject: the worst that was found of it. */
export interface Verdict<T extends Judged> {
  readonly subject: VerdictSubject;
  readonly state: VerdictState;
  readonly deciding: T;
  /** How many more have the same state; of those that pass, none are counted. */
  readonly others: number;
}

/** One verdict for each subject that was judged, in the order of the calculation: the worst decides. */
export function verdictsOf<T extends Judged>(judged: readonly T[]): readonly Verdict<T>[] {
  return VERDICT_SUBJECTS.flatMap((subject) => {
    const of = judged.filter((one) => one.subject === subject);
    const state = worstOf(of);
    if (state === undefined) return [];
    const same = of.filter((one) => one.state === state);
    const limits = same.filter(({ isAdvice }) => !isAdvice);
    const deciding = (state === "pass" && limits.length > 0 ? limits : same).reduce((worst, one) =>
      one.excess > worst.excess ? one : worst,
    );
    return [{ subject, state, deciding, others: state === "pass" ? 0 : same.length - 1 }];
  });
}

/** The gravest state there is; nothing of nothing. */
export function worstOf(judged: readonly Pick<Judged, "state">[]): VerdictState | undefined {
  return VERDICT_STATES.find((state) => judged.some((one) => one.state === state));
}
