import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import type { Field } from "../../../shared/duty/field.ts";
import { FIELDS, type FieldKey, fieldsOf, withoutUse } from "../../../shared/duty/fields.ts";
import { asTyped } from "../../../shared/duty/sums/written-sum.ts";
import { spelt } from "../../../shared/text/spelling.ts";
import { bareFigure } from "../../../shared/text/words.ts";
import { printedUnit, type UnitSetName } from "../../../src/basis/quantities.ts";
import { amount } from "../../../src/basis/result.ts";
import { boxId, type PaneContext } from "../context.ts";
import { matching, type NameList, nameList } from "../names.ts";
import { comboboxView } from "./combobox.ts";
import { boxFindingsView, findingsAt } from "./findings.ts";
import { sumLineOf, sumLineView } from "./sum-line.ts";

/** A field of the duty: label, box, unit, its findings, and help with a line for the basis that open on demand. */
export function fieldView(context: PaneContext, key: FieldKey): TemplateResult | typeof nothing {
  const { state, worked, send } = context;
  const field = speltField(FIELDS[key], context.state.duty.unitSet);
  // What was stated never disappears in silence.
  if (withoutUse(key, state.duty.fields) !== undefined && state.duty.fields[key].trim() === "") return nothing;
  const unused = worked.notUsed.get(key);
  const id = boxId(key);
  const units = state.duty.unitSet;
  const unit = field.quantity === undefined ? "" : printedUnit(field.quantity, units);
  const findings = findingsAt(context, key);
  const open = state.openHelp.has(key);
  const basis = state.duty.basis[key] ?? "";
  const describedBy = [
    ...(unit === "" ? [] : [`${id}-unit`]),
    ...(field.quantity === undefined ? [] : sumLineOf(context, { field: key })),
    ...(findings.length === 0 ? [] : [`${id}-findings`]),
    `${id}-help`,
  ].join(" ");
  return html`<div
    class="field ${field.kind}"
    @keydown=${(event: KeyboardEvent) => {
      if (event.key !== "F1") return;
      event.preventDefault();
      send({ type: "help-toggled", field: key });
    }}
  >
    <label for=${id}>${field.label}</label>
    <div class="entry">
      ${boxView(context, key, field, describedBy)}
      ${unit === "" ? nothing : html`<span class="unit" id="${id}-unit">${unit}</span>`}
    </div>
    <button
      class="about-button"
      type="button"
      tabindex="-1"
      aria-keyshortcuts="F1"
      aria-expanded=${open}
      aria-controls="${id}-about"
      aria-label="About ${field.label}"
      title="${field.help} (F1 in the box: basis)"
      @click=${() => send({ type: "help-toggled", field: key })}
    >
      ?
    </button>
    ${field.quantity === undefined ? nothing : sumLineView(context, { field: key }, field.quantity)}
    ${boxFindingsView(context, key)}
    ${unused === undefined ? nothing : html`<p class="basis-line">Not used: ${unused}</p>`}
    ${!open && basis.trim() !== "" ? html`<p class="basis-line">Basis: ${basis}</p>` : nothing}
    <div class="about" id="${id}-about" ?hidden=${!open}>
      <p id="${id}-help">${field.help}${field.usual === undefined ? nothing : ` ${field.usual}`}</p>
      ${field.kind === "text" || OF_THE_SHEET.includes(key) ? nothing : basisView(context, key, field, basis)}
    </div>
  </div>`;
}

/** Of the sheet and not of the pump: nobody asks where they come from. */
const OF_THE_SHEET = fieldsOf("job");

function boxView(context: PaneContext, key: FieldKey, field: Field, describedBy: string): TemplateResult {
  const { state, worked, send } = context;
  const invalid = findingsAt(context, key).some(({ kind }) => kind === "error");
  const placeholder = assumedText(
    field,
    key === "curveFlow" || key === "temperature" ? worked.duty[key] : field.whenBlank,
    state.duty.unitSet,
  );
  const { choices } = field;
  if (choices !== undefined) {
    return comboboxView(context, {
      place: { field: key },
      describedBy,
      invalid,
      required: field.required === true,
      placeholder,
      matches: ({ typed }) => matching(choiceList(choices, state.duty.unitSet), typed ? state.duty.fields[key] : ""),
      chosen: (_, name) => name,
    });
  }
  const typed = (event: InputEvent): void =>
    send({
      type: "typed",
      place: { field: key },
      text: (event.target as HTMLInputElement | HTMLTextAreaElement).value,
    });
  if (field.isLong === true) {
    return html`<textarea
      id=${boxId(key)}
      rows="4"
      aria-describedby=${describedBy}
      .value=${live(state.duty.fields[key])}
      @input=${typed}
    ></textarea>`;
  }
  return html`<input
    id=${boxId(key)}
    type="text"
    autocomplete="off"
    spellcheck="false"
    aria-describedby=${describedBy}
    aria-invalid=${invalid}
    aria-required=${field.required === true}
    placeholder=${placeholder}
    .value=${live(field.quantity === undefined ? state.duty.fields[key] : asTyped(state.duty.fields[key]))}
    @input=${typed}
  />`;
}

const CHOICE_LISTS = new Map<string, NameList>();

/** Names made ready for searching once, not at every keystroke. */
function choiceList(choices: readonly string[], units: UnitSetName): NameList {
  const names = choices.map((name) => spelt(name, units));
  const key = names.join("\n");
  const known = CHOICE_LISTS.get(key) ?? nameList(names);
  CHOICE_LISTS.set(key, known);
  return known;
}

/** What is said of a box, as the unit set spells it. */
function speltField(field: Field, units: UnitSetName): Field {
  const { label, help, usual } = field;
  return {
    ...field,
    label: spelt(label, units),
    help: spelt(help, units),
    ...(usual !== undefined && { usual: spelt(usual, units) }),
  };
}

function basisView({ send }: PaneContext, key: FieldKey, field: Field, basis: string): TemplateResult {
  const id = `${boxId(key)}-basis`;
  return html`<label for=${id}>Basis of ${field.label}</label>
    <input
      id=${id}
      type="text"
      autocomplete="off"
      placeholder="where the figure comes from"
      .value=${live(basis)}
      @input=${(event: InputEvent) =>
        send({ type: "basis-typed", field: key, text: (event.target as HTMLInputElement).value })}
    />`;
}

/** "68 assumed": what a blank box stands for. */
function assumedText({ quantity }: Field, whenBlank: number | string | undefined, units: UnitSetName): string {
  if (whenBlank === undefined) return "";
  if (quantity === undefined || typeof whenBlank === "string") return `${whenBlank} assumed`;
  return `${bareFigure(amount(quantity, whenBlank), units)} assumed`;
}
