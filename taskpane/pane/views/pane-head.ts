import { html, type TemplateResult } from "lit";
import type { PaneContext } from "../context.ts";
import { headline } from "../in-brief.ts";
import { railView } from "./rail.ts";
import { verdictStripView } from "./verdict-strip.ts";

/** Always in sight: the verdicts, the figures the duty is known by, and the stages of the job. */
export function paneHeadView(context: PaneContext): TemplateResult {
  return html`<div class="pane-head">
    ${verdictStripView(context)}
    <p class="headline">
      ${headline(context.worked, context.state.duty.unitSet).map((text) => html`<span>${text}</span>`)}
    </p>
    ${railView(context)}
  </div>`;
}
