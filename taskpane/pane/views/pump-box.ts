import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { type OwnKey, type Place, type PumpKey, placeKey } from "../../../shared/duty/duty-text.ts";
import type { Field } from "../../../shared/duty/field.ts";
import { OWN_BOXES, PUMP_BOXES } from "../../../shared/duty/fields/pump.ts";
import { asTyped } from "../../../shared/duty/sums/written-sum.ts";
import { printedUnit } from "../../../src/basis/quantities.ts";
import { boxId, type PaneContext } from "../context.ts";
import { textAt } from "../state.ts";
import { boxFindingsView, findingsAt } from "./findings.ts";
import { sumLineOf, sumLineView } from "./sum-line.ts";

/** A box of the chosen pump, or of a further one. */
export function pumpBoxView(context: PaneContext, pump: PumpKey, other?: number): TemplateResult {
  return boxView(context, { pump, other }, PUMP_BOXES[pump]);
}

/** A box that a further pump alone has. */
export function ownBoxView(context: PaneContext, own: OwnKey, other: number): TemplateResult {
  return boxView(context, { own, other }, OWN_BOXES[own]);
}

/** Label, box, unit, its findings, and help that opens on demand. */
function boxView(context: PaneContext, place: Place, field: Field): TemplateResult {
  const { state, send } = context;
  const { kind, label, quantity, whenBlank, help } = field;
  const key = placeKey(place);
  const id = boxId(key);
  const units = state.duty.unitSet;
  const unit = quantity === undefined ? "" : printedUnit(quantity, units);
  const findings = findingsAt(context, key);
  const open = state.openHelp.has(key);
  const describedBy = [
    ...(unit === "" ? [] : [`${id}-unit`]),
    ...(quantity === undefined ? [] : sumLineOf(context, place)),
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
        .value=${live(quantity === undefined ? textAt(state.duty, place) : asTyped(textAt(state.duty, place)))}
        @input=${(event: InputEvent) => send({ type: "typed", place, text: (event.target as HTMLInputElement).value })}
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
    ${quantity === undefined ? nothing : sumLineView(context, place, quantity)}
    ${boxFindingsView(context, key)}
    <div class="about" id="${id}-about" ?hidden=${!open}><p id="${id}-help">${help}</p></div>
  </div>`;
}
