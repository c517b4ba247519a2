import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { fieldOfBox } from "../../../shared/duty/box-field.ts";
import {
  type CaseBox,
  type CaseFieldKey,
  type CaseText,
  MOST_CASES,
  placeKey,
} from "../../../shared/duty/duty-text.ts";
import type { Field } from "../../../shared/duty/field.ts";
import { CASE_FIELDS, CASE_HOURS, CASE_KEYS } from "../../../shared/duty/fields/cases.ts";
import { fieldsOf } from "../../../shared/duty/fields.ts";
import { casesToMake } from "../../../shared/duty/made-cases.ts";
import { asTyped } from "../../../shared/duty/sums/written-sum.ts";
import { type CaseShown, type CasesShown, casesShown } from "../../../shared/package/cases.ts";
import type { Worked } from "../../../shared/package/head-and-suction.ts";
import { bareMargin } from "../../../shared/text/margin-text.ts";
import { spelt } from "../../../shared/text/spelling.ts";
import { printedUnit, type Quantity, type UnitSetName } from "../../../src/basis/quantities.ts";
import { boxId, type PaneContext, type StepContent } from "../context.ts";
import { matching, nameList } from "../names.ts";
import { comboboxView } from "./combobox.ts";
import { fieldView } from "./field.ts";
import { type AmountWords, cellText, figureText } from "./figure.ts";
import { boxFindingsView, findingsAt } from "./findings.ts";
import { sumLineOf, sumLineView } from "./sum-line.ts";

const FIELDS = fieldsOf("cases");

/** Named states of the duty, each with what it states anew, and their results beside one another. */
export const cases: StepContent = {
  view: (context) => {
    const { duty } = context.state;
    const typed = duty.cases ?? [];
    return html`<p class="hint">
        Dry weather, storm, low sump, summer water: up to ${MOST_CASES} states of the duty, each with what differs. What a
        case does not state is as in the duty.
      </p>
      ${typed.length === 0 ? nothing : FIELDS.map((key) => fieldView(context, key))}
      ${typed.map((one, at) => caseView(context, one, at))} ${addView(context, typed.length)} ${madeView(context, typed)} ${resultsView(context)}`;
  },
};

function addView({ send, goTo }: PaneContext, count: number): TemplateResult {
  return html`<button
    class="add"
    type="button"
    ?disabled=${count >= MOST_CASES}
    @click=${() => {
      send({ type: "case-added" });
      goTo(boxId(placeKey({ case: count, box: "name" })));
    }}
  >
    Add a case
  </button>`;
}

/** The ends of the range, and one pump out, as cases to go on from; nothing where the duty states none. */
function madeView({ send, worked }: PaneContext, typed: readonly CaseText[]): TemplateResult | typeof nothing {
  const cases = casesToMake(worked.duty, typed);
  if (cases.length === 0) return nothing;
  const names = cases.map(({ name }) => name).join("; ");
  return html`<button
      class="add"
      type="button"
      ?disabled=${typed.length >= MOST_CASES}
      aria-describedby="cases-to-make"
      @click=${() => send({ type: "cases-made", cases })}
    >
      Make cases of the range
    </button>
    <p class="hint" id="cases-to-make">Adds: ${names}. The source is taken to rise and fall.</p>`;
}

function nameOf({ name }: CaseText, at: number): string {
  return name.trim() === "" ? `Case ${at + 1}` : name.trim();
}

function caseView(context: PaneContext, one: CaseText, at: number): TemplateResult {
  const { send } = context;
  const name = nameOf(one, at);
  const shown = CASE_KEYS.filter((key) => one.fields[key] !== undefined);
  const others = CASE_KEYS.filter((key) => !shown.includes(key));
  return html`<div class="row case" role="group" aria-label=${name}>
    <div class="row-head">
      <span class="row-number">${at + 1}</span>
      <span class="row-buttons">
        <button
          type="button"
          aria-label="Copy ${name}"
          ?disabled=${(context.state.duty.cases ?? []).length >= MOST_CASES}
          @click=${() => send({ type: "case-added", copyOf: at })}
        >
          Copy
        </button>
        <button
          type="button"
          aria-label="Remove ${name}"
          title="Remove"
          @click=${() => send({ type: "case-removed", case: at })}
        >
          ×
        </button>
      </span>
    </div>
    ${textBox(context, at, "name", "Name", "", `Case ${at + 1}`)} ${textBox(context, at, "hours", CASE_HOURS.label, "h")}
    ${shown.map((key) => boxView(context, at, key))}
    ${
      others.length === 0
        ? nothing
        : html`<div class="cell">
            <label for=${boxId(`cases.${at}.more`)}>Change</label>
            <div class="entry">
              <select
                id=${boxId(`cases.${at}.more`)}
                @change=${(event: Event) => {
                  const select = event.target as HTMLSelectElement;
                  const key = select.value as CaseFieldKey;
                  select.value = "";
                  send({ type: "typed", place: { case: at, box: key }, text: "" });
                  context.goTo(boxId(placeKey({ case: at, box: key })));
                }}
              >
                <option value="" selected>what differs</option>
                ${others.map((key) => html`<option value=${key}>${spelt(CASE_FIELDS[key].label, context.state.duty.unitSet)}</option>`)}
              </select>
            </div>
          </div>`
    }
  </div>`;
}

