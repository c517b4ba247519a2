import { html, type TemplateResult } from "lit";
import type { PaneContext } from "../context.ts";
import { headline } from "../in-brief.ts";
import { notHereView } from "../later/not-here.ts";
import { railView } from "./rail.ts";
import { verdictStripView } from "./verdict-strip.ts";

/** Until the whole duty is worked out, nobody takes what is not said for passed. */
const OF_THE_REST = {
  loading: "Head and NPSH are worked out; the rest follows …",
  failed: "Only head and NPSH are worked out, nothing is judged: the rest of Dutybook could not be loaded.",
};

/** Always in sight: the verdicts, the figures the duty is known by, and the stages of the job. */
export function paneHeadView(context: PaneContext): TemplateResult {
  return html`<div class="pane-head">
    ${typeof context.later === "string" ? notHereView(context, context.later, OF_THE_REST) : verdictStripView(context)}
    <p class="headline">
      ${headline(context.worked, context.state.duty.unitSet).map((text) => html`<span>${text}</span>`)}
    </p>
    ${railView(context)}
  </div>`;
}
