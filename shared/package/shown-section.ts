import { type Quantity, UNIT_SETS, type UnitSetName } from "../../src/basis/quantities.ts";
import { amount, type Finding, gravestFirst } from "../../src/basis/result.ts";
import { toEngine } from "../../src/basis/units.ts";
import { tableCell } from "../calc-sheet/expression.ts";
import { optionCells } from "../calc-sheet/option.ts";
import type { BlockRow, PlanItem, ResultItem, TableItem } from "../calc-sheet/plan.ts";
import { headerText } from "../catalogue/call.ts";
import { type Argument, isCellError, isRange } from "../cells/cell.ts";
import type { Duty } from "../duty/duty.ts";
import { moneyFigure } from "../text/figure.ts";
import { bareMargin, marginText } from "../text/margin-text.ts";
import { amountFigure, bareFigure } from "../text/words.ts";
import { type WorkedDuty, workedDuty } from "./worked-duty.ts";

/** A section of the calc sheet in words, for a pane that has no cells. */
export interface ShownSection {
  readonly figures: readonly { readonly label: string; readonly text: string; readonly main: boolean }[];
  /** Boxes of which figures here wait, by their labels. */
  readonly waits: readonly string[];
  /** Printed tables, in the order of the sheet. */
  readonly tables: readonly ShownTable[];
  /** Ranked options under their heading, best first. */
  readonly lists: readonly { readonly label: string; readonly options: readonly ShownOption[] }[];
  /** What the section's calls remark, each once, the gravest first. */
  readonly findings: readonly Finding[];
  /** What the section says whatever comes out. */
  readonly statements: readonly string[];
}

export interface ShownTable {
  readonly heading: string;
  /** With their units. */
  readonly columns: readonly string[];
  readonly rows: readonly { readonly label: string; readonly cells: readonly string[] }[];
  /** Why cells hold no answer, each reason once; such cells show a dash. */
  readonly faults: readonly string[];
}

export interface ShownOption {
  readonly name: string;
  readonly verdict: string;
  /** What speaks for it, against it, what it needs; those without text left out. */
  readonly remarks: readonly { readonly label: string; readonly text: string }[];
}

/** What the sheets say in a section; undefined where this duty has none. */
export function shownSection(duty: Duty, id: string): ShownSection | undefined {
  const worked = workedDuty(duty);
  const inside = itemsUnder(worked.plan.items, id);
  if (inside === undefined) return undefined;
  return {
    waits: [...new Set(inside.flatMap((item) => waitsOf(item, worked)))],
    figures: inside.flatMap(figuresIn).map((item) => figureOf(item, worked, duty.unitSet)),
    tables: inside.flatMap((item) => (item.kind === "table" ? [tableOf(item, worked, duty.unitSet)] : [])),
    lists: listsOf(inside, worked),
    findings: gravestFirst(inside.flatMap((item) => findingsOf(item, worked))),
    statements: inside.flatMap((item) => (item.kind === "statement" ? [item.text] : [])),
  };
}

/** What stands under the headings of this name, on whichever sheet. */
function itemsUnder(items: readonly PlanItem[], id: string): readonly PlanItem[] | undefined {
  let isInside = false;
  let isThere = false;
  const inside = items.filter((item) => {
    if (item.kind !== "section") return isInside;
    isInside = item.id === id;
    isThere ||= isInside;
    return false;
  });
  return isThere ? inside : undefined;
}

function waitsOf(item: PlanItem, { figure }: WorkedDuty): readonly string[] {
  const found = item.kind === "result" || item.kind === "input" ? figure(item) : 0;
  return typeof found === "number" || found.waitsFor === undefined ? [] : [found.waitsFor];
}

function figuresIn(item: PlanItem): readonly (ResultItem | BlockRow)[] {
  if (item.kind === "blocks") return item.blocks.flatMap(({ rows }) => rows);
  return item.kind === "result" ? [item] : [];
}

function figureOf(
  item: ResultItem | BlockRow,
  { figure, worked }: WorkedDuty,
  units: UnitSetName,
): ShownSection["figures"][number] {
  const { key, label, quantity, main = false } = item;
  const badBelow = "badBelow" in item ? item.badBelow : undefined;
  const isMoney = "isMoney" in item;
  const found = figure(item);
  const text =
    typeof found !== "number"
      ? textOf(worked.cells.get(key))
      : quantity === undefined
        ? (isMoney ? moneyFigure : wholeText)(found)
        : (badBelow === 0 ? marginText : amountFigure)(amount(quantity, found), units);
  return { label, text, main };
}

const NO_ANSWER = "–";

/** A count, as the sheet prints it: whole, thousands set apart. */
function wholeText(value: number): string {
  return Math.round(value).toLocaleString("en-US");
}

function tableOf({ key, heading, columns, rows }: TableItem, { worked }: WorkedDuty, units: UnitSetName): ShownTable {
  const faults = new Set<string>();
  const shown = (row: number, { key: column, quantity, badBelow, isMoney }: TableItem["columns"][number]): string => {
    const cell = worked.cells.get(tableCell(key, row, column));
    if (typeof cell === "number")
      return quantity === undefined
        ? (isMoney === true ? moneyFigure : wholeText)(cell)
        : figureInHead(quantity, cell, badBelow === 0);
    const text = textOf(cell);
    if (cell === undefined || isRange(cell) || !isCellError(cell)) return text === "" ? NO_ANSWER : text;
    // What a cell waits for is said once, above.
    if (cell.waitsFor === undefined) faults.add(text);
    return NO_ANSWER;
  };
  const figureInHead = (quantity: Quantity, value: number, isMargin: boolean): string =>
    (isMargin ? bareMargin : bareFigure)(amount(quantity, toEngine(value, UNIT_SETS[units][quantity])), units);
  return {
    heading,
    columns: columns.map(({ label, quantity }) => headerText(label, quantity, units)),
    rows: rows.map(({ label }, i) => ({ label, cells: columns.map((column) => shown(i, column)) })),
    faults: [...faults],
  };
}

/** Options of a ranked list follow one another; only the first of them carries the heading. */
function listsOf(items: readonly PlanItem[], { worked }: WorkedDuty): ShownSection["lists"] {
  const lists: { label: string; options: ShownOption[] }[] = [];
  const at = (key: string): string => textOf(worked.cells.get(key));
  for (const item of items) {
    if (item.kind !== "option") continue;
    if (item.heading !== undefined) lists.push({ label: item.heading, options: [] });
    const { name, verdict, texts } = optionCells(item);
    // A list as long as the longest there may be ends in blank rows.
    if (at(name.key) === "") continue;
    const remarks = texts.map(({ label, key }) => ({ label, text: at(key) })).filter(({ text }) => text !== "");
    lists.at(-1)?.options.push({ name: at(name.key), verdict: at(verdict.key), remarks });
  }
  return lists;
}

function findingsOf(item: PlanItem, { findings }: WorkedDuty): readonly Finding[] {
  return item.kind === "finding" && item.expression.op === "notes" ? (findings.get(item.key) ?? []) : [];
}

function textOf(answer: Argument | undefined): string {
  if (answer === undefined || answer === null || isRange(answer)) return "";
  if (!isCellError(answer)) return String(answer);
  return answer.waitsFor === undefined ? (answer.message ?? answer.error) : NO_ANSWER;
}
