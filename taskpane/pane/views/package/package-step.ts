import { html, nothing, type TemplateResult } from "lit";
import type { Duty } from "../../../../shared/duty/duty.ts";
import type { FieldKey } from "../../../../shared/duty/fields.ts";
import { type ShownOption, type ShownSection, shownSection } from "../../../../shared/package/shown-section.ts";
import type { PaneContext, Step } from "../../context.ts";
import { fieldView } from "../field.ts";
import { sheetTableView } from "./sheet-table.ts";

export interface PackageStep {
  readonly key: string;
  /** As the calc sheet's section is headed. */
  readonly title: string;
  readonly fields: readonly FieldKey[];
  /** Where a figure that counts here is stated, if not in this step. */
  readonly elsewhere?: string;
  /** What people would rather look at than read; undefined where it cannot be drawn. */
  readonly picture?: (duty: Duty, width: number) => TemplateResult | undefined;
  /** What is missing where the sheet has no such section. */
  readonly missing: string;
  readonly caution: string;
}

/** A step of the package round the pump: what is stated, what the sheet says of it, and the usual caution. */
export function packageStep(step: PackageStep): Step {
  const { key, title, fields, elsewhere, caution } = step;
  return {
    key,
    title,
    holds: fields,
    view: (context) =>
      html`${fields.map((field) => fieldView(context, field))}
        ${elsewhere === undefined ? nothing : html`<p class="hint">${elsewhere}</p>`} ${answerView(context, step)}
        <p class="hint">${caution} Local codes and licensed practice govern.</p>`,
  };
}

function answerView({ state, worked }: PaneContext, { title, missing, picture }: PackageStep): TemplateResult {
  if (worked.duty === undefined) return html`<p class="hint">Shown once the duty is complete.</p>`;
  const section = shownSection(worked.duty, title);
  if (section === undefined) return html`<p class="hint">${missing}</p>`;
  return html`${picture?.(worked.duty, state.width) ?? nothing} ${sectionView(section)}`;
}

function sectionView({ figures, tables, lists, remarks }: ShownSection): TemplateResult {
  return html`<dl class="figures">
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
      remarks.length === 0
        ? nothing
        : html`<details class="remarks-of-section">
            <summary>Cautions, reasons and sources (${remarks.length})</summary>
            <ul>${remarks.map((line) => html`<li>${line}</li>`)}</ul>
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
