import type { Reason, ReasonAgainstCode, ReasonForCode } from "./selection-reason.ts";
import type { Noted } from "./selection-remarks.ts";

/** The reasons noted in one case, and its name where there are several. */
export interface CaseReasons<C extends ReasonAgainstCode | ReasonForCode> {
  readonly name: string | undefined;
  readonly noted: readonly Noted<C>[];
}

/** Of each reason against that is noted in any case the worst, with the name of its case. */
export function worstInAny<C extends ReasonAgainstCode | ReasonForCode>(
  cases: readonly CaseReasons<C>[],
): readonly Reason<C>[] {
  return [...worst(cases).values()].map(({ reason }) => reason);
}

/** Of each reason for that is noted in every case the one that holds least, with the name of its case. */
export function leastInAll<C extends ReasonAgainstCode | ReasonForCode>(
  cases: readonly CaseReasons<C>[],
): readonly Reason<C>[] {
  const [first, ...others] = cases;
  if (first === undefined) return [];
  const inAll = (key: string): boolean => others.every(({ noted }) => noted.some((one) => keyOf(one) === key));
  return [...worst(cases)]
    .filter(([key]) => inAll(key) && first.noted.some((one) => keyOf(one) === key))
    .map(([, { reason }]) => reason);
}

function worst<C extends ReasonAgainstCode | ReasonForCode>(
  cases: readonly CaseReasons<C>[],
): ReadonlyMap<string, Noted<C>> {
  const found = new Map<string, Noted<C>>();
  for (const { name, noted } of cases) {
    for (const one of noted) {
      const key = keyOf(one);
      const before = found.get(key);
      if (before !== undefined && (one.badness ?? 0) <= (before.badness ?? 0)) continue;
      found.set(key, name === undefined ? one : { ...one, reason: { ...one.reason, inCase: name } });
    }
  }
  return found;
}

function keyOf<C extends ReasonAgainstCode | ReasonForCode>({ of, reason }: Noted<C>): string {
  return of ?? reason.code;
}
