import type { Citation } from "./citation.ts";
import type { FindingCode } from "./finding-code.ts";
import type { Quantity } from "./quantities.ts";

/** An amount in the engine's own unit, kept raw so that the edge can show it in the reader's unit. */
export interface Amount {
  readonly quantity: Quantity;
  readonly value: number;
}

export function amount(quantity: Quantity, value: number): Amount {
  return { quantity, value };
}

export type Side = "above" | "at least" | "at most" | "below";

interface FindingFacts {
  readonly code: FindingCode;
  /** Name of the input or result the finding is about, such as "suction lift". */
  readonly subject: string;
  readonly found?: Amount;
  readonly limit?: Amount & { readonly side: Side };
  /** What the user wrote, where it could not be read. */
  readonly given?: string;
  /** What would do: names or spellings, best first. */
  readonly suggestions?: readonly string[];
  /** Further facts the words need, by name. */
  readonly facts?: Readonly<Record<string, Amount | string | number>>;
}

/**
 * error: no answer can be given.
 * warning: the answer stands, but a published rule is broken and someone must act. It cites the rule.
 * caution: the answer stands on an assumption that someone should check.
 */
export type Finding =
  | (FindingFacts & { readonly severity: "error" | "caution"; readonly cites?: Citation })
  | (FindingFacts & { readonly severity: "warning"; readonly cites: Citation });

export type Severity = Finding["severity"];

export interface Success<T> {
  readonly ok: true;
  readonly value: T;
  readonly findings: readonly Finding[];
}

export interface Failure {
  readonly ok: false;
  readonly findings: readonly Finding[];
}

export type Result<T> = Success<T> | Failure;

const NO_FINDINGS: readonly Finding[] = Object.freeze([]);

export function succeed<T>(value: T, findings: readonly Finding[] = NO_FINDINGS): Success<T> {
  return { ok: true, value, findings };
}

export function fail(findings: readonly Finding[]): Failure {
  return { ok: false, findings };
}

/** Runs the next step on a good result and keeps the findings of both. */
export function andThen<A, B>(first: Result<A>, next: (value: A) => Result<B>): Result<B> {
  if (!first.ok) return first;
  const second = next(first.value);
  if (first.findings.length === 0) return second;
  return { ...second, findings: [...first.findings, ...second.findings] };
}

/** All values, or all the errors there are. */
export function all<T>(results: readonly Result<T>[]): Result<readonly T[]> {
  const findings = results.flatMap((result) => result.findings);
  const values: T[] = [];
  for (const result of results) {
    if (!result.ok) return fail(findings);
    values.push(result.value);
  }
  return succeed(values, findings);
}

/** The same finding said twice helps nobody. */
export function withoutRepeats(findings: readonly Finding[]): readonly Finding[] {
  if (findings.length < 2) return findings;
  const seen = new Set<string>();
  return findings.filter((finding) => {
    const key = JSON.stringify(finding);
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}
