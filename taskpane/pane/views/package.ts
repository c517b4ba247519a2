import { html, nothing, type TemplateResult } from "lit";
import type { FieldKey } from "../../../shared/duty/duty-text.ts";
import { type ShownSection, shownSection } from "../../../shared/package/shown-section.ts";
import type { PaneContext, Step } from "../context.ts";
import { fieldView } from "./field.ts";

interface PackageStep {
  readonly key: string;
  /** As the calc sheet's section is headed. */
  readonly title: string;
  readonly fields: readonly FieldKey[];
  /** What is missing where the sheet has no such section. */
  readonly missing: string;
  readonly caution: string;
}

/** A step of the package round the pump: what is stated, what the sheet says of it, and the usual caution. */
function packageStep({ key, title, fields, missing, caution }: PackageStep): Step {
  return {
    key,
    title,
    holds: fields,
    view: (context) => html`${fields.map((field) => fieldView(context, field))} ${answerView(context, title, missing)}
      <p class="hint">${caution} Local codes and licensed practice govern.</p>`,
  };
}

function answerView({ worked }: PaneContext, title: string, missing: string): TemplateResult {
  if (worked.duty === undefined) return html`<p class="hint">Shown once the duty is complete.</p>`;
  const section = shownSection(worked.duty, title);
  return section === undefined ? html`<p class="hint">${missing}</p>` : sectionView(section);
}

function sectionView({ figures, lists, remarks }: ShownSection): TemplateResult {
  return html`<dl class="figures">
      ${figures.map(
        ({ label, text, main }) =>
          html`<div class="figure ${main ? "main" : ""}"><dt>${label}</dt><dd>${text}</dd></div>`,
      )}
    </dl>
    ${lists.map(
      ({ label, lines }) =>
        html`<h3>${label}</h3>
          <ol class="ranked-lines">${lines.map((line) => html`<li>${line}</li>`)}</ol>`,
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

export const pressure = packageStep({
  key: "pressure",
  title: "Pressure and flanges",
  fields: ["greatestSuctionPressure", "casingMaterial", "flangeClass", "casingWorkingPressure"],
  missing: "Choose a pump: the greatest pressure comes of its curve.",
  caution:
    "A casing or flange above its pressure bursts: check each nozzle, seal and hose, and test with people clear.",
});

export const drive = packageStep({
  key: "drive",
  title: "Drive",
  fields: ["driver", "serviceFactor", "engineRating", "airTemperature", "aspiration", "specificConsumption"],
  missing: "Choose a pump whose curve gives efficiency or power.",
  caution:
    "Guard every turning part, lock out before work, and keep exhaust and hot surfaces away from people and fuel.",
});

export const priming = packageStep({
  key: "priming",
  title: "Priming",
  fields: ["airPump", "casingVolume", "solids"],
  missing: "The pump stands at or below its liquid: it is flooded and needs no priming.",
  caution: "Hot or volatile liquid, and places where gas may burn, need their own check before any priming device.",
});

export const materials = packageStep({
  key: "materials",
  title: "Materials",
  fields: ["pH", "chlorides", "solidsHardness"],
  missing: "State the pH: nothing is ranked on a guess. Temperature, chlorides and solids count too.",
  caution: "Rules of thumb for a first choice: have every wetted part confirmed by the maker and a corrosion engineer.",
});
