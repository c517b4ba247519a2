import type { LeftOutCode, Reason } from "./selection-reason.ts";

/** Why a pump or a way to run it does not meet a duty. */
export type Miss = Reason<LeftOutCode>;

/** From the reason farthest from meeting a duty to the nearest. */
const NEARNESS: readonly LeftOutCode[] = [
  "curve-not-usable",
  "outside-its-limits",
  "curve-begins-after",
  "curve-ends-before",
  "head-too-low",
  "does-not-fill",
  "far-too-large",
  "point-beyond-curve",
  "far-below-best",
  "pressure-too-high",
  "npsh-too-high",
];

/** A miss with the name of its case, where it has one. */
export function inCaseOf(miss: Miss, { name }: { readonly name?: string }): Miss {
  return name === undefined ? miss : { ...miss, inCase: name };
}

/** Of two ways to run a pump the miss that came nearer to the duty; of equal ones the first. */
export function nearerMiss(one: Miss | undefined, other: Miss): Miss {
  return one === undefined || compared(one, other) < 0 ? other : one;
}

/** Of two cases of one way to run a pump the miss that is farther off, with the name of its case; of equal ones the first. */
export function fartherMiss(one: Miss | undefined, other: Miss, of: { readonly name?: string }): Miss {
  return one === undefined || compared(one, other) > 0 ? inCaseOf(other, of) : one;
}

/** Above 0 where the first came nearer. */
function compared(one: Miss, other: Miss): number {
  const places = NEARNESS.indexOf(one.code) - NEARNESS.indexOf(other.code);
  return places === 0 ? gapOf(other) - gapOf(one) : places;
}

function gapOf({ found, limit }: Reason): number {
  return found === undefined || limit === undefined ? 0 : Math.abs(found.value / limit.value - 1);
}
