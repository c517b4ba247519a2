import { errorOf, type Input } from "../../src/basis/method.ts";
import type { Quantity, UnitSetName } from "../../src/basis/quantities.ts";
import { andThen, fail, type Result, succeed } from "../../src/basis/result.ts";
import { inBritish } from "../../src/basis/spelling.ts";
import { readShort } from "../cells/long-text.ts";
import { bareNumber, readAmount } from "./read-amount.ts";

/** Where the value of a box must lie, in the engine's unit. An input of a method will do. */
export type Bounds = Pick<Input, "above" | "atLeast" | "atMost" | "below">;

/** The field has a use only where another one holds this choice; else the words say why not. */
export interface Condition {
  readonly field: string;
  readonly is: string;
  readonly otherwise: string;
}

interface Options {
  readonly label: string;
  readonly help: string;
  readonly required?: true;
  /** Few duties state it: the pane has it under “More”. */
  readonly isSeldom?: true;
  readonly shownIf?: Condition;
  /** Where what a blank box stands for comes from, a sentence: the sheet says it beside what the box does. */
  readonly usual?: string;
}

/**
 * The same text for a reader of another unit set, where it means something else there without being an amount: a bare
 * flange size is NPS in US units and DN otherwise.
 */
type InUnitSet = (text: string, from: UnitSetName, to: UnitSetName) => string;

/** What a box of the duty is: label, words of help, and how the text in it is read. */
export interface Field<T = unknown> extends Options {
  readonly kind: "amount" | "name" | "text";
  /** Absent where it is no amount that a unit set reads in its own unit. */
  readonly quantity?: Quantity;
  readonly bounds?: Bounds;
  readonly inUnitSet?: InUnitSet;
  /** Known names to choose from; what else may be typed, the help says. */
  readonly choices?: readonly string[];
  /** Nothing but its choices may stand in it. */
  readonly takesNoOther?: true;
  /** A text of several lines. */
  readonly isLong?: true;
  /** What a blank box stands for, in the engine's unit or as it would be typed; the sheet says it was assumed. */
  readonly whenBlank?: number | string;
  /** Reads what is typed, which is not blank; findings call it by the subject. */
  readonly read: (text: string, unitSet: UnitSetName, subject: string) => Result<T>;
}

export type ValueOf<F> = F extends Field<infer T> ? T : never;

interface AmountOptions extends Options {
  readonly quantity: Quantity;
  readonly bounds: Bounds;
  readonly whenBlank?: number;
  readonly isWhole?: true;
}

export type AmountField = Field<number> & Pick<AmountOptions, "quantity" | "bounds">;

/** An amount: a plain number in the unit set, or a number with its own unit. Held against its bounds. */
export function amount({ isWhole, ...options }: AmountOptions): AmountField {
  const { quantity, bounds } = options;
  return {
    ...options,
    kind: "amount",
    read: (text, unitSet, subject) =>
      andThen(readAmount(text, quantity, unitSet, subject), (value) =>
        isWhole && !Number.isInteger(value)
          ? fail([{ code: "not-a-whole-number", kind: "error", subject, found: { quantity, value } }])
          : within(bounds, quantity, value, subject),
      ),
  };
}

/** A share in per cent. A bare number between 0 and 1 may stand for a fraction and is refused; with % it is read as it is. */
export function percent(options: Omit<AmountOptions, "quantity">): AmountField {
  const field = amount({ ...options, quantity: "percent" });
  return {
    ...field,
    read: (text, unitSet, subject) => {
      const bare = bareNumber(text);
      if (bare === undefined || bare <= 0 || bare >= 1) return field.read(text, unitSet, subject);
      const suggestions = [String(Number((bare * 100).toPrecision(6))), `“${bare} %”`];
      return fail([{ code: "percent-as-fraction", kind: "error", subject, given: String(bare), suggestions }]);
    },
  };
}

/** One of a few names, in their own spelling; `also` are other words of the trade for them, in lower case. */
export function oneOf<C extends string>(
  choices: readonly C[],
  { also = {}, ...options }: Options & { readonly whenBlank?: C; readonly also?: Readonly<Record<string, C>> },
): Field<C> {
  return {
    ...options,
    kind: "name",
    choices,
    takesNoOther: true,
    read: (given, _, subject) => {
      const wanted = inBritish(given.toLowerCase());
      const found = choices.find((choice) => choice.toLowerCase() === wanted) ?? also[wanted];
      if (found !== undefined) return succeed(found);
      const suggestions = choices.map((choice) => `"${choice}"`);
      return fail([{ code: "choice-unknown", kind: "error", subject, given, suggestions }]);
    },
  };
}

type Reader<T> = (text: string, subject: string, unitSet: UnitSetName) => Result<T>;

interface NameOptions extends Options {
  readonly choices?: readonly string[];
  readonly inUnitSet?: InUnitSet;
  readonly whenBlank?: string;
}

/** What a name or description stands for. */
export function meant<T>(read: Reader<T>, options: NameOptions): Field<T> {
  return {
    ...options,
    kind: "name",
    read: (typed, unitSet, subject) => readShort(typed, subject, (text) => read(text, subject, unitSet)),
  };
}

/** A name the cell functions can read; its value is the text as typed, which goes into their cells. */
export function named(read: Reader<unknown>, options: NameOptions): Field<string> {
  return meant((text, subject, unitSet) => andThen(read(text, subject, unitSet), () => succeed(text)), options);
}

interface TextOptions extends Options {
  readonly choices?: readonly string[];
  readonly isLong?: true;
}

/** Any text; `choices` are offered, and any other words do as well. */
export function text(options: TextOptions): Field<string> {
  return { ...options, kind: "text", read: (typed) => succeed(typed) };
}

export function within(bounds: Bounds, quantity: Quantity, value: number, subject: string): Result<number> {
  const error = errorOf({ ...bounds, name: subject, quantity }, value);
  return error === undefined ? succeed(value) : fail([error]);
}
