import type { Quantity, UnitSet, UnitSetName } from "../../src/basis/quantities.ts";
import { unitsThatDo } from "../../src/basis/quantity-text.ts";
import { fail, type Result, succeed } from "../../src/basis/result.ts";
import { inBritish } from "../../src/basis/spelling.ts";
import { amountOf } from "../cells/amount-cell.ts";
import type { Cell } from "../cells/cell.ts";
import { wrongKind } from "../cells/refused-cell.ts";

/** What a parameter may look at while it reads a cell. */
export interface Reading {
  /** Name of the parameter as the reader knows it, such as "static head". */
  readonly name: string;
  readonly unitSet: UnitSetName;
  readonly units: UnitSet;
}

interface ParameterFacts {
  /** One line for the help page and the argument hint. */
  readonly about: string;
  /** Shown for a default, such as "water" or "68 °F (20 °C)". Present means the argument may be left out. */
  readonly whenLeftOut?: string;
  /** A text that would do, shown in hints. */
  readonly example: string;
  /** Set for physical quantities: help shows the unit of each unit set. Of a share it is percent. */
  readonly quantity?: Quantity;
  /** Reads more out of a number than its amount, so that a long column takes no short way past `read`. */
  readonly readsNumbers?: true;
  /** Range of good values in words, for the help page. */
  readonly range?: string;
  /** What a drop-down offers. */
  readonly choices?: readonly string[];
}

/** A parameter that reads one cell. Given a range of more than one cell, the function spills over it. */
export interface SingleParameter<T> extends ParameterFacts {
  readonly takes: "cell";
  readonly read: (cell: Cell, reading: Reading) => Result<T>;
  readonly fallback?: T;
}

/** A parameter that reads a whole range at once: a line, a route, a pump curve. A single cell is a 1 × 1 range. */
export interface RangeParameter<T> extends ParameterFacts {
  readonly takes: "range";
  /** Its texts are handed on, not searched for amounts and names: they may be as long as a cell holds. */
  readonly handsTextsOn?: true;
  readonly read: (cells: readonly (readonly Cell[])[], reading: Reading) => Result<T>;
  readonly fallback?: T;
}

/** A parameter that may be left out. */
export interface OptionalParameter<T> extends SingleParameter<T> {
  readonly whenLeftOut: string;
  readonly fallback: T;
}

export type Parameter<T> = SingleParameter<T> | RangeParameter<T>;

/** What stands in the place of an argument left out, in engine units, with how it is shown. */
export interface Default<T> {
  readonly whenLeftOut: { readonly value: T; readonly shown: string };
}

export interface QuantityOptions {
  readonly about: string;
  readonly example?: string;
  readonly range?: string;
}

/** A physical quantity: a number in the unit set, or a text with its own unit. For percent there is `share`. */
export function quantity<T extends number | null>(
  of: Exclude<Quantity, "percent">,
  options: QuantityOptions & Default<T>,
): OptionalParameter<number | T>;
export function quantity(of: Exclude<Quantity, "percent">, options: QuantityOptions): SingleParameter<number>;
export function quantity(
  of: Exclude<Quantity, "percent">,
  { about, example, range, whenLeftOut }: QuantityOptions & Partial<Default<number | null>>,
): SingleParameter<number | null> {
  return {
    takes: "cell",
    about,
    quantity: of,
    example: example ?? `a number, or a text such as "12 ${unitsThatDo(of).split(/, | or /)[0]}"`,
    ...(range === undefined ? {} : { range }),
    ...(whenLeftOut === undefined ? {} : { fallback: whenLeftOut.value, whenLeftOut: whenLeftOut.shown }),
    read: (cell, { name, units }) => amountOf(cell, of, units[of], name),
  };
}

interface TextOptions {
  readonly about: string;
  readonly example: string;
  readonly choices?: readonly string[];
}

type ReadText<T> = (text: string, name: string) => Result<T>;

/** A name or description read from one text cell. */
export function text<T>(options: TextOptions & Default<NoInfer<T>>, readText: ReadText<T>): OptionalParameter<T>;
export function text<T>(options: TextOptions, readText: ReadText<T>): SingleParameter<T>;
export function text<T>(
  { about, example, whenLeftOut, choices }: TextOptions & Partial<Default<T>>,
  readText: ReadText<T>,
): SingleParameter<T> {
  return {
    takes: "cell",
    about,
    example,
    ...(choices === undefined ? {} : { choices }),
    ...(whenLeftOut === undefined ? {} : { fallback: whenLeftOut.value, whenLeftOut: whenLeftOut.shown }),
    read: (cell, { name }) => {
      if (typeof cell === "string") return readText(cell, name);
      if (typeof cell === "number") return readText(String(cell), name);
      return wrongKind(name, cell, `a text such as ${example}`);
    },
  };
}

/** Other words of the trade for a choice, in lower case. */
export type AlsoNamed<C extends string> = Readonly<Record<string, C>>;

interface ChoiceOptions<C extends string> {
  readonly about: string;
  readonly also?: AlsoNamed<C>;
}

/** One of a few words, in upper or lower case. */
export function choice<const C extends string>(
  choices: readonly C[],
  options: ChoiceOptions<NoInfer<C>> & { readonly whenLeftOut: NoInfer<C> },
): OptionalParameter<C>;
export function choice<const C extends string>(
  choices: readonly C[],
  options: ChoiceOptions<NoInfer<C>>,
): SingleParameter<C>;
export function choice<const C extends string>(
  choices: readonly C[],
  { about, also = {}, whenLeftOut }: ChoiceOptions<C> & { readonly whenLeftOut?: C },
): SingleParameter<C> {
  const shown = choices.map((word) => `"${word}"`);
  const word = text<C>({ about, example: shown[0] ?? "", choices }, (given, name) => {
    const wanted = inBritish(given.trim().toLowerCase());
    const found =
      choices.find((word) => word.toLowerCase() === wanted) ?? (Object.hasOwn(also, wanted) ? also[wanted] : undefined);
    if (found !== undefined) return succeed(found);
    return fail([{ code: "choice-unknown", kind: "error", subject: name, given, suggestions: shown }]);
  });
  return whenLeftOut === undefined ? word : { ...word, fallback: whenLeftOut, whenLeftOut: `"${whenLeftOut}"` };
}
