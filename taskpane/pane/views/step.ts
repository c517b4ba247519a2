import { html, nothing, type TemplateResult } from "lit";
import type { PaneContext, Step } from "../context.ts";
import { helpOfStep } from "../help.ts";
import { stateView, worstOfStep } from "./verdict-strip.ts";

/** A step as a section that folds away under its heading, which says how it stands. */
export function stepView(context: PaneContext, step: Step): TemplateResult {
  const { state, send } = context;
  if (step.isFixed === true) {
    return html`<section class="step" id="duty-step-${step.key}" aria-labelledby="duty-heading-${step.key}">
      <h2 class="step-title" id="duty-heading-${step.key}">${step.title}</h2>
      <div class="body">${helpLink(context, step)}${step.view(context)}</div>
    </section>`;
  }
  const isClosed = state.closedSteps.has(step.key);
  const brief = step.brief?.(context) ?? "";
  const verdict = worstOfStep(context, step.key);
  return html`<details
    class="step"
    id="duty-step-${step.key}"
    ?open=${!isClosed}
    @toggle=${(event: Event) => {
      const { open } = event.currentTarget as HTMLDetailsElement;
      if (open === isClosed) send({ type: "step-toggled", step: step.key, open });
    }}
  >
    <summary>
      <h2>${step.title}</h2>
      ${brief === "" || !isClosed ? nothing : html`<span class="brief">${brief}</span>`}
      ${verdict === undefined ? nothing : html`<span class="verdict-sign ${verdict.state}">${stateView(verdict.state)}</span>`}
      ${verdict !== undefined && isClosed ? html`<span class="in-words">${verdict.text}</span>` : nothing}
    </summary>
    <div class="body">${isClosed && step.holdsWork !== true ? nothing : html`${helpLink(context, step)}${step.view(context)}`}</div>
  </details>`;
}

/** Under the heading: a link within it would be pressed by mistake. */
function helpLink({ help }: PaneContext, { key, title }: Step): TemplateResult | typeof nothing {
  const page = helpOfStep(key);
  if (page === undefined) return nothing;
  return html`<a class="step-help" tabindex="-1" href="${help}${page}" target="_blank" rel="noopener" aria-label="Help: ${title}">Help</a>`;
}
