import type { Citation } from "../../src/basis/citation.ts";
import type { Quantity, UnitSetName } from "../../src/basis/quantities.ts";
import type { Result } from "../../src/basis/result.ts";
import type { Argument, Scalar } from "../cells/cell.ts";
import type { Parameter } from "./parameter.ts";

export const GROUPS = [
  "Liquid and site",
  "Pipe and friction",
  "System and suction",
  "Pump",
  "Slurry",
  "Pressure and flanges",
  "Drive",
  "Priming",
  "Materials",
  "Estimate",
  "Verdicts",
  "Lists",
] as const;
export type Group = (typeof GROUPS)[number];

/** A column of a spilled answer. Without a quantity its numbers are passed on as they are. */
export interface Column {
  readonly name: string;
  readonly quantity?: Quantity;
  /** Its texts are titles of works, which keep the spelling of their publishers. */
  readonly isTitle?: true;
}

/** What the column is, by which rows and readers of the answer name it. */
export interface KeyedColumn<K extends string = string> extends Column {
  readonly key: K;
}

/** A row of a table or record by the keys of its columns, in engine units; undefined or null leaves a cell empty. */
export type Row<K extends string> = { readonly [C in K]: Scalar | undefined };

type OneValue =
  | { readonly kind: "quantity"; readonly name: string; readonly quantity: Quantity }
  | { readonly kind: "number"; readonly name: string }
  | { readonly kind: "text"; readonly name: string }
  /** A number already in the reader's unit, or a text, as the table asked for holds it. */
  | { readonly kind: "figure"; readonly name: string };

/** A table spills a header row and the rows; a record, one answer in several parts, two rows, names over values. */
interface Spilled<C> {
  readonly kind: "table" | "record";
  readonly name: string;
  readonly columns: C;
}

export type Answer = OneValue | Spilled<readonly KeyedColumn[]>;

/** An answer as an entry states it: key order is column order. */
type StatedAnswer = OneValue | Spilled<Readonly<Record<string, Column>>>;

type AnswerOf<A extends StatedAnswer> =
  A extends Spilled<infer C> ? Spilled<readonly KeyedColumn<keyof C & string>[]> & { readonly kind: A["kind"] } : A;

type ValueOf<A extends StatedAnswer> =
  A extends Spilled<infer C>
    ? A["kind"] extends "table"
      ? readonly Row<keyof C & string>[]
      : Row<keyof C & string>
    : A["kind"] extends "quantity" | "number"
      ? number
      : A["kind"] extends "text"
        ? string
        : number | string;

/**
 * A call with a known answer, shown on the help page and run by the tests. `part` picks a cell of a spilled
 * answer (0-based row and column, header row counted). The answer comes from the source, not from this product.
 */
export interface Example {
  readonly args: readonly Argument[];
  readonly part?: readonly [row: number, column: number];
  readonly answer: number | string;
  /** Greatest difference, in the unit shown. Texts must be equal. */
  readonly within?: number;
  /** Where the answer comes from, in words. */
  readonly source: string;
}

/** Facts of the call a function may need beside its arguments. */
export interface CallFacts {
  readonly unitSet: UnitSetName;
  /** What stands in the place of a repeating parameter, as the cell hands it over; empty everywhere else. */
  readonly rest: readonly Argument[];
}

type NamedParameters = Readonly<Record<string, Parameter<unknown>>>;

type ValuesOf<P extends NamedParameters> = {
  readonly [K in keyof P]: P[K] extends Parameter<infer T> ? T : never;
};

/** One cell function: everything any surface needs to know of it. */
export interface Entry {
  /** Upper-case name after "DUTY.". Never changes once released; nor does the order of the parameters. */
  readonly id: string;
  readonly group: Group;
  /** One sentence without full stop: what comes out. */
  readonly summary: string;
  /** How it is worked out and what is assumed; plain sentences for the help page. */
  readonly method: string;
  readonly cites: readonly [Citation, ...Citation[]];
  /** In the order of the arguments, without `units`. */
  readonly parameters: readonly (readonly [key: string, parameter: Parameter<unknown>])[];
  /** How many of them stand before `units`: all, but for those that came later. */
  readonly unitsAt: number;
  /** No argument or answer has a unit, so there is no `units` argument. */
  readonly unitless: boolean;
  /** The last parameter may be repeated (NOTES): it is not read, its arguments reach `run` in `rest`. */
  readonly repeating: boolean;
  readonly answer: Answer;
  readonly examples: readonly [Example, ...Example[]];
  /** Takes values in engine units by parameter key. The object is reused from row to row: read it, do not keep it. */
  readonly run: (values: Readonly<Record<string, unknown>>, facts: CallFacts) => Result<unknown>;
}

