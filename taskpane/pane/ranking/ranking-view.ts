import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { ref } from "lit/directives/ref.js";
import type { Duty } from "../../../shared/duty/duty.ts";
import {
  countsByVerdict,
  type RankingRow,
  type RankingShown,
  type RankingView,
  rankingRows,
  shownRows,
} from "../../../shared/pump-table/ranking-table.ts";
import { figureSaid, figures } from "../../../shared/text/figure.ts";
import { findingText } from "../../../shared/text/finding-text.ts";
import { amountText } from "../../../shared/text/words.ts";
import type { UnitSetName } from "../../../src/basis/quantities.ts";
import { amount } from "../../../src/basis/result.ts";
import type { Selection } from "../../../src/pump/selection.ts";
import type { PaneContext } from "../context.ts";
import type { Candidates } from "../pump/candidates.ts";
import { MOST_COMPARED } from "../pump/offers.ts";
import { type Ranking, rankingOf } from "../pump/ranking.ts";
import { findingsView } from "../views/findings.ts";
import { RANKING_COLUMNS } from "./columns.ts";
import { compareView } from "./compare.ts";
import { type GridShown, RankingGrid } from "./grid.ts";

/** How the pumps rank on the duty, as a table, with up to four side by side. */
export function rankingView(context: PaneContext, candidates: Candidates): TemplateResult {
  const ranking = rankingOf(context.state.duty, candidates);
  const units = context.state.duty.unitSet;
  if (ranking === undefined) {
    return html`<p class="hint">Complete the inputs to rank the pumps.</p>
      ${unusableView(context, candidates)}`;
  }
  const { selection } = ranking;
  if (!selection.ok) {
    return html`<p class="hint">The pumps cannot be ranked for this duty:</p>
      ${findingsView(selection.findings, units)} ${unusableView(context, candidates)}`;
  }
  return html`<h3>${ranking.headRatio === undefined ? "Ranking for this duty" : "Ranking for the slurry"}</h3>
    <p class="hint">${basisText(ranking)}${slurryText(ranking, units)}</p>
    <div class="ranking">
      <div class="ranking-beside">
        <div>${tableView(context, ranking, selection.value)}</div>
        ${compareView(context, ranking, selection.value.ranked)}
      </div>
    </div>
    ${unusableView(context, candidates)}`;
}

const SHOWN: readonly { readonly key: RankingShown; readonly words: string }[] = [
  { key: "meeting", words: "meets the duty" },
  { key: "pass", words: "pass" },
  { key: "check", words: "check" },
  { key: "open", words: "open" },
  { key: "fail", words: "fail: does not meet it" },
  { key: "all", words: "all" },
];

function tableView(context: PaneContext, ranking: Ranking, selection: Selection): TemplateResult {
  const { state, send } = context;
  const { view } = state.offers;
  const all = rankingRows(selection);
  const counts = countsByVerdict(all);
  const rows = rowsShown(all, view);
  return html`<div class="ranking-filter">
      <label for="duty-ranking-filter">Pump</label>
      <input
        id="duty-ranking-filter"
        type="search"
        autocomplete="off"
        spellcheck="false"
        placeholder="part of its name"
        .value=${live(view.filter)}
        @input=${(event: InputEvent) =>
          send({ type: "ranking-viewed", view: { filter: (event.target as HTMLInputElement).value } })}
      />
      <label for="duty-ranking-shown">Verdict</label>
      <select
        id="duty-ranking-shown"
        @change=${(event: Event) =>
          send({ type: "ranking-viewed", view: { shown: (event.target as HTMLSelectElement).value as RankingShown } })}
      >
        ${SHOWN.map(
          ({ key, words }) =>
            html`<option value=${key} ?selected=${live(view.shown === key)}>${words} (${counts[key]})</option>`,
        )}
      </select>
    </div>
    <p class="hint" role="status">${countText(rows.length, all.length)}${noneText(counts.meeting)}</p>
    ${
      rows.length > 0
        ? nothing
        : html`<p>
            <button
              class="link"
              type="button"
              @click=${() => send({ type: "ranking-viewed", view: { filter: "", shown: "all" } })}
            >
              Show all pumps
            </button>
          </p>`
    }
    <div
      class="ranking-grid"
      role="grid"
      aria-label="Ranking of the pumps"
      aria-colcount=${RANKING_COLUMNS.length}
      aria-multiselectable="true"
      aria-describedby="duty-ranking-keys"
      ${ref((element) => showGrid(element, { context, ranking, rows }))}
    ></div>
    <p class="hint" id="duty-ranking-keys">
      Enter or a click opens the reasons; Space or the tick box marks up to ${MOST_COMPARED} pumps for comparison; a heading
      sorts.
    </p>`;
}

const grids = new WeakMap<Element, RankingGrid>();

function showGrid(element: Element | undefined, shown: GridShown): void {
  if (!(element instanceof HTMLElement)) return;
  const known = grids.get(element);
  if (known === undefined) grids.set(element, new RankingGrid(element, shown));
  else known.update(shown);
}

let last:
  | { readonly all: readonly RankingRow[]; readonly view: RankingView; readonly rows: readonly RankingRow[] }
  | undefined;

/** Sorted and filtered again only where pumps or view change. */
function rowsShown(all: readonly RankingRow[], view: RankingView): readonly RankingRow[] {
  if (last?.all !== all || last.view !== view) last = { all, view, rows: shownRows(all, view) };
  return last.rows;
}

function countText(shown: number, all: number): string {
  return shown === all ? `${counted(all, "pump", "pumps")}.` : `${shown} of ${counted(all, "pump", "pumps")}.`;
}

function noneText(meeting: number): string {
  return meeting > 0 ? "" : " None of these pumps meets the duty; the reason stands in each row.";
}

/** What the ranking rests on, in words. */
function basisText({ duty, asked, otherCases }: Ranking): string {
  const { frictionMargin = 0 } = duty;
  const margin = frictionMargin === 0 ? "" : ` with the margin of ${figureSaid("%", 100 * frictionMargin)} % on losses`;
  const npsh =
    asked?.npshAvailable === undefined
      ? " NPSH is not judged, since NPSH available is not known."
      : " NPSH margin at the lift and altitude stated.";
  const graded =
    duty.acceptanceGrade === undefined ? "" : " The tolerances of the grade count once a pump is selected.";
  return `Each pump at the speed or trim that meets the flow on the system${margin}; pumps that keep every rule first.${npsh} ${stationText(duty)}${casesText(duty, otherCases)}${graded}`;
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
  if (pumpsRunning === 1) return "Ranked as a single pump.";
  const what = arrangement === "series" ? "adding their heads" : "sharing the flow";
  return `Flow, head and power are those of each of ${pumpsRunning} pumps ${what}.`;
}

/** What a slurry asks of the curves for water, in words. */
function slurryText({ asked, headRatio, duty }: Ranking, units: UnitSetName): string {
  if (asked === undefined || headRatio === undefined) return "";
  const water = amountText(amount("head", asked.system.headAt(asked.flow)), units);
  const assumed = duty.state.medianSize === "blank" ? ", ASSUMED, for d50 is not stated" : "";
  return ` Each is compared with the equivalent water head, ${water} on its curve for water (head ratio ${figures(headRatio)}${assumed}); head, NPSH and power shown are on the slurry. The line on water, at start and flush, counts once a pump is selected.`;
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

function counted(count: number, one: string, many: string): string {
  return `${count} ${count === 1 ? one : many}`;
}
