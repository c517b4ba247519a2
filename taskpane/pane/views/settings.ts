import { html, type nothing, type TemplateResult } from "lit";
import { shownSettings } from "../../../shared/package/shown-settings.ts";
import type { PaneContext, StepContent } from "../context.ts";
import { fieldView } from "./field.ts";

/** Figures of judgement that the formulas of the sheet rest on, those alone that this duty uses. */
export const settings: StepContent = {
  view: (context) => html`<p class="hint">
      What the sheet judges by where nobody has stated it: usual figures, each with its own line on the sheet.
    </p>
    ${usedView(context)}`,
};

function usedView(context: PaneContext): TemplateResult | readonly (TemplateResult | typeof nothing)[] {
  const shown = shownSettings(context.worked.duty);
  return shown.length === 0
    ? html`<p class="hint">This duty uses none yet.</p>`
    : shown.map((key) => fieldView(context, key));
}
