import { headerText } from "../../catalogue/call.ts";
import { tableCell } from "../expression.ts";
import type { LineTableItem, LineTableRow } from "../plan.ts";
import { COLUMNS, LABEL, LINE_HEIGHT, REMARK, UNIT, VALUE } from "./columns.ts";
import type { Page } from "./page.ts";

const STATED: readonly (readonly [keyof LineTableRow, string])[] = [
  ["pipe", "inputText"],
  ["length", "inputNumber"],
  ["fittings", "inputText"],
];

/** A line: its inputs in the first three columns, worked figures in those after them. */
export function placeLine(page: Page, table: LineTableItem): void {
  const { unitSet } = page.plan;
  const headings = ["pipe", headerText("length", "length", unitSet), "fittings"];
  headings.forEach((text, column) => {
    page.put(column, { v: text, style: column === VALUE ? "tableHead" : "tableHeadText" });
  });
  table.worked.forEach(({ label, quantity }, i) => {
    page.put(REMARK + i, { v: headerText(label, quantity, unitSet), style: "tableHead" });
  });
  page.height(LINE_HEIGHT * 2);
  page.row += 1;
  const top = page.row;
  table.rows.forEach((row, i) => {
    STATED.forEach(([key, style], column) => {
      page.put(column, { v: row[key], style });
      page.keep(tableCell(table.key, i, key), column);
    });
    table.worked.forEach(({ key, quantity, expression }, j) => {
      const cell = tableCell(table.key, i, key);
      page.keep(cell, REMARK + j);
      page.formula(
        REMARK + j,
        expression((of) => ({ op: "value", key: tableCell(table.key, i, of) })),
        cell,
        page.numberStyle(quantity),
      );
    });
    page.next(row.fittings, COLUMNS[UNIT], Math.ceil(row.pipe.length / COLUMNS[LABEL]));
  });
  const bottom = page.row - 1;
  const columns = Object.fromEntries(table.worked.map(({ key }, i) => [key, REMARK + i]));
  page.keepTable(table.key, { range: { top, left: LABEL, bottom, right: UNIT }, top, bottom, columns });
  page.nameTable(table.key);
}