function boxView(context: PaneContext, at: number, key: CaseFieldKey): TemplateResult {
  const { state, send } = context;
  const { unitSet } = state.duty;
  const { quantity, choices, ...field } = CASE_FIELDS[key];
  const label = spelt(field.label, unitSet);
  const unit = quantity === undefined || quantity === "ratio" ? "" : printedUnit(quantity, unitSet);
  const remove = html`<button
    type="button"
    aria-label="${label} as in the duty"
    title="As in the duty"
    @click=${() => send({ type: "case-field-removed", case: at, field: key })}
  >
    ×
  </button>`;
  if (choices === undefined) return textBox(context, at, key, label, unit, stated(context, key), remove);
  const place = { case: at, box: key };
  const id = boxId(placeKey(place));
  const found = findingsAt(context, placeKey(place));
  return html`<div class="cell">
    <label for=${id}>${label}</label>
    <div class="entry">
      ${comboboxView(context, {
        place,
        describedBy: found.length === 0 ? "" : `${id}-findings`,
        invalid: found.some(({ kind }) => kind === "error"),
        required: false,
        placeholder: stated(context, key),
        matches: ({ typed }) =>
          matching(nameList(choices.map((name) => spelt(name, unitSet))), typed ? textOf(context, at, key) : ""),
        chosen: (_, name) => name,
      })}
      ${remove}
    </div>
    ${boxFindingsView(context, placeKey(place))}
  </div>`;
}

function textOf({ state }: PaneContext, at: number, box: CaseBox): string {
  const one = state.duty.cases?.[at];
  if (one === undefined) return "";
  return box === "name" || box === "hours" ? one[box] : (one.fields[box] ?? "");
}

/** What a blank box is taken for. */
function stated({ state }: PaneContext, key: CaseFieldKey): string {
  if (key === "pipe") return "new";
  const { whenBlank }: Field = CASE_FIELDS[key];
  const text = key === "speedRatio" ? (state.duty.pump?.speedRatio ?? "") : state.duty.fields[key];
  if (text.trim() !== "") return `${text.trim()} in the duty`;
  return typeof whenBlank === "string" ? `${spelt(whenBlank, state.duty.unitSet)} in the duty` : "as in the duty";
}

function textBox(
  context: PaneContext,
  at: number,
  box: CaseBox,
  label: string,
  unit: string,
  placeholder = "",
  after: TemplateResult | typeof nothing = nothing,
): TemplateResult {
  const { send } = context;
  const place = { case: at, box };
  const id = boxId(placeKey(place));
  const found = findingsAt(context, placeKey(place));
  const quantity = fieldOfBox(placeKey(place))?.quantity;
  const describedBy = [
    ...(unit === "" ? [] : [`${id}-unit`]),
    ...(quantity === undefined ? [] : sumLineOf(context, place)),
    ...(found.length === 0 ? [] : [`${id}-findings`]),
  ];
  return html`<div class="cell">
    <label for=${id}>${label}</label>
    <div class="entry">
      <input
        id=${id}
        type="text"
        autocomplete="off"
        spellcheck="false"
        placeholder=${placeholder}
        aria-describedby=${describedBy.length === 0 ? nothing : describedBy.join(" ")}
        aria-invalid=${found.some(({ kind }) => kind === "error")}
        .value=${live(quantity === undefined ? textOf(context, at, box) : asTyped(textOf(context, at, box)))}
        @input=${(event: InputEvent) => send({ type: "typed", place, text: (event.target as HTMLInputElement).value })}
      />
      ${unit === "" ? nothing : html`<span class="unit" id="${id}-unit">${unit}</span>`} ${after}
    </div>
    ${quantity === undefined ? nothing : sumLineView(context, place, quantity)}
    ${boxFindingsView(context, placeKey(place))}
  </div>`;
}

