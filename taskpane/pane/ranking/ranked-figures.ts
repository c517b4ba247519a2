import { html, nothing, type TemplateResult } from "lit";
import { marginText } from "../../../shared/text/margin-text.ts";
import { amountFigure } from "../../../shared/text/words.ts";
import type { Quantity, UnitSetName } from "../../../src/basis/quantities.ts";
import { amount } from "../../../src/basis/result.ts";
import type { RankedPump } from "../../../src/pump/selection.ts";

export interface RankedFigure {
  readonly label: string;
  readonly text: string;
  /** Said under it. */
  readonly note?: string;
}

/** The figures a pump is selected by, at its operating point on the duty. */
export function figuresOf(ranked: RankedPump, units: UnitSetName): readonly RankedFigure[] {
  const say = (quantity: Quantity, value: number | undefined): string =>
    value === undefined ? "not given" : amountFigure(amount(quantity, value), units);
  const { flow, head, efficiency, bestFlowRatio, npshRequired, npshMargin, power, speed, diameter, running } = ranked;
  const { shutInPressure, decidedIn } = ranked;
  return [
    { label: "Flow", text: say("flow", flow) },
    { label: "Head", text: say("head", head) },
    { label: "Efficiency", text: say("percent", efficiency) },
    { label: "Flow, % of BEP", text: say("percent", bestFlowRatio) },
    { label: "NPSH required", text: say("head", npshRequired) },
    {
      label: "NPSH margin",
      text: npshMargin === undefined ? "not known" : marginText(amount("head", npshMargin), units),
    },
    { label: "Shaft power", text: say("power", power) },
    { label: "Pressure at closed valve", text: say("gaugePressure", shutInPressure) },
    { label: "Speed", text: say("speed", speed), ...asDrawn(speed, running.speedRatio) },
    { label: "Impeller", text: say("size", diameter), ...asDrawn(diameter, running.trimRatio) },
    ...(decidedIn === undefined ? [] : [{ label: "Worst case", text: decidedIn }]),
  ];
}

function asDrawn(figure: number | undefined, ratio: number): Pick<RankedFigure, "note"> {
  return figure === undefined || ratio !== 1 ? {} : { note: "as its curve" };
}

/** A figure and what is said under it. */
export function rankedFigureView({ text, note }: RankedFigure): TemplateResult {
  return html`${text}${note === undefined ? nothing : html`<span class="note">${note}</span>`}`;
}
