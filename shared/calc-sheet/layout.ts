import type { SheetSet } from "../ports/sheet-set.ts";
import { AddressBook } from "./layout/address-book.ts";
import { placeAsWritten, placeInputState } from "./layout/as-written.ts";
import { placeBlocks } from "./layout/blocks.ts";
import { placeCharts } from "./layout/charts.ts";
import { ChoiceBook } from "./layout/choices.ts";
import { COLUMNS } from "./layout/columns.ts";
import { InputBook } from "./layout/input-book.ts";
import { isPair, placePair } from "./layout/input-pair.ts";
import { placeLine } from "./layout/line.ts";
import { placeLines } from "./layout/lines-of-text.ts";
import { type Common, type Cut, Page } from "./layout/page.ts";
import { markWorkings, placePrices, placeRecord } from "./layout/record.ts";
import {
  placeColumnHeads,
  placeFinding,
  placeFoundList,
  placeInput,
  placeOption,
  placeResult,
  placeSection,
  placeStatement,
  placeText,
  placeTitle,
} from "./layout/rows.ts";
import { printOf, titlesOf, wantedNames } from "./layout/sheets.ts";
import { placeInputTable, placeSpill, placeTable, placeWorking } from "./layout/tables.ts";
import { placeTitleBlock } from "./layout/title-block.ts";
import { placeVerdicts } from "./layout/verdicts.ts";
import { recordText, type SavedWith } from "./open-again/record.ts";
import type { InputSheet } from "./open-again/written-inputs.ts";
import {
  byPrint,
  type CalcSheetPlan,
  type OptionItem,
  type PlanItem,
  type SheetId,
  type StatementItem,
  statement,
} from "./plan.ts";
import type { WorkedPlan } from "./work-out.ts";

/** Sheets of a plan, each known by what it is. */
export interface DutySheets extends SheetSet {
  readonly ids: readonly SheetId[];
}

/**
 * Gives each item of a plan its cells, with live formulas and the values worked out for them: the sheet of the duty, that
 * of the estimate where the plan has one, and the workings where there are any. What the duty was saved as travels with
 * them, where it is given, and they say whether their inputs are still those.
 */
export function layOut(plan: CalcSheetPlan, worked: WorkedPlan, saved?: SavedWith): DutySheets {
  // Where printed pages end is seen once all stands in its place; headings repeated there move what follows.
  const before = filled(plan, worked, saved, new Map()).pages;
  const cuts = new Map(before.map((page) => [page.id, page.cuts()]));
  const { pages, inputs } = filled(plan, worked, saved, cuts);
  for (const page of pages) page.finish();
  const wanted = wantedNames(plan);
  return {
    ids: pages.map(({ id }) => id),
    wanted: pages.map(({ id }) => wanted[id]),
    sheets: (given) => {
      const names = Object.fromEntries(pages.map(({ id }, i) => [id, given[i]]));
      return pages.map((one) => one.sheet(names, printOf(one.id, plan)));
    },
    ...(saved === undefined ? {} : { records: [recordText(saved, inputs)] }),
  };
}

/** The sheets of a plan, filled; none that has nothing but its title, save that of the duty. */
function filled(
  plan: CalcSheetPlan,
  worked: WorkedPlan,
  saved: SavedWith | undefined,
  cuts: ReadonlyMap<SheetId, readonly Cut[]>,
): { readonly pages: readonly Page[]; readonly inputs: InputBook } {
  const inputs = new InputBook();
  const common: Common = {
    plan,
    worked,
    addresses: new AddressBook(),
    inputs,
    choices: new ChoiceBook(),
    isRecorded: saved !== undefined,
  };
  const workings = new Page("workings", common, []);
  const duty = new Page("duty", common, COLUMNS, { workings, cuts: cuts.get("duty") ?? [] });
  const estimate = new Page("estimate", common, COLUMNS, { cuts: cuts.get("estimate") ?? [] });
  const pages = [duty, estimate, workings];
  for (const page of pages) {
    const { title, legend } = titlesOf(plan)[page.id];
    placeTitle(page, title, legend);
  }
  if (saved !== undefined)
    for (const one of [duty, estimate] as const) placeInputState(one, one.id as InputSheet, saved.revision);
  const begun = new Map(pages.map((one) => [one, one.row]));
  const { printed, unprinted } = parted(plan.items);
  const headed = new Set<Page>();
  let page = duty;
  let isSummary = false;
  for (let i = 0; i < printed.length; i += 1) {
    const [item, next] = [printed[i] as PlanItem, printed[i + 1]];
    if (item.kind === "section") {
      if (isSummary && item.summary === undefined) page.endSummary();
      isSummary = item.summary !== undefined;
      page = item.sheet === "estimate" ? estimate : duty;
      if (!isSummary && !headed.has(page)) {
        placeColumnHeads(page);
        headed.add(page);
      }
    } else page.continueHere();
    if (item.kind === "input" && isPair(item, next)) {
      placePair(page, item, next);
      i += 1;
    } else place(page, item, next);
  }
  common.choices.place(workings);
  const shown = pages.filter(
    (one) => one === duty || one.row > (begun.get(one) ?? 0) || (one === workings && saved !== undefined),
  );
  if (saved !== undefined) for (const one of shown) if (one !== workings) placeRecord(one, saved);
  for (const one of [duty, estimate]) one.endPrint();
  if (unprinted.length > 0) placeStatement(duty, below(unprinted));
  unprinted.forEach((item, i) => {
    place(duty, item, unprinted[i + 1]);
  });
  if (saved !== undefined) {
    placeAsWritten(workings, "duty", inputs);
    markWorkings(workings, saved);
    inputs.blocks.push(...workings.blocks());
    estimate.work((foot) => {
      placeAsWritten(foot, "estimate", inputs);
      placePrices(foot, saved, inputs);
    });
  }
  return { pages: shown, inputs };
}

