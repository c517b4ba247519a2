import type { SheetSet } from "../ports/sheet-set.ts";
import { AddressBook } from "./layout/address-book.ts";
import { placeAsWritten, placeInputState } from "./layout/as-written.ts";
import { ChoiceBook } from "./layout/choices.ts";
import { COLUMNS } from "./layout/columns.ts";
import { placeCharts, placeCurve } from "./layout/curve.ts";
import { InputBook } from "./layout/input-book.ts";
import { placeLine } from "./layout/line.ts";
import { placeLogo } from "./layout/logo.ts";
import { type Common, Page } from "./layout/page.ts";
import { placePrices, placeRecord } from "./layout/record.ts";
import {
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
import { placeVerdicts } from "./layout/verdicts.ts";
import { recordText, type SavedWith } from "./open-again/record.ts";
import type { InputSheet } from "./open-again/written-inputs.ts";
import type { CalcSheetPlan, PlanItem, SheetId } from "./plan.ts";
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
  const inputs = new InputBook();
  const common: Common = { plan, worked, addresses: new AddressBook(), inputs, choices: new ChoiceBook() };
  const workings = new Page("workings", common, []);
  const duty = new Page("duty", common, COLUMNS, workings);
  const estimate = new Page("estimate", common, COLUMNS);
  const pages = [duty, estimate, workings];
  for (const page of pages) {
    const { title, legend } = titlesOf(plan)[page.id];
    placeTitle(page, title, legend);
  }
  if (saved !== undefined)
    for (const one of [duty, estimate] as const) placeInputState(one, one.id as InputSheet, saved.revision);
  const begun = new Map(pages.map((one) => [one, one.row]));
  let page = duty;
  for (const item of plan.items) {
    if (item.kind === "section") page = item.sheet === "estimate" ? estimate : duty;
    place(page, item);
  }
  common.choices.place(workings);
  const filled = pages.filter(
    (one) => one === duty || one.row > (begun.get(one) ?? 0) || (one === workings && saved !== undefined),
  );
  if (saved !== undefined) {
    for (const one of filled) if (one !== workings) placeRecord(one, saved);
    placeAsWritten(workings, "duty", inputs);
    estimate.work((foot) => {
      placePrices(foot, saved, inputs);
      placeAsWritten(foot, "estimate", inputs);
    });
  }
  for (const one of filled) one.finish();
  const wanted = wantedNames(plan);
  return {
    ids: filled.map(({ id }) => id),
    wanted: filled.map(({ id }) => wanted[id]),
    sheets: (given) => {
      const names = Object.fromEntries(filled.map(({ id }, i) => [id, given[i]]));
      return filled.map((one) => one.sheet(names, printOf(one.id, plan)));
    },
    ...(saved === undefined ? {} : { records: [recordText(saved, inputs)] }),
  };
}

function place(page: Page, item: PlanItem): void {
  switch (item.kind) {
    case "section":
      placeSection(page, item);
      break;
    case "logo":
      placeLogo(page, item);
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
    case "curve":
      placeCurve(page, item);
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
      placeOption(page, item);
      break;
    case "verdicts":
      placeVerdicts(page, item);
      break;
    case "statement":
      placeStatement(page, item);
      break;
  }
}
