import type { Citation } from "./citation.ts";
import type { FactsCode, FactsOf, FindingCode, PlainCode, WarningCode } from "./finding-code.ts";
import type { Amount, Quantity } from "./quantities.ts";

/** An amount of a quantity, in the engine's unit. */
export function amount(quantity: Quantity, value: number): Amount {
  return { quantity, value };
}

export type Side = "above" | "at least" | "at most" | "below";

interface Particulars {
  /** Name of the input or result the finding is about, such as "suction lift". */
  readonly subject: string;
  /** Which of several alike it is about, such as the name of a pump; said before the sentence. */
  readonly of?: string;
  readonly found?: Amount;
  readonly limit?: Amount & { readonly side: Side };
  /** What the user wrote, where it could not be read. */
  readonly given?: string;
  /** Texts of the user that its sentence may repeat, a pump's name among them: they stand as they were typed. */
  readonly typed?: readonly string[];
  /** What would do: names or spellings, best first. */
  readonly suggestions?: readonly string[];
  /** What else would do, in words. */
  readonly otherwise?: string;
}

/**
 * error: no answer can be given.
 * check: the answer stands, and someone should confirm what it rests on.
 * assumed: nothing was stated, and a default was taken.
 */
interface Raised extends Particulars {
  readonly kind: "error" | "check" | "assumed";
  readonly cites?: Citation;
}

/**
 * safety: people are in danger.
 * limit: a published limit is broken or near, and someone must act. Both cite the rule.
 */
interface Warned extends Particulars {
  readonly kind: "safety" | "limit";
  readonly cites: Citation;
}

interface Facts<C extends FactsCode> {
  readonly code: C;
  readonly facts: Readonly<FactsOf[C]>;
}

interface NoFacts<C extends FindingCode> {
  readonly code: C;
  readonly facts?: never;
}

interface RaisedFacts<C extends FactsCode> extends Raised, Facts<C> {}
interface WarnedFacts<C extends FactsCode> extends Warned, Facts<C> {}
interface RaisedPlain<C extends PlainCode> extends Raised, NoFacts<C> {}
interface WarnedPlain<C extends PlainCode> extends Warned, NoFacts<C> {}

// One member for each code with facts and few besides: each more makes every finding slower to check.
type WithFacts<C> = C extends FactsCode ? RaisedFacts<C> | (C extends WarningCode ? WarnedFacts<C> : never) : never;
type WithoutFacts<C extends PlainCode> = [C] extends [never] ? never : RaisedPlain<C> | WarnedPlain<C>;

export type Finding<C extends FindingCode = FindingCode> = WithFacts<C> | WithoutFacts<Extract<C, PlainCode>>;

/** What a finding says of its matter besides code and facts. */
export interface Details extends Partial<Particulars> {
  readonly cites?: Citation;
}

/** A finding before the subject, kind and source it shares with others. */
export type Draft<C extends FindingCode> = Details & (C extends FactsCode ? Facts<C> : NoFacts<C>);

export type FindingKind = (Raised | Warned)["kind"];

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

/** An answer, with what there is to say of it. */
export function succeed<T>(value: T, findings: readonly Finding[] = NO_FINDINGS): Success<T> {
  return { ok: true, value, findings };
}

/** No answer, and the errors that say why. */
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

/** In the order in which findings are read. */
export const FINDING_KINDS = ["error", "safety", "limit", "check", "assumed"] as const;

/** Each finding once, what someone must act on first. */
export function gravestFirst(findings: readonly Finding[]): readonly Finding[] {
  return [...withoutRepeats(findings)].sort((a, b) => gravity(a) - gravity(b));
}

function gravity({ kind }: Finding): number {
  return FINDING_KINDS.indexOf(kind);
}

/** Each finding once: the same said twice helps nobody. */
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
