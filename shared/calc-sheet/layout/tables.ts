import { headerText } from "../../catalogue/call.ts";
import { isCellError } from "../../cells/cell.ts";
import { type Expression, tableCell } from "../expression.ts";
import type { WrittenCell } from "../open-again/written-inputs.ts";
import type { InputTableItem, SpillItem, TableItem, TypedRows, WorkingItem } from "../plan.ts";
import {
  CHART_ROWS,
  COLUMNS,
  LABEL,
  LAST,
  LINE_HEIGHT,
  linesOf,
  REMARK,
  UNIT,
  VALUE,
  WORKING_WIDTH,
} from "./columns.ts";
import type { Page } from "./page.ts";
import { badTexts, flag } from "./rows.ts";

/** Inputs in the columns of worked figures, under headings; what they are is said at the left, or a chart stands there. */
export function placeInputTable(page: Page, table: InputTableItem): void {
  page.merged(LABEL, LAST, { v: table.basis, style: "basis" });
  page.row += 1;
  const top = page.row;
  table.columns.forEach(({ label, quantity }, i) => {
    page.put(REMARK + i, { v: headerText(label, quantity, page.plan.unitSet), style: "tableHead" });
  });
  page.height(LINE_HEIGHT * 2);
  table.rows.forEach((row, i) => {
    table.columns.forEach(({ key }, j) => {
      page.put(REMARK + j, { v: row[j] ?? null, style: "inputNumber" }, top + 1 + i);
      page.keep(tableCell(table.key, i, key), REMARK + j, top + 1 + i);
    });
  });
  const bottom = top + table.rows.length;
  const range = { top, left: REMARK, bottom, right: REMARK + table.columns.length - 1 };
  page.keepTable(table.key, {
    range,
    top: top + 1,
    bottom,
    columns: columnsFrom(REMARK, table.columns),
  });
  const { key, label, columns, rows, typed } = table;
  page.nameTable(key);
  if (typed !== undefined) {
    page.inputTable(key, range, {
      label,
      of: typed.of,
      headings: 1,
      columns,
      rows: rows.map((row, i) => ({ row: typed.rows[i] ?? i, cells: columns.map((_, j) => ({ v: row[j] ?? null })) })),
    });
  }
  page.row = Math.max(bottom + 1, table.chartBeside === true ? top + CHART_ROWS : 0);
}

/** A printed table: labels, then worked figures and texts across the page. */
export function placeTable(page: Page, table: TableItem): void {
  page.put(LABEL, { v: table.heading, style: "tableHeadText" });
  const heads = table.columns.map(({ label, quantity }) => headerText(label, quantity, page.plan.unitSet));
  heads.forEach((v, i) => {
    page.put(VALUE + i, { v, style: isTextColumn(table, i) ? "tableHeadText" : "tableHead" });
  });
  const lines = heads.map((text, i) => linesOf(text, COLUMNS[VALUE + i] ?? 0));
  page.next(table.heading, COLUMNS[LABEL], Math.max(...lines));
  const top = page.row;
  table.rows.forEach(({ label, cells }, i) => {
    page.put(LABEL, { v: label, style: "label" });
    table.columns.forEach(({ key, quantity, badBelow }, j) => {
      const expression = cells[j];
      if (expression === undefined) return;
      const cell = tableCell(table.key, i, key);
      page.keep(cell, VALUE + j);
      if (expression.op === "stated") {
        const { value } = expression;
        const style = typeof value === "string" ? "inputText" : "inputNumber";
        page.put(VALUE + j, { v: isCellError(value) ? value.error : value, style });
        return;
      }
      page.formula(VALUE + j, expression, cell, isTextColumn(table, j) ? "tableText" : page.numberStyle(quantity));
      flag(page, VALUE + j, badTexts(expression), badBelow);
    });
    page.next(label, COLUMNS[LABEL]);
  });
  const bottom = page.row - 1;
  page.keepTable(table.key, {
    range: { top: top - 1, left: VALUE, bottom, right: VALUE + table.columns.length - 1 },
    top,
    bottom,
    columns: columnsFrom(VALUE, table.columns),
  });
  if (table.typed !== undefined) placeTyped(page, table, table.typed, top);
}

