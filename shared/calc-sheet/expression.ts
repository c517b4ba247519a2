import type { Quantity } from "../../src/basis/quantities.ts";
import type { ArgumentsOf, ColumnKeyOf, Entry } from "../catalogue/entry.ts";
import type { Cell } from "../cells/cell.ts";

/** A cell of the plan that others read: declared once, filled by one item, never named by a text again. */
export interface Handle<K extends string = string> {
  readonly op: "value";
  readonly key: K;
  /** Absent for texts and plain numbers. */
  readonly quantity?: Quantity;
  /** A box of the duty: where it is blank it has no cell, and a call leaves the argument out. */
  readonly isField?: true;
  /** A cell of a table: where in it. */
  readonly place?: { readonly table: string; readonly row: number; readonly column: string };
}

/** A table whose columns are known by their keys. */
export interface TableOf<C extends string = string> {
  readonly key: string;
  readonly columns: readonly { readonly key: C; readonly quantity?: Quantity }[];
}

export type ColumnOf<T> = T extends TableOf<infer C> ? C : never;

/**
 * What a worked cell of a plan says: a call of a catalogue function, or one of a few plain operations that every
 * spreadsheet has. Keys name other cells of the plan. The same expression is worked out in memory for the pane and
 * written as a formula for the sheet, so the two cannot differ.
 */
export type Expression =
  | Handle
  /** A table as one range: the input columns of a line, a whole table of inputs with its headings. */
  | { readonly op: "range"; readonly key: string }
  | { readonly op: "constant"; readonly value: number | string }
  /** An input in a printed table: it stands as it was stated, an error where it cannot be read. */
  | { readonly op: "stated"; readonly value: Cell }
  | Call
  /** The findings of a call, as text. */
  | { readonly op: "notes"; readonly of: Call }
  | { readonly op: "sum" | "product"; readonly terms: readonly Expression[] }
  | { readonly op: "difference" | "ratio"; readonly of: Expression; readonly by: Expression }
  | { readonly op: "least" | "greatest"; readonly terms: readonly Expression[] }
  /** The sum of one worked column of a table. */
  | { readonly op: "columnSum"; readonly key: string; readonly column: string }
  /** The least or greatest of a column of numbers, or a text where any of its cells holds none, or where all do. */
  | {
      readonly op: "columnLeast" | "columnGreatest";
      readonly key: string;
      readonly column: string;
      readonly otherwise: string;
      readonly ofAny?: true;
    }
  /** One column of a table as a range. */
  | { readonly op: "column"; readonly key: string; readonly column: string }
  /** One cell of a spilled record or table, by its place and row under the headings; its error where there is none. */
  | {
      readonly op: "part";
      readonly key: string;
      readonly place: number;
      readonly row: number;
      readonly quantity?: Quantity;
    }
  /** A number to so many decimals: the trace that adding and taking away leave in the last digits is gone. */
  | { readonly op: "toDecimals"; readonly of: Expression; readonly decimals: number }
  /** Texts and numbers one after another, numbers with a decimal point whatever the country. */
  | { readonly op: "join"; readonly terms: readonly Expression[] }
  /** A number to so many decimals, for a sentence; what is no number as it stands. */
  | { readonly op: "rounded"; readonly of: Expression; readonly decimals: number }
  /** The text before a mark, whole where it does not hold it; upper and lower case alike. */
  | { readonly op: "before"; readonly text: Expression; readonly mark: string }
  /** The text without as many of its first letters; nothing where it has no more. */
  | { readonly op: "withoutFirst"; readonly text: Expression; readonly letters: number }
  /** `met` where `left` is at least `right`. */
  | {
      readonly op: "atLeast";
      readonly left: Expression;
      readonly right: Expression;
      readonly met: Expression;
      readonly otherwise: Expression;
    }
  /** `met` where a cell holds a number, `otherwise` where it holds none; an error stays an error. */
  | { readonly op: "ifNumber"; readonly of: Expression; readonly met: Expression; readonly otherwise: Expression }
  /** What a function answers, or a text where it has no answer although `given`, what it was asked of, stands. */
  | { readonly op: "orElse"; readonly of: Expression; readonly given: Expression; readonly otherwise: string }
  /** For a judgement alone, which must say of an error that there is no figure: the text in its place. */
  | { readonly op: "ifError"; readonly of: Expression; readonly otherwise: string; readonly namesBox?: false }
  /** `met` where a cell holds this text, in upper or lower case. */
  | {
      readonly op: "ifText";
      readonly of: Expression;
      readonly is: string;
      readonly met: Expression;
      readonly otherwise: Expression;
    };

