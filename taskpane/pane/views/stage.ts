import { html, nothing, type TemplateResult } from "lit";
import { inColumn } from "../columns.ts";
import type { PaneContext, Step } from "../context.ts";
import type { Stage } from "../stages.ts";
import { panelId, tabId } from "./rail.ts";
import { stepView } from "./step.ts";

/** The steps of a stage. Of one that is not shown, those alone stay that hold work of their own. */
export function stageView(context: PaneContext, stage: Stage): TemplateResult {
  const isShown = context.state.stage === stage.key;
  const isDrawn = ({ holdsWork }: Step): boolean => isShown || holdsWork === true;
  const isApart = stage.answersFrom !== undefined;
  const inside = isApart ? inColumn(context) : context;
  const views = stage.steps.map((step) => (isDrawn(step) ? stepView(inside, step) : nothing));
  const first = stage.steps.findIndex(({ key }) => key === stage.answersFrom);
  const isBeside = isApart && isShown && context.state.column !== undefined;
  return html`<div class="stage ${isBeside ? "columns" : ""}" role="tabpanel" id=${panelId(stage.key)} aria-labelledby=${tabId(stage.key)} ?hidden=${!isShown}>
    ${
      isApart
        ? html`<div class="inputs">${views.slice(0, first)}</div><div class="answers">${views.slice(first)}</div>`
        : views
    }
  </div>`;
}
