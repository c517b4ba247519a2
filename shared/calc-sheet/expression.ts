/**
 * What a worked cell of a plan says: a call of a catalogue function, or one of a few plain operations that every
 * spreadsheet has. Keys name other cells of the plan. The same expression is worked out in memory for the pane and
 * written as a formula for the sheet, so the two cannot differ.
 */
export type Expression =
  | { readonly op: "value"; readonly key: string }
  /** A table as one range: the input columns of a line, a whole table of inputs with its headings. */
  | { readonly op: "range"; readonly key: string }
  | { readonly op: "constant"; readonly value: number | string }
  | Call
  /** The findings of a call, as text. */
  | { readonly op: "notes"; readonly of: Call }
  | { readonly op: "sum" | "product"; readonly terms: readonly Expression[] }
  | { readonly op: "difference" | "ratio"; readonly of: Expression; readonly by: Expression }
  | { readonly op: "least" | "greatest"; readonly terms: readonly Expression[] }
  /** The sum of one worked column of a table. */
  | { readonly op: "columnSum"; readonly key: string; readonly column: string }
  /** The least or greatest of a column of numbers, or a text where any of its cells holds none. */
  | {
      readonly op: "columnLeast" | "columnGreatest";
      readonly key: string;
      readonly column: string;
      readonly otherwise: string;
    }
  /** One column of a table as a range. */
  | { readonly op: "column"; readonly key: string; readonly column: string }
  /** One cell of a spilled record or table, by its place and row under the headings; its error where there is none. */
  | { readonly op: "part"; readonly key: string; readonly place: number; readonly row: number }
  /** Texts and numbers one after another, numbers with a decimal point whatever the country. */
  | { readonly op: "join"; readonly terms: readonly Expression[] }
  /** The text before a mark, whole where it does not hold it; upper and lower case alike. */
  | { readonly op: "before"; readonly text: Expression; readonly mark: string }
  /** `met` where `left` is at least `right`. */
  | {
      readonly op: "atLeast";
      readonly left: Expression;
      readonly right: Expression;
      readonly met: Expression;
      readonly otherwise: Expression;
    }
  /** `met` where a cell holds a number, not a text or an error. */
  | { readonly op: "ifNumber"; readonly of: Expression; readonly met: Expression; readonly otherwise: Expression }
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
  readonly id: string;
  /** In argument order, `units` not among them; null leaves an argument out. */
  readonly args: readonly (Expression | null)[];
}

export function value(key: string): Expression {
  return { op: "value", key };
}

export function range(key: string): Expression {
  return { op: "range", key };
}

export function constant(of: number | string): Expression {
  return { op: "constant", value: of };
}

export function callOf(id: string, ...args: readonly (Expression | null)[]): Call {
  return { op: "call", id, args };
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

export function part(key: string, place: number, row = 0): Expression {
  return { op: "part", key, place, row };
}

export function column(key: string, of: string): Expression {
  return { op: "column", key, column: of };
}

/** One text where `left` is at least `right`, another where it is less. */
export function verdict(left: Expression, right: Expression, atLeast: string, less: string): Expression {
  return { op: "atLeast", left, right, met: constant(atLeast), otherwise: constant(less) };
}

/** What follows from a number, or a text where a cell holds none. */
export function ifNumber(of: Expression, met: Expression, otherwise: string): Expression {
  return { op: "ifNumber", of, met, otherwise: constant(otherwise) };
}

/** The expressions an expression is made of. */
export function partsOf(expression: Expression): readonly Expression[] {
  switch (expression.op) {
    case "value":
    case "range":
    case "constant":
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
      return [expression.text];
    case "atLeast":
      return [expression.left, expression.right, expression.met, expression.otherwise];
    case "ifNumber":
    case "ifText":
      return [expression.of, expression.met, expression.otherwise];
  }
}
