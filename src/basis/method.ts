import type { Citation } from "./citation.ts";
import type { Quantity } from "./quantities.ts";
import { type Finding, fail, type Result, type Side, succeed } from "./result.ts";

/** One input of a method: what it is, what it is measured in, and where the method holds. Bounds in engine units. */
export interface Input {
  readonly name: string;
  readonly symbol?: string;
  readonly quantity: Quantity;
  readonly above?: number;
  readonly atLeast?: number;
  readonly atMost?: number;
  readonly below?: number;
  /** A count: a whole number alone will do. */
  readonly isWhole?: true;
  /** Outside this range the value is computed, with a caution (or a warning, where a rule is cited). */
  readonly usual?: { readonly atLeast?: number; readonly atMost?: number; readonly cites?: Citation };
}

/** The facts of a method that hold with or without a spreadsheet. */
export interface Method<K extends string> {
  readonly cites: readonly [Citation, ...Citation[]];
  readonly inputs: Readonly<Record<K, Input>>;
}

const NONE: readonly Finding[] = Object.freeze([]);

interface KeyedInput {
  readonly key: string;
  readonly input: Input;
}

const inputLists = new WeakMap<object, readonly KeyedInput[]>();

function inputsOf<K extends string>(method: Method<K>): readonly KeyedInput[] {
  let list = inputLists.get(method);
  if (list === undefined) {
    list = Object.entries<Input>(method.inputs).map(([key, input]) => ({ key, input }));
    inputLists.set(method, list);
  }
  return list;
}

/**
 * Holds each input against the bounds the method declares.
 * Fails: not-a-number, out-of-range, not-a-whole-number: every error there is.
 * Warns: outside-usual-range; a warning where the range cites a rule.
 */
export function checkInputs<K extends string>(
  method: Method<K>,
  values: Readonly<Record<NoInfer<K>, number>>,
): Result<null> {
  let errors: Finding[] | undefined;
  let remarks: Finding[] | undefined;
  for (const { key, input } of inputsOf(method)) {
    const value = values[key as K];
    const error = errorOf(input, value);
    if (error !== undefined) {
      errors ??= [];
      errors.push(error);
    } else if (input.usual !== undefined) {
      const remark = remarkOn(input, value);
      if (remark !== undefined) {
        remarks ??= [];
        remarks.push(remark);
      }
    }
  }
  if (errors !== undefined) return fail(errors);
  return succeed(null, remarks ?? NONE);
}

/** What is wrong with a value, held against the bounds of its input: not-a-number, out-of-range, not-a-whole-number or nothing. */
export function errorOf(
  { name, quantity, above, atLeast, atMost, below, isWhole }: Input,
  value: number,
): Finding | undefined {
  if (!Number.isFinite(value)) return { code: "not-a-number", kind: "error", subject: name };
  if (above !== undefined && value <= above) return outOfRange(name, quantity, value, "above", above);
  if (atLeast !== undefined && value < atLeast) return outOfRange(name, quantity, value, "at least", atLeast);
  if (atMost !== undefined && value > atMost) return outOfRange(name, quantity, value, "at most", atMost);
  if (below !== undefined && value >= below) return outOfRange(name, quantity, value, "below", below);
  if (isWhole && !Number.isInteger(value)) {
    return { code: "not-a-whole-number", kind: "error", subject: name, found: { quantity, value } };
  }
  return undefined;
}

/** The error of a value beyond a limit, both in the engine's unit of their quantity. */
export function outOfRange(subject: string, quantity: Quantity, value: number, side: Side, limit: number): Finding {
  const found = { quantity, value };
  return { code: "out-of-range", kind: "error", subject, found, limit: { quantity, value: limit, side } };
}

function remarkOn(input: Input, value: number): Finding | undefined {
  const { usual, quantity, name } = input;
  const tooLow = usual?.atLeast !== undefined && value < usual.atLeast;
  const tooHigh = usual?.atMost !== undefined && value > usual.atMost;
  if (usual === undefined || (!tooLow && !tooHigh)) return undefined;
  const side: Side = tooLow ? "at least" : "at most";
  const limit = { quantity, value: (tooLow ? usual.atLeast : usual.atMost) as number, side };
  const base = { code: "outside-usual-range", subject: name, found: { quantity, value }, limit } as const;
  return usual.cites === undefined ? { ...base, kind: "check" } : { ...base, kind: "limit", cites: usual.cites };
}
