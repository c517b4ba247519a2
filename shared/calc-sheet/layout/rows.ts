import { printedUnit } from "../../../src/basis/quantities.ts";
import type { Cell } from "../../cells/cell.ts";
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
import { placeBox } from "./input-pair.ts";
import type { Page } from "./page.ts";
import { rangeName } from "./range-name.ts";

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
  page.space(3);
  for (let column = NUMBER; column <= REFERENCE; column += 1) {
    const v = column === page.labels[0] ? text : column === NUMBER ? number : undefined;
    page.put(column, { ...(v === undefined ? {} : { v }), style: "section" });
  }
  page.height(13.5);
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

/** As what stands under them. */
const HEAD_STYLES = new Map<number, string>([
  [VALUE, "columnHeadRight"],
  [UNIT, "columnHeadUnit"],
  [REFERENCE, "columnHeadRight"],
]);

/** The heads of the columns, repeated on every page from here on. */
export function placeColumnHeads(page: Page): void {
  page.headColumns();
  for (let column = NUMBER; column <= REFERENCE; column += 1) {
    const v = HEADS.get(column);
    page.put(column, { ...(v === undefined ? {} : { v }), style: HEAD_STYLES.get(column) ?? "columnHead" });
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
  page.number(item);
  page.put(LABEL, { v: item.label, style: "label" });
  const { basis, onceChanged } = item;
  const said = onceChanged === undefined ? { v: basis } : page.whileAsWritten([item.key], basis, () => onceChanged);
  page.merged(REMARK, LAST, { ...said, style: "basis" });
  placeBox(page, item, VALUE, UNIT, item.basis);
  page.next();
}

export function placeResult(page: Page, item: ResultItem): void {
  const { key, label, quantity, expression, how, main = false, badBelow, isCheck = false } = item;
  const shownAs = item.isMoney === true ? "money" : quantity;
  const bad = item.isNoVerdict === true ? [] : badTexts(expression);
  page.number(item);
  page.put(LABEL, { v: label, style: main ? "labelMain" : "label" });
  page.result(key, VALUE, label);
  const style = page.numberStyle(shownAs, bad.length > 0 ? "verdict" : main ? "main" : "number");
  const isText = typeof page.worked.cells.get(key) === "string";
  const shown = isText ? page.numberStyle(shownAs, main ? "verdictMain" : "verdict") : style;
  if (isText && !hasCall(expression)) page.across([VALUE, UNIT], expression, key, shown);
  else {
    page.formula(VALUE, expression, key, shown);
    const unit = quantity === undefined ? undefined : printedUnit(quantity, page.plan.unitSet);
    if (unit !== undefined || main) {
      page.put(UNIT, { ...(unit === undefined ? {} : { v: unit }), style: main ? "unitMain" : "unit" });
    }
  }
  if (isCheck) placeAgreement(page, key, how);
  else placeHow(page, item);
  flag(page, VALUE, bad, badBelow);
  page.next();
}

function placeHow(page: Page, { how, arisesIn, main }: ResultItem): void {
  const style = main ? "howMain" : "how";
  if (arisesIn === undefined) {
    page.merged(REMARK, LAST, { v: how, style });
    return;
  }
  const state = page.worked.cells.get(arisesIn.key);
  page.merged(REMARK, LAST, {
    f: (textOf) => textOf(join(constant(`${how} `), arisesIn)),
    cached: typeof state === "string" ? `${how} ${state}` : ((state ?? null) as Cell),
    style,
  });
}

/** Whether a cell of this expression holds an answer of the add-in, which no merged cell may. */
export function hasCall(expression: Expression): boolean {
  return expression.op === "call" || expression.op === "notes" || partsOf(expression).some(hasCall);
}

/** Of what wants attention, besides its words. */
const ALARM = { color: "#B3261E", bold: true } as const;

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
  for (const ref of [figure, words]) page.rule({ ref, when: `AND(ISNUMBER(${figure}),${figure}<>0)`, style: ALARM });
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
  for (const text of texts) page.rule({ ref, when: `${ref}="${text.replaceAll('"', '""')}"`, style: ALARM });
  if (badBelow !== undefined) page.rule({ ref, when: `AND(ISNUMBER(${ref}),${ref}<${badBelow})`, style: ALARM });
}

/** The text of a call stands in the workings; what it remarks is printed in the list of all. */
export function placeFinding(page: Page, item: FindingItem): void {
  const { key, label, expression } = item;
  page.work((workings) => placeNote(workings, { key, label, expression }));
  if (expression.op === "notes" || item.isSaidElsewhere === true) return;
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
  workings.beginBlock(label, 1);
  workings.keep(key, 0);
  workings.formula(0, expression, key, "working");
  workings.row += 2;
}

/** Before the source of a finding. */
const SOURCE = " [";

