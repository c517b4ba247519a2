import type { UnitSetName } from "../../src/basis/quantities.ts";
import { NAMESPACE } from "../catalogue/namespace.ts";
import type { Call, Expression } from "./expression.ts";
import { entryOf, withUnits } from "./work-out.ts";

/** Where the cells of a plan stand: keyed cells, ranges of line tables, and their worked columns. */
export interface Addresses {
  readonly cell: (key: string) => string;
  readonly range: (table: string) => string;
  readonly column: (table: string, column: string) => string;
}

/** An expression as formula text, without the leading "=". */
export function formulaOf(expression: Expression, at: Addresses, units: UnitSetName): string {
  const write = (part: Expression): string => formulaOf(part, at, units);
  switch (expression.op) {
    case "value":
      return at.cell(expression.key);
    case "range":
      return at.range(expression.key);
    case "constant":
      return literal(expression.value);
    case "call":
      return callText(expression);
    case "notes":
      return notesText(expression.of);
    case "sum":
      return expression.terms.map(write).join("+");
    case "product":
      return expression.terms.map((term) => bracketed(term, write)).join("*");
    case "difference":
      return `${write(expression.of)}-${bracketed(expression.by, write)}`;
    case "ratio":
      return `${bracketed(expression.of, write)}/${bracketed(expression.by, write, true)}`;
    case "columnSum":
      return `SUM(${at.column(expression.key, expression.column)})`;
    case "verdict":
      return `IF(${write(expression.left)}>=${write(expression.right)},${literal(expression.atLeast)},${literal(expression.less)})`;
  }

  function argumentTexts({ id, args }: Call): readonly string[] {
    const given = args.map((arg) => (arg === null ? null : write(arg)));
    return withUnits(entryOf(id), given, literal(units)).map((arg) => arg ?? "");
  }

  function callText(of: Call): string {
    return `${NAMESPACE}.${of.id}(${argumentTexts(of).join(",")})`;
  }

  function notesText(of: Call): string {
    return `${NAMESPACE}.NOTES(${[literal(of.id), ...argumentTexts(of)].join(",")})`;
  }
}

function literal(value: number | string): string {
  return typeof value === "number" ? String(value) : `"${value.replaceAll('"', '""')}"`;
}

/** Brackets round what binds less tightly than multiplication. */
function bracketed(part: Expression, write: (part: Expression) => string, divisor = false): string {
  const loose =
    part.op === "sum" || part.op === "difference" || (divisor && (part.op === "product" || part.op === "ratio"));
  return loose ? `(${write(part)})` : write(part);
}
