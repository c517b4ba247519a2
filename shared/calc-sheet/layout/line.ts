import type { UnitSetName } from "../../../src/basis/quantities.ts";
import { pipeNamed, pipesOf } from "../../../src/pipework/pipe-name.ts";
import { headerText } from "../../catalogue/call.ts";
import type { Box } from "../../ports/a1.ts";
import { tableCell } from "../expression.ts";
import { isExpression, type LineTableItem, type LineTableRow, type WorkedColumn } from "../plan.ts";
import { LABEL, LAST, REMARK, UNIT, VALUE } from "./columns.ts";
import type { Page } from "./page.ts";
import { rangeName } from "./range-name.ts";

/** The first of the heads of a line: the first run stands right below it. */
export function headsOf(line: string): string {
  return `${line}.heads`;
}

/** The blank cells below the row that ends a line, and the first cell of the row after them. */
export function belowOf(line: string): string {
  return `${line}.below`;
}
export function afterOf(line: string): string {
  return `${line}.after`;
}

/** A line: its inputs in the first columns, worked figures in those after them; what has no room there in the workings. */
export function placeLine(page: Page, table: LineTableItem): void {
  const { stated, worked, rows } = table;
  const printed = worked.filter(({ isWorking }) => isWorking !== true);
  // Fittings take a second column where one is left; the range of what is stated ends with the first of them.
  const isRoomy = stated.at(-1)?.key === "fittings" && LABEL + stated.length + printed.length <= LAST;
  const end = LABEL + stated.length - 1;
  const first = end + 1 + (isRoomy ? 1 : 0);
  const stretchOf = (column: number): [from: number, to: number] => [
    column,
    isRoomy && column === UNIT ? REMARK : column,
  ];
  if (first + printed.length - 1 > LAST) throw new Error(`${table.key} is wider than the page`);
  const isText = (column: number): boolean => column < VALUE || column === UNIT;
  const head = page.row;
  [...stated, ...printed].forEach(({ label, quantity }, i) => {
    const v = headerText(label, quantity, page.plan.unitSet);
    const column = i < stated.length ? LABEL + i : first + i - stated.length;
    page.merged(...stretchOf(column), { v, style: isText(column) ? "tableHeadText" : "tableHead" });
  });
  page.cite(table);
  page.keep(headsOf(table.key), LABEL);
  page.nextOfRange();
  const top = page.row;
  const choices = pipesLike(rows, page.plan.unitSet);
  let again = 0;
  rows.forEach((row, i) => {
    if (i > 0) again += page.continueTable(head);
    page.number();
    stated.forEach(({ key, quantity }, place) => {
      const column = LABEL + place;
      const cell = row[key];
      const at = tableCell(table.key, i, key);
      page.keep(at, column);
      if (isExpression(cell)) page.formula(column, cell, at, page.numberStyle(quantity));
      else {
        page.merged(...stretchOf(column), {
          v: scalarOf(cell),
          style: isText(column) ? "inputText" : page.inputStyle(cell),
        });
        if (key === "pipe") page.offer(column, { choices });
      }
    });
    printed.forEach((column, j) => {
      placeWorked(page, table, column, i, first + j, page.row);
    });
    page.nextOfRange();
  });
  placeEnd(page);
  const bottom = page.row - 1;
  const columns = Object.fromEntries(printed.map(({ key }, i) => [key, first + i]));
  page.keepTable(table.key, { range: { top, left: LABEL, bottom, right: end }, top, bottom, columns });
  page.keepRange(belowOf(table.key), { top: page.row, left: LABEL, bottom: page.row, right: end });
  page.space(BELOW_HEIGHT);
  page.keep(afterOf(table.key), LABEL);
  page.table(head, bottom);
  placeTyped(page, table, { top, left: LABEL, bottom, right: end });
  page.workedColumns(rangeName(table.key), {
    label: table.label,
    rows: bottom - top + 1,
    headings: 0,
    columns: printed.map(({ label }, i) => ({ across: first + i - LABEL, label, filled: rows.length + again })),
  });
  const inWorkings = worked.filter(({ isWorking }) => isWorking === true);
  if (inWorkings.length > 0) page.work((workings) => placeWorkedColumns(workings, table, inWorkings));
}

/** All sizes of the families of pipe that a line is of; any other description of a pipe may be typed. */
function pipesLike(rows: readonly LineTableRow[], units: UnitSetName): readonly string[] {
  const families = rows.flatMap(({ pipe }) => {
    const read = pipeNamed(pipe);
    return read.ok ? [read.value.family] : [];
  });
  const names = [...new Set(families)].flatMap((family) => {
    const listed = pipesOf(family, units === "US" ? "inch" : "metric");
    return listed.ok ? listed.value.map(({ name }) => name) : [];
  });
  return [...new Set([...rows.map(({ pipe }) => pipe).filter((name) => name !== ""), ...names])];
}

/** Points of the row that ends a line. */
const END_HEIGHT = 4;
/** Of the blank row below it: what is typed there is no run that the sheet counts, and the sheet says so. */
const BELOW_HEIGHT = 3;

/**
 * A thin row without figures, which functions pass over: a run put in below the last one stands above it, and so in
 * every range of the line.
 */
function placeEnd(page: Page): void {
  for (let column = LABEL; column <= LAST; column += 1) page.put(column, { style: "lineEnd" });
  page.height(END_HEIGHT);
  page.row += 1;
}

function placeTyped(page: Page, { key, label, stated, rows, typed }: LineTableItem, range: Box): void {
  page.nameTable(key);
  if (typed === undefined) return;
  page.inputTable(key, range, {
    label,
    of: typed.of,
    headings: 0,
    columns: stated,
    rows: rows.map((row, i) => ({
      row: typed.rows[i] ?? i,
      cells: stated.map(({ key: of }) => (isExpression(row[of]) ? { f: true } : { v: scalarOf(row[of]) })),
    })),
  });
}

/** An unreadable box has no cell of its own on a sheet: none is written until it is mended. */
function scalarOf(cell: LineTableRow[keyof LineTableRow]): string | number | boolean | null {
  return typeof cell === "object" ? null : (cell ?? null);
}

function placeWorkedColumns(workings: Page, table: LineTableItem, columns: readonly WorkedColumn[]): void {
  workings.beginBlock(table.label, columns.length);
  const head = workings.row;
  columns.forEach((column, i) => {
    const v = headerText(column.label, column.quantity, workings.plan.unitSet);
    workings.put(i, { v, style: "workingHead" }, head);
    table.rows.forEach((_, row) => {
      placeWorked(workings, table, column, row, i, head + 1 + row);
    });
  });
  workings.row = head + table.rows.length + 2;
}

function placeWorked(
  page: Page,
  table: LineTableItem,
  { key, quantity, expression, isWorking }: WorkedColumn,
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
    page.numberStyle(quantity, isWorking === true ? "working" : "number"),
    sheetRow,
  );
}