/** "Limit, discharge flange: …" over the whole page, in colour where somebody must act. */
export function placeFoundList(page: Page, { of, rows, ifNone }: FoundListItem): void {
  const at = (row: number, column: "kind" | "finding" | "where"): string => {
    const held = page.worked.cells.get(cell(of, row, column).key);
    return typeof held === "string" ? held : "";
  };
  const isFound = (row: number): boolean => at(row, "finding") !== "";
  const found = Array.from({ length: rows }, (_, row) => row).filter(isFound).length;
  const printed = Math.min(rows, Math.max(1, found));
  const top = page.row;
  for (let row = 0; row < printed; row += 1) {
    const none = row === 0 ? ifNone : "";
    const [kind, where, finding] = [part(of, "kind", row), part(of, "where", row), part(of, "finding", row)];
    const brief: Expression = { op: "before", text: finding, mark: SOURCE };
    page.number(undefined, "listNumber");
    page.merged(page.labels[0], REFERENCE, {
      f: (textOf) => `IF(${textOf(finding)}="","${none}",${textOf(kind)}&", "&${textOf(where)}&": "&${textOf(brief)})`,
      cached: isFound(row)
        ? `${at(row, "kind")}, ${at(row, "where")}: ${at(row, "finding").split(SOURCE)[0] as string}`
        : none,
      style: "finding",
    });
    const ref = addressOf(page.row, page.labels[0]);
    for (const grave of ["Error", "Safety", "Limit"])
      page.rule({ ref, when: `LEFT(${ref},${grave.length})="${grave}"`, style: ALARM });
    page.next();
  }
  if (printed < rows) placeMore(page, part(of, "finding", printed));
  const filled = printed + (printed < rows ? 1 : 0);
  const left = page.labels[0];
  const bottom = page.row - 1;
  const name = `${rangeName(of.key)}_list`;
  page.nameRange(name, { top, left, bottom, right: left });
  const columns = [{ across: 0, label: "text", filled }];
  page.workedColumns(name, { label: "List of findings", rows: bottom - top + 1, headings: 0, columns });
}

/** Says where the rest of a list stands, once it is longer than it was. */
function placeMore(page: Page, next: Expression): void {
  page.merged(page.labels[0], REFERENCE, {
    f: (textOf) => `IF(${textOf(next)}="","","More has come up: it stands in the list of the workings.")`,
    cached: "",
    style: "statement",
  });
  page.next();
}

/** An option in columns under the heading of its list; the only one of a list, which has its heading before it, in one text. */
export function placeOption(page: Page, item: OptionItem, isAlone: boolean): void {
  const { name, verdict, remarks } = optionCells(item);
  const { heading } = item;
  if (heading !== undefined && isAlone) {
    placeAlone(page, item, heading);
    return;
  }
  if (heading !== undefined) {
    for (let column = LABEL; column <= REFERENCE; column += 1) {
      page.put(column, { ...(column === LABEL ? { v: heading } : {}), style: "listHead" });
    }
    page.next();
  }
  page.number(heading === undefined || item.appendix !== undefined ? undefined : item, "listNumber");
  page.formula(LABEL, name.expression, name.key, "optionName");
  page.formula(VALUE, verdict.expression, verdict.key, "optionVerdict");
  page.across([UNIT, LAST], remarks.expression, remarks.key, "finding");
  nameOption(page, item, ["name", "verdict", "remarks"]);
  page.next();
}

/** What stands in the row of an option is held against its formulas once the sheet is opened again. */
function nameOption(page: Page, { key }: OptionItem, columns: readonly string[]): void {
  const name = `${rangeName(key)}_row`;
  page.nameRange(name, { top: page.row, left: LABEL, bottom: page.row, right: LABEL + columns.length - 1 });
  page.workedColumns(name, {
    label: "Choice of a ranking",
    rows: 1,
    headings: 0,
    columns: columns.map((label, across) => ({ across, label, filled: 1 })),
  });
}

/** "Metals, best first: ductile iron, suits. Parts: …" */
function placeAlone(page: Page, item: OptionItem, heading: string): void {
  const { name, verdict, remarks } = optionCells(item);
  const [named, judged, remarked] = [name, verdict, remarks].map(({ key }) => page.worked.cells.get(key));
  const texts = [named, judged, remarked].every((text) => typeof text === "string");
  page.number(item, "listNumber");
  page.merged(LABEL, LAST, {
    f: (textOf) =>
      textOf(
        join(
          constant(`${heading}: `),
          name.expression,
          constant(", "),
          verdict.expression,
          constant(". "),
          remarks.expression,
        ),
      ),
    cached: texts ? `${heading}: ${named}, ${judged}. ${remarked}` : ((named ?? null) as Cell),
    style: "finding",
  });
  nameOption(page, item, ["text"]);
  page.next();
}

export function placeStatement(page: Page, { text, mark, caution }: StatementItem): void {
  if (mark !== undefined) page.put(NUMBER, { v: mark, style: "listNumber" });
  page.merged(mark === undefined ? NUMBER : LABEL, REFERENCE, {
    v: text,
    style: caution === true ? "caution" : "statement",
  });
  page.next();
}