/** An entry that keeps its name, the keys of its parameters and those of its answer's columns. */
export interface TypedEntry<Id extends string, P extends NamedParameters, A extends StatedAnswer>
  extends Omit<Entry, "parameters" | "answer"> {
  readonly id: Id;
  readonly parameters: readonly { [K in keyof P & string]: readonly [key: K, parameter: P[K]] }[keyof P & string][];
  readonly answer: AnswerOf<A>;
}

type KeyOf<E extends Entry> = E["parameters"][number][0];

type OptionalKeyOf<Slot> = Slot extends readonly [infer K, { readonly whenLeftOut: string }] ? K : never;

/** An X for each argument of a function, by key; those that have a default may be left out. */
export type ArgumentsOf<E extends Entry, X> = {
  readonly [K in Exclude<KeyOf<E>, OptionalKeyOf<E["parameters"][number]>>]: X;
} & { readonly [K in OptionalKeyOf<E["parameters"][number]> & string]?: X };

/** The keys of the columns that a function spills. */
export type ColumnKeyOf<E extends Entry> = E["answer"] extends Spilled<readonly KeyedColumn<infer K>[]> ? K : never;

interface EntrySpec<Id extends string, P extends NamedParameters, A extends StatedAnswer> {
  readonly id: Id;
  readonly group: Group;
  readonly summary: string;
  readonly method: string;
  readonly cites: readonly [Citation, ...Citation[]];
  readonly parameters: P;
  /** The first parameter that was added after `units`, which keeps its place; each of these may be left out. */
  readonly unitsBefore?: keyof P & string;
  readonly unitless?: boolean;
  readonly repeating?: boolean;
  readonly answer: A;
  readonly examples: readonly [Example, ...Example[]];
  readonly run: (values: ValuesOf<P>, facts: CallFacts) => Result<ValueOf<A>>;
}

/** Binds an engine function to its place in the spreadsheet. Key order is argument order. */
export function defineEntry<const Id extends string, const P extends NamedParameters, const A extends StatedAnswer>({
  parameters,
  unitsBefore,
  unitless = false,
  repeating = false,
  answer,
  run,
  ...facts
}: EntrySpec<Id, P, A>): TypedEntry<Id, P, A> {
  const keys = Object.keys(parameters);
  return {
    ...facts,
    parameters: Object.entries(parameters) as unknown as TypedEntry<Id, P, A>["parameters"],
    unitsAt: unitsBefore === undefined ? keys.length : keys.indexOf(unitsBefore),
    unitless,
    repeating,
    answer: ("columns" in answer ? { ...answer, columns: keyed(answer.columns) } : answer) as AnswerOf<A>,
    run: run as Entry["run"],
  };
}

function keyed(columns: Readonly<Record<string, Column>>): readonly KeyedColumn[] {
  return Object.entries(columns).map(([key, column]) => ({ key, ...column }));
}

/** What stands for each parameter of a function, with what stands for `units` in its place among them. */
export function withUnits<T>({ unitless, unitsAt }: Entry, own: readonly T[], units: T): readonly T[] {
  return unitless ? own : [...own.slice(0, unitsAt), units, ...own.slice(unitsAt)];
}

/** The arguments of a call without `units`: one for each parameter, as far as they were given. */
export function withoutUnits<T>({ unitless, unitsAt }: Entry, args: readonly T[]): readonly T[] {
  return unitless ? args : [...args.slice(0, unitsAt), ...args.slice(unitsAt + 1)];
}

/** How many arguments a function takes, `units` among them. */
export function argumentCount({ parameters, unitless }: Entry): number {
  return parameters.length + (unitless ? 0 : 1);
}

/** "staticHead" as people read it: "static head". A symbol stays as it is: "C", "pH". */
export function parameterName(key: string): string {
  if (key.length === 1 || key === "pH") return key;
  return key
    .replace(/[A-Z]+(?![a-z])|[A-Z]/g, (letters) => (letters.length > 1 ? ` ${letters}` : ` ${letters.toLowerCase()}`))
    .trim();
}
