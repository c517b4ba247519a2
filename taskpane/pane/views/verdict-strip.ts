import { html, nothing, type TemplateResult } from "lit";
import type { ShownVerdict } from "../../../shared/package/verdicts.ts";
import { STATE_SIGNS } from "../../../shared/text/verdict-text.ts";
import { VERDICT_STATES, type VerdictState, type VerdictSubject } from "../../../src/judgement/verdict.ts";
import type { PaneContext } from "../context.ts";
import { mendingOf, mendsView } from "./findings.ts";

/** The step in which a subject is stated and explained. */
export const STEP_OF: Readonly<Record<VerdictSubject, string>> = {
  head: "pump",
  npsh: "results",
  sump: "sump",
  region: "range",
  solids: "slurry",
  pressure: "pressure",
  pipe: "pipe",
  bolting: "bolting",
  driver: "drive",
  priming: "priming",
  materials: "materials",
  field: "field",
};

/**
 * What fails, what is open, what to check and what passes. The pointer goes from a name to its step; the keyboard has the
 * stages and their headings, which say the same.
 */
export function verdictStripView({ worked: { verdicts }, goTo }: PaneContext): TemplateResult {
  return html`<section class="verdict-strip" aria-label="Verdicts">
    ${VERDICT_STATES.map((state) => {
      const of = verdicts.filter((verdict) => verdict.state === state);
      return of.length === 0
        ? nothing
        : html`<p class="verdicts-of ${state}">
            ${stateView(state)}
            ${of.map(
              ({ subject, name, text }) =>
                html`<button
                  type="button"
                  title=${text}
                  tabindex="-1"
                  @click=${() => goTo(`duty-step-${STEP_OF[subject]}`)}
                >
                  ${name}
                </button>`,
            )}
          </p>`;
    })}
  </section>`;
}

/** The worst that is said of the subjects of a step. */
export function worstOfStep({ worked: { verdicts } }: PaneContext, step: string): ShownVerdict | undefined {
  const of = verdicts.filter(({ subject }) => STEP_OF[subject] === step);
  return VERDICT_STATES.flatMap((state) => of.filter((verdict) => verdict.state === state))[0];
}

/** What is said of the subjects of a step, with all that does not pass. */
export function verdictsOfStepView(context: PaneContext, step: string): TemplateResult {
  const of = context.worked.verdicts.filter(({ subject }) => STEP_OF[subject] === step);
  return html`${of.map((verdict) => verdictView(context, verdict))}`;
}

function verdictView(
  context: PaneContext,
  { subject, state, name, text, source, besides }: ShownVerdict,
): TemplateResult {
  return html`<div class="verdict-said ${state}">
    <p>${stateView(state)} <strong>${name}.</strong> ${text}</p>
    ${mendsView(context.worked.mends.ofVerdict(subject), mendingOf(context))}
    ${source === "" ? nothing : html`<p class="source">${source}</p>`}
    ${
      besides.length === 0
        ? nothing
        : html`<ul>
            ${besides.map((one) => html`<li>${one.text}</li>`)}
          </ul>`
    }
  </div>`;
}

export function stateView(state: VerdictState): TemplateResult {
  return html`<span class="state"><span aria-hidden="true">${STATE_SIGNS[state]}</span> ${state}</span>`;
}
