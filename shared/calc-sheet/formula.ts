import type { UnitSetName } from "../../src/basis/quantities.ts";
import { isCellError } from "../cells/cell.ts";
import { NAMESPACE } from "../ports/namespace.ts";
import { callArguments } from "./evaluate.ts";
import { type Call, type Expression, wantsSign } from "./expression.ts";

/** Stands for a cell or table that a sheet does not hold. */
export const NOT_PLACED = "NA()";

/** Where the cells of a plan stand, as it is written in a formula: keyed cells and spills, ranges of tables, and their columns. */
export interface Addresses {
  readonly cell: (key: string) => string | undefined;
  readonly range: (table: string) => string;
  readonly column: (table: string, column: string) => string;
  /** The first cell of a spilled record, which alone shows its error, and one of its figures. */
  readonly part: (record: string, place: number, row: number) => { readonly first: string; readonly cell: string };
}

/** An expression as formula text, without the leading "=". */
export function formulaOf(expression: Expression, at: Addresses, units: UnitSetName): string {
  const write = (part: Expression): string => formulaOf(part, at, units);
  switch (expression.op) {
    case "value":
      return at.cell(expression.key) ?? NOT_PLACED;
    case "range":
      return at.range(expression.key);
    case "constant":
      return literal(expression.value);
    case "stated":
      return isCellError(expression.value) ? NOT_PLACED : literal(expression.value as number | string);
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
    case "toDecimals":
      return `ROUND(${write(expression.of)},${expression.decimals})`;
    case "columnSum":
      return `SUM(${at.column(expression.key, expression.column)})`;
    case "least":
      return `MIN(${expression.terms.map(write).join(",")})`;
    case "greatest":
      return `MAX(${expression.terms.map(write).join(",")})`;
    case "columnLeast":
    case "columnGreatest": {
      const cells = at.column(expression.key, expression.column);
      const name = expression.op === "columnLeast" ? "MIN" : "MAX";
      // Of a column with an error in it the answer is that error.
      const all = expression.ofAny === true ? `COUNT(${cells})>0` : `COUNT(${cells})=ROWS(${cells})`;
      const answers = `OR(${all},SUMPRODUCT(--ISERROR(${cells}))>0)`;
      return `IF(${answers},${name}(${cells}),${literal(expression.otherwise)})`;
    }
    case "column":
      return at.column(expression.key, expression.column);
    case "part": {
      const { first, cell } = at.part(expression.key, expression.place, expression.row);
      return `IF(ISERROR(${first}),${first},${cell})`;
    }
    case "join":
      // A cell in nothing's unit may hold a text, whose commas are its own.
      return expression.terms
        .map((term) => (term.op === "value" && term.quantity !== undefined ? numberText(write(term)) : write(term)))
        .join("&");
    case "rounded": {
      const of = write(expression.of);
      return `IF(ISNUMBER(${of}),SUBSTITUTE(ROUND(${of},${expression.decimals}),",","."),${of})`;
    }
    case "before": {
      const text = write(expression.text);
      return `IFERROR(LEFT(${text},SEARCH(${literal(expression.mark)},${text})-1),${text})`;
    }
    case "withoutFirst":
      return `MID(${write(expression.text)},${expression.letters + 1},${LONGEST_TEXT})`;
    case "atLeast":
      return `IF(${write(expression.left)}>=${write(expression.right)},${write(expression.met)},${write(expression.otherwise)})`;
    case "ifNumber": {
      const of = write(expression.of);
      return `IF(ISNUMBER(${of}),${write(expression.met)},IF(ISERROR(${of}),${of},${write(expression.otherwise)}))`;
    }
    case "orElse": {
      const given = write(expression.given);
      return `IF(ISERROR(${given}),${given},IFERROR(${write(expression.of)},${literal(expression.otherwise)}))`;
    }
    case "ifError":
      return `IFERROR(${write(expression.of)},${literal(expression.otherwise)})`;
    case "ifText":
      return `IF(${write(expression.of)}=${literal(expression.is)},${write(expression.met)},${write(expression.otherwise)})`;
  }

  function isBlankField(arg: Expression): boolean {
    return arg.op === "value" && arg.isField === true && at.cell(arg.key) === undefined;
  }

  function argumentTexts(of: Call): readonly string[] {
    const given = of.args.map((arg, place) => {
      if (arg === null || isBlankField(arg)) return null;
      const text = write(arg);
      return wantsSign(of, place, arg) ? `IF(ISNUMBER(${text}),${numberText(text)}&" %",${text})` : text;
    });
    return callArguments(of.entry, given, literal(units)).map((arg) => arg ?? "");
  }

  function callText(of: Call): string {
    return `${NAMESPACE}.${of.entry.id}(${argumentTexts(of).join(",")})`;
  }

  function notesText(of: Call): string {
    return `${NAMESPACE}.NOTES(${[literal(of.entry.id), ...argumentTexts(of)].join(",")})`;
  }
}

/** A number becomes a text with the decimal sign of the country; the functions read a point everywhere. */
function numberText(cell: string): string {
  return `SUBSTITUTE(${cell},",",".")`;
}

/** Letters that a cell may hold. */
const LONGEST_TEXT = 32_767;

/** A text between quotes in a formula may be no longer than 255 characters, quotes in it doubled. */
const LONGEST_LITERAL = 120;
const PIECES = new RegExp(`[^]{1,${LONGEST_LITERAL}}`, "g");

/** A line break is written as CHAR(10), which every spreadsheet keeps. */
function literal(value: number | string): string {
  if (typeof value === "number") return String(value);
  if (value.length > LONGEST_LITERAL) return (value.match(PIECES) ?? []).map(literal).join("&");
  return `"${value.replaceAll('"', '""')}"`.replaceAll("\n", '"&CHAR(10)&"').replace(/^""&|&""$/g, "");
}

/** Brackets round what binds less tightly than multiplication. */
function bracketed(part: Expression, write: (part: Expression) => string, divisor = false): string {
  const loose =
    part.op === "sum" || part.op === "difference" || (divisor && (part.op === "product" || part.op === "ratio"));
  return loose ? `(${write(part)})` : write(part);
}
