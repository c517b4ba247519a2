import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { DIAMETER_UNITS, TRACED_KEYS } from "../../../../shared/tracing/traced-amounts.ts";
import type { UnitSymbol } from "../../../../src/basis/units.ts";
import { findingsView } from "../../views/findings.ts";
import type { TracingContext } from "../context.ts";
import type { CurveField, DrawnCurve } from "../drawing.ts";

const LABELS: Readonly<Record<CurveField, string>> = {
  pump: "Pump name",
  speed: "Speed",
  diameter: "Impeller diameter",
};

/** Whose curve it is, and the other curves of the picture. */
export function curveView(context: TracingContext): TemplateResult {
  const { state, send } = context;
  const { curves, diameterUnit } = state.drawing;
  return html`<h3>Pump curve</h3>
    <div class="plate">
      ${curves.length === 1 ? nothing : curveChoice(context)} ${fieldView(context, "pump", nothing)}
      ${fieldView(context, "speed", html`<span class="unit">rpm</span>`)}
      ${fieldView(
        context,
        "diameter",
        html`<select
          aria-label="Unit of the impeller diameter"
          @change=${(event: Event) =>
            send({ type: "diameter-unit-picked", unit: (event.target as HTMLSelectElement).value as UnitSymbol })}
        >
          ${DIAMETER_UNITS.map((one) => html`<option value=${one} .selected=${one === diameterUnit}>${one}</option>`)}
        </select>`,
      )}
    </div>
    <div class="buttons">
      <button type="button" @click=${() => send({ type: "curve-added" })}>Add another curve</button>
      ${curves.length === 1 ? nothing : html`<button type="button" @click=${() => send({ type: "curve-removed" })}>Remove this curve</button>`}
    </div>
    <p class="hint">Another curve shares the picture and its axes: a further impeller or speed of the same chart.</p>`;
}

function curveChoice({ state, send }: TracingContext): TemplateResult {
  return html`<label for="duty-tracing-curve">Current curve</label>
    <select
      id="duty-tracing-curve"
      class="wide"
      @change=${(event: Event) =>
        send({ type: "curve-picked", curve: Number((event.target as HTMLSelectElement).value) })}
    >
      ${state.drawing.curves.map(
        (curve, index) =>
          html`<option value=${index} .selected=${index === state.curve}>${curveName(curve, index, state.drawing.diameterUnit)}</option>`,
      )}
    </select>`;
}

function curveName(curve: DrawnCurve, index: number, unit: UnitSymbol): string {
  const points = TRACED_KEYS.reduce((sum, key) => sum + curve.lines[key].length, 0);
  const parts = [
    curve.pump.trim(),
    ...(curve.speed.trim() === "" ? [] : [`${curve.speed.trim()} rpm`]),
    ...(curve.diameter.trim() === "" ? [] : [`${curve.diameter.trim()} ${unit}`]),
    points === 1 ? "1 point" : `${points} points`,
  ].filter((part) => part !== "");
  return `${index + 1}: ${parts.join(", ")}`;
}

function fieldView(
  { state, worked, units, send }: TracingContext,
  field: CurveField,
  unit: TemplateResult | typeof nothing,
): TemplateResult {
  const id = `duty-tracing-curve-${field}`;
  const findings = worked.atField(state.curve, field);
  return html`<label for=${id}>${LABELS[field]}</label>
    <div class="entry">
      <input
        id=${id}
        type="text"
        autocomplete="off"
        spellcheck="false"
        aria-invalid=${findings.length > 0}
        aria-describedby=${findings.length > 0 ? `${id}-findings` : nothing}
        .value=${live(state.drawing.curves[state.curve]?.[field] ?? "")}
        @input=${(event: Event) => send({ type: "curve-typed", field, text: (event.target as HTMLInputElement).value })}
      />
      ${unit}
    </div>
    ${findings.length === 0 ? nothing : findingsView(findings, units, `${id}-findings`)}`;
}
