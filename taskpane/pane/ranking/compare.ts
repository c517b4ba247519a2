import { html, nothing, type TemplateResult } from "lit";
import { printedUnit, UNIT_SETS } from "../../../src/basis/quantities.ts";
import { fromEngine } from "../../../src/basis/units.ts";
import { greatestOf } from "../../../src/numeric/extremes.ts";
import type { HeadCurve } from "../../../src/pump/head-curve.ts";
import { efficiencyAtFlow } from "../../../src/pump/pump-reading.ts";
import type { RankedPump } from "../../../src/pump/selection.ts";
import type { PaneContext } from "../context.ts";
import { type ComparedCurves, comparePicture, LETTERS } from "../pictures/compare-curves.ts";
import type { Point } from "../pictures/pump-curves-frame.ts";
import { headPoints } from "../pump/family.ts";
import { MOST_COMPARED } from "../pump/offers.ts";
import type { Ranking } from "../pump/ranking.ts";
import { figuresOf, type RankedFigure, rankedFigureView } from "./pump-ranked.ts";

const SYSTEM_POINTS = 21;

/** Up to four pumps side by side: their figures in a table, their curves in one picture. */
export function compareView(
  context: PaneContext,
  ranking: Ranking,
  ranked: readonly RankedPump[],
): TemplateResult | typeof nothing {
  const { compared } = context.state.offers;
  const found = compared.flatMap((name) => ranked.filter(({ pump }) => pump.name === name));
  const gone = compared.filter((name) => found.every(({ pump }) => pump.name !== name));
  if (ranked.length === 0 && compared.length === 0) return nothing;
  return html`<h3>Compare</h3>
    ${found.length < 2 ? html`<p class="hint">Tick “Compare” on two to ${MOST_COMPARED} pumps to see them side by side.</p>` : nothing}
    ${gone.map((name) => html`<p class="hint">“${name}” no longer meets the duty. ${dropButton(context, name)}</p>`)}
    ${found.length < 2 ? nothing : html`${tableView(context, found)} ${pictureView(context, ranking, found)}`}`;
}

function tableView(context: PaneContext, compared: readonly RankedPump[]): TemplateResult {
  const units = context.state.duty.unitSet;
  const columns = compared.map((pump) => figuresOf(pump, units));
  const rows = columns[0] ?? [];
  return html`<div class="wide-table" role="region" aria-label="Pumps side by side" tabindex="0">
    <table class="compare">
      <thead>
        <tr>
          <th scope="col"><span class="unseen">Figure</span></th>
          ${compared.map(({ pump }, i) => html`<th scope="col">${LETTERS[i]}: ${pump.name}</th>`)}
        </tr>
      </thead>
      <tbody>
        <tr>
          <th scope="row">Place in the ranking</th>
          ${compared.map(({ rank, keepsRules }) => html`<td>${rank}${keepsRules ? "" : ", outside a guideline"}</td>`)}
        </tr>
        ${rows.map(
          ({ label }, row) =>
            html`<tr>
              <th scope="row">${label}</th>
              ${columns.map((column) => html`<td>${rankedFigureView(column[row] as RankedFigure)}</td>`)}
            </tr>`,
        )}
        <tr>
          <th scope="row"><span class="unseen">Leave out of the comparison</span></th>
          ${compared.map(({ pump }) => html`<td>${dropButton(context, pump.name)}</td>`)}
        </tr>
      </tbody>
    </table>
  </div>`;
}

function dropButton({ send }: PaneContext, name: string): TemplateResult {
  return html`<button
    class="link"
    type="button"
    aria-label="Leave out ${name}"
    @click=${() => send({ type: "compared", name, isCompared: false })}
  >
    Leave out
  </button>`;
}

function pictureView(
  { state }: PaneContext,
  { asked }: Ranking,
  compared: readonly RankedPump[],
): TemplateResult | typeof nothing {
  if (asked === undefined) return nothing;
  const units = state.duty.unitSet;
  const { flow: flowUnit, head: headUnit } = UNIT_SETS[units];
  const inFlow = (value: number): number => fromEngine(value, flowUnit);
  const point = (flow: number, head: number): Point => ({ flow: inFlow(flow), value: fromEngine(head, headUnit) });
  const pumps = compared.map(({ pump, running, flow, head, efficiency }): ComparedCurves => {
    const heads = headPoints(running, 1, "parallel");
    return {
      name: pump.name,
      head: heads.map((at) => point(at.flow, at.value)),
      efficiency: heads.flatMap((at) => {
        const there = efficiencyAtFlow(running, at.flow);
        return there.ok ? [{ flow: inFlow(at.flow), value: 100 * there.value }] : [];
      }),
      operating: point(flow, head),
      efficiencyThere: efficiency === undefined ? undefined : 100 * efficiency,
    };
  });
  const most = Math.max(greatestOf(compared.map(({ running }) => running.mostFlow)), asked.flow);
  const shown = {
    pumps,
    system: systemPoints(asked.system, most).map(({ flow, head }) => point(flow, head)),
    duty: point(asked.flow, asked.system.headAt(asked.flow)),
  };
  return comparePicture(shown, { flow: printedUnit("flow", units), head: printedUnit("head", units) }, state.width);
}

function systemPoints(system: HeadCurve, most: number): readonly { readonly flow: number; readonly head: number }[] {
  const last = Math.min(most, system.mostFlow);
  return Array.from({ length: SYSTEM_POINTS }, (_, i) => {
    const flow = (last * i) / (SYSTEM_POINTS - 1);
    return { flow, head: system.headAt(flow) };
  });
}
