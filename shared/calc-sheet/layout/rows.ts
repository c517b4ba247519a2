import { printedUnit } from "../../../src/basis/quantities.ts";
import { isCellError } from "../../cells/cell.ts";
import { fieldOfBox } from "../../duty/box-field.ts";
import { addressOf } from "../../ports/a1.ts";
import { cell, constant, type Expression, join, part, partsOf } from "../expression.ts";
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
import { LABEL, LAST, NUMBER, REFERENCE, REMARK, UNIT, VALUE, WHOLE, WORKING_WIDTH } from "./columns.ts";
import { boxOfInput } from "./input-book.ts";
import type { Page } from "./page.ts";

/** The title of a sheet and the line under it that says how to read it. */
export function placeTitle(page: Page, title: string, legend: string): void {
  page.put(NUMBER, { v: title, style: "title" });
  page.height(24);
  page.row += 1;
  page.reach(REFERENCE + 1, WORKING_WIDTH);
  page.merged(...WHOLE, { v: legend, style: "legend" });
  page.next();
}

export function placeSection(page: Page, { text, summary }: SectionItem): void {
  if (summary === "first") return;
  if (summary === "second") page.startSecondPage();
  // The summary is no part of what is quoted by its lines.
  const number = summary === undefined ? page.startSection(text) : "";
  page.space(7);
  for (let column = NUMBER; column <= REFERENCE; column += 1) {
    const v = column === page.labels[0] ? text : column === NUMBER ? number : undefined;
    page.put(column, { ...(v === undefined ? {} : { v }), style: "section" });
  }
  page.height(16);
  page.row += 1;
  page.headWorkings((workings) => placeWorkingsHead(workings, text));
}

const HEADS = new Map<number, string>([
  [NUMBER, "No."],
  [LABEL, "Quantity"],
  [VALUE, "Value"],
  [UNIT, "Unit"],
  [REMARK, "How, or where from"],
  [REFERENCE, "Ref."],
]);

