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
  "Lists",
] as const;
export type Group = (typeof GROUPS)[number];

/** A column of a spilled answer. Without a quantity its numbers are passed on as they are. */
export interface Column {
  readonly name: string;
  readonly quantity?: Quantity;
}

/** Engine-unit rows of a table or record; null leaves a cell empty. */
export type Row = readonly Scalar[];

export type Answer =
  | { readonly kind: "quantity"; readonly name: string; readonly quantity: Quantity }
  | { readonly kind: "number"; readonly name: string }
  | { readonly kind: "text"; readonly name: string }
  /** A number already in the reader's unit, or a text, as the table asked for holds it. */
  | { readonly kind: "figure"; readonly name: string }
  /** Spills a header row and the rows. */
  | { readonly kind: "table"; readonly name: string; readonly columns: readonly Column[] }
  /** One answer in several parts: spills two rows, names over values. */
  | { readonly kind: "record"; readonly name: string; readonly columns: readonly Column[] };

type ValueOf<A extends Answer> = A["kind"] extends "quantity" | "number"
  ? number
  : A["kind"] extends "text"
    ? string
    : A["kind"] extends "figure"
      ? number | string
      : A["kind"] extends "table"
        ? readonly Row[]
        : Row;

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

type ValuesOf<P extends Readonly<Record<string, Parameter<unknown>>>> = {
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
  /** In the order of the arguments. `units` comes after them, unless `unitless`. */
  readonly parameters: readonly (readonly [key: string, parameter: Parameter<unknown>])[];
  /** No argument or answer has a unit, so there is no `units` argument. */
  readonly unitless: boolean;
  /** The last parameter may be repeated (NOTES): it is not read, its arguments reach `run` in `rest`. */
  readonly repeating: boolean;
  readonly answer: Answer;
  readonly examples: readonly [Example, ...Example[]];
  /** Takes values in engine units by parameter key. The object is reused from row to row: read it, do not keep it. */
  readonly run: (values: Readonly<Record<string, unknown>>, facts: CallFacts) => Result<unknown>;
}

interface EntrySpec<P extends Readonly<Record<string, Parameter<unknown>>>, A extends Answer> {
  readonly id: string;
  readonly group: Group;
  readonly summary: string;
  readonly method: string;
  readonly cites: readonly [Citation, ...Citation[]];
  readonly parameters: P;
  readonly unitless?: true;
  readonly repeating?: true;
  readonly answer: A;
  readonly examples: readonly [Example, ...Example[]];
  readonly run: (values: ValuesOf<P>, facts: CallFacts) => Result<ValueOf<A>>;
}

/** Binds an engine function to its place in the spreadsheet. Key order is argument order. */
export function defineEntry<const P extends Readonly<Record<string, Parameter<unknown>>>, const A extends Answer>(
  spec: EntrySpec<P, A>,
): Entry {
  const { parameters, unitless, repeating, run, ...facts } = spec;
  return {
    ...facts,
    parameters: Object.entries(parameters),
    unitless: unitless ?? false,
    repeating: repeating ?? false,
    run: run as Entry["run"],
  };
}

/** "staticHead" as people read it: "static head". A symbol stays as it is: "C", "pH". */
export function parameterName(key: string): string {
  if (key.length === 1 || key === "pH") return key;
  return key
    .replace(/[A-Z]+(?![a-z])|[A-Z]/g, (letters) => (letters.length > 1 ? ` ${letters}` : ` ${letters.toLowerCase()}`))
    .trim();
}
