import { printedUnit } from "../../../src/basis/quantities.ts";
import { type Cell, isCellError } from "../../cells/cell.ts";
import type { Field } from "../../duty/field.ts";
import { FIELDS, type FieldKey } from "../../duty/fields.ts";
import { addressOf } from "../../ports/a1.ts";
import { cell, constant, type Expression, join, part } from "../expression.ts";
import { optionCells } from "../option.ts";
import type {
  FindingItem,
  FoundListItem,
  InputItem,
  OptionItem,
  ResultItem,
  SectionItem,
  StatementItem,
  TextItem,
} from "../plan.ts";
import {
  COLUMNS,
  LABEL,
  LAST,
  LINE_HEIGHT,
  linesOf,
  REMARK,
  ROW_HEIGHT,
  UNIT,
  VALUE,
  WIDTHS,
  WORKING_WIDTH,
} from "./columns.ts";
import { boxOfInput } from "./input-book.ts";
import type { Page } from "./page.ts";

/** The title of a sheet and the line under it that says how to read it. */
export function placeTitle(page: Page, title: string, legend: string): void {
  page.put(LABEL, { v: title, style: "title" });
  page.height(24);
  page.row += 1;
  page.put(LABEL, { v: legend, style: "legend" });
  page.merge({ top: page.row, left: LABEL, bottom: page.row, right: LAST });
  page.height(LINE_HEIGHT * 2);
  page.row += 1;
}

export function placeSection(page: Page, { text, newPage = false }: SectionItem): void {
  if (newPage) page.breakPage();
  page.height(8);
  page.row += 1;
  for (let column = LABEL; column <= LAST; column += 1) {
    page.put(column, { ...(column === LABEL ? { v: text } : {}), style: "section" });
  }
  page.height(18);
  page.row += 1;
  page.headWorkings((workings) => placeWorkingsHead(workings, text));
}

/** Columns that a heading of the workings is drawn over. */
const HEAD_COLUMNS = 8;

function placeWorkingsHead(workings: Page, text: string): void {
  for (let column = 0; column < HEAD_COLUMNS; column += 1) {
    workings.put(column, { ...(column === 0 ? { v: text } : {}), style: "section" });
  }
  workings.reach(HEAD_COLUMNS, WORKING_WIDTH);
  workings.row += 1;
}

export function placeText(page: Page, { key, label, text, box }: TextItem): void {
  page.put(LABEL, { v: label, style: "label" });
  const name = key ?? box;
  if (name !== undefined)
    page.input(name, VALUE, { label, written: text, ...(box === undefined ? {} : { place: box }) });
  page.merged(VALUE, LAST, { v: text, style: "text" });
  page.next(text, WIDTHS.text);
}

export function placeInput(page: Page, item: InputItem): void {
  const { key, label, quantity, value, basis } = item;
  page.put(LABEL, { v: label, style: "label" });
  const isText = typeof value === "string";
  page.put(VALUE, { v: isCellError(value) ? value.error : value, style: isText ? "inputText" : "inputNumber" });
  if (quantity !== undefined) page.put(UNIT, { v: printedUnit(quantity, page.plan.unitSet), style: "unit" });
  page.merged(REMARK, LAST, { v: basis, style: "basis" });
  page.input(key, VALUE, {
    label,
    ...boxOfInput(item),
    written: isCellError(value) ? value.error : value,
    ...(quantity === undefined ? {} : { quantity }),
    basis,
  });
  const { choices, takesNoOther = false } = fieldOf(item.of ?? key);
  if (choices !== undefined) page.offer(VALUE, choices, takesNoOther);
  const lines = Math.ceil(label.length / COLUMNS[LABEL]);
  page.next(basis, WIDTHS.remark, isText ? Math.max(lines, Math.ceil(value.length / COLUMNS[VALUE])) : lines);
}

function fieldOf(key: string): Pick<Field, "choices" | "takesNoOther"> {
  return Object.hasOwn(FIELDS, key) ? FIELDS[key as FieldKey] : {};
}

export function placeResult(page: Page, item: ResultItem): void {
  const { key, label, quantity, expression, how, main = false, badBelow } = item;
  const bad = badTexts(expression);
  page.put(LABEL, { v: label, style: main ? "labelMain" : "label" });
  page.result(key, VALUE, label);
  page.formula(
    VALUE,
    expression,
    key,
    bad.length === 0 ? page.numberStyle(quantity, main ? "main" : "number") : page.numberStyle(quantity, "verdict"),
  );
  if (quantity !== undefined) {
    page.put(UNIT, { v: printedUnit(quantity, page.plan.unitSet), style: main ? "unitMain" : "unit" });
  } else if (main) page.put(UNIT, { style: "unitMain" });
  page.merged(REMARK, LAST, { v: how, style: main ? "howMain" : "how" });
  flag(page, VALUE, bad, badBelow);
  page.next(how, WIDTHS.remark, Math.ceil(label.length / COLUMNS[LABEL]));
}

/** The texts of a verdict that want attention: all but the best. */
export function badTexts(expression: Expression): readonly string[] {
  if (expression.op === "ifNumber") return badTexts(expression.met);
  if (expression.op !== "atLeast") return [];
  const { otherwise } = expression;
  if (otherwise.op === "atLeast") return [...textOf(otherwise.met), ...badTexts(otherwise)];
  return textOf(otherwise);
}

