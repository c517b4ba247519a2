import type { SheetSpec } from "../ports/sheet-spec.ts";
import { placeCharts, placeCurve } from "./layout/curve.ts";
import { placeLine } from "./layout/line.ts";
import { Page } from "./layout/page.ts";
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
import { placeInputTable, placeSpill, placeTable, placeWorking } from "./layout/tables.ts";
import { placeVerdicts } from "./layout/verdicts.ts";
import type { CalcSheetPlan, PlanItem } from "./plan.ts";
import type { WorkedPlan } from "./work-out.ts";

/** Gives each item of a plan its cells, with live formulas and the values worked out for them. */
export function layOut(plan: CalcSheetPlan, worked: WorkedPlan): SheetSpec {
  const page = new Page(plan, worked);
  placeTitle(page);
  for (const item of plan.items) place(page, item);
  page.finish();
  return page.sheet();
}

function place(page: Page, item: PlanItem): void {
  switch (item.kind) {
    case "section":
      placeSection(page, item);
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
      placeSpill(page, item);
      break;
    case "working":
      placeWorking(page, item);
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
