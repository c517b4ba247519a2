import { html, nothing, type TemplateResult } from "lit";
import { figures } from "../../../shared/text/words.ts";
import { printedUnit, UNIT_SETS } from "../../../src/basis/quantities.ts";
import { fromEngine } from "../../../src/basis/units.ts";
import type { PaneContext, Step } from "../context.ts";
import { type CurvePoint, systemCurvePicture } from "../pictures/system-curve.ts";
import { fieldView } from "./field.ts";

export const systemCurve: Step = {
  key: "system-curve",
  title: "System curve",
  holds: ["curveFlow"],
  view: (context) => html`${fieldView(context, "curveFlow")} ${curveView(context)}`,
};

function curveView({ state, worked }: PaneContext): TemplateResult {
  const { duty, results } = worked;
  if (duty === undefined || results === undefined || results.systemCurve.length === 0)
    return html`<p class="hint">Drawn once the duty is complete.</p>`;
  const units = state.duty.unitSet;
  const { flow: flowUnit, head: headUnit } = UNIT_SETS[units];
  const shown = ({ flow, head }: CurvePoint): CurvePoint => ({
    flow: fromEngine(flow, flowUnit),
    head: fromEngine(head, headUnit),
  });
  const points = results.systemCurve.map(shown);
  const names = { flow: printedUnit("flow", units), head: printedUnit("head", units) };
  if (typeof results.totalHead !== "number") return html`${nothing}`;
  const dutyPoint = shown({ flow: duty.flow, head: results.totalHead });
  return html`${systemCurvePicture(points, dutyPoint, names, state.width)}
    <details class="table">
      <summary>Figures of the curve</summary>
      <table>
        <thead>
          <tr>
            <th scope="col">Flow, ${names.flow}</th>
            <th scope="col">Head, ${names.head}</th>
          </tr>
        </thead>
        <tbody>
          ${points.map(
            ({ flow, head }) =>
              html`<tr>
                <td>${figures(flow)}</td>
                <td>${figures(head)}</td>
              </tr>`,
          )}
        </tbody>
      </table>
    </details>`;
}
