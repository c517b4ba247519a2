import { html, nothing, type TemplateResult } from "lit";
import { type PackageSection, waitsFor } from "../../../../shared/calc-sheet/package-section.ts";
import type { Duty } from "../../../../shared/duty/duty.ts";
import { fieldsOf } from "../../../../shared/duty/fields.ts";
import { type ShownOption, type ShownSection, shownSection } from "../../../../shared/package/shown-section.ts";
import { spelt } from "../../../../shared/text/spelling.ts";
import type { UnitSetName } from "../../../../src/basis/quantities.ts";
import { inColumn } from "../../columns.ts";
import type { PaneContext, StepContent } from "../../context.ts";
import { fieldsView } from "../fields.ts";
import { findingsView, isGrave, type Mending, mendingOf } from "../findings.ts";
import { verdictsOfStepView } from "../verdict-strip.ts";
import { sheetTableView } from "./sheet-table.ts";

/** What people would rather look at than read; undefined where it cannot be drawn. */
export type SectionPicture = (duty: Duty, width: number) => TemplateResult | undefined;

/** A step of the package round the pump: what is stated, what the sheet says of it, and the usual caution. */
export function packageStep(section: PackageSection, picture: SectionPicture): StepContent {
  const { id, elsewhere, caution } = section;
  const fields = fieldsOf(id);
  return {
    view: (context) =>
      html`${verdictsOfStepView(context, id)}
        <div class=${context.state.column === undefined ? "one-column" : "columns"}>
          <div class="inputs">
            ${fieldsView(context, fields)}
            ${elsewhere === undefined ? nothing : html`<p class="hint">${spelt(elsewhere, context.state.duty.unitSet)}</p>`}
          </div>
          <div class="answers">${answerView(inColumn(context), section, picture)}</div>
        </div>
        <p class="hint">${spelt(caution, context.state.duty.unitSet)} Local codes and licensed practice govern.</p>`,
  };
}

function answerView(context: PaneContext, section: PackageSection, picture: SectionPicture): TemplateResult {
  const { state, worked } = context;
  const { duty } = worked;
  const waits = waitsFor(section, duty);
  if (waits.length > 0) return html`<p class="hint">Waits for: ${spelt(waits.join(", "), duty.unitSet)}.</p>`;
  const shown = shownSection(duty, section.id);
  if (shown === undefined) return html`<p class="hint">${spelt(section.missing, duty.unitSet)}</p>`;
  return html`${picture(duty, state.width) ?? nothing} ${sectionView(shown, duty.unitSet, mendingOf(context))}`;
}

function sectionView(section: ShownSection, units: UnitSetName, mending: Mending): TemplateResult {
  const { figures, tables, lists, findings, statements, waits } = section;
  const [grave, mild] = [findings.filter(isGrave), findings.filter((finding) => !isGrave(finding))];
  return html`${waits.length === 0 ? nothing : html`<p class="hint">Waits for: ${waits.join(", ")}.</p>`}
    ${grave.length === 0 ? nothing : findingsView(grave, units, undefined, mending)}
    <dl class="figures">
      ${figures.map(
        ({ label, text, main }) =>
          html`<div class="figure ${main ? "main" : ""}"><dt>${label}</dt><dd>${text}</dd></div>`,
      )}
    </dl>
    ${tables.map(sheetTableView)}
    ${lists.map(
      ({ label, options }) =>
        html`<h3>${label}</h3>
          <ol class="options">${options.map((option) => html`<li>${optionView(option)}</li>`)}</ol>`,
    )}
    ${
      mild.length + statements.length === 0
        ? nothing
        : html`<details class="remarks-of-section">
            <summary>Warnings, assumptions and sources (${mild.length + statements.length})</summary>
            ${findingsView(mild, units, undefined, mending)}
            <ul>${statements.map((text) => html`<li>${text}</li>`)}</ul>
          </details>`
    }`;
}

/** Name and verdict in sight; what speaks for and against it opens below. */
function optionView({ name, verdict, remarks }: ShownOption): TemplateResult {
  return html`<details class="option">
    <summary><span class="option-name">${name}</span> <span class="option-verdict">${verdict}</span></summary>
    ${remarks.map(({ label, text }) => html`<p>${label === "" ? nothing : html`<strong>${label}.</strong> `}${text}</p>`)}
  </details>`;
}
