import { html, nothing, type TemplateResult } from "lit";
import type { ShownVerdict } from "../../../shared/package/verdicts.ts";
import { STATE_SIGNS } from "../../../shared/text/verdict-text.ts";
import { VERDICT_STATES, type VerdictState, type VerdictSubject } from "../../../src/judgement/verdict.ts";
import type { PaneContext } from "../context.ts";

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

/** What fails, what is open, what to check and what passes: one stop for the keyboard, the arrows go from one to the next. */
export function verdictStripView({ worked: { verdicts }, goTo }: PaneContext): TemplateResult {
  const [first] = VERDICT_STATES.flatMap((state) => verdicts.filter((verdict) => verdict.state === state));
  return html`<div class="verdict-strip" role="toolbar" aria-label="Verdicts" @keydown=${toNext}>
    ${VERDICT_STATES.map((state) => {
      const of = verdicts.filter((verdict) => verdict.state === state);
      return of.length === 0
        ? nothing
        : html`<span class="verdicts-of ${state}" role="group" aria-label=${state}>
            ${stateView(state)}
            ${of.map(
              ({ subject, name, text }) =>
                html`<button
                  type="button"
                  title=${text}
                  tabindex=${subject === first?.subject ? 0 : -1}
                  @click=${() => goTo(`duty-step-${STEP_OF[subject]}`)}
                >
                  ${name}
                </button>`,
            )}
          </span>`;
    })}
  </div>`;
}

function toNext(event: KeyboardEvent): void {
  const by = { ArrowRight: 1, ArrowLeft: -1 }[event.key];
  if (by === undefined) return;
  event.preventDefault();
  const buttons = [...(event.currentTarget as HTMLElement).querySelectorAll("button")];
  const at = buttons.indexOf(event.target as HTMLButtonElement);
  buttons[(at + by + buttons.length) % buttons.length]?.focus();
}

/** The worst that is said of the subjects of a step. */
export function worstOfStep({ worked: { verdicts } }: PaneContext, step: string): ShownVerdict | undefined {
  const of = verdicts.filter(({ subject }) => STEP_OF[subject] === step);
  return VERDICT_STATES.flatMap((state) => of.filter((verdict) => verdict.state === state))[0];
}

/** What is said of the subjects of a step, with all that does not pass. */
export function verdictsOfStepView({ worked: { verdicts } }: PaneContext, step: string): TemplateResult {
  return html`${verdicts.filter(({ subject }) => STEP_OF[subject] === step).map(verdictView)}`;
}

function verdictView({ state, name, text, source, besides }: ShownVerdict): TemplateResult {
  return html`<div class="verdict-said ${state}">
    <p>${stateView(state)} <strong>${name}.</strong> ${text}</p>
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
