import type { UnitSetName } from "../../src/basis/quantities.ts";
import { amount } from "../../src/basis/result.ts";
import { tableCell } from "../calc-sheet/expression.ts";
import { optionCells } from "../calc-sheet/option.ts";
import type { PlanItem, TableItem } from "../calc-sheet/plan.ts";
import { headerText } from "../catalogue/call.ts";
import { type Argument, isCellError, isRange } from "../cells/cell.ts";
import type { Duty } from "../duty/duty.ts";
import { amountText, figures } from "../text/words.ts";
import { type WorkedDuty, workedDuty } from "./worked-duty.ts";

/** A section of the calc sheet in words, for a pane that has no cells. */
export interface ShownSection {
  readonly figures: readonly { readonly label: string; readonly text: string; readonly main: boolean }[];
  /** Printed tables, in the order of the sheet. */
  readonly tables: readonly ShownTable[];
  /** Ranked options under their heading, best first. */
  readonly lists: readonly { readonly label: string; readonly options: readonly ShownOption[] }[];
  /** What the section's calls remark, with reason and source. */
  readonly remarks: readonly string[];
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

/** What the sheet says under a heading; undefined where this duty has no such section. */
export function shownSection(duty: Duty, heading: string): ShownSection | undefined {
  const worked = workedDuty(duty);
  const { items } = worked.plan;
  const start = items.findIndex((item) => item.kind === "section" && item.text === heading);
  if (start < 0) return undefined;
  const after = items.slice(start + 1);
  const end = after.findIndex(({ kind }) => kind === "section");
  const inside = end < 0 ? after : after.slice(0, end);
  return {
    figures: inside.flatMap((item) => figureOf(item, worked, duty.unitSet)),
    tables: inside.flatMap((item) => (item.kind === "table" ? [tableOf(item, worked, duty.unitSet)] : [])),
    lists: listsOf(inside, worked),
    remarks: [...new Set(inside.flatMap((item) => remarksOf(item, worked)))],
  };
}

function figureOf(item: PlanItem, { figure, worked }: WorkedDuty, units: UnitSetName): ShownSection["figures"] {
  if (item.kind !== "result") return [];
  const { key, label, quantity, main = false } = item;
  const found = quantity === undefined ? undefined : figure(key);
  const cell = worked.cells.get(key);
  const text =
    quantity !== undefined && typeof found === "number"
      ? amountText(amount(quantity, found), units)
      : typeof cell === "number"
        ? wholeText(cell)
        : textOf(cell);
  return [{ label, text, main }];
}

const NO_ANSWER = "–";

/** A count or an amount of money, as the sheet prints them: whole, thousands set apart. */
function wholeText(value: number): string {
  return Math.round(value).toLocaleString("en-US");
}

function tableOf({ key, heading, columns, rows }: TableItem, { worked }: WorkedDuty, units: UnitSetName): ShownTable {
  const faults = new Set<string>();
  const shown = (row: number, { key: column, quantity }: TableItem["columns"][number]): string => {
    const cell = worked.cells.get(tableCell(key, row, column));
    if (typeof cell === "number") return quantity === undefined ? wholeText(cell) : figures(cell);
    const text = textOf(cell);
    if (cell !== undefined && !isRange(cell) && isCellError(cell)) faults.add(text);
    else if (text !== "") return text;
    return NO_ANSWER;
  };
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
  for (const item of items) {
    if (item.kind !== "option") continue;
    if (item.heading !== undefined) lists.push({ label: item.heading, options: [] });
    const { name, verdict, remarks } = optionCells(item);
    const at = (key: string): string => textOf(worked.cells.get(key));
    lists.at(-1)?.options.push({ name: at(name.key), verdict: at(verdict.key), remarks: labelled(at(remarks.key)) });
  }
  return lists;
}

/** "For: …", "Mind: …": one remark a line. */
function labelled(text: string): ShownOption["remarks"] {
  return text
    .split("\n")
    .filter((line) => line !== "")
    .map((line) => {
      const [, label = "", said = line] = /^([A-Z][a-z]+): (.*)$/.exec(line) ?? [];
      return { label, text: said };
    });
}

function remarksOf(item: PlanItem, { worked }: WorkedDuty): readonly string[] {
  if (item.kind === "statement") return [item.text];
  if (item.kind !== "finding" || item.expression.op !== "notes") return [];
  return textOf(worked.cells.get(item.key))
    .split("\n")
    .filter((line) => line !== "");
}

function textOf(answer: Argument | undefined): string {
  if (answer === undefined || answer === null || isRange(answer)) return "";
  return isCellError(answer) ? (answer.message ?? answer.error) : String(answer);
}
