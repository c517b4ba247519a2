import { html, type TemplateResult } from "lit";
import { fieldsOf } from "../../../shared/duty/fields.ts";
import { figureIn } from "../../../shared/text/figure.ts";
import { printedUnit, UNIT_SETS } from "../../../src/basis/quantities.ts";
import { fromEngine } from "../../../src/basis/units.ts";
import type { PaneContext, StepContent } from "../context.ts";
import { type CurvePoint, systemCurvePicture } from "../pictures/system-curve.ts";
import { fieldView } from "./field.ts";
import { isWaiting } from "./figure.ts";
import { remarksView } from "./findings.ts";

const FIELDS = fieldsOf("system");

export const systemCurve: StepContent = {
  view: (context) => html`${FIELDS.map((key) => fieldView(context, key))} ${curveView(context)}`,
};

function curveView({ state, worked }: PaneContext): TemplateResult {
  const { duty, results } = worked;
  if (isWaiting(results.totalHead)) return html`<p class="hint">Complete the inputs to draw the curve.</p>`;
  if (results.systemCurve.length === 0 || typeof results.totalHead !== "number" || duty.flow === undefined)
    return html`<p class="hint">Cannot be calculated; see the messages above.</p>`;
  const units = state.duty.unitSet;
  const { flow: flowUnit, head: headUnit } = UNIT_SETS[units];
  const shown = ({ flow, head }: CurvePoint): CurvePoint => ({
    flow: fromEngine(flow, flowUnit),
    head: fromEngine(head, headUnit),
  });
  const points = results.systemCurve.map(shown);
  const names = { flow: printedUnit("flow", units), head: printedUnit("head", units) };
  const dutyPoint = shown({ flow: duty.flow, head: results.totalHead });
  const minimum = results.minimumFlow === undefined ? undefined : shown(results.minimumFlow);
  return html`${systemCurvePicture(points, dutyPoint, minimum, names, state.width)}
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
                <td>${figureIn(names.flow, flow)}</td>
                <td>${figureIn(names.head, head)}</td>
              </tr>`,
          )}
        </tbody>
      </table>
    </details>
    ${remarksView("At other flows of the curve", worked.remarks.onCurve, units)}`;
}
