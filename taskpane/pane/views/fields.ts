import { html, nothing, type TemplateResult } from "lit";
import { FIELDS, type FieldKey, withoutUse } from "../../../shared/duty/fields.ts";
import { spelt } from "../../../shared/text/spelling.ts";
import type { PaneContext } from "../context.ts";
import { fieldView } from "./field.ts";

/** The boxes of a step; those few duties need stand under “More”, which is open once one of them is filled. */
export function fieldsView(context: PaneContext, keys: readonly FieldKey[]): TemplateResult {
  const { fields, unitSet } = context.state.duty;
  const isFilled = (key: FieldKey): boolean => fields[key].trim() !== "";
  const usual = keys.filter((key) => FIELDS[key].isSeldom !== true);
  const seldom = keys.filter(
    (key) => FIELDS[key].isSeldom === true && (isFilled(key) || withoutUse(key, fields) === undefined),
  );
  return html`${usual.map((key) => fieldView(context, key))}
  ${
    seldom.length === 0
      ? nothing
      : html`<details class="more" ?open=${seldom.some(isFilled)}>
          <summary>More: ${seldom.map((key) => spelt(FIELDS[key].label, unitSet).toLowerCase()).join(", ")}</summary>
          ${seldom.map((key) => fieldView(context, key))}
        </details>`
  }`;
}