function textOf(expression: Expression): readonly string[] {
  return expression.op === "constant" && typeof expression.value === "string" ? [expression.value] : [];
}

/** Marks the cell while it shows one of these texts, or a figure below a bound. */
export function flag(page: Page, column: number, texts: readonly string[], badBelow?: number): void {
  const ref = addressOf(page.row, column);
  const style = { color: "#B3261E", bold: true } as const;
  for (const text of texts) page.rule({ ref, when: `${ref}="${text.replaceAll('"', '""')}"`, style });
  if (badBelow !== undefined) page.rule({ ref, when: `AND(ISNUMBER(${ref}),${ref}<${badBelow})`, style });
}

/** The text of a call stands in the workings; what it remarks is printed in the list of all. */
export function placeFinding(page: Page, { key, label, expression }: FindingItem): void {
  page.work((workings) => placeNote(workings, { key, label, expression }));
  if (expression.op === "notes") return;
  page.put(LABEL, { v: label, style: "label" });
  const answer = page.worked.cells.get(key);
  const text = typeof answer === "string" ? answer : "";
  page.merged(VALUE, LAST, {
    f: (textOf) => textOf({ op: "value", key }),
    cached: (answer ?? null) as Cell,
    style: "finding",
  });
  page.next(text, WIDTHS.text);
}

/** A text in a row of its own, which no merged cell may hold as the answer of an add-in function. */
function placeNote(
  workings: Page,
  { key, label, expression }: Pick<FindingItem, "key" | "label" | "expression">,
): void {
  workings.put(0, { v: label, style: "workingLabel" });
  workings.row += 1;
  workings.keep(key, 0);
  workings.formula(0, expression, key, "working");
  workings.row += 2;
}

/** Rows left for what a change of an input brings up. */
const ROWS_TO_SPARE = 3;

export function placeFoundList(page: Page, { of, rows, ifNone }: FoundListItem): void {
  const at = (row: number, column: "kind" | "finding" | "where"): string => {
    const text = page.worked.cells.get(cell(of, row, column).key);
    return typeof text === "string" ? text : "";
  };
  const found = Array.from({ length: rows }, (_, row) => row).filter((row) => at(row, "finding") !== "").length;
  const printed = Math.min(rows, found + ROWS_TO_SPARE);
  for (let row = 0; row < printed; row += 1) {
    // Some programs show a blank cell that a formula reads as 0.
    const shown = (column: "where" | "kind" | "finding"): Expression => join(part(of, column, row), constant(""));
    const text = at(row, "finding");
    const isNone = row === 0 && text === "";
    page.put(LABEL, { f: (textOf) => textOf(shown("where")), cached: at(row, "where"), style: "optionName" });
    page.put(VALUE, { f: (textOf) => textOf(shown("kind")), cached: at(row, "kind"), style: "optionVerdict" });
    for (const grave of ["Error", "Safety", "Limit"]) flag(page, VALUE, [grave]);
    page.merged(UNIT, LAST, {
      f: (textOf) => {
        const finding = textOf(shown("finding"));
        return row === 0 ? `IF(${textOf(part(of, "finding", row))}="","${ifNone}",${finding})` : finding;
      },
      cached: isNone ? ifNone : text,
      style: "finding",
    });
    page.next(isNone ? ifNone : text, WIDTHS.option, linesOf(at(row, "where"), COLUMNS[LABEL]));
  }
  if (printed === rows) return;
  page.merged(LABEL, LAST, {
    f: (textOf) => `IF(${textOf(part(of, "finding", printed))}="","","More stand in the list of the workings.")`,
    cached: "",
    style: "statement",
  });
  page.next("", WIDTHS.statement);
}

export function placeOption(page: Page, item: OptionItem): void {
  const { name, verdict, remarks } = optionCells(item);
  if (item.heading !== undefined) {
    for (let column = LABEL; column <= LAST; column += 1) {
      page.put(column, { ...(column === LABEL ? { v: item.heading } : {}), style: "listHead" });
    }
    page.height(ROW_HEIGHT);
    page.row += 1;
  }
  page.formula(LABEL, name.expression, name.key, "optionName");
  page.formula(VALUE, verdict.expression, verdict.key, "optionVerdict");
  const text = page.worked.cells.get(remarks.key);
  page.merged(UNIT, LAST, {
    f: (textOf) => textOf(remarks.expression),
    cached: (text ?? null) as Cell,
    style: "finding",
  });
  const lines = [textAt(page, name.key, COLUMNS[LABEL]), textAt(page, verdict.key, COLUMNS[VALUE])];
  page.next(typeof text === "string" ? text : "", WIDTHS.option, Math.max(...lines));
}

/** Lines the text of a worked cell takes in a column. */
function textAt(page: Page, key: string, width: number): number {
  const text = page.worked.cells.get(key);
  return typeof text === "string" ? linesOf(text, width) : 1;
}

export function placeStatement(page: Page, { text, caution }: StatementItem): void {
  page.merged(LABEL, LAST, { v: text, style: caution === true ? "caution" : "statement" });
  page.next(text, WIDTHS.statement);
}