/** The heads of the columns, repeated on every page from here on. */
export function placeColumnHeads(page: Page): void {
  page.headColumns();
  for (let column = NUMBER; column <= REFERENCE; column += 1) {
    const v = HEADS.get(column);
    page.put(column, { ...(v === undefined ? {} : { v }), style: column === VALUE ? "columnHeadRight" : "columnHead" });
  }
  page.next();
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

export function placeText(page: Page, { key, label, text }: TextItem): void {
  page.merged(...page.labels, { v: label, style: "label" });
  page.input(key, VALUE, { label, written: text, place: key });
  page.merged(VALUE, LAST, { v: text, style: "text" });
  page.next();
}

export function placeInput(page: Page, item: InputItem): void {
  const { key, label, quantity, value, basis } = item;
  page.number(item);
  page.put(LABEL, { v: label, style: "label" });
  if (typeof value === "string") page.merged(VALUE, UNIT, { v: value, style: "inputText" });
  else {
    page.put(VALUE, { v: isCellError(value) ? value.error : value, style: "inputNumber" });
    if (quantity !== undefined) page.put(UNIT, { v: printedUnit(quantity, page.plan.unitSet), style: "unit" });
  }
  page.merged(REMARK, LAST, { v: basis, style: "basis" });
  const box = boxOfInput(item);
  page.input(key, VALUE, {
    label,
    ...box,
    written: isCellError(value) ? value.error : value,
    ...(quantity === undefined ? {} : { quantity }),
    basis,
  });
  if (box.place !== undefined) page.offer(VALUE, fieldOfBox(box.place));
  page.next();
}

export function placeResult(page: Page, item: ResultItem): void {
  const { key, label, quantity, expression, how, main = false, badBelow, isCheck = false } = item;
  const bad = item.isNoVerdict === true ? [] : badTexts(expression);
  page.number(item);
  page.put(LABEL, { v: label, style: main ? "labelMain" : "label" });
  page.result(key, VALUE, label);
  const style = page.numberStyle(quantity, bad.length > 0 ? "verdict" : main ? "main" : "number");
  const isText = typeof page.worked.cells.get(key) === "string";
  const shown = isText ? page.numberStyle(quantity, main ? "verdictMain" : "verdict") : style;
  if (isText && !hasCall(expression)) page.across([VALUE, UNIT], expression, key, shown);
  else {
    page.formula(VALUE, expression, key, shown);
    const unit = quantity === undefined ? undefined : printedUnit(quantity, page.plan.unitSet);
    if (unit !== undefined || main) {
      page.put(UNIT, { ...(unit === undefined ? {} : { v: unit }), style: main ? "unitMain" : "unit" });
    }
  }
  if (isCheck) placeAgreement(page, key, how);
  else page.merged(REMARK, LAST, { v: how, style: main ? "howMain" : "how" });
  flag(page, VALUE, bad, badBelow);
  page.next();
}

/** Whether a cell of this expression holds an answer of the add-in, which no merged cell may. */
export function hasCall(expression: Expression): boolean {
  return expression.op === "call" || expression.op === "notes" || partsOf(expression).some(hasCall);
}

const CHANGED =
  "CHANGED: a formula or a row of the sheet is no longer as it was written. Write it again from the pane.";

/** Whether a check agrees, in words beside it; both in colour where it does not. */
function placeAgreement(page: Page, key: string, agrees: string): void {
  const checked: Expression = { op: "value", key };
  const answer = page.worked.cells.get(key);
  const said = { agrees: `Agrees: ${agrees}.`, none: "No figure to hold against the total." };
  page.merged(REMARK, LAST, {
    f: (textOf) => {
      const cell = textOf(checked);
      return `IF(ISNUMBER(${cell}),IF(${cell}=0,"${said.agrees}","${CHANGED}"),"${said.none}")`;
    },
    cached: typeof answer === "number" ? (answer === 0 ? said.agrees : CHANGED) : said.none,
    style: "how",
  });
  const [figure, words] = [addressOf(page.row, VALUE), addressOf(page.row, REMARK)];
  const style = { color: "#B3261E", bold: true } as const;
  for (const ref of [figure, words]) page.rule({ ref, when: `AND(ISNUMBER(${figure}),${figure}<>0)`, style });
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
export function placeFinding(page: Page, item: FindingItem): void {
  const { key, label, expression } = item;
  page.work((workings) => placeNote(workings, { key, label, expression }));
  if (expression.op === "notes") return;
  page.number(item);
  page.put(LABEL, { v: label, style: "label" });
  page.across([VALUE, LAST], { op: "value", key }, key, "finding");
  page.next();
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
/** In short the line that says of more is enough. */
const ROWS_TO_SPARE_IN_BRIEF = 0;

/** Before the source of a finding. */
const SOURCE = " [";

export function placeFoundList(page: Page, { of, rows, ifNone, isBrief }: FoundListItem): void {
  const at = (row: number, column: "kind" | "finding" | "where"): string => {
    const held = page.worked.cells.get(cell(of, row, column).key);
    const text = typeof held === "string" ? held : "";
    return isBrief ? (text.split(SOURCE)[0] as string) : text;
  };
  const found = Array.from({ length: rows }, (_, row) => row).filter((row) => at(row, "finding") !== "").length;
  const printed = Math.min(rows, Math.max(1, found + (isBrief ? ROWS_TO_SPARE_IN_BRIEF : ROWS_TO_SPARE)));
  for (let row = 0; row < printed; row += 1) {
    // Some programs show a blank cell that a formula reads as 0.
    const shown = (column: "where" | "kind" | "finding"): Expression => join(part(of, column, row), constant(""));
    const text = at(row, "finding");
    const isNone = row === 0 && text === "";
    page.number(undefined, "listNumber");
    page.merged(...page.labels, {
      f: (textOf) => textOf(shown("where")),
      cached: at(row, "where"),
      style: "optionName",
    });
    page.put(VALUE, { f: (textOf) => textOf(shown("kind")), cached: at(row, "kind"), style: "optionVerdict" });
    for (const grave of ["Error", "Safety", "Limit"]) flag(page, VALUE, [grave]);
    page.merged(UNIT, LAST, {
      f: (textOf) => {
        const whole = shown("finding");
        const finding = textOf(isBrief ? { op: "before", text: whole, mark: SOURCE } : whole);
        return row === 0 ? `IF(${textOf(part(of, "finding", row))}="","${ifNone}",${finding})` : finding;
      },
      cached: isNone ? ifNone : text,
      style: "finding",
    });
    page.next();
  }
  if (printed === rows) return;
  page.merged(page.labels[0], REFERENCE, {
    f: (textOf) =>
      `IF(${textOf(part(of, "finding", printed))}="","","${isBrief ? "More has come up: it stands in the lists of the calculation and the workings." : "More stand in the list of the workings."}")`,
    cached: "",
    style: "statement",
  });
  page.next();
}

export function placeOption(page: Page, item: OptionItem): void {
  const { name, verdict, remarks } = optionCells(item);
  if (item.heading !== undefined) {
    for (let column = LABEL; column <= REFERENCE; column += 1) {
      page.put(column, { ...(column === LABEL ? { v: item.heading } : {}), style: "listHead" });
    }
    page.next();
  }
  page.number(item.heading === undefined || item.appendix !== undefined ? undefined : item, "listNumber");
  page.formula(LABEL, name.expression, name.key, "optionName");
  page.formula(VALUE, verdict.expression, verdict.key, "optionVerdict");
  page.across([UNIT, LAST], remarks.expression, remarks.key, "finding");
  page.next();
}

export function placeStatement(page: Page, { text, mark, caution }: StatementItem): void {
  if (mark !== undefined) page.put(NUMBER, { v: mark, style: "listNumber" });
  page.merged(mark === undefined ? page.labels[0] : LABEL, REFERENCE, {
    v: text,
    style: caution === true ? "caution" : "statement",
  });
  page.next();
}
