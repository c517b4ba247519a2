import { headerText } from "../../catalogue/call.ts";
import { isCellError } from "../../cells/cell.ts";
import { fieldOfBox } from "../../duty/box-field.ts";
import type { Box } from "../../ports/a1.ts";
import { type Expression, tableCell } from "../expression.ts";
import type { WrittenCell } from "../open-again/written-inputs.ts";
import type { InputTableItem, SpillItem, TableItem, TypedRows, WorkingItem } from "../plan.ts";
import { LABEL, LAST, REMARK, type Stretch, VALUE } from "./columns.ts";
import type { Page } from "./page.ts";
import { rangeName } from "./range-name.ts";
import { badTexts, flag, hasCall } from "./rows.ts";

/** Inputs in the columns of worked figures, under headings; what they are is said above. */
export function placeInputTable(page: Page, table: InputTableItem): void {
  page.number(table);
  page.merged(LABEL, LAST, { v: table.basis, style: "basis" });
  page.next();
  const top = page.row;
  table.columns.forEach(({ label, quantity }, i) => {
    page.put(REMARK + i, { v: headerText(label, quantity, page.plan.unitSet), style: "tableHead" });
  });
  page.nextOfRange();
  table.rows.forEach((row, i) => {
    if (i > 0) page.continueTable(top);
    table.columns.forEach(({ key }, j) => {
      page.put(REMARK + j, { v: row[j] ?? null, style: page.inputStyle(row[j]) });
      page.keep(tableCell(table.key, i, key), REMARK + j);
    });
    page.nextOfRange();
  });
  const bottom = page.row - 1;
  const range = { top, left: REMARK, bottom, right: REMARK + table.columns.length - 1 };
  page.keepTable(table.key, {
    range,
    top: top + 1,
    bottom,
    columns: columnsFrom(REMARK, table.columns),
  });
  const { key, label, columns, rows, typed } = table;
  page.nameTable(key);
  page.table(top, bottom);
  page.together(top - 1, top);
  if (typed !== undefined) {
    page.inputTable(key, range, {
      label,
      of: typed.of,
      headings: 1,
      columns,
      rows: rows.map((row, i) => ({ row: typed.rows[i] ?? i, cells: columns.map((_, j) => ({ v: row[j] ?? null })) })),
    });
  }
}

/** A printed table: labels, then worked figures and texts across the page. */
export function placeTable(page: Page, table: TableItem): void {
  const texts = table.columns.map(({ key }) => isTextColumn(page, table, key));
  const stretches = stretchesOf(table, texts);
  page.merged(...page.labels, { v: table.heading, style: "tableHeadLabel" });
  table.columns.forEach(({ label, quantity }, i) => {
    const v = headerText(label, quantity, page.plan.unitSet);
    page.merged(...stretchAt(stretches, i), { v, style: texts[i] === true ? "tableHeadText" : "tableHead" });
  });
  const head = page.row;
  page.cite(table);
  page.nextOfRange();
  const top = page.row;
  let again = 0;
  table.rows.forEach(({ label, cells }, i) => {
    if (i > 0) again += page.continueTable(head);
    page.number();
    page.merged(...page.labels, { v: label, style: "label" });
    if (table.typed !== undefined) page.keep(tableCell(table.key, i, "name"), LABEL);
    table.columns.forEach(({ key, quantity, badBelow, isMoney }, j) => {
      const expression = cells[j];
      if (expression === undefined) return;
      const cell = tableCell(table.key, i, key);
      const [from, to] = stretchAt(stretches, j);
      page.keep(cell, from);
      if (expression.op === "stated") {
        const { value } = expression;
        const style = typeof value === "string" ? "inputText" : page.inputStyle(value);
        page.merged(from, to, { v: isCellError(value) ? value.error : value, style });
        if (table.typed !== undefined) page.offer(from, fieldOfBox(`${table.typed.of}.${table.typed.rows[i]}.${key}`));
        return;
      }
      const style = texts[j] === true ? "tableText" : page.numberStyle(isMoney === true ? "money" : quantity);
      if (from === to) page.formula(from, expression, cell, style);
      else page.across([from, to], expression, cell, style);
      flag(page, from, badTexts(expression), badBelow);
    });
    page.nextOfRange();
  });
  const bottom = page.row - 1;
  page.table(head, bottom);
  const columns = Object.fromEntries(table.columns.map(({ key }, i) => [key, stretchAt(stretches, i)[0]]));
  const right = stretchAt(stretches, table.columns.length - 1)[1];
  page.keepTable(table.key, { range: { top: head, left: VALUE, bottom, right }, top, bottom, columns });
  if (table.typed !== undefined) placeTyped(page, table, table.typed, { top, bottom });
  else placeWorked(page, table, { top: head, left: page.labels[0], bottom, right }, stretches, again);
}

/** A table without inputs: what stands in it is held against its formulas once the sheet is opened again. */
function placeWorked(
  page: Page,
  { key, heading, columns, rows }: TableItem,
  range: Box,
  at: readonly Stretch[],
  again: number,
): void {
  const name = `${rangeName(key)}_table`;
  page.nameRange(name, range);
  page.workedColumns(name, {
    label: heading,
    rows: range.bottom - range.top + 1,
    headings: 1,
    columns: columns.map(({ label }, j) => ({
      across: stretchAt(at, j)[0] - range.left,
      label,
      filled: rows.filter(({ cells }) => cells[j] !== undefined).length + again,
    })),
  });
}

/** Whether a column holds texts, as it was worked out. */
function isTextColumn(page: Page, table: TableItem, key: string): boolean {
  const kinds = new Set(table.rows.map((_, row) => typeof page.worked.cells.at(table.key, row, key)));
  return kinds.has("string") && !kinds.has("number");
}

/**
 * Where the columns of a table stand: those of texts take what the others leave of the page, where no add-in answers in them.
 * Those of a table that is read again stand side by side.
 */
function stretchesOf({ rows, columns, typed }: TableItem, texts: readonly boolean[]): readonly Stretch[] {
  const mayMerge = (j: number): boolean =>
    typed === undefined && texts[j] === true && rows.every(({ cells }) => cells[j] === undefined || !hasCall(cells[j]));
  const wide = columns.map((_, j) => j).filter(mayMerge);
  const free = LAST - VALUE + 1 - columns.length;
  let from = VALUE;
  return columns.map((_, j): Stretch => {
    const place = wide.indexOf(j);
    const more = place < 0 ? 0 : Math.floor(free / wide.length) + (place < free % wide.length ? 1 : 0);
    const stretch: Stretch = [from, from + more];
    from += 1 + more;
    return stretch;
  });
}

/** Its labels with it: they are the first of its inputs. */
function placeTyped(
  page: Page,
  { key, heading, columns, rows }: TableItem,
  typed: TypedRows,
  { top, bottom }: Pick<Box, "top" | "bottom">,
): void {
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

function stretchAt(stretches: readonly Stretch[], column: number): Stretch {
  return stretches[column] ?? [VALUE, VALUE];
}

/** A spilled table or record, in the workings. */
export function placeSpill(page: Page, { key, label, expression, rows, columns }: SpillItem): void {
  page.beginBlock(label, columns.length);
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
  page.beginBlock(label, columns.length);
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

function columnsFrom(first: number, columns: readonly { readonly key: string }[]): Readonly<Record<string, number>> {
  return Object.fromEntries(columns.map(({ key }, i) => [key, first + i]));
}
