import { html, nothing, type TemplateResult } from "lit";
import type { CellError } from "../../../shared/cells/cell.ts";
import { fieldsOf } from "../../../shared/duty/fields.ts";
import type { HeadAndSuction, Worked } from "../../../shared/package/head-and-suction.ts";
import { marginText } from "../../../shared/text/margin-text.ts";
import { printedUnit, UNIT_SETS } from "../../../src/basis/quantities.ts";
import { fromEngine } from "../../../src/basis/units.ts";
import type { PaneContext, Step } from "../context.ts";
import { type HeadPart, headBars } from "../pictures/head-bars.ts";
import { cautionsView } from "./cautions.ts";
import { fieldsView } from "./fields.ts";
import { figureView, isWaiting, SaidReasons } from "./figure.ts";
import { mendingOf, remarksView } from "./findings.ts";
import { openPointsView } from "./open-points.ts";
import { verdictsOfStepView } from "./verdict-strip.ts";

const FIELDS = fieldsOf("suction");

/** Total head and suction, worked out at every keystroke. */
export const results: Step = {
  key: "results",
  title: "Head and NPSH",
  holds: FIELDS,
  view: (context) => {
    const { duty, results: worked, remarks } = context.worked;
    const units = context.state.duty.unitSet;
    const said = new SaidReasons();
    const nothingKnown = isWaiting(worked.totalHead) && isWaiting(worked.npshAvailable);
    return html`${verdictsOfStepView(context, "results")} ${fieldsView(context, FIELDS)} ${openPointsView(context)}
    ${nothingKnown ? nothing : html`${headView(context, worked, said)} ${suctionView(context, worked, said)}`}
    ${remarksView("Warnings and checks", remarks.atDuty, units, mendingOf(context))}
    ${remarksView("At the maximum suction lift", remarks.atGreatestLift, units, mendingOf(context))} ${cautionsView(duty)}`;
  },
};

function headView({ state }: PaneContext, worked: HeadAndSuction, said: SaidReasons): TemplateResult {
  const units = state.duty.unitSet;
  const hasMargin = worked.marginHead !== 0;
  const total = hasMargin ? worked.ratedHead : worked.totalHead;
  const parts = headParts(worked, hasMargin).map(({ name, value }) => ({
    name,
    value: typeof value === "number" ? fromEngine(value, UNIT_SETS[units].head) : undefined,
  }));
  const drawn = parts.filter((part): part is HeadPart => part.value !== undefined);
  return html`
    <dl class="figures">
      ${figureView("Total dynamic head", worked.totalHead, "head", units, { main: true, said })}
      ${hasMargin ? figureView("Total head with margin", worked.ratedHead, "head", units, { main: true, said }) : nothing}
      ${worked.headAsked === undefined ? nothing : figureView("Head to select for, over the summit unless a siphon is earned", worked.headAsked, "head", units, { main: true, said })}
      ${
        worked.waterHead === undefined
          ? nothing
          : figureView("Equivalent water head, to read pump curves at", worked.waterHead, "head", units, {
              main: true,
              said,
            })
      }
    </dl>
    ${
      typeof total === "number" && drawn.length === parts.length
        ? headBars(
            drawn.filter(({ value }) => value !== 0),
            hasMargin ? "Total with margin" : "Total head",
            fromEngine(total, UNIT_SETS[units].head),
            printedUnit("head", units),
            state.width,
          )
        : html`<dl class="figures">
            ${headParts(worked, hasMargin).map(({ name, value }) => figureView(name, value, "head", units, { said }))}
          </dl>`
    }`;
}

function headParts(worked: HeadAndSuction, hasMargin: boolean): readonly { name: string; value: Worked }[] {
  return [
    { name: "Static head", value: worked.staticHead },
    { name: "Pressure head", value: worked.pressureHead },
    { name: "Suction pipe", value: worked.suctionPipe },
    { name: "Suction fittings", value: worked.suctionFittings },
    { name: "Discharge pipe", value: worked.dischargePipe },
    { name: "Discharge fittings", value: worked.dischargeFittings },
    ...(hasMargin ? [{ name: "Margin on losses", value: worked.marginHead }] : []),
  ];
}

function suctionView({ state }: PaneContext, worked: HeadAndSuction, said: SaidReasons): TemplateResult {
  const units = state.duty.unitSet;
  const { npshAvailable, npshDifference, greatestLift, suctionLift } = worked;
  /** Worked out, or refused for another reason than NPSH available is: one reason is said once. */
  const follows = (figure: Worked | undefined): figure is Worked =>
    figure !== undefined && (typeof figure === "number" || !sameError(figure, npshAvailable));
  const flooded = typeof suctionLift === "number" && suctionLift < 0;
  return html`
    <dl class="figures">
      ${figureView("NPSH available", npshAvailable, "head", units, { main: true, said })}
      ${
        flooded
          ? figureView("Liquid over the pump", -suctionLift, "head", units)
          : figureView("Suction lift", suctionLift, "head", units, { said })
      }
      ${figureView("Suction line losses", worked.suctionLoss, "head", units, { said })}
      ${follows(npshDifference) ? figureView("NPSH margin", npshDifference, "head", units, { words: marginText, said }) : nothing}
      ${follows(greatestLift) ? figureView("Maximum suction lift", greatestLift, "head", units, { said }) : nothing}
    </dl>`;
}

function sameError(error: CellError, other: Worked): boolean {
  return typeof other !== "number" && error.message === other.message;
}