/** Where what is not printed stands. */
function below(unprinted: readonly PlanItem[]): StatementItem {
  const titles = unprinted.flatMap((item) => (item.kind === "section" ? [item.text] : []));
  return statement(`From here on not printed: ${titles.join("; ")}.`);
}

/** What is printed, its statements in paragraphs, and what stands below it: sections that say so, then what is ranked below the first choice. */
function parted(items: readonly PlanItem[]): Readonly<Record<"printed" | "unprinted", readonly PlanItem[]>> {
  const { printed, unprinted } = byPrint(items);
  const isRanked = (item: PlanItem): item is OptionItem => item.kind === "option" && item.appendix !== undefined;
  const ranked = unprinted
    .filter(isRanked)
    .map(
      (item, i, all): PlanItem =>
        item.appendix === all[i - 1]?.appendix ? item : { ...item, heading: `${item.appendix}: after the first` },
    );
  const others: PlanItem = { kind: "section", id: "appendix", text: "Other choices of the rankings" };
  const sections = unprinted.filter((item) => !isRanked(item));
  return {
    printed: inParagraphs(printed),
    unprinted: ranked.length === 0 ? sections : [...sections, others, ...ranked],
  };
}

/** Letters of a paragraph: some six lines of the page, which no page end may cut. */
const PARAGRAPH = 700;

/** Statements that run on, in paragraphs. */
function inParagraphs(items: readonly PlanItem[]): readonly PlanItem[] {
  const found: PlanItem[] = [];
  for (const item of items) {
    const before = found.at(-1);
    const isNext = item.kind === "statement" && item.runsOn === true;
    const isRunning = before?.kind === "statement" && before.runsOn === true;
    if (isNext && isRunning && before.text.length + item.text.length < PARAGRAPH)
      found[found.length - 1] = { ...before, text: `${before.text} ${item.text}` };
    else found.push(item);
  }
  return found;
}

function place(page: Page, item: PlanItem, next: PlanItem | undefined): void {
  switch (item.kind) {
    case "section":
      placeSection(page, item);
      break;
    case "titleBlock":
      placeTitleBlock(page, item);
      break;
    case "text":
      placeText(page, item);
      break;
    case "input":
      placeInput(page, item);
      break;
    case "result":
      placeResult(page, item);
      break;
    case "line":
      placeLine(page, item);
      break;
    case "inputTable":
      placeInputTable(page, item);
      break;
    case "table":
      placeTable(page, item);
      break;
    case "spill":
      page.work((workings) => placeSpill(workings, item));
      break;
    case "working":
      page.work((workings) => placeWorking(workings, item));
      break;
    case "charts":
      placeCharts(page, item);
      break;
    case "finding":
      placeFinding(page, item);
      break;
    case "foundList":
      placeFoundList(page, item);
      break;
    case "option":
      placeOption(page, item, next?.kind !== "option" || next.heading !== undefined);
      break;
    case "verdicts":
      placeVerdicts(page, item);
      break;
    case "blocks":
      placeBlocks(page, item);
      break;
    case "lines":
      placeLines(page, item);
      break;
    case "statement":
      placeStatement(page, item);
      break;
  }
}