/** Figures of the cases, a row a figure and a column a case. */
const FIGURES: readonly {
  readonly head: string;
  readonly quantity: Quantity;
  readonly figure: (one: CaseShown) => Worked | undefined;
  readonly words?: AmountWords;
}[] = [
  { head: "Flow", quantity: "flow", figure: ({ flow }) => flow },
  { head: "Head", quantity: "head", figure: ({ head }) => head },
  { head: "Head asked for", quantity: "head", figure: ({ headToSelect }) => headToSelect },
  { head: "Efficiency", quantity: "percent", figure: ({ efficiency }) => efficiency },
  { head: "Shaft power", quantity: "power", figure: ({ shaftPower }) => shaftPower },
  { head: "NPSH available", quantity: "head", figure: ({ npshAvailable }) => npshAvailable },
  { head: "NPSH required", quantity: "head", figure: ({ npshRequired }) => npshRequired },
  { head: "NPSH margin", quantity: "head", figure: ({ npshMargin }) => npshMargin, words: bareMargin },
  { head: "Of BEP flow", quantity: "percent", figure: ({ bestFlowRatio }) => bestFlowRatio },
  { head: "Minimum velocity", quantity: "velocity", figure: ({ leastVelocity }) => leastVelocity },
  { head: "Maximum velocity", quantity: "velocity", figure: ({ greatestVelocity }) => greatestVelocity },
  { head: "Speed ratio", quantity: "ratio", figure: ({ speedRatio }) => speedRatio },
  { head: "Hours a year", quantity: "hours", figure: ({ hours }) => hours },
  { head: "Electricity a year", quantity: "energy", figure: ({ energy }) => energy },
  { head: "Fuel a year", quantity: "volume", figure: ({ fuel }) => fuel },
];

function resultsView({ state, worked }: PaneContext): TemplateResult | typeof nothing {
  if ((state.duty.cases ?? []).length === 0) return nothing;
  const shown = casesShown(worked.duty);
  if (shown === undefined) return html`<p class="hint">Results are shown once a pump is chosen.</p>`;
  const units = state.duty.unitSet;
  const rows = FIGURES.filter(({ figure }) => shown.cases.some((one) => figure(one) !== undefined));
  return html`<h3>Cases beside one another</h3>
    <div class="wide-table" role="region" aria-label="Results of the cases" tabindex="0">
      <table class="compare">
        <thead>
          <tr>
            <th scope="col">Figure</th>
            ${shown.cases.map(({ label }) => html`<th scope="col">${label}</th>`)}
          </tr>
        </thead>
        <tbody>
          <tr>
            <th scope="row">Verdict</th>
            ${shown.cases.map((one) => html`<td class="words">${verdictText(one, units)}</td>`)}
          </tr>
          ${rows.map(
            ({ head, quantity, figure, words }) =>
              html`<tr>
                <th scope="row">${head}<span class="unit">${printedUnit(quantity, units)}</span></th>
                ${shown.cases.map((one) => html`<td>${cellText(figure(one), quantity, units, words)}</td>`)}
              </tr>`,
          )}
        </tbody>
      </table>
    </div>
    ${worstView(shown)}`;
}

function verdictText({ verdict, speedVerdict, flow }: CaseShown, units: UnitSetName): string {
  if (verdict === "") return typeof flow === "number" ? "not judged" : figureText(flow, "flow", units);
  return speedVerdict === "" || speedVerdict === "within its range" ? verdict : `${verdict}; ${speedVerdict}`;
}

function worstView({ worst: found, notMet }: CasesShown): TemplateResult | typeof nothing {
  if (found.length === 0) return nothing;
  const worst = [...(notMet === "" ? [] : [["Cases that do not meet the duty", notMet] as const]), ...found];
  return html`<h3>The worst, of all states of the duty</h3>
    <dl class="figures">
      ${worst.map(
        ([what, states]) =>
          html`<div class="figure">
            <dt>${what}</dt>
            <dd>${states}</dd>
          </div>`,
      )}
    </dl>`;
}
