import type { Finding } from "../../src/basis/result.ts";
import { call } from "../catalogue/call.ts";
import { entryNamed } from "../catalogue/catalogue.ts";
import type { Argument, Cell } from "../catalogue/cell.ts";
import { isCellError, isRange } from "../catalogue/cell.ts";
import type { Entry } from "../catalogue/entry.ts";
import type { Call, Expression } from "./expression.ts";
import type { CalcSheetPlan, LineTableItem, LineTableRow } from "./plan.ts";

/** A plan worked out in memory: what each keyed cell shows, in the plan's unit set, and the findings of its call. */
export interface WorkedPlan {
  readonly cells: ReadonlyMap<string, Argument>;
  readonly findings: ReadonlyMap<string, readonly Finding[]>;
}

/** Key of one cell of a line table: "suctionLine.0.velocity". */
export function tableCell(table: string, row: number, column: string): string {
  return `${table}.${row}.${column}`;
}

/** Works a plan out in reading order, with the same functions the sheet calls. */
export function workOut(plan: CalcSheetPlan): WorkedPlan {
  const cells = new Map<string, Argument>();
  const findings = new Map<string, readonly Finding[]>();
  const tables = new Map<string, LineTableItem>();

  function answerTo(expression: Expression, key: string): Argument {
    switch (expression.op) {
      case "value":
        return cellAt(expression.key);
      case "range":
        return stated(tables.get(expression.key));
      case "constant":
        return expression.value;
      case "call":
        return answerOf(expression, key);
      case "notes":
        return answerOf(notesCall(expression.of), key);
      case "sum":
        return arithmetic(expression.terms, key, (numbers) => numbers.reduce((total, n) => total + n, 0));
      case "product":
        return arithmetic(expression.terms, key, (numbers) => numbers.reduce((total, n) => total * n, 1));
      case "difference":
        return arithmetic([expression.of, expression.by], key, ([of = 0, by = 0]) => of - by);
      case "ratio":
        return arithmetic([expression.of, expression.by], key, ([of = 0, by = 0]) => of / by);
      case "columnSum":
        return arithmetic(columnCells(expression.key, expression.column), key, (numbers) =>
          numbers.reduce((total, n) => total + n, 0),
        );
      case "verdict": {
        const { left, right, atLeast, less } = expression;
        return arithmetic([left, right], key, ([l = 0, r = 0]) => (l >= r ? atLeast : less));
      }
    }
  }

  function cellAt(key: string): Argument {
    const found = cells.get(key);
    if (found === undefined) throw new Error(`${key} is read before it is worked out`);
    return found;
  }

  function columnCells(table: string, column: string): Expression[] {
    const rows = tables.get(table)?.rows ?? [];
    return rows.map((_, row) => ({ op: "value", key: tableCell(table, row, column) }));
  }

  function arithmetic(terms: readonly Expression[], key: string, work: (numbers: number[]) => number | string): Cell {
    const numbers: number[] = [];
    for (const term of terms) {
      const cell = answerTo(term, key);
      if (isRange(cell)) throw new Error(`${key} takes a range where a number is due`);
      if (isCellError(cell)) return cell;
      if (typeof cell !== "number") return { error: "#VALUE!" };
      numbers.push(cell);
    }
    const answer = work(numbers);
    return typeof answer === "number" && !Number.isFinite(answer) ? { error: "#DIV/0!" } : answer;
  }

  function answerOf({ id, args }: Call, key: string): Argument {
    const entry = entryOf(id);
    const given = args.map((arg) => (arg === null ? null : answerTo(arg, key)));
    const outcome = call(entry, withUnits(entry, given, plan.unitSet));
    findings.set(key, outcome.findings);
    return outcome.ok ? outcome.value : outcome.error;
  }

  function notesCall({ id, args }: Call): Call {
    const entry = entryOf(id);
    const padded = withUnits(entry, args, { op: "constant", value: plan.unitSet } as Expression);
    return { op: "call", id: "NOTES", args: [{ op: "constant", value: id }, ...padded] };
  }

  for (const item of plan.items) {
    switch (item.kind) {
      case "input":
        cells.set(item.key, item.value);
        break;
      case "line":
        tables.set(item.key, item);
        item.rows.forEach((row, i) => {
          for (const column of ["pipe", "length", "fittings"] as const) {
            cells.set(tableCell(item.key, i, column), row[column]);
          }
          for (const { key, expression } of item.worked) {
            const cell = tableCell(item.key, i, key);
            cells.set(
              cell,
              answerTo(
                expression((of) => ({ op: "value", key: tableCell(item.key, i, of) })),
                cell,
              ),
            );
          }
        });
        break;
      case "result":
      case "curve":
      case "finding":
        cells.set(item.key, answerTo(item.expression, item.key));
        break;
      default:
        break;
    }
  }
  return { cells, findings };
}

/** The arguments of a call with `units` in its place, left-out ones kept open. */
export function withUnits<T>(entry: Entry, args: readonly (T | null)[], units: T): readonly (T | null)[] {
  if (entry.unitless) return args;
  const padded = [...args, ...Array<null>(Math.max(0, entry.parameters.length - args.length)).fill(null)];
  return [...padded, units];
}

export function entryOf(id: string): Entry {
  const entry = entryNamed(id);
  if (entry === undefined) throw new Error(`${id} is not in the catalogue`);
  return entry;
}

function stated(table: LineTableItem | undefined): readonly (readonly Cell[])[] {
  if (table === undefined) throw new Error("a line is read before it is stated");
  return table.rows.map(({ pipe, length, fittings }: LineTableRow) => [pipe, length, fittings]);
}
