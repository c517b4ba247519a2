import { html, nothing, type TemplateResult } from "lit";
import { STATE_SIGNS } from "../../../shared/text/verdict-text.ts";
import { VERDICT_STATES, type VerdictState } from "../../../src/judgement/verdict.ts";
import type { PaneContext } from "../context.ts";
import { STAGES, type Stage, type StageKey } from "../stages.ts";
import { STEP_OF } from "./verdict-strip.ts";

export function tabId(stage: StageKey): string {
  return `duty-tab-${stage}`;
}

export function panelId(stage: StageKey): string {
  return `duty-stage-${stage}`;
}

/** The stages of the job beside one another, each with the worst of its verdicts; one is shown. */
export function railView(context: PaneContext): TemplateResult {
  const { state, send, goTo } = context;
  const at = STAGES.findIndex(({ key }) => key === state.stage);
  const show = (index: number): void => {
    const { key } = STAGES[(index + STAGES.length) % STAGES.length] as Stage;
    send({ type: "stage-shown", stage: key });
    goTo(tabId(key));
  };
  const onKey = (event: KeyboardEvent): void => {
    const to = { ArrowRight: at + 1, ArrowLeft: at - 1, Home: 0, End: -1 }[event.key];
    if (to === undefined) return;
    event.preventDefault();
    show(to);
  };
  return html`<div class="rail" role="tablist" aria-label="Stages of the job" @keydown=${onKey}>
    ${STAGES.map(({ key, title, steps }) => {
      const worst = worstOf(
        context,
        steps.map((step) => step.key),
      );
      const isShown = key === state.stage;
      return html`<button
        type="button"
        role="tab"
        id=${tabId(key)}
        aria-selected=${isShown}
        aria-controls=${panelId(key)}
        tabindex=${isShown ? 0 : -1}
        @click=${() => send({ type: "stage-shown", stage: key })}
      >
        ${title}
        ${
          worst === undefined
            ? nothing
            : html`<span class="sign ${worst}"><span aria-hidden="true">${STATE_SIGNS[worst]}</span
              ><span class="unseen">, ${worst}</span></span>`
        }
      </button>`;
    })}
  </div>`;
}

/** The worst verdict that a stage explains. */
function worstOf({ worked: { verdicts } }: PaneContext, steps: readonly string[]): VerdictState | undefined {
  const states = verdicts.filter(({ subject }) => steps.includes(STEP_OF[subject])).map(({ state }) => state);
  return VERDICT_STATES.find((state) => states.includes(state));
}
