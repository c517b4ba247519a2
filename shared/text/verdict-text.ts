import { type Comparison, isAtLimit, VERDICT_STATES, type VerdictState } from "../../src/judgement/verdict.ts";
import { figureSaid, saidApart } from "./figure.ts";

/** How a sentence about a verdict begins. */
const VERBS: Readonly<Record<VerdictState, string>> = { fail: "Fails", open: "Open", check: "Check", pass: "Passes" };

/** A state never stands in colour alone. */
export const STATE_SIGNS: Readonly<Record<VerdictState, string>> = { fail: "✗", open: "?", check: "!", pass: "✓" };

/** What a comparison is about, in words. */
export interface ComparedWords {
  /** "suction flange NPS 16 grey iron". */
  readonly what: string;
  readonly unit: string;
  /** The case: "closed valve, grade 3B". */
  readonly when: string;
  readonly why: string;
  /** What is assumed, where that decides. */
  readonly assumed: string;
}

/** "Fails: suction flange NPS 16 grey iron, 168.7 of 150 psig (column 390 ft)." */
export function comparedText(state: VerdictState, comparison: Comparison, words: ComparedWords): string {
  const { what, when, why, assumed } = words;
  // What is kept needs no cause.
  const cause = state === "pass" || why === "" ? "" : `: ${why}`;
  const rests = state === "check" && assumed !== "" ? `assumed: ${assumed}` : "";
  const aside = [when, rests].filter((text) => text !== "").join("; ");
  return sentence(state, `${what}, ${figuresText(comparison, words.unit)}${aside === "" ? "" : ` (${aside})`}${cause}`);
}

/** A sentence of a verdict that no figure decides. */
export function sentence(state: VerdictState, text: string): string {
  return `${VERBS[state]}: ${text}${/[.!?]$/.test(text) ? "" : "."}`;
}

function figuresText(comparison: Comparison, unit: string): string {
  const { found, atBest, limit } = comparison;
  const of = unit === "" ? "" : ` ${unit}`;
  if (isAtLimit(comparison)) return `${figureSaid(unit, limit)}${of}, at the limit`;
  const [shown, bound] = saidApart(unit, found, limit);
  const best =
    atBest === undefined || isAtLimit({ found: atBest, limit: found }) ? "" : `, ${figureSaid(unit, atBest)} at best`;
  return `${shown} of ${bound}${of}${best}`;
}

/** "2 fail, 1 open, 3 to check, 4 pass"; states that do not occur are left out. */
export function countsText(states: readonly VerdictState[], of: readonly VerdictState[] = VERDICT_STATES): string {
  return of
    .flatMap((state) => {
      const count = states.filter((one) => one === state).length;
      return count === 0 ? [] : [`${count} ${state === "check" ? "to check" : state}`];
    })
    .join(", ");
}
