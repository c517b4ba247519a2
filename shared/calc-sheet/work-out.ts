import type { UnitSetName } from "../../src/basis/quantities.ts";
import type { Finding } from "../../src/basis/result.ts";
import { headerText } from "../catalogue/call.ts";
import { type Argument, type Cell, isRange } from "../cells/cell.ts";
import { answerTo, type Working } from "./evaluate.ts";
import { cellOf, type Expression, tableCell } from "./expression.ts";
import { optionCells } from "./option.ts";
import {
  type Calculation,
  type InputTableItem,
  isExpression,
  type LineTableItem,
  type OptionItem,
  type PlanItem,
  type SpillItem,
  type TableColumn,
  type TableItem,
  VERDICT_COUNT,
  type VerdictsItem,
  type WorkingItem,
  workingOrder,
} from "./plan.ts";
import type { MadeCalls } from "./remembered-call.ts";
import { type FilledTable, WorkedCells } from "./worked-cells.ts";

/** A plan worked out in memory: what each keyed cell shows, in the plan's unit set, and the findings of its call. */
export interface WorkedPlan {
  readonly cells: Pick<WorkedCells, "at" | "rowsOf"> & ReadonlyMap<string, Argument>;
  readonly findings: ReadonlyMap<string, readonly Finding[]>;
  /** Tables that calls read as ranges, headings among them. */
  readonly ranges: ReadonlyMap<string, readonly (readonly Cell[])[]>;
  readonly calls: MadeCalls;
}

/**
 * Works a plan out in reading order, its summary last, with the same functions the sheet calls. Calls that were made alike in the plan
 * worked out before it are not made again.
 */
export function workOut({ unitSet, items }: Calculation, before?: WorkedPlan): WorkedPlan {
  const sheet: Working = {
    unitSet,
    cells: new WorkedCells(),
    findings: new Map(),
    ranges: new Map(),
    unread: new Map(),
    calls: new Map(),
    // Its calls and tables alone: what held the whole plan would hold the one before that, and so on.
    before: before && { calls: before.calls, ranges: before.ranges },
  };
  for (const item of workingOrder(items)) setItem(sheet, item);
  const { cells, findings, ranges, calls } = sheet;
  return { cells, findings, ranges, calls };
}

function setItem(sheet: Working, item: PlanItem): void {
  switch (item.kind) {
    case "input":
      sheet.cells.set(item.key, item.value);
      break;
    case "line":
      setLine(sheet, item);
      break;
    case "inputTable":
      setInputTable(sheet, item);
      break;
    case "spill":
      setSpill(sheet, item);
      break;
    case "working":
      setWorking(sheet, item);
      break;
    case "table":
      setTable(sheet, item);
      break;
    case "option":
      for (const { key, expression } of cellsOf(item)) setCell(sheet, key, expression);
      break;
    case "verdicts":
      setVerdicts(sheet, item);
      break;
    case "blocks":
      for (const { rows } of item.blocks) for (const { key, expression } of rows) setCell(sheet, key, expression);
      break;
    case "lines":
      for (const { key, text } of item.rows) setCell(sheet, key, text);
      break;
    case "result":
    case "finding":
      setCell(sheet, item.key, item.expression);
      break;
    default:
      break;
  }
}

function setCell(sheet: Working, key: string, expression: Expression): void {
  sheet.cells.set(key, answerTo(sheet, expression, key));
}

function setVerdicts(sheet: Working, { count, rows }: VerdictsItem): void {
  setCell(sheet, VERDICT_COUNT, count);
  for (const { key, state, text } of rows) {
    setCell(sheet, key, state);
    setTableCell(sheet, sheet.cells.fill(key, 1), [key, 0, "text"], text);
  }
}

function setTableCell(
  sheet: Working,
  table: FilledTable,
  [key, row, column]: readonly [key: string, row: number, column: string],
  expression: Expression,
): void {
  table.column(column)[row] = answerAt(sheet, key, row, column, expression);
}

/** A constant needs no name to be worked out. */
function answerAt(sheet: Working, key: string, row: number, column: string, expression: Expression): Argument {
  const { op } = expression;
  if (op === "constant" || op === "stated") return expression.value;
  return answerTo(sheet, expression, tableCell(key, row, column));
}

