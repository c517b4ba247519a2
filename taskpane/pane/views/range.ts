import { html, nothing, type TemplateResult } from "lit";
import { fieldsOf } from "../../../shared/duty/fields.ts";
import type { Worked } from "../../../shared/package/head-and-suction.ts";
import type { DutyCase, PumpOnDuty } from "../../../shared/package/pump-on-duty.ts";
import { bareMargin, marginText } from "../../../shared/text/margin-text.ts";
import { printedUnit, type Quantity, type UnitSetName } from "../../../src/basis/quantities.ts";
import type { PaneContext, StepContent } from "../context.ts";
import { fieldsView } from "./fields.ts";
import { type AmountWords, cellText, figureText, figureView } from "./figure.ts";
import { remarksView } from "./findings.ts";
import { verdictsOfStepView } from "./verdict-strip.ts";

const FIELDS = fieldsOf("range");

/** How far levels, pipe and the bought pump may stray, and what the pump then does at worst. */
export const range: StepContent = {
  view: (context) =>
    html`${verdictsOfStepView(context, "range")} ${fieldsView(context, FIELDS)} ${regionView(context)}`,
};

function regionView({ state, worked }: PaneContext): TemplateResult {
  const { pump } = worked;
  if (pump === undefined) return html`<p class="hint">Select a pump to see its operating range.</p>`;
  const units = state.duty.unitSet;
  return html`${extremesView(pump, units)} ${casesView(pump.cases, units)} ${acceptanceView(pump, units)}
  ${remarksView("Over the range", pump.regionFindings, units)}`;
}

function extremesView({ region }: PumpOnDuty, units: UnitSetName): TemplateResult | typeof nothing {
  if (region === undefined) return nothing;
  const { leastFlow, greatestFlow, leastNpshMargin, greatestPower, corners } = region;
  const isFull = corners.some(({ flow, pipe }) => pipe === "full" && flow === greatestFlow);
  return html`<h3>Worst of the range</h3>
    <dl class="figures">
      ${figureView("Minimum flow", leastFlow, "flow", units, { main: true })}
      ${figureView(isFull ? "Maximum flow, line running full" : "Maximum flow", greatestFlow, "flow", units, { main: true })}
      ${
        leastNpshMargin === null
          ? nothing
          : figureView("Worst NPSH margin", leastNpshMargin.margin, "head", units, { main: true, words: marginText })
      }
      ${leastNpshMargin === null ? nothing : figureView("at a flow of", leastNpshMargin.flow, "flow", units)}
      ${greatestPower === null ? nothing : figureView("Maximum shaft power", greatestPower, "power", units, { main: true })}
    </dl>`;
}

const COLUMNS: readonly {
  readonly head: string;
  readonly quantity: Quantity;
  readonly figure: (one: DutyCase) => Worked | undefined;
  readonly words?: AmountWords;
}[] = [
  { head: "Flow", quantity: "flow", figure: ({ flow }) => flow },
  { head: "Head", quantity: "head", figure: ({ head }) => head },
  { head: "Eff.", quantity: "percent", figure: ({ efficiency }) => efficiency },
  { head: "NPSH margin", quantity: "head", figure: ({ npshMargin }) => npshMargin, words: bareMargin },
  { head: "Power", quantity: "power", figure: ({ shaftPower }) => shaftPower },
];

function casesView(cases: readonly DutyCase[], units: UnitSetName): TemplateResult | typeof nothing {
  if (cases.length < 2) return nothing;
  return html`<div class="wide-table" role="region" aria-label="The pump at the ends of the range" tabindex="0">
    <table class="cases">
      <thead>
        <tr>
          <th scope="col">State</th>
          ${COLUMNS.map(
            ({ head, quantity }) =>
              html`<th scope="col">${head}<span class="unit">${printedUnit(quantity, units)}</span></th>`,
          )}
        </tr>
      </thead>
      <tbody>
        ${cases.map(
          (one) =>
            html`<tr>
              <th scope="row">${one.label}</th>
              ${
                typeof one.flow === "number"
                  ? COLUMNS.map(
                      ({ quantity, figure, words }) => html`<td>${cellText(figure(one), quantity, units, words)}</td>`,
                    )
                  : html`<td class="refused" colspan=${COLUMNS.length}>${figureText(one.flow, "flow", units)}</td>`
              }
            </tr>`,
        )}
      </tbody>
    </table>
  </div>`;
}

function acceptanceView({ acceptance }: PumpOnDuty, units: UnitSetName): TemplateResult | typeof nothing {
  if (acceptance === undefined) return nothing;
  const { grade, leastFlow, greatestFlow, leastHead, greatestHead, leastEfficiency } = acceptance;
  return html`<h3>Acceptance to grade ${grade}</h3>
    <dl class="figures">
      ${bandView("Flow", leastFlow, greatestFlow, "flow", units)}
      ${bandView("Head", leastHead, greatestHead, "head", units)}
      ${leastEfficiency === undefined ? nothing : figureView("Minimum efficiency", leastEfficiency, "percent", units)}
    </dl>`;
}

function bandView(
  label: string,
  least: Worked,
  greatest: Worked,
  quantity: Quantity,
  units: UnitSetName,
): TemplateResult {
  if (typeof least !== "number" || typeof greatest !== "number") return figureView(label, least, quantity, units);
  return html`<div class="figure">
    <dt>${label}</dt>
    <dd>${cellText(least, quantity, units)} to ${figureText(greatest, quantity, units)}</dd>
  </div>`;
}
