import { headerText } from "../../catalogue/call.ts";
import { tableCell } from "../expression.ts";
import { isExpression, type LineTableItem, type LineTableRow, type WorkedColumn } from "../plan.ts";
import { COLUMNS, LABEL, LAST, LINE_HEIGHT, UNIT, VALUE, WORKING } from "./columns.ts";
import type { Page } from "./page.ts";
import { workingTop } from "./tables.ts";

/** A line: its inputs in the first columns, worked figures in those after them; what has no room there beside the page. */
export function placeLine(page: Page, table: LineTableItem): void {
  const { stated, worked, rows } = table;
  const printed = worked.filter(({ isBeside }) => isBeside !== true);
  const first = LABEL + stated.length;
  if (first + printed.length - 1 > LAST) throw new Error(`${table.key} is wider than the page`);
  const isText = (column: number): boolean => column < VALUE || column === UNIT;
  [...stated, ...printed].forEach(({ label, quantity }, i) => {
    const v = headerText(label, quantity, page.plan.unitSet);
    page.put(LABEL + i, { v, style: isText(LABEL + i) ? "tableHeadText" : "tableHead" });
  });
  page.height(LINE_HEIGHT * 2);
  page.row += 1;
  const top = page.row;
  rows.forEach((row, i) => {
    stated.forEach(({ key, quantity }, column) => {
      const cell = row[key];
      const at = tableCell(table.key, i, key);
      page.keep(at, column);
      if (isExpression(cell)) page.formula(column, cell, at, page.numberStyle(quantity));
      else page.put(column, { v: scalarOf(cell), style: isText(column) ? "inputText" : "inputNumber" });
    });
    printed.forEach((column, j) => {
      placeWorked(page, table, column, i, first + j, page.row);
    });
    page.next(row.fittings, COLUMNS[UNIT], Math.ceil(row.pipe.length / COLUMNS[LABEL]));
  });
  const bottom = page.row - 1;
  const columns = Object.fromEntries(printed.map(({ key }, i) => [key, first + i]));
  page.keepTable(table.key, { range: { top, left: LABEL, bottom, right: first - 1 }, top, bottom, columns });
  page.nameTable(table.key);
  placeBeside(page, table);
}

/** An unreadable box has no cell of its own on a sheet: none is written until it is mended. */
function scalarOf(cell: LineTableRow[keyof LineTableRow]): string | number | boolean | null {
  return typeof cell === "object" ? null : (cell ?? null);
}

function placeBeside(page: Page, table: LineTableItem): void {
  const beside = table.worked.filter(({ isBeside }) => isBeside === true);
  if (beside.length === 0) return;
  const head = workingTop(page, table.label, beside.length);
  beside.forEach((column, i) => {
    const v = headerText(column.label, column.quantity, page.plan.unitSet);
    page.put(WORKING + i, { v, style: "workingHead" }, head);
    table.rows.forEach((_, row) => {
      placeWorked(page, table, column, row, WORKING + i, head + 1 + row);
    });
  });
  page.workingRow = head + table.rows.length + 2;
}

function placeWorked(
  page: Page,
  table: LineTableItem,
  { key, quantity, expression, isBeside }: WorkedColumn,
  row: number,
  column: number,
  sheetRow: number,
): void {
  const cell = tableCell(table.key, row, key);
  page.keep(cell, column, sheetRow);
  page.formula(
    column,
    expression((of) => ({ op: "value", key: tableCell(table.key, row, of) })),
    cell,
    page.numberStyle(quantity, isBeside === true ? "working" : "number"),
    sheetRow,
  );
}
