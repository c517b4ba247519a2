import { html, nothing, type TemplateResult } from "lit";
import type { Duty } from "../../../shared/duty/duty.ts";
import type { PumpText } from "../../../shared/duty/duty-text.ts";
import { PUMP_KEYS } from "../../../shared/duty/fields/pump.ts";
import type { PumpOnDuty } from "../../../shared/package/pump-on-duty.ts";
import { shownSection } from "../../../shared/package/shown-section.ts";
import { differenceText, marginText } from "../../../shared/text/margin-text.ts";
import { amountText } from "../../../shared/text/words.ts";
import { amount, type Finding, gravestFirst } from "../../../src/basis/result.ts";
import type { PaneContext, StepContent } from "../context.ts";
import { PUMP_BOXES_FOLD } from "../state.ts";
import { type AmountWords, figureView, isWaiting } from "./figure.ts";
import { mendingOf, remarksView } from "./findings.ts";
import { foldView } from "./fold.ts";
import { furtherPumpsView } from "./further-pumps.ts";
import { openPointsView } from "./open-points.ts";
import { pumpBoxView } from "./pump-box.ts";
import { pumpPictureView } from "./pump-picture.ts";
import { pumpPointsView } from "./pump-points.ts";
import { reselectionView } from "./reselection.ts";
import { stationPumpsView } from "./station-pumps.ts";
import { verdictsOfStepView } from "./verdict-strip.ts";

/** A ratio of seven figures, as it is written into the duty, moves a head by less. */
const ROUNDING = 1e-6;

/** The pump chosen for the duty: as it is and runs, its curve, and where it and the system meet. */
export const pump: StepContent = {
  brief: ({ state }) => state.duty.pump?.name.trim() ?? "",
  view: (context) => {
    const chosen = context.state.duty.pump;
    return chosen === undefined ? noPumpView(context) : pumpView(context, chosen);
  },
};

function noPumpView({ send, goTo }: PaneContext): TemplateResult {
  return html`<p class="hint">Select a pump above, or enter one and its curve by hand.</p>
    <div class="buttons">
      <button
        type="button"
        @click=${() => {
          send({ type: "pump-begun" });
          goTo("duty-pump-name");
        }}
      >
        Enter a pump by hand
      </button>
    </div>`;
}

function pumpView(context: PaneContext, chosen: PumpText): TemplateResult {
  const { send, goTo } = context;
  const boxes = html`${PUMP_KEYS.map((key) => pumpBoxView(context, key))}
    ${pumpPointsView(context, chosen)} ${furtherPumpsView(context)}`;
  return html`${verdictsOfStepView(context, "pump")} ${reselectionView(context, chosen)} ${resultsView(context)}
    ${foldView(context, PUMP_BOXES_FOLD, "Its speed, trim and curve, and further pumps", boxes)}
    <div class="buttons">
      <button
        type="button"
        @click=${() => {
          send({ type: "pump-dropped" });
          goTo("duty-step-pump");
        }}
      >
        Remove the pump from the duty
      </button>
    </div>`;
}

function resultsView(context: PaneContext): TemplateResult {
  const { duty, results, pump: worked } = context.worked;
  if (worked === undefined || isWaiting(worked.operatingPoint.flow)) {
    return html`<h3>Operating point</h3>
      <p class="hint">Worked out once the lines, levels and curve are there.</p>
      ${openPointsView(context)}`;
  }
  return html`<h3>Operating point</h3>
    ${figuresView(context, worked)} ${pumpPictureView(context, duty, worked, results)} ${limitsView(duty)} ${stationPumpsView(context)}
    ${remarksView("Warnings and checks", findingsOf(worked), context.state.duty.unitSet, mendingOf(context))}`;
}

/** Between which flows the pumps can run, as the sheet has it. */
function limitsView(duty: Duty): TemplateResult | typeof nothing {
  const limits = shownSection(duty, "flowLimits");
  if (limits === undefined) return nothing;
  return html`<h3>Limits of flow</h3>
    <dl class="figures">
      ${limits.figures.map(({ label, text }) => html`<div class="figure"><dt>${label}</dt><dd>${text}</dd></div>`)}
    </dl>`;
}

function figuresView({ state, worked: { results } }: PaneContext, worked: PumpOnDuty): TemplateResult {
  const hasWaterHead = results.waterHead !== undefined;
  const units = state.duty.unitSet;
  const { operatingPoint: point, pumpsRunning, speed, impellerDiameter } = worked;
  const runs = [
    ...(speed === undefined ? [] : [amountText(amount("speed", speed), units)]),
    ...(impellerDiameter === undefined ? [] : [`impeller ${amountText(amount("size", impellerDiameter), units)}`]),
  ].join(", ");
  const together = pumpsRunning === undefined || pumpsRunning === 1 ? "" : `, all ${pumpsRunning}`;
  return html`<dl class="figures">
    ${
      runs === ""
        ? nothing
        : html`<div class="figure">
            <dt>Speed and impeller</dt>
            <dd>${runs}</dd>
          </div>`
    }
    ${figureView(`Flow at the operating point${together}`, point.flow, "flow", units, { main: true })}
    ${typeof point.flow === "number" ? figureView("Head at the operating point", point.head, "head", units) : nothing}
    ${typeof point.flow === "number" ? figureView("Flow compared with the duty", worked.flowOverDuty, "percent", units, { words: differenceText }) : nothing}
    ${figureView(hasWaterHead ? "Head at duty flow, on water" : "Head at duty flow", worked.headAtDutyFlow, "head", units)}
    ${
      typeof worked.headOverDuty === "number"
        ? figureView(
            hasWaterHead ? "Compared with the equivalent water head" : "Head compared with required (margin included)",
            withoutDust(worked.headOverDuty, worked),
            "head",
            units,
            { words: differenceText },
          )
        : nothing
    }
    ${optional("Efficiency", point.efficiency, "percent")} ${optional("Flow, % of BEP", point.bestFlowRatio, "percent")}
    ${optional("NPSH required", point.npshRequired, "head")} ${optional("NPSH available there", worked.npshAvailableThere, "head")}
    ${optional("NPSH margin there", point.npshMargin, "head", marginText)}
    ${optional(`Shaft power${together}`, point.shaftPower, "power")}
    ${optional(`Maximum shaft power on the curve${together}`, worked.greatestPower, "power")}
  </dl>`;

  function optional(
    label: string,
    figure: PumpOnDuty["greatestPower"],
    quantity: "percent" | "head" | "power",
    words?: AmountWords,
  ): TemplateResult | typeof nothing {
    return figure === undefined
      ? nothing
      : figureView(label, figure, quantity, units, words === undefined ? {} : { words });
  }
}

/** A difference of two heads; nothing where rounding alone is left of them. */
function withoutDust(difference: number, { headAtDutyFlow }: PumpOnDuty): number {
  return typeof headAtDutyFlow === "number" && Math.abs(difference) < ROUNDING * headAtDutyFlow ? 0 : difference;
}

/** What is remarked on the duty as stated, once each, the gravest first. Its range has remarks of its own. */
function findingsOf({ cases }: PumpOnDuty): readonly Finding[] {
  const stated = cases.find(({ key }) => key === "normal")?.findings ?? [];
  // The power shown here is with the liquid pumped already.
  const apt = stated.filter(({ code }) => code !== "power-for-water");
  return gravestFirst(apt);
}
