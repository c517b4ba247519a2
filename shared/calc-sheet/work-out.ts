import type { Finding } from "../../src/basis/result.ts";
import { call, headerText, type Outcome } from "../catalogue/call.ts";
import { notesOf } from "../catalogue/entries/notes.ts";
import type { Entry } from "../catalogue/entry.ts";
import { type Argument, type Cell, type CellError, isCellError, isRange } from "../cells/cell.ts";
import { type Call, type Expression, tableCell, wantsSign } from "./expression.ts";
import { optionCells } from "./option.ts";
import type { CalcSheetPlan, OptionItem, SpillItem, WorkingItem } from "./plan.ts";

/** A plan worked out in memory: what each keyed cell shows, in the plan's unit set, and the findings of its call. */
export interface WorkedPlan {
  readonly cells: ReadonlyMap<string, Argument>;
  readonly findings: ReadonlyMap<string, readonly Finding[]>;
}

/** Works a plan out in reading order, with the same functions the sheet calls. */
export function workOut(plan: CalcSheetPlan): WorkedPlan {
  const cells = new Map<string, Argument>();
  const findings = new Map<string, readonly Finding[]>();
  const ranges = new Map<string, readonly (readonly Cell[])[]>();
  const rowCounts = new Map<string, number>();

  function answerTo(expression: Expression, key: string): Argument {
    switch (expression.op) {
      case "value":
        return cellAt(expression.key);
      case "range":
        return rangeOf(expression.key);
      case "constant":
        return expression.value;
      case "call": {
        const outcome = outcomeOf(expression, key);
        return outcome.ok ? outcome.value : outcome.error;
      }
      case "notes":
        return notesOf(outcomeOf(expression.of, key));
      case "sum":
        return arithmetic(expression.terms, key, (numbers) => numbers.reduce((total, n) => total + n, 0));
      case "product":
        return arithmetic(expression.terms, key, (numbers) => numbers.reduce((total, n) => total * n, 1));
      case "difference":
        return arithmetic([expression.of, expression.by], key, ([of = 0, by = 0]) => of - by);
      case "ratio":
        return arithmetic([expression.of, expression.by], key, ([of = 0, by = 0]) => of / by);
      case "least":
        return arithmetic(expression.terms, key, (numbers) => Math.min(...numbers));
      case "greatest":
        return arithmetic(expression.terms, key, (numbers) => Math.max(...numbers));
      case "columnSum":
        return arithmetic(
          columnOf(expression.key, expression.column).map((cell) => ({ op: "constant", value: cell }) as Expression),
          key,
          (numbers) => numbers.reduce((total, n) => total + n, 0),
        );
      case "columnLeast":
      case "columnGreatest":
        return extremeOf(expression);
      case "column":
        return columnOf(expression.key, expression.column).map((cell) => [cell]);
      case "part": {
        const record = cellAt(expression.key);
        return isRange(record) ? (record[1 + expression.row]?.[expression.place] ?? null) : record;
      }
      case "join":
        return joined(expression.terms.map((term) => single(term, key)));
      case "before":
        return before(single(expression.text, key), expression.mark);
      case "atLeast": {
        const { left, right, met, otherwise } = expression;
        const side = arithmetic([left, right], key, ([l = 0, r = 0]) => (l >= r ? 1 : 0));
        if (typeof side !== "number") return side;
        return answerTo(side === 1 ? met : otherwise, key);
      }
      case "ifNumber": {
        const cell = single(expression.of, key);
        if (isCellError(cell)) return cell;
        return answerTo(typeof cell === "number" ? expression.met : expression.otherwise, key);
      }
      case "orElse": {
        const given = single(expression.given, key);
        if (isCellError(given)) return given;
        const answer = single(expression.of, key);
        return isCellError(answer) ? expression.otherwise : answer;
      }
      case "ifText": {
        const cell = single(expression.of, key);
        if (isCellError(cell)) return cell;
        const same = String(cell ?? "").toLowerCase() === expression.is.toLowerCase();
        return answerTo(same ? expression.met : expression.otherwise, key);
      }
    }
  }

  function single(expression: Expression, key: string): Cell {
    const answer = answerTo(expression, key);
    return isRange(answer) ? NO_SINGLE_CELL : answer;
  }

  /** The cells of a column of any table, rows in order. */
  function columnOf(table: string, of: string): readonly Cell[] {
    const rows = rowCounts.get(table);
    if (rows === undefined) return [notPlaced(table)];
    return Array.from({ length: rows }, (_, row) => (cells.get(tableCell(table, row, of)) ?? null) as Cell);
  }

  function extremeOf({
    op,
    key,
    column,
    otherwise,
  }: Extract<Expression, { op: "columnLeast" | "columnGreatest" }>): Cell {
    const all = columnOf(key, column);
    const numbers = all.filter((cell) => typeof cell === "number");
    if (numbers.length < all.length) return all.find(isCellError) ?? otherwise;
    return op === "columnLeast" ? Math.min(...numbers) : Math.max(...numbers);
  }

  function setSpill({ key, rows, columns }: SpillItem, answer: Argument): void {
    rowCounts.set(key, rows - 1);
    cells.set(key, answer);
    for (let row = 0; row < rows - 1; row += 1) {
      columns.forEach((of, j) => {
        cells.set(tableCell(key, row, of.key), isRange(answer) ? (answer[row + 1]?.[j] ?? null) : answer);
      });
    }
  }

  function setWorking(item: WorkingItem): void {
    const { key, rows, columns } = item;
    rowCounts.set(key, rows);
    for (const { key: of, cells: filling } of columns) {
      if (typeof filling === "function") {
        for (let row = 0; row < rows; row += 1) {
          const expression = filling(row);
          const cell = tableCell(key, row, of);
          if (expression !== null) cells.set(cell, answerTo(expression, cell));
        }
      } else {
        const answer = answerTo(filling.spill, `${key}.${of}`);
        cells.set(`${key}.${of}`, answer);
        // An error fills one cell of a sheet; every row that would have been filled has no other answer.
        for (let row = 0; row < rows; row += 1) {
          cells.set(tableCell(key, row, of), isRange(answer) ? (answer[row]?.[0] ?? null) : answer);
        }
      }
    }
    const headings = columns.map(({ label, quantity }) => headerText(label, quantity, plan.unitSet));
    ranges.set(key, [
      headings,
      ...Array.from({ length: rows }, (_, row) =>
        columns.map((of) => (cells.get(tableCell(key, row, of.key)) ?? null) as Cell),
      ),
    ]);
  }

  function cellAt(key: string): Argument {
    return cells.get(key) ?? (cells.has(key) ? null : notPlaced(key));
  }

  function rangeOf(table: string): Argument {
    // A spilled answer is a range too, or the error in its place.
    return ranges.get(table) ?? cellAt(table);
  }

  function arithmetic(terms: readonly Expression[], key: string, work: (numbers: number[]) => number | string): Cell {
    const numbers: number[] = [];
    for (const term of terms) {
      const cell = answerTo(term, key);
      if (isRange(cell)) return NO_SINGLE_CELL;
      if (isCellError(cell)) return cell;
      if (typeof cell !== "number") return { error: "#VALUE!" };
      numbers.push(cell);
    }
    const answer = work(numbers);
    return typeof answer === "number" && !Number.isFinite(answer) ? { error: "#DIV/0!" } : answer;
  }

  function isBlankField(arg: Expression): boolean {
    return arg.op === "value" && arg.isField === true && !cells.has(arg.key);
  }

  function outcomeOf(of: Call, key: string): Outcome {
    const { entry, args } = of;
    const given = args.map((arg, place) => {
      if (arg === null || isBlankField(arg)) return null;
      const answer = answerTo(arg, key);
      return typeof answer === "number" && wantsSign(of, place, arg) ? `${answer} %` : answer;
    });
    const outcome = call(entry, withUnits(entry, given, plan.unitSet));
    findings.set(key, outcome.findings);
    return outcome;
  }

  for (const item of plan.items) {
    switch (item.kind) {
      case "input":
        cells.set(item.key, item.value);
        break;
      case "line":
        ranges.set(
          item.key,
          item.rows.map(({ pipe, length, fittings }) => [pipe, length, fittings]),
        );
        rowCounts.set(item.key, item.rows.length);
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
      case "inputTable":
        rowCounts.set(item.key, item.rows.length);
        ranges.set(item.key, [
          item.columns.map(({ label, quantity }) => headerText(label, quantity, plan.unitSet)),
          ...item.rows,
        ]);
        item.rows.forEach((row, i) => {
          item.columns.forEach((of, j) => {
            cells.set(tableCell(item.key, i, of.key), row[j] ?? null);
          });
        });
        break;
      case "spill":
        setSpill(item, answerTo(item.expression, item.key));
        break;
      case "working":
        setWorking(item);
        break;
      case "table":
        rowCounts.set(item.key, item.rows.length);
        item.rows.forEach((row, i) => {
          item.columns.forEach((of, j) => {
            const cell = tableCell(item.key, i, of.key);
            cells.set(cell, answerTo(row.cells[j] as Expression, cell));
          });
        });
        break;
      case "result":
      case "curve":
      case "finding":
        cells.set(item.key, answerTo(item.expression, item.key));
        break;
      case "option":
        for (const { key, expression } of cellsOf(item)) cells.set(key, answerTo(expression, key));
        break;
      default:
        break;
    }
  }
  return { cells, findings };
}