function setLine(sheet: Working, { key, stated, rows, worked }: LineTableItem): void {
  const table = sheet.cells.fill(key, rows.length);
  // What is stated stands first: a level may lie between those of rows before and after it.
  rows.forEach((row, i) => {
    for (const { key: of } of stated) {
      const cell = row[of];
      if (!isExpression(cell)) table.column(of)[i] = cell ?? null;
    }
  });
  rows.forEach((row, i) => {
    const at = (of: string): Expression => cellOf(key, i, of);
    for (const { key: of } of stated) {
      const cell = row[of];
      if (isExpression(cell)) setTableCell(sheet, table, [key, i, of], cell);
    }
    for (const { key: of, expression } of worked) setTableCell(sheet, table, [key, i, of], expression(at));
  });
  sheet.unread.set(key, () => rangeOf(table, stated));
}

function setInputTable({ cells, unread, unitSet }: Working, { key, rows, columns }: InputTableItem): void {
  const places = new Map(columns.map((column, j) => [column.key, j]));
  unread.set(key, () => [headingsOf(columns, unitSet), ...rows]);
  cells.place(key, {
    columns: [...places.keys()],
    rows: rows.length,
    at: (row, column) => {
      const place = places.get(column);
      return place === undefined || row >= rows.length ? undefined : (rows[row]?.[place] ?? null);
    },
  });
}

function setTable(sheet: Working, { key, rows, columns }: TableItem): void {
  const table = sheet.cells.fill(key, rows.length);
  rows.forEach(({ cells }, i) => {
    columns.forEach((of, j) => {
      const expression = cells[j];
      if (expression !== undefined) setTableCell(sheet, table, [key, i, of.key], expression);
    });
  });
}

function setSpill(sheet: Working, { key, rows, columns, expression }: SpillItem): void {
  const answer = answerTo(sheet, expression, key);
  const places = new Map(columns.map((column, j) => [column.key, j]));
  sheet.cells.set(key, answer);
  sheet.cells.place(key, {
    columns: [...places.keys()],
    rows: rows - 1,
    at: (row, column) => {
      const place = places.get(column);
      if (place === undefined || row >= rows - 1) return undefined;
      return isRange(answer) ? (answer[row + 1]?.[place] ?? null) : answer;
    },
  });
}

function setWorking(sheet: Working, { key, rows, columns }: WorkingItem): void {
  const table = sheet.cells.fill(key, rows);
  for (const { key: of, cells: filling } of columns) {
    const column = table.column(of);
    if (typeof filling === "function") {
      for (let row = 0; row < rows; row += 1) {
        const expression = filling(row);
        if (expression !== null) column[row] = answerAt(sheet, key, row, of, expression);
      }
    } else {
      const answer = answerTo(sheet, filling.spill, `${key}.${of}`);
      sheet.cells.set(`${key}.${of}`, answer);
      // An error fills one cell of a sheet; every row that would have been filled has no other answer.
      for (let row = 0; row < rows; row += 1) {
        column[row] = isRange(answer) ? (answer[row]?.[0] ?? null) : answer;
      }
    }
  }
  const { unitSet } = sheet;
  sheet.unread.set(key, () => [headingsOf(columns, unitSet), ...rangeOf(table, columns)]);
}

function headingsOf(columns: readonly TableColumn[], unitSet: UnitSetName): readonly string[] {
  return columns.map(({ label, quantity }) => headerText(label, quantity, unitSet));
}

/** The rows of a table as one range, a cell that is not filled as a blank one. */
function rangeOf(table: FilledTable, columns: readonly { readonly key: string }[]): readonly (readonly Cell[])[] {
  const filled = columns.map(({ key }) => table.column(key));
  return Array.from({ length: table.rows }, (_, row) => filled.map((cells) => (cells[row] ?? null) as Cell));
}

function cellsOf(item: OptionItem): readonly { readonly key: string; readonly expression: Expression }[] {
  const { name, verdict, remarks, texts } = optionCells(item);
  return [name, verdict, remarks, ...texts];
}
