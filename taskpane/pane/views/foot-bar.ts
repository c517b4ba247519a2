import { html, nothing, type TemplateResult } from "lit";
import type { PaneContext } from "../context.ts";
import { inBrief } from "../in-brief.ts";

/** Always in sight at the foot of the pane: what just happened, and the two main results or what they wait for. */
export function footBarView(context: PaneContext): TemplateResult {
  const { state, goTo } = context;
  return html`<div class="foot-bar">
    ${noticeView(context)}
    <button class="brief-results" type="button" @click=${() => goTo("duty-step-results")}>
      ${inBrief(context.worked, state.duty.unitSet).map((text) => html`<span>${text}</span>`)}
    </button>
    <p class="unseen" role="status">${context.announcement}</p>
  </div>`;
}

function noticeView({ state, send }: PaneContext): TemplateResult {
  const { notice } = state;
  return html`<div class="notice ${notice?.kind ?? ""}" role="status">
    ${notice === undefined ? nothing : html`<span>${notice.text}</span>`}
    ${notice?.kind === "changed" ? html`<button type="button" @click=${() => send({ type: "undone" })}>Undo</button>` : nothing}
    ${
      notice === undefined
        ? nothing
        : html`<button
            type="button"
            aria-label="Close this message"
            @click=${() => send({ type: "noticed", notice: undefined })}
          >
            ×
          </button>`
    }
  </div>`;
}