function cellsOf(item: OptionItem): readonly { readonly key: string; readonly expression: Expression }[] {
  const { name, verdict, remarks, texts } = optionCells(item);
  return [name, verdict, remarks, ...texts];
}

const NO_SINGLE_CELL: CellError = { error: "#VALUE!" };

/** What a reader of a cell gets that this duty's plan does not hold. */
function notPlaced(key: string): CellError {
  return { error: "#N/A", message: `Not worked out for this duty: ${key}.` };
}

/** The arguments of a call with `units` in its place, left-out ones kept open. */
export function withUnits<T>(entry: Entry, args: readonly (T | null)[], units: T): readonly (T | null)[] {
  if (entry.unitless) return args;
  const padded = [...args, ...Array<null>(Math.max(0, entry.parameters.length - args.length)).fill(null)];
  return [...padded, units];
}

/** Texts and numbers one after another; the first error among them as it is. */
function joined(parts: readonly Cell[]): Cell {
  const error = parts.find(isCellError);
  return error ?? parts.map((cell) => String(cell ?? "")).join("");
}

function before(cell: Cell, mark: string): Cell {
  if (typeof cell !== "string") return cell;
  const at = cell.toLowerCase().indexOf(mark.toLowerCase());
  return at < 0 ? cell : cell.slice(0, at);
}
