import type { Finding } from "../../src/basis/result.ts";
import { headerText } from "../catalogue/call.ts";
import { type Argument, type Cell, isRange } from "../cells/cell.ts";
import { answerTo, type Working } from "./evaluate.ts";
import { type Expression, tableCell } from "./expression.ts";
import { optionCells } from "./option.ts";
import {
  type CalcSheetPlan,
  type InputTableItem,
  isExpression,
  type LineTableItem,
  type OptionItem,
  type PlanItem,
  type SpillItem,
  type TableItem,
  VERDICT_COUNT,
  type VerdictsItem,
  type WorkingItem,
} from "./plan.ts";

/** A plan worked out in memory: what each keyed cell shows, in the plan's unit set, and the findings of its call. */
export interface WorkedPlan {
  readonly cells: ReadonlyMap<string, Argument>;
  readonly findings: ReadonlyMap<string, readonly Finding[]>;
  /** Tables as ranges, headings among them. */
  readonly ranges: ReadonlyMap<string, readonly (readonly Cell[])[]>;
}

/** Works a plan out in reading order, with the same functions the sheet calls. */
export function workOut({ unitSet, items }: CalcSheetPlan): WorkedPlan {
  const sheet: Working = { unitSet, cells: new Map(), findings: new Map(), ranges: new Map(), rowCounts: new Map() };
  for (const item of items) setItem(sheet, item);
  for (const item of items) if (item.kind === "verdicts") setVerdicts(sheet, item);
  return sheet;
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
    case "result":
    case "curve":
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
    setCell(sheet, tableCell(key, 0, "text"), text);
  }
}

function setLine(sheet: Working, { key, stated, rows, worked }: LineTableItem): void {
  sheet.rowCounts.set(key, rows.length);
  // What is stated stands first: a level may lie between those of rows before and after it.
  rows.forEach((row, i) => {
    for (const { key: of } of stated) {
      const cell = row[of];
      if (!isExpression(cell)) sheet.cells.set(tableCell(key, i, of), cell ?? null);
    }
  });
  rows.forEach((row, i) => {
    const at = (of: string): Expression => ({ op: "value", key: tableCell(key, i, of) });
    for (const { key: of } of stated) {
      const cell = row[of];
      if (isExpression(cell)) setCell(sheet, tableCell(key, i, of), cell);
    }
    for (const { key: of, expression } of worked) setCell(sheet, tableCell(key, i, of), expression(at));
  });
  const shown = (row: number, of: string): Cell => (sheet.cells.get(tableCell(key, row, of)) ?? null) as Cell;
  sheet.ranges.set(
    key,
    rows.map((_, row) => stated.map(({ key: of }) => shown(row, of))),
  );
}

function setInputTable(sheet: Working, { key, rows, columns }: InputTableItem): void {
  sheet.rowCounts.set(key, rows.length);
  sheet.ranges.set(key, [columns.map(({ label, quantity }) => headerText(label, quantity, sheet.unitSet)), ...rows]);
  rows.forEach((row, i) => {
    columns.forEach((of, j) => {
      sheet.cells.set(tableCell(key, i, of.key), row[j] ?? null);
    });
  });
}

function setTable(sheet: Working, { key, rows, columns }: TableItem): void {
  sheet.rowCounts.set(key, rows.length);
  rows.forEach(({ cells }, i) => {
    columns.forEach((of, j) => {
      const expression = cells[j];
      if (expression !== undefined) setCell(sheet, tableCell(key, i, of.key), expression);
    });
  });
}

function setSpill(sheet: Working, { key, rows, columns, expression }: SpillItem): void {
  const answer = answerTo(sheet, expression, key);
  sheet.rowCounts.set(key, rows - 1);
  sheet.cells.set(key, answer);
  for (let row = 0; row < rows - 1; row += 1) {
    columns.forEach((of, j) => {
      sheet.cells.set(tableCell(key, row, of.key), isRange(answer) ? (answer[row + 1]?.[j] ?? null) : answer);
    });
  }
}

function setWorking(sheet: Working, item: WorkingItem): void {
  const { key, rows, columns } = item;
  sheet.rowCounts.set(key, rows);
  for (const { key: of, cells: filling } of columns) {
    if (typeof filling === "function") {
      for (let row = 0; row < rows; row += 1) {
        const expression = filling(row);
        const cell = tableCell(key, row, of);
        if (expression !== null) sheet.cells.set(cell, answerTo(sheet, expression, cell));
      }
    } else {
      const answer = answerTo(sheet, filling.spill, `${key}.${of}`);
      sheet.cells.set(`${key}.${of}`, answer);
      // An error fills one cell of a sheet; every row that would have been filled has no other answer.
      for (let row = 0; row < rows; row += 1) {
        sheet.cells.set(tableCell(key, row, of), isRange(answer) ? (answer[row]?.[0] ?? null) : answer);
      }
    }
  }
  const headings = columns.map(({ label, quantity }) => headerText(label, quantity, sheet.unitSet));
  sheet.ranges.set(key, [
    headings,
    ...Array.from({ length: rows }, (_, row) =>
      columns.map((of) => (sheet.cells.get(tableCell(key, row, of.key)) ?? null) as Cell),
    ),
  ]);
}

function cellsOf(item: OptionItem): readonly { readonly key: string; readonly expression: Expression }[] {
  const { name, verdict, remarks, texts } = optionCells(item);
  return [name, verdict, remarks, ...texts];
}
