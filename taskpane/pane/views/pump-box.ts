import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { type PumpKey, placeKey } from "../../../shared/duty/duty-text.ts";
import type { Field } from "../../../shared/duty/field.ts";
import { PUMP_BOXES } from "../../../shared/duty/fields/pump.ts";
import { printedUnit } from "../../../src/basis/quantities.ts";
import { boxId, type PaneContext } from "../context.ts";
import { textAt } from "../state.ts";
import { findingsAt, findingsView } from "./findings.ts";

/** A box of the chosen pump: label, box, unit, its findings, and help that opens on demand. */
export function pumpBoxView(context: PaneContext, pump: PumpKey): TemplateResult {
  const { state, send } = context;
  const { kind, label, quantity, whenBlank, help }: Field = PUMP_BOXES[pump];
  const key = placeKey({ pump });
  const id = boxId(key);
  const units = state.duty.unitSet;
  const unit = quantity === undefined ? "" : printedUnit(quantity, units);
  const findings = findingsAt(context, key);
  const open = state.openHelp.has(key);
  const describedBy = [
    ...(unit === "" ? [] : [`${id}-unit`]),
    ...(findings.length === 0 ? [] : [`${id}-findings`]),
    `${id}-help`,
  ].join(" ");
  return html`<div class="field ${kind}">
    <label for=${id}>${label}</label>
    <div class="entry">
      <input
        id=${id}
        type="text"
        autocomplete="off"
        spellcheck="false"
        aria-describedby=${describedBy}
        aria-invalid=${findings.some(({ kind }) => kind === "error")}
        placeholder=${whenBlank === undefined ? "" : `${whenBlank} assumed`}
        .value=${live(textAt(state.duty, { pump }))}
        @input=${(event: InputEvent) =>
          send({ type: "typed", place: { pump }, text: (event.target as HTMLInputElement).value })}
      />
      ${unit === "" ? nothing : html`<span class="unit" id="${id}-unit">${unit}</span>`}
    </div>
    <button
      class="about-button"
      type="button"
      aria-expanded=${open}
      aria-controls="${id}-about"
      aria-label="About ${label}"
      title="Help"
      @click=${() => send({ type: "help-toggled", field: key })}
    >
      ?
    </button>
    ${findings.length === 0 ? nothing : findingsView(findings, units, `${id}-findings`)}
    <div class="about" id="${id}-about" ?hidden=${!open}><p id="${id}-help">${help}</p></div>
  </div>`;
}
