/**
 * What a worked cell of a plan says: a call of a catalogue function, or one of a few plain operations that every
 * spreadsheet has. Keys name other cells of the plan. The same expression is worked out in memory for the pane and
 * written as a formula for the sheet, so the two cannot differ.
 */
export type Expression =
  | { readonly op: "value"; readonly key: string }
  /** The input columns of a line table, as one range. */
  | { readonly op: "range"; readonly key: string }
  | { readonly op: "constant"; readonly value: number | string }
  | Call
  /** The findings of a call, as text. */
  | { readonly op: "notes"; readonly of: Call }
  | { readonly op: "sum" | "product"; readonly terms: readonly Expression[] }
  | { readonly op: "difference" | "ratio"; readonly of: Expression; readonly by: Expression }
  /** The sum of one worked column of a line table. */
  | { readonly op: "columnSum"; readonly key: string; readonly column: string }
  /** One text where `left` is at least `right`, another where it is less. */
  | {
      readonly op: "verdict";
      readonly left: Expression;
      readonly right: Expression;
      readonly atLeast: string;
      readonly less: string;
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

/** The expressions an expression is made of. */
export function partsOf(expression: Expression): readonly Expression[] {
  switch (expression.op) {
    case "value":
    case "range":
    case "constant":
    case "columnSum":
      return [];
    case "call":
      return expression.args.filter((arg) => arg !== null);
    case "notes":
      return [expression.of];
    case "sum":
    case "product":
      return expression.terms;
    case "difference":
    case "ratio":
      return [expression.of, expression.by];
    case "verdict":
      return [expression.left, expression.right];
  }
}