/** Its labels with it: they are the first of its inputs. */
function placeTyped(page: Page, { key, heading, columns, rows }: TableItem, typed: TypedRows, top: number): void {
  const bottom = top + rows.length - 1;
  for (const i of rows.keys()) page.keep(tableCell(key, i, "name"), LABEL, top + i);
  page.inputTable(
    key,
    { top, left: LABEL, bottom, right: VALUE + columns.length - 1 },
    {
      label: heading,
      of: typed.of,
      headings: 0,
      columns: [{ key: "name", label: "name" }, ...columns],
      rows: rows.map(({ label, cells }, i) => ({
        row: typed.rows[i] ?? i,
        cells: [{ v: label }, ...cells.map(writtenCell)],
      })),
    },
  );
}

function writtenCell(cell: Expression): WrittenCell {
  if (cell.op !== "stated") return { f: true };
  return { v: isCellError(cell.value) ? cell.value.error : cell.value };
}

/** The wide column holds texts where its figures are of no quantity. */
function isTextColumn({ columns }: TableItem, column: number): boolean {
  return VALUE + column === UNIT && columns[column]?.quantity === undefined;
}

/** A spilled table or record, in the workings. */
export function placeSpill(page: Page, { key, label, expression, rows, columns }: SpillItem): void {
  beginBlock(page, label, columns.length);
  const top = page.row;
  const bottom = top + rows - 1;
  const range = { top, left: 0, bottom, right: columns.length - 1 };
  columns.forEach(({ quantity }, i) => {
    if (i > 0) page.put(i, { style: "workingHead" }, top);
    const style = page.numberStyle(quantity, "working");
    for (let row = top + 1; row <= bottom; row += 1) page.put(i, { style }, row);
  });
  page.spill(range, expression, key, "workingHead");
  page.keepSpill(key, { range, top: top + 1, bottom, columns: columnsFrom(0, columns) });
  page.row = bottom + 2;
}

/** Columns that other figures rest on, in the workings. */
export function placeWorking(page: Page, { key, label, rows, columns }: WorkingItem): void {
  beginBlock(page, label, columns.length);
  const head = page.row;
  const top = head + 1;
  const bottom = head + rows;
  columns.forEach(({ label: heading, quantity }, i) => {
    page.put(i, { v: headerText(heading, quantity, page.plan.unitSet), style: "workingHead" }, head);
  });
  page.keepTable(key, {
    range: { top: head, left: 0, bottom, right: columns.length - 1 },
    top,
    bottom,
    columns: columnsFrom(0, columns),
  });
  columns.forEach(({ key: of, quantity, cells }, i) => {
    const style = page.numberStyle(quantity, "working");
    if (typeof cells !== "function") {
      page.spill({ top, left: i, bottom, right: i }, cells.spill, `${key}.${of}`, style);
      for (let row = top; row <= bottom; row += 1) {
        page.keep(tableCell(key, row - top, of), i, row);
        if (row > top) page.put(i, { style }, row);
      }
      return;
    }
    for (let row = 0; row < rows; row += 1) {
      const expression = cells(row);
      const cell = tableCell(key, row, of);
      if (expression === null) continue;
      page.keep(cell, i, top + row);
      page.formula(i, expression, cell, style, top + row);
    }
  });
  page.row = bottom + 2;
}

/** Says what the table of the workings is that follows, and how many columns it takes. */
export function beginBlock(page: Page, label: string, columns: number): void {
  page.put(0, { v: label, style: "workingLabel" });
  page.reach(columns, WORKING_WIDTH);
  page.row += 1;
}

function columnsFrom(first: number, columns: readonly { readonly key: string }[]): Readonly<Record<string, number>> {
  return Object.fromEntries(columns.map(({ key }, i) => [key, first + i]));
}
