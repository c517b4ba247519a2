import { html, type TemplateResult } from "lit";
import { cautionTexts } from "../../../shared/calc-sheet/sections/cautions.ts";
import type { Duty } from "../../../shared/duty/duty.ts";
import { spelt } from "../../../shared/text/spelling.ts";

/** The standing cautions: the first always in sight, the sheet's others a step away. */
export function cautionsView(duty: Duty | undefined): TemplateResult {
  return html`<div class="cautions">
    <p>
      An aid to estimating, not a design. Local codes and licensed practice govern; a competent engineer checks before
      anything is ordered, built or run.
    </p>
    <details>
      <summary>All cautions as printed on the sheet</summary>
      <ul>
        ${cautionTexts(duty).map((text) => html`<li>${spelt(text, duty?.unitSet ?? "US")}</li>`)}
      </ul>
    </details>
  </div>`;
}