export interface Call {
  readonly op: "call";
  readonly entry: Entry;
  /** In argument order, `units` not among them; null leaves an argument out. */
  readonly args: readonly (Expression | null)[];
}

/** Declares cells by what they are measured in: null for texts and plain numbers. */
export function handles<const S extends Readonly<Record<string, Quantity | null>>>(
  facts: S,
): { readonly [K in keyof S & string]: Handle<K> } {
  const made = Object.entries(facts).map(([key, quantity]) => [key, handle(key, quantity)]);
  return Object.fromEntries(made) as { readonly [K in keyof S & string]: Handle<K> };
}

export function handle<const K extends string>(key: K, quantity: Quantity | null): Handle<K> {
  return { op: "value", key, ...(quantity === null ? {} : { quantity }) };
}

/** Declares a table by its columns and what they are measured in: null for texts and plain numbers. */
export function tableOf<const S extends Readonly<Record<string, Quantity | null>>>(
  key: string,
  columns: S,
): TableOf<keyof S & string> {
  const declared = Object.entries(columns).map(([of, quantity]) => ({ key: of, ...(quantity && { quantity }) }));
  return { key, columns: declared as unknown as TableOf<keyof S & string>["columns"] };
}

/** Key of one cell of a table: "suctionLine.0.velocity". */
export function tableCell(table: string, row: number, column: string): string {
  return `${table}.${row}.${column}`;
}

/** One cell of a table, rows counted from 0 under the headings. */
export function cell<C extends string>(table: TableOf<C>, row: number, column: NoInfer<C>): Handle {
  const quantity = table.columns.find(({ key }) => key === column)?.quantity;
  if (quantity === undefined) return cellOf(table.key, row, column);
  const place = { table: table.key, row, column };
  return { op: "value", key: tableCell(table.key, row, column), quantity, place };
}

/** The same by the keys of table and column alone. */
export function cellOf(table: string, row: number, column: string): Handle {
  return { op: "value", key: tableCell(table, row, column), place: { table, row, column } };
}

export function range({ key }: { readonly key: string }): Expression {
  return { op: "range", key };
}

export function constant(of: number | string): Expression {
  return { op: "constant", value: of };
}

/** An argument that is another argument's own cell stands in the wrong place; one the function has not is misspelt. */
type InPlace<A, P> = {
  readonly [K in keyof A]: K extends keyof P
    ? A[K] extends Handle<infer N>
      ? N extends Exclude<keyof P, K>
        ? { readonly [W in N & string as `${W} is another argument`]: never }
        : A[K]
      : A[K]
    : never;
};

/** A call of a catalogue function, its arguments by name. */
export function callOf<E extends Entry, const A extends ArgumentsOf<E, Expression>>(
  entry: E,
  args: A & InPlace<A, ArgumentsOf<E, Expression>>,
): Call {
  const given = args as Readonly<Record<string, Expression | undefined>>;
  return { op: "call", entry, args: entry.parameters.map(([key]) => given[key] ?? null) };
}

/** A share that the plan holds in percent: as a bare number a function would read one up to 1 as a fraction. */
export function wantsSign({ entry }: Call, place: number, arg: Expression): boolean {
  return entry.parameters[place]?.[1].quantity === "percent" && "quantity" in arg && arg.quantity === "percent";
}

/** The place of a function's spilled answer: a table whose columns are those of the answer. */
export function spillOf<E extends Entry>(key: string, entry: E): TableOf<ColumnKeyOf<E>> {
  const { answer }: Entry = entry;
  return { key, columns: ("columns" in answer ? answer.columns : []) as unknown as TableOf<ColumnKeyOf<E>>["columns"] };
}

export function sum(...terms: readonly Expression[]): Expression {
  return { op: "sum", terms };
}

export function product(...terms: readonly Expression[]): Expression {
  return { op: "product", terms };
}

export function difference(of: Expression, by: Expression): Expression {
  return { op: "difference", of, by };
}

export function ratio(of: Expression, by: Expression): Expression {
  return { op: "ratio", of, by };
}

/** A figure of a spilled record or table; its error where there is none. */
export function part<C extends string>({ key, columns }: TableOf<C>, of: NoInfer<C>, row = 0): Expression {
  const place = columns.findIndex((one) => one.key === of);
  const quantity = columns[place]?.quantity;
  return quantity === undefined ? { op: "part", key, place, row } : { op: "part", key, place, row, quantity };
}

