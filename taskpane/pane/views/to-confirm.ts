import { html, nothing, type TemplateResult } from "lit";
import { itemsBySheet } from "../../../shared/calc-sheet/plan.ts";
import { unverifiedWorks } from "../../../shared/calc-sheet/sections/found-lists.ts";
import { placeKey } from "../../../shared/duty/duty-text.ts";
import { lineQuestions } from "../../../shared/duty/line-questions.ts";
import { type Gathered, gatheredFindings } from "../../../shared/package/gathered-findings.ts";
import { shownSection } from "../../../shared/package/shown-section.ts";
import { workedDuty } from "../../../shared/package/worked-duty.ts";
import { findingText } from "../../../shared/text/finding-text.ts";
import type { UnitSetName } from "../../../src/basis/quantities.ts";
import type { PaneContext, StepContent } from "../context.ts";

/** What rests on nobody's word yet, in one list as the sheet prints it. */
export const toConfirm: StepContent = {
  brief: (context) => {
    const count = taken(context).length + assumed(context).length;
    return count === 0 ? "" : `${count} assumed`;
  },
  view: (context) => {
    const [boxes, calls] = [taken(context), assumed(context)];
    const units = context.state.duty.unitSet;
    return html`${
      boxes.length + calls.length === 0
        ? html`<p class="hint">Nothing is assumed yet.</p>`
        : html`<p class="hint">Nothing was stated for these; the figures beside them were taken.</p>`
    }
    <dl class="figures">
      ${boxes.map(({ label, text }) => html`<div class="figure"><dt>${label}</dt><dd>${text}</dd></div>`)}
    </dl>
    ${calls.length === 0 ? nothing : html`<ul>${calls.map((one) => callView(one, units))}</ul>`}
    ${unverifiedView(context)}`;
  },
};

function callView({ finding, at }: Gathered, units: UnitSetName): TemplateResult {
  return html`<li><strong>${at.join("; ")}:</strong> ${findingText(finding, units)}</li>`;
}

function unverifiedView({ worked: { duty } }: PaneContext): TemplateResult | typeof nothing {
  const works = unverifiedWorks(itemsBySheet(workedDuty(duty).plan.items).duty, duty);
  return works.length === 0
    ? nothing
    : html`<details class="remarks-of-section">
        <summary>For the estimator: figures not yet verified (${works.length})</summary>
        <ul>${works.map((text) => html`<li>${text}</li>`)}</ul>
      </details>`;
}

/** Boxes left blank, with what stands in their place. */
function taken({ worked: { duty } }: PaneContext): readonly { readonly label: string; readonly text: string }[] {
  return shownSection(duty, "toConfirm")?.figures ?? [];
}

/** What the rows of the lines and the calls took for granted. */
function assumed({ worked: { duty } }: PaneContext): readonly Gathered[] {
  const ofLines = lineQuestions(duty).map(({ place, finding }) => [placeKey(place), [finding]] as const);
  return gatheredFindings(ofLines, workedDuty(duty)).filter(({ finding }) => finding.kind === "assumed");
}
