import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { printedUnit, type Quantity, UNIT_SET_NAMES, type UnitSetName } from "../../../src/basis/quantities.ts";
import type { PaneContext } from "../context.ts";

const SHOWN: readonly Quantity[] = ["flow", "length", "gaugePressure", "temperature"];

/** The unit set that plain numbers are read in and results are shown in. */
export function unitsView(context: PaneContext): TemplateResult {
  const { unitsAsked } = context.state;
  return html`${unitsAsked === undefined ? nothing : questionView(context, unitsAsked)}
    <fieldset class="units" ?disabled=${unitsAsked !== undefined}>
      <legend class="unseen">Numbers without a unit are in</legend>
      ${UNIT_SET_NAMES.map((name) => choiceView(context, name))}
    </fieldset>`;
}

function choiceView({ state, send, goTo }: PaneContext, name: UnitSetName): TemplateResult {
  const id = `duty-units-${name}`;
  return html`<label for=${id} title=${SHOWN.map((quantity) => printedUnit(quantity, name)).join(", ")}>
    <input
      type="radio"
      name="duty-units"
      id=${id}
      .checked=${live((state.unitsAsked ?? state.duty.unitSet) === name)}
      @change=${() => {
        send({ type: "units-picked", unitSet: name });
        goTo("duty-units-convert");
      }}
    />
    <span>${name}</span>
  </label>`;
}

function questionView({ state, send, goTo }: PaneContext, asked: UnitSetName): TemplateResult {
  const answer = (numbers: "convert" | "keep" | "leave"): void => {
    send({ type: "units-answered", numbers });
    goTo(`duty-units-${numbers === "leave" ? state.duty.unitSet : asked}`);
  };
  return html`<div class="question" role="group" aria-labelledby="duty-units-question">
    <p id="duty-units-question">
      Some numbers are typed without a unit and so far mean ${state.duty.unitSet} units. Change to ${asked} and:
    </p>
    <button id="duty-units-convert" type="button" @click=${() => answer("convert")}>Convert the numbers</button>
    <button type="button" @click=${() => answer("keep")}>Keep the numbers</button>
    <button type="button" @click=${() => answer("leave")}>Stay with ${state.duty.unitSet}</button>
  </div>`;
}
