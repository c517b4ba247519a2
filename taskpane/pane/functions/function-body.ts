import { html, nothing, type TemplateResult } from "lit";
import { type Entry, parameterName } from "../../../shared/catalogue/entry.ts";
import { filledExample } from "../../../shared/help/filled-example.ts";
import { formulaText, syntaxOf } from "../../../shared/help/formula-text.ts";
import { unitsOf } from "../../../shared/help/unit-words.ts";
import { NAMESPACE } from "../../../shared/ports/namespace.ts";
import type { UnitSetName } from "../../../src/basis/quantities.ts";

export const PUT_ID = "duty-function-put";
export const REPLACE_ID = "duty-function-replace";

/** What came of putting a formula into a cell, or what has to be said yes to before. */
export interface Outcome {
  readonly kind: "done" | "filled" | "failed";
  readonly text: string;
}

interface Shown {
  readonly entry: Entry;
  readonly units: UnitSetName;
  readonly help: string;
  /** Where a formula would go, in words; nothing where there is no cell to go to. */
  readonly place: string | undefined;
  readonly outcome: Outcome | undefined;
  readonly put: (mayReplace: boolean) => void;
  readonly leave: () => void;
}

/** One function: its arguments with units, an example in the reader's, and the way to put that into a cell. */
export function functionBody({ entry, units, help, place, outcome, put, leave }: Shown): TemplateResult {
  const { args, asks } = filledExample(entry, units);
  return html`<div class="function-body">
    <p class="syntax"><code>${syntaxOf(entry)}</code></p>
    <dl>
      ${entry.parameters.map(
        ([key, { about, quantity, whenLeftOut }]) => html`<dt>${parameterName(key)}</dt>
          <dd>
            ${about}.${quantity === undefined ? nothing : html` <span class="unit">${unitsOf(quantity)}.</span>`}
            ${whenLeftOut === undefined ? nothing : html` Left out: ${whenLeftOut}.`}
          </dd>`,
      )}
    </dl>
    <p>${asks === undefined ? "Example" : asks}: <code>${formulaText(entry, args)}</code></p>
    ${
      place === undefined
        ? nothing
        : html`<div class="buttons">
            <button type="button" id=${PUT_ID} @click=${() => put(false)}>Put into ${place}</button>
          </div>`
    }
    <div role="status" class="outcome ${outcome?.kind ?? ""}">
      ${
        outcome === undefined
          ? nothing
          : html`<p>${outcome.text}</p>
              ${
                outcome.kind === "filled"
                  ? html`<div class="buttons">
                      <button type="button" id=${REPLACE_ID} @click=${() => put(true)}>Replace what is there</button>
                      <button type="button" @click=${leave}>Leave it</button>
                    </div>`
                  : nothing
              }`
      }
    </div>
    <a href="${help}${entry.id}.html" target="_blank" rel="noopener">Help on ${NAMESPACE}.${entry.id}</a>
  </div>`;
}
