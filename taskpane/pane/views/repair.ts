import { html, nothing, type TemplateResult } from "lit";
import type { PaneContext } from "../context.ts";
import { offerWords } from "../repair.ts";

/** Formulas of ours in the workbook whose name is not known, and the way to enter them again. */
export function repairView({ state: { repair }, repairFunctions }: PaneContext): TemplateResult | typeof nothing {
  if (repair === undefined) return nothing;
  const isWorking = repair.kind === "working";
  return html`<section class="repair" aria-label="Formulas to enter again">
    ${
      isWorking
        ? nothing
        : html`<p>
            ${offerWords(repair.cells)} The workbook was opened before Dutybook was there; entered again, they calculate.
            Nothing else is touched.
          </p>`
    }
    <div class="buttons">
      <button type="button" aria-disabled=${isWorking} @click=${() => (isWorking ? undefined : repairFunctions())}>
        ${isWorking ? "Entering the formulas again …" : "Enter them again"}
      </button>
    </div>
  </section>`;
}
