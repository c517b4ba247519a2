import { html, type TemplateResult } from "lit";
import { cautions } from "../../../shared/calc-sheet/sections/remarks.ts";

/** The standing cautions: the first always in sight, the sheet's others a step away. */
export function cautionsView(): TemplateResult {
  const printed = cautions.flatMap((item) => (item.kind === "statement" ? [item.text] : []));
  return html`<div class="cautions">
    <p>
      An aid to estimating, not a design. Local codes and licensed practice govern; a competent engineer checks before
      anything is ordered, built or run.
    </p>
    <details>
      <summary>All cautions as printed on the sheet</summary>
      <ul>
        ${printed.map((text) => html`<li>${text}</li>`)}
      </ul>
    </details>
  </div>`;
}
