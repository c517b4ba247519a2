import { html, nothing, type TemplateResult } from "lit";
import type { RankingRow } from "../../../shared/pump-table/ranking-table.ts";
import { reasonText } from "../../../shared/pump-table/reason-text.ts";
import type { UnitSetName } from "../../../src/basis/quantities.ts";
import type { VerdictState } from "../../../src/judgement/verdict.ts";
import type { RankedPump } from "../../../src/pump/selection.ts";
import type { Reason } from "../../../src/pump/selection-reason.ts";
import type { PaneContext } from "../context.ts";
import { choiceOf } from "../pump/pump-text.ts";
import type { Ranking } from "../pump/ranking.ts";
import { stateView } from "../views/verdict-strip.ts";
import { figuresOf, rankedFigureView } from "./ranked-figures.ts";
import { besideButton, selectButton } from "./select.ts";

const VERDICT_WORDS: Readonly<Record<VerdictState, string>> = {
  pass: "meets the duty within every guideline.",
  check: "meets the duty; see what speaks against it.",
  open: "meets the head and flow of the duty; something it is judged by is not given.",
  fail: "does not meet the duty.",
};

/** What a row opens to: the verdict in words, the figures, what speaks for and against the pump, and the ways to take it. */
export function rowDetail(
  context: PaneContext,
  ranking: Ranking,
  { pump, ranked, leftOut, verdict }: RankingRow,
): TemplateResult {
  const units = context.state.duty.unitSet;
  return html`<p><strong class="pump-name">${pump.name}</strong> ${stateView(verdict)}: ${VERDICT_WORDS[verdict]}</p>
    ${pump.source === undefined ? nothing : html`<p class="hint">Curve read from ${pump.source}.</p>`}
    ${leftOut === undefined ? nothing : html`<p class="why">${sentence(reasonText(leftOut, units))}</p>`}
    ${ranked === undefined ? nothing : rankedView(context, ranking, ranked)}`;
}

function rankedView(context: PaneContext, ranking: Ranking, ranked: RankedPump): TemplateResult {
  const { duty } = context.state;
  const units = duty.unitSet;
  return html`${choiceOf(duty.pump, ranked, units) === "set otherwise" ? html`<p class="why"><strong>Set for another duty:</strong> ${SET_OTHERWISE}</p>` : nothing}
    <dl class="pairs">
      ${figuresOf(ranked, units).map(
        (figure) =>
          html`<div>
            <dt>${figure.label}</dt>
            <dd>${rankedFigureView(figure)}</dd>
          </div>`,
      )}
    </dl>
    ${reasonsView("For", ranked.reasonsFor, units)} ${reasonsView("Against", ranked.reasonsAgainst, units)}
    <div class="buttons">${selectButton(context, ranking, ranked)} ${besideButton(context, ranked)}</div>`;
}

function reasonsView(title: string, reasons: readonly Reason[], units: UnitSetName): TemplateResult | typeof nothing {
  if (reasons.length === 0) return nothing;
  const phrases = reasons.map((reason) => reasonText(reason, units)).join("; ");
  return html`<p class="why"><strong>${title}:</strong> ${phrases}.</p>`;
}

function sentence(phrase: string): string {
  return `${phrase.charAt(0).toUpperCase()}${phrase.slice(1)}.`;
}

const SET_OTHERWISE =
  "the selected pump keeps the speed and trim it was selected with. The figures here are of a new setting: select it again to take it.";
