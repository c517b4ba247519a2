import { html, nothing, type TemplateResult } from "lit";
import type { Worked } from "../../../shared/package/head-and-suction.ts";
import { stationShown } from "../../../shared/package/station-shown.ts";
import { bareMargin } from "../../../shared/text/margin-text.ts";
import { bareFigure } from "../../../shared/text/words.ts";
import { printedUnit, type Quantity } from "../../../src/basis/quantities.ts";
import { amount } from "../../../src/basis/result.ts";
import type { PaneContext } from "../context.ts";
import type { AmountWords } from "./figure.ts";

const COLUMNS = [
  { head: "Flow", quantity: "flow", of: "flow", words: bareFigure },
  { head: "Head", quantity: "head", of: "head", words: bareFigure },
  { head: "Of BEP", quantity: "percent", of: "bestFlowRatio", words: bareFigure },
  { head: "NPSH margin", quantity: "head", of: "npshMargin", words: bareMargin },
] as const;

/** What each of unlike pumps does on the duty, and what the rest does when one stops. */
export function stationPumpsView({ state, worked }: PaneContext): TemplateResult | typeof nothing {
  const units = state.duty.unitSet;
  const { pumps, stops } = stationShown(worked.duty);
  const shown = (figure: Worked | undefined, quantity: Quantity, words: AmountWords = bareFigure): string =>
    typeof figure === "number" ? words(amount(quantity, figure), units) : "–";
  const heads = COLUMNS.map(
    ({ head, quantity }) => html`<th scope="col">${head}<span class="unit">${printedUnit(quantity, units)}</span></th>`,
  );
  return html`${
    pumps.length === 0
      ? nothing
      : html`<h3>What each pump does</h3>
          <div class="wide-table" role="region" aria-label="What each pump does" tabindex="0">
            <table class="cases">
              <thead>
                <tr><th scope="col">Pump</th>${heads}<th scope="col">Does</th></tr>
              </thead>
              <tbody>
                ${pumps.map(
                  (pump) =>
                    html`<tr>
                      <th scope="row">${pump.name}</th>
                      ${COLUMNS.map(({ quantity, of, words }) => html`<td>${shown(pump[of], quantity, words)}</td>`)}
                      <td>${pump.does}</td>
                    </tr>`,
                )}
              </tbody>
            </table>
          </div>`
  }
  ${
    stops.length === 0
      ? nothing
      : html`<h3>When a pump stops</h3>
          <div class="wide-table" role="region" aria-label="When a pump stops" tabindex="0">
            <table class="cases">
              <thead>
                <tr>
                  <th scope="col">Stopped</th>
                  <th scope="col">Flow<span class="unit">${printedUnit("flow", units)}</span></th>
                  <th scope="col">The rest</th>
                </tr>
              </thead>
              <tbody>
                ${stops.map(
                  ({ stopped, flow, does }) =>
                    html`<tr>
                      <th scope="row">${stopped}</th>
                      <td>${shown(flow, "flow")}</td>
                      <td>${does}</td>
                    </tr>`,
                )}
              </tbody>
            </table>
          </div>`
  }`;
}
