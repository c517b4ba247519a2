import { html, nothing, type TemplateResult } from "lit";
import type { RankedPump } from "../../../src/pump/selection.ts";
import type { PaneContext } from "../context.ts";
import { choiceOf, isSimilar, pumpTextOf } from "../pump/pump-text.ts";
import type { Ranking } from "../pump/ranking.ts";
import { selectedPumpText } from "../pump/reselection.ts";

/** The way to take a pump of the ranking as the one of the duty, with the speed and trim it is ranked at. */
export function selectButton({ state, send, goTo }: PaneContext, ranking: Ranking, ranked: RankedPump): TemplateResult {
  const units = state.duty.unitSet;
  return html`<button
    type="button"
    aria-label="Select ${ranked.pump.name}"
    @click=${() => {
      send({ type: "pump-chosen", pump: selectedPumpText(ranking, ranked, units), notice: selectedText(ranked) });
      goTo("duty-step-pump");
    }}
  >
    Select
  </button>`;
}

/** The way to let it run beside the selected pump, where another is selected. */
export function besideButton({ state, send }: PaneContext, ranked: RankedPump): TemplateResult | typeof nothing {
  const { unitSet: units, pump } = state.duty;
  if (pump === undefined || choiceOf(pump, ranked, units) !== "not chosen") return nothing;
  return html`<button
    type="button"
    aria-label="Add beside it: ${ranked.pump.name}, beside ${pump.name}"
    @click=${() => send({ type: "other-pump-added", pump: pumpTextOf(ranked, units) })}
  >
    Add beside ${pump.name}
  </button>`;
}

function selectedText({ pump, running }: RankedPump): string {
  if (isSimilar(running)) return `“${pump.name}” selected.`;
  const trimmed = "Its curve is written down for the trimmed impeller, drawn between the two measured ones.";
  return `“${pump.name}” selected. ${trimmed}`;
}
