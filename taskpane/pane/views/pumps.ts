import { html, nothing, type TemplateResult } from "lit";
import type { Duty } from "../../../shared/duty/duty.ts";
import { fieldsOf } from "../../../shared/duty/fields.ts";
import { reasonText } from "../../../shared/pump-table/reason-text.ts";
import { findingText } from "../../../shared/text/finding-text.ts";
import { amountText, figures } from "../../../shared/text/words.ts";
import type { UnitSetName } from "../../../src/basis/quantities.ts";
import { amount } from "../../../src/basis/result.ts";
import type { LeftOutPump, RankedPump } from "../../../src/pump/selection.ts";
import type { PaneContext, Step } from "../context.ts";
import type { Candidates } from "../pump/candidates.ts";
import { type Ranking, rankingOf } from "../pump/ranking.ts";
import { fieldsView } from "./fields.ts";
import { findingsView } from "./findings.ts";
import { compareView } from "./pump-compare.ts";
import { rankedPumpView } from "./pump-ranked.ts";
import { pumpSourceView } from "./pump-source.ts";

const FIELDS = fieldsOf("ranking");

/** Ranked pumps in sight; the others are a step away. */
const FIRST_SHOWN = 4;

/** Where the pumps come from, how they rank on the duty, and up to four side by side. */
export const pumps: Step = {
  key: "pumps",
  title: "Pump table and ranking",
  holds: [...FIELDS, "pumps"],
  brief: ({ state }) => {
    const { candidates } = state.offers;
    return candidates === undefined ? "" : counted(candidates.pumps.length, "pump", "pumps");
  },
  view: (context) => {
    const { candidates } = context.state.offers;
    return html`${pumpSourceView(context)} ${decidesView(context)}
    ${candidates === undefined ? nothing : rankingView(context, candidates)}`;
  },
};

/** What the pumps are ranked by. */
function decidesView(context: PaneContext): TemplateResult {
  return html`<h3>What decides the ranking</h3>
    <p class="hint">
      Pumps that keep every rule come first; then a score of four parts by these weights, the usual ones where left blank. Of
      several cases the one a pump does worst in counts.
    </p>
    ${fieldsView(context, FIELDS)}`;
}

function rankingView(context: PaneContext, candidates: Candidates): TemplateResult {
  const ranking = rankingOf(context.state.duty, candidates);
  const units = context.state.duty.unitSet;
  if (ranking === undefined) {
    return html`<p class="hint">The pumps are ranked once the duty is complete.</p>
      ${unusableView(context, candidates)}`;
  }
  const { selection } = ranking;
  if (!selection.ok) {
    return html`<p class="hint">The pumps cannot be ranked for this duty:</p>
      ${findingsView(selection.findings, units)} ${unusableView(context, candidates)}`;
  }
  const { ranked, leftOut } = selection.value;
  const more = ranked.slice(FIRST_SHOWN);
  return html`<h3>${ranking.headRatio === undefined ? "Ranking for this duty" : "Ranked for the slurry"}</h3>
    <p class="hint">${basisText(ranking)}${slurryText(ranking, units)}</p>
    ${
      ranked.length === 0
        ? html`<p>None of these pumps meets the duty. The list below says why.</p>`
        : html`<ol class="ranked">
            ${ranked.slice(0, FIRST_SHOWN).map((pump) => cardView(context, pump))}
          </ol>`
    }
    ${
      more.length === 0
        ? nothing
        : html`<details class="more-ranked">
            <summary>${counted(more.length, "more pump meets", "more pumps meet")} the duty</summary>
            <ol class="ranked" start=${FIRST_SHOWN + 1}>
              ${more.map((pump) => cardView(context, pump))}
            </ol>
          </details>`
    }
    ${leftOutView(context, leftOut)} ${unusableView(context, candidates)} ${compareView(context, ranking, ranked)}`;
}

function cardView(context: PaneContext, pump: RankedPump): TemplateResult {
  return html`<li>${rankedPumpView(context, pump)}</li>`;
}

/** What the ranking rests on, in words. */
function basisText({ duty, asked, otherCases }: Ranking): string {
  const { frictionMargin = 0 } = duty;
  const margin = frictionMargin === 0 ? "" : ` with the margin of ${figures(100 * frictionMargin)} % on losses`;
  const npsh =
    asked?.npshAvailable === undefined
      ? " NPSH is not judged, since NPSH available is not known."
      : " NPSH margin at the lift and altitude stated.";
  return `Each pump at the speed or trim that meets the flow on the system${margin}; pumps that keep every rule first.${npsh} ${stationText(duty)}${casesText(duty, otherCases)}`;
}

/** Which cases a pump has to meet beside the duty as stated, and how. */
function casesText({ speedControl, cases }: Duty, otherCases: readonly string[]): string {
  if (otherCases.length === 0) return "";
  const named = otherCases.map((name) => `“${name}”`).join(", ");
  const uncounted = cases.some(({ given }) => given.includes("speedRatio"))
    ? " A speed ratio that a case states is of the selected pump and does not count here."
    : "";
  const speed = speedControl === "variable" ? "each at its own speed" : "all at one speed and trim";
  return ` A pump has to meet the duty as stated and ${named}, ${speed}; the case it does worst in decides. Figures are those of the duty as stated.${uncounted}`;
}

/** Whether the figures are those of one pump of several. */
function stationText({ pumpsRunning = 1, arrangement }: Duty): string {
  if (pumpsRunning === 1) return "One pump running alone.";
  const what = arrangement === "series" ? "adding their heads" : "sharing the flow";
  return `Flow, head and power are those of each of ${pumpsRunning} pumps ${what}.`;
}

/** What a slurry asks of the curves for water, in words. */
function slurryText({ asked, headRatio, duty }: Ranking, units: UnitSetName): string {
  if (asked === undefined || headRatio === undefined) return "";
  const water = amountText(amount("head", asked.system.headAt(asked.flow)), units);
  const assumed = duty.state.medianSize === "blank" ? ", ASSUMED, for d50 is not stated" : "";
  return ` Each is held by the equivalent water head, ${water} on its curve for water (head ratio ${figures(headRatio)}${assumed}); head, NPSH and power shown are on the slurry.`;
}

function leftOutView({ state }: PaneContext, leftOut: readonly LeftOutPump[]): TemplateResult | typeof nothing {
  if (leftOut.length === 0) return nothing;
  return html`<details class="left-out">
    <summary>${counted(leftOut.length, "pump does", "pumps do")} not meet it, and why</summary>
    <ul class="reasons">
      ${leftOut.map(
        ({ pump, reason }) =>
          html`<li><strong>${pump.name}</strong> ${sentence(reasonText(reason, state.duty.unitSet))}</li>`,
      )}
    </ul>
  </details>`;
}

function unusableView({ state }: PaneContext, { unusable }: Candidates): TemplateResult | typeof nothing {
  if (unusable.length === 0) return nothing;
  return html`<details class="left-out" open>
    <summary>${counted(unusable.length, "pump has", "pumps have")} mistakes in the table</summary>
    <ul class="reasons">
      ${unusable.map(
        ({ name, findings }) =>
          html`<li>
            <strong>${name}</strong>
            ${findings.map((finding) => findingText(finding, state.duty.unitSet)).join(" ")}
          </li>`,
      )}
    </ul>
  </details>`;
}

function sentence(phrase: string): string {
  return `${phrase.charAt(0).toUpperCase()}${phrase.slice(1)}.`;
}

function counted(count: number, one: string, many: string): string {
  return `${count} ${count === 1 ? one : many}`;
}