export function column<C extends string>({ key }: TableOf<C>, of: NoInfer<C>): Extract<Expression, { op: "column" }> {
  return { op: "column", key, column: of };
}

export function columnSum<C extends string>({ key }: TableOf<C>, of: NoInfer<C>): Expression {
  return { op: "columnSum", key, column: of };
}

/** The least or greatest of a column, or a text where any of its cells holds no number. */
export function extreme<C extends string>(
  op: "columnLeast" | "columnGreatest",
  { key }: TableOf<C>,
  of: NoInfer<C>,
  otherwise: string,
): Expression {
  return { op, key, column: of, otherwise };
}

/** The least or greatest of the numbers in a column; a text where it has none. */
export function extremeOfAny<C extends string>(
  op: "columnLeast" | "columnGreatest",
  { key }: TableOf<C>,
  of: NoInfer<C>,
): Expression {
  return { op, key, column: of, otherwise: "", ofAny: true };
}

/** A sum held against its total: 0 where they agree. Beyond a millionth it is no trace of rounding. */
export function heldAgainst(all: Expression, total: Expression): Expression {
  return { op: "toDecimals", of: difference(all, total), decimals: 6 };
}

export function least(...terms: readonly Expression[]): Expression {
  return { op: "least", terms };
}

/** A cell in per cent as a share. */
export function asShare(percent: Expression): Expression {
  return ratio(percent, constant(100));
}

/** 1 and a cell in per cent over it, or under it. */
export function over(percent: Expression): Expression {
  return sum(constant(1), asShare(percent));
}

export function under(percent: Expression): Expression {
  return difference(constant(1), asShare(percent));
}

export function greatest(...terms: readonly Expression[]): Expression {
  return { op: "greatest", terms };
}

export function rounded(of: Expression, decimals: number): Expression {
  return { op: "rounded", of, decimals };
}

export function join(...terms: readonly Expression[]): Expression {
  return { op: "join", terms };
}

/** `met` where a cell holds this text, in upper or lower case. */
export function ifText(of: Expression, is: string, met: Expression, otherwise: Expression): Expression {
  return { op: "ifText", of, is, met, otherwise };
}

/** `met` where `left` is at least `right`. */
export function ifAtLeast(left: Expression, right: Expression, met: Expression, otherwise: Expression): Expression {
  return { op: "atLeast", left, right, met, otherwise };
}

/** One text where `left` is at least `right`, another where it is less. */
export function verdict(left: Expression, right: Expression, atLeast: string, less: string): Expression {
  return ifAtLeast(left, right, constant(atLeast), constant(less));
}

/** What follows from a number, or what stands in its place where a cell holds a text or nothing. An error stays that error. */
export function ifNumber(of: Expression, met: Expression, otherwise: string | number | Expression): Expression {
  return { op: "ifNumber", of, met, otherwise: typeof otherwise === "object" ? otherwise : constant(otherwise) };
}

/**
 * For a function that has no figure for what it was rightly asked (a property no specification states): the text says so.
 * What was asked stays an error where it is one.
 */
export function orElse(of: Expression, given: Expression, otherwise: string): Expression {
  return { op: "orElse", of, given, otherwise };
}

/** For a judgement alone: what stands in the place of an error, which is then said to be no figure. */
export function ifError(of: Expression, otherwise: string): Expression {
  return { op: "ifError", of, otherwise };
}

/** The expressions an expression is made of. */
export function partsOf(expression: Expression): readonly Expression[] {
  switch (expression.op) {
    case "value":
    case "range":
    case "constant":
    case "stated":
    case "columnSum":
    case "columnLeast":
    case "columnGreatest":
    case "column":
    case "part":
      return [];
    case "call":
      return expression.args.filter((arg) => arg !== null);
    case "notes":
      return [expression.of];
    case "sum":
    case "product":
    case "least":
    case "greatest":
    case "join":
      return expression.terms;
    case "difference":
    case "ratio":
      return [expression.of, expression.by];
    case "before":
    case "withoutFirst":
      return [expression.text];
    case "ifError":
    case "rounded":
    case "toDecimals":
      return [expression.of];
    case "orElse":
      return [expression.of, expression.given];
    case "atLeast":
      return [expression.left, expression.right, expression.met, expression.otherwise];
    case "ifNumber":
    case "ifText":
      return [expression.of, expression.met, expression.otherwise];
  }
}
