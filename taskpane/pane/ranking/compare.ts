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
import { figuresOf, rankedFigureView } from "./ranked-figures.ts";
import { selectButton } from "./select.ts";

const SYSTEM_POINTS = 21;

/** Up to four marked pumps side by side: their figures in a table, their curves in one picture. */
export function compareView(
  context: PaneContext,
  ranking: Ranking,
  ranked: readonly RankedPump[],
): TemplateResult | typeof nothing {
  const { compared } = context.state.offers;
  if (compared.length === 0) return nothing;
  const found = compared.flatMap((name) => ranked.filter(({ pump }) => pump.name === name));
  const gone = compared.filter((name) => found.every(({ pump }) => pump.name !== name));
  return html`<section class="comparison" aria-label="Comparison">
    <h3>Comparison</h3>
    ${found.length < 2 ? html`<p class="hint">Mark two to ${MOST_COMPARED} pumps to see them side by side.</p>` : nothing}
    ${gone.map((name) => html`<p class="hint">“${name}” no longer meets the duty. ${dropButton(context, name)}</p>`)}
    ${found.length < 2 ? nothing : html`${tableView(context, ranking, found)} ${pictureView(context, ranking, found)}`}
  </section>`;
}

/** A figure to a line of its own with the pumps below it: four fit where the pane is narrow. Roles hold what layout takes. */
function tableView(context: PaneContext, ranking: Ranking, compared: readonly RankedPump[]): TemplateResult {
  const units = context.state.duty.unitSet;
  const columns = compared.map((pump) => figuresOf(pump, units));
  const rows = columns[0] ?? [];
  const row = (label: string, cells: readonly unknown[], isHidden = false): TemplateResult =>
    html`<tr role="row">
      <th role="rowheader" class="of" scope="row"><span class=${isHidden ? "unseen" : ""}>${label}</span></th>
      ${cells.map((cell) => html`<td role="cell">${cell}</td>`)}
    </tr>`;
  return html`<table class="side-by-side pumps-${compared.length}" role="table" aria-label="Pumps side by side">
    <thead role="rowgroup">
      <tr role="row">
        <td role="cell" hidden></td>
        ${compared.map(({ pump }, i) => html`<th role="columnheader" scope="col">${LETTERS[i]}: ${pump.name}</th>`)}
      </tr>
    </thead>
    <tbody role="rowgroup">
      ${row(
        "Select",
        compared.map((pump) => html`${selectButton(context, ranking, pump)} ${dropButton(context, pump.pump.name)}`),
        true,
      )}
      ${row(
        "Rank",
        compared.map(({ rank, keepsRules }) => `${rank}${keepsRules ? "" : ", outside a guideline"}`),
      )}
      ${rows.map(({ label }, i) =>
        row(
          label,
          columns.map((column) => {
            const figure = column[i];
            return figure === undefined ? "" : rankedFigureView(figure);
          }),
        ),
      )}
    </tbody>
  </table>`;
}

function dropButton({ send }: PaneContext, name: string): TemplateResult {
  return html`<button
    class="link"
    type="button"
    aria-label="Unmark ${name}"
    @click=${() => send({ type: "compared", name, isCompared: false })}
  >
    Unmark
  </button>`;
}

function pictureView(
  { state }: PaneContext,
  { asked, headRatio = 1 }: Ranking,
  compared: readonly RankedPump[],
): TemplateResult | typeof nothing {
  if (asked === undefined) return nothing;
  const units = state.duty.unitSet;
  const { flow: flowUnit, head: headUnit } = UNIT_SETS[units];
  const inFlow = (value: number): number => fromEngine(value, flowUnit);
  const point = (flow: number, head: number): Point => ({ flow: inFlow(flow), value: fromEngine(head, headUnit) });
  // Of a slurry the curves, the system and the duty are those on water: so are the points on them.
  const pumps = compared.map(({ pump, running, flow, head }): ComparedCurves => {
    const efficiency = efficiencyAtFlow(running, flow);
    const heads = headPoints(running, 1, "parallel");
    return {
      name: pump.name,
      head: heads.map((at) => point(at.flow, at.value)),
      efficiency: heads.flatMap((at) => {
        const there = efficiencyAtFlow(running, at.flow);
        return there.ok ? [{ flow: inFlow(at.flow), value: 100 * there.value }] : [];
      }),
      operating: point(flow, head / headRatio),
      efficiencyThere: efficiency.ok ? 100 * efficiency.value : undefined,
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
