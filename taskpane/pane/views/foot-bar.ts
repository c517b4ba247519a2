import { html, nothing, type TemplateResult } from "lit";
import type { PaneContext } from "../context.ts";
import { fileBarView } from "./file-bar.ts";
import { unitsView } from "./units.ts";

/** Always in sight at the foot of the pane: what just happened, what the box in use is for, units, undo and files. */
export function footBarView(context: PaneContext): TemplateResult {
  return html`<div class="foot-bar">
    ${noticeView(context)}
    <p class="help-line" aria-hidden="true"></p>
    ${unitsView(context)} ${fileBarView(context)}
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
