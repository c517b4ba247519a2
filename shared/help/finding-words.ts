import type { FindingCode } from "../../src/basis/finding-code.ts";
import type { Finding, FindingKind } from "../../src/basis/result.ts";
import { findingText } from "../text/finding-text.ts";

const GAP = "…";
/** An amount without a figure, which a message words in ways of its own. */
const NO_AMOUNT = { quantity: "ratio", value: Number.NaN } as const;
const NO_FIGURE = /more than 1e308|NaN|undefined/gi;

/** What a finding says, with gaps where a call puts its names and figures. */
export function findingWords(code: FindingCode, kind: FindingKind): string {
  const finding = {
    code,
    kind,
    subject: GAP,
    given: GAP,
    found: NO_AMOUNT,
    limit: { ...NO_AMOUNT, side: "at most" },
    suggestions: [GAP],
    facts: FACTS,
  };
  return findingText(finding as unknown as Finding, "SI").replace(NO_FIGURE, GAP);
}

/** Whatever fact is asked for: a text, an amount and a list at once, all of them gaps. */
const FACT = Object.assign(new String(GAP), NO_AMOUNT, {
  map: (each: (amount: unknown) => string) => [each(NO_AMOUNT), each(NO_AMOUNT)],
});
const FACTS: unknown = new Proxy({}, { get: () => FACT });
