import { html, nothing, type TemplateResult } from "lit";
import type { PaneContext, Step } from "../context.ts";

/** A step as a section that folds away under its heading. */
export function stepView(context: PaneContext, step: Step): TemplateResult {
  const { state, send } = context;
  const brief = step.brief?.(context) ?? "";
  return html`<details
    class="step"
    id="duty-step-${step.key}"
    ?open=${!state.closedSteps.has(step.key)}
    @toggle=${(event: Event) => {
      const { open } = event.currentTarget as HTMLDetailsElement;
      if (open === state.closedSteps.has(step.key)) send({ type: "step-toggled", step: step.key, open });
    }}
  >
    <summary>
      <h2>${step.title}</h2>
      ${brief === "" ? nothing : html`<span class="brief">${brief}</span>`}
    </summary>
    <div class="body">${step.view(context)}</div>
  </details>`;
}
