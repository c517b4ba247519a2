import { html, nothing, type TemplateResult } from "lit";
import type { PaneContext, Step } from "../context.ts";
import type { Stage } from "../stages.ts";
import { panelId, tabId } from "./rail.ts";
import { stepView } from "./step.ts";

/** The steps of a stage. Of one that is not shown, those alone stay that hold work of their own. */
export function stageView(context: PaneContext, stage: Stage): TemplateResult {
  const isShown = context.state.stage === stage.key;
  const isDrawn = ({ holdsWork }: Step): boolean => isShown || holdsWork === true;
  return html`<div class="stage" role="tabpanel" id=${panelId(stage.key)} aria-labelledby=${tabId(stage.key)} ?hidden=${!isShown}>
    ${stage.steps.map((step) => (isDrawn(step) ? stepView(context, step) : nothing))}
  </div>`;
}
