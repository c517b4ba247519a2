import { html, type TemplateResult } from "lit";
import { REACH } from "../../part.ts";
import type { PaneContext } from "../context.ts";
import type { Later } from "./later.ts";

/** What is said meanwhile, and where it cannot be had. */
interface NotHereWords {
  readonly loading: string;
  readonly failed: string;
}

const OF_A_PART: NotHereWords = {
  loading: "Loading …",
  failed: "This part of Dutybook could not be loaded; the duty is as it was.",
};

/** In the place of what is not loaded yet, or could not be. */
export function notHereView(
  { loadLater }: PaneContext,
  stands: Extract<Later, string>,
  words: NotHereWords = OF_A_PART,
): TemplateResult {
  if (stands === "loading") return html`<p class="hint" role="status">${words.loading}</p>`;
  return html`<div class="not-here" role="alert">
    <p class="hint">${words.failed} ${REACH}</p>
    <button type="button" @click=${loadLater}>Try again</button>
  </div>`;
}
