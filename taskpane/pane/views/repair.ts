import { html, nothing, type TemplateResult } from "lit";
import type { PaneContext } from "../context.ts";
import { type BrokenFormulas, misspeltWords, offerWords } from "../repair.ts";

/** Formulas of ours in the workbook whose name is not known, and the way to enter them again. */
export function repairView(context: PaneContext): TemplateResult | typeof nothing {
  const { repair } = context.state;
  if (repair === undefined) return nothing;
  return html`<section class="repair" aria-label="Formulas to enter again">
    ${
      repair.kind === "working"
        ? html`<div class="buttons">
            <button type="button" aria-disabled="true">Entering the formulas again …</button>
          </div>`
        : html`${readBeforeView(context, repair)} ${misspeltView(context, repair)}`
    }
  </section>`;
}

function readBeforeView({ repairFunctions }: PaneContext, { cells }: BrokenFormulas): TemplateResult | typeof nothing {
  if (cells === 0) return nothing;
  return html`<p>
      ${offerWords(cells)} The workbook was opened before Dutybook was there; entered again, they calculate. Nothing else
      is touched.
    </p>
    <div class="buttons">
      <button type="button" @click=${() => repairFunctions("read before")}>Enter them again</button>
    </div>`;
}

function misspeltView({ repairFunctions }: PaneContext, { misspelt }: BrokenFormulas): TemplateResult | typeof nothing {
  if (misspelt.length === 0) return nothing;
  return html`<p>No function has these names:</p>
    <ul>
      ${misspelt.map((name) => html`<li>${misspeltWords(name)}</li>`)}
    </ul>
    <div class="buttons">
      <button type="button" @click=${() => repairFunctions("misspelt")}>Write them so</button>
    </div>`;
}
