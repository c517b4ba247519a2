import { html, nothing, type TemplateResult } from "lit";
import { downloadDuty } from "../duty-file.ts";
import type { PaneEvent, PaneState } from "../state.ts";

/** In place of the pane where drawing it failed: no results at all, what was typed as a file, and the way back. */
export function failedView(
  { duty, past }: PaneState,
  reason: string,
  send: (event: PaneEvent) => void,
): TemplateResult {
  const last = past.at(-1);
  return html`<div class="failed" role="alert">
    <p class="fault">
      <strong>Dutybook has a mistake in it and cannot show this duty.</strong> All results are withdrawn: none is right
      for what is typed now. What you typed is not lost. Please report this with the saved duty: ${reason}.
    </p>
    <div class="buttons">
      ${
        last === undefined
          ? nothing
          : html`<button type="button" @click=${() => send({ type: "undone" })}>Undo ${last.what}</button>`
      }
      <button type="button" @click=${() => downloadDuty(duty)}>Save duty</button>
    </div>
  </div>`;
}
