import { html, type TemplateResult } from "lit";
import type { PaneContext } from "../context.ts";

/** Part of a step that folds away; which are folded is kept with the steps that are closed. */
export function foldView(
  { state, send }: PaneContext,
  key: string,
  title: string,
  content: TemplateResult,
): TemplateResult {
  const isClosed = state.closedSteps.has(key);
  return html`<details
    class="fold"
    ?open=${!isClosed}
    @toggle=${(event: Event) => {
      const { open } = event.currentTarget as HTMLDetailsElement;
      if (open === isClosed) send({ type: "step-toggled", step: key, open });
    }}
  >
    <summary>${title}</summary>
    ${content}
  </details>`;
}
