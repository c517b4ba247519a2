import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { reasonText } from "../../../shared/pump-table/reason-text.ts";
import { amountText } from "../../../shared/text/words.ts";
import type { Quantity, UnitSetName } from "../../../src/basis/quantities.ts";
import { amount } from "../../../src/basis/result.ts";
import type { RankedPump } from "../../../src/pump/selection.ts";
import type { PaneContext } from "../context.ts";
import { MOST_COMPARED } from "../pump/offers.ts";
import { choiceOf, isSimilar, pumpTextOf } from "../pump/pump-text.ts";

/** A pump of the ranking: its figures on the duty, what speaks for and against it, and the ways to take it. */
export function rankedPumpView(context: PaneContext, ranked: RankedPump): TemplateResult {
  const { state, send, goTo } = context;
  const units = state.duty.unitSet;
  const { name } = ranked.pump;
  const choice = choiceOf(state.duty.pump, ranked, units);
  const chosen = choice !== "not chosen";
  const compared = state.offers.compared.includes(name);
  const full = !compared && state.offers.compared.length >= MOST_COMPARED;
  return html`<article class="ranked-pump ${chosen ? "chosen" : ""}" aria-label="${ranked.rank}. ${name}">
    <div class="row-head">
      <span class="row-number">${ranked.rank}</span>
      <strong class="pump-name">${name}</strong>
      ${ranked.keepsRules ? nothing : html`<span class="mark">outside a guideline</span>`}
      ${chosen ? html`<span class="mark chosen">${choice === "as ranked" ? "chosen" : "chosen, set otherwise"}</span>` : nothing}
    </div>
    ${choice === "set otherwise" ? html`<p class="why"><strong>Set for another duty:</strong> ${SET_OTHERWISE}</p>` : nothing}
    <dl class="pairs">
      ${figuresOf(ranked, units).map(
        (figure) =>
          html`<div>
            <dt>${figure.label}</dt>
            <dd>${rankedFigureView(figure)}</dd>
          </div>`,
      )}
    </dl>
    ${reasonsView(
      "For",
      ranked.reasonsFor.map((reason) => reasonText(reason, units)),
    )}
    ${reasonsView(
      "Against",
      ranked.reasonsAgainst.map((reason) => reasonText(reason, units)),
    )}
    <div class="buttons">
      <button
        type="button"
        aria-label="Choose ${name}"
        @click=${() => {
          send({ type: "pump-chosen", pump: pumpTextOf(ranked, units), notice: choiceText(ranked) });
          goTo("duty-step-pump");
        }}
      >
        Choose
      </button>
      ${
        state.duty.pump === undefined || chosen
          ? nothing
          : html`<button
              type="button"
              aria-label="Add beside it: ${name}, beside ${state.duty.pump.name}"
              @click=${() => send({ type: "other-pump-added", pump: pumpTextOf(ranked, units) })}
            >
              Add beside it
            </button>`
      }
      <label class="tick">
        <input
          type="checkbox"
          aria-label="Compare ${name}"
          ?disabled=${full}
          .checked=${live(compared)}
          @change=${(event: Event) =>
            send({ type: "compared", name, isCompared: (event.target as HTMLInputElement).checked })}
        />
        <span>Compare</span>
      </label>
    </div>
  </article>`;
}

export interface RankedFigure {
  readonly label: string;
  readonly text: string;
  /** Said under it. */
  readonly note?: string;
}

/** The figures a pump is chosen by, at its operating point on the duty. */
export function figuresOf(ranked: RankedPump, units: UnitSetName): readonly RankedFigure[] {
  const say = (quantity: Quantity, value: number | undefined): string =>
    value === undefined ? "not given" : amountText(amount(quantity, value), units);
  const { flow, head, efficiency, bestFlowRatio, npshRequired, npshMargin, power, speed, diameter, running } = ranked;
  const { shutInPressure, decidedIn } = ranked;
  return [
    { label: "Flow", text: say("flow", flow) },
    { label: "Head", text: say("head", head) },
    { label: "Efficiency", text: say("percent", efficiency) },
    { label: "Flow, % of BEP", text: say("percent", bestFlowRatio) },
    { label: "NPSH required", text: say("head", npshRequired) },
    { label: "NPSH margin", text: npshMargin === undefined ? "not known" : say("head", npshMargin) },
    { label: "Shaft power", text: say("power", power) },
    { label: "Against a shut valve", text: say("gaugePressure", shutInPressure) },
    { label: "Speed", text: say("speed", speed), ...asDrawn(speed, running.speedRatio) },
    { label: "Impeller", text: say("size", diameter), ...asDrawn(diameter, running.trimRatio) },
    ...(decidedIn === undefined ? [] : [{ label: "Does worst in", text: decidedIn }]),
  ];
}

function asDrawn(figure: number | undefined, ratio: number): Pick<RankedFigure, "note"> {
  return figure === undefined || ratio !== 1 ? {} : { note: "as its curve" };
}

/** A figure and what is said under it. */
export function rankedFigureView({ text, note }: RankedFigure): TemplateResult {
  return html`${text}${note === undefined ? nothing : html`<span class="note">${note}</span>`}`;
}

function reasonsView(title: string, phrases: readonly string[]): TemplateResult | typeof nothing {
  if (phrases.length === 0) return nothing;
  return html`<p class="why"><strong>${title}:</strong> ${phrases.join("; ")}.</p>`;
}

const SET_OTHERWISE =
  "the pump on the duty keeps the speed and trim it was chosen with. The figures below are of a new setting: choose it again to take it.";

function choiceText({ pump, running }: RankedPump): string {
  if (isSimilar(running)) return `“${pump.name}” chosen.`;
  const trimmed = "Its curve is written down for the trimmed impeller, drawn between the two measured ones.";
  return `“${pump.name}” chosen. ${trimmed}`;
}
