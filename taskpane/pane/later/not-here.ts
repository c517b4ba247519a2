import { html, type TemplateResult } from "lit";
import { REACH } from "../../part.ts";
import type { PaneContext } from "../context.ts";
import type { Later } from "./later.ts";

/** In the place of what is not loaded yet, or could not be. */
export function notHereView({ loadLater }: PaneContext, stands: Extract<Later, string>): TemplateResult {
  if (stands === "loading") return html`<p class="hint" role="status">Loading …</p>`;
  return html`<div class="not-here" role="alert">
    <p class="hint">
      This part of Dutybook could not be loaded; the duty is as it was. ${REACH}
    </p>
    <button type="button" @click=${loadLater}>Try again</button>
  </div>`;
}
