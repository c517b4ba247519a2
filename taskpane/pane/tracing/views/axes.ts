import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import type { AxisScale } from "../../../../shared/tracing/calibration.ts";
import { type AxisKey, axisName, TRACED_KEYS, unitsOfAxis } from "../../../../shared/tracing/traced-amounts.ts";
import type { UnitSymbol } from "../../../../src/basis/units.ts";
import { findingsView } from "../../views/findings.ts";
import type { TracingContext } from "../context.ts";
import type { EndNumber } from "../drawing.ts";
import { END_WORDS, headed } from "../words.ts";

const SCALES: readonly { readonly scale: AxisScale; readonly name: string }[] = [
  { scale: "linear", name: "even" },
  { scale: "log", name: "logarithmic" },
];

/** Both axes of the line in hand: unit, divisions, and the values printed at their points. */
export function axesView(context: TracingContext): TemplateResult {
  return html`<h3>Axes</h3>
    <p class="hint">Two printed values on each axis, both on the axis or on one grid line along it, far apart.</p>
    ${axisView(context, "flow")} ${axisView(context, context.state.line)} ${takeView(context)}`;
}

function axisView(context: TracingContext, key: AxisKey): TemplateResult {
  const { state, send } = context;
  const { unit, scale } = state.drawing.axes[key];
  const name = axisName(key);
  const id = `duty-tracing-${key}`;
  return html`<fieldset class="axis">
    <legend>${headed(name)}</legend>
    <div class="axis-choices">
      <select
        aria-label="Unit printed on the ${name}"
        id="${id}-unit"
        @change=${(event: Event) =>
          send({ type: "unit-picked", axis: key, unit: (event.target as HTMLSelectElement).value as UnitSymbol })}
      >
        ${unitsOfAxis(key).map((one) => html`<option value=${one} .selected=${one === unit}>${one}</option>`)}
      </select>
      <select
        aria-label="Divisions of the ${name}"
        id="${id}-scale"
        @change=${(event: Event) =>
          send({ type: "scale-picked", axis: key, scale: (event.target as HTMLSelectElement).value as AxisScale })}
      >
        ${SCALES.map((one) => html`<option value=${one.scale} .selected=${one.scale === scale}>${one.name}</option>`)}
      </select>
    </div>
    ${([0, 1] as const).map((end) => endView(context, key, end))}
  </fieldset>`;
}

function endView(
  { state, worked, units, send, focusBoard }: TracingContext,
  key: AxisKey,
  end: EndNumber,
): TemplateResult {
  const { unit, ends } = state.drawing.axes[key];
  const { at, text } = ends[end];
  const id = `duty-tracing-${key}-${end}`;
  const findings = worked.atEnd(key, end);
  const aimed = state.aim?.axis === key && state.aim.end === end;
  const called = `${END_WORDS[end]} of the ${axisName(key)}`;
  return html`<div class="axis-end">
      <label for=${id}>${END_WORDS[end].replace(" point", "")}</label>
      <input
        id=${id}
        type="text"
        inputmode="decimal"
        autocomplete="off"
        aria-label="Value at the ${called}, ${unit}"
        aria-invalid=${findings.length > 0}
        aria-describedby=${findings.length > 0 ? `${id}-findings` : nothing}
        .value=${live(text)}
        @input=${(event: Event) =>
          send({ type: "end-typed", axis: key, end, text: (event.target as HTMLInputElement).value })}
      />
      <span class="unit">${unit}</span>
      <button
        type="button"
        class=${aimed ? "aimed" : ""}
        aria-pressed=${aimed}
        aria-label="${at === undefined ? "Set" : "Reset"}: ${called} on the picture"
        @click=${() => {
          send({ type: "aimed", axis: key, end });
          focusBoard();
        }}
      >
        ${at === undefined ? "Set" : "Reset"}
      </button>
    </div>
    ${findings.length === 0 ? nothing : findingsView(findings, units, `${id}-findings`)}`;
}

/** Lines drawn against the same axis need it set only once. */
function takeView({ state, send }: TracingContext): TemplateResult | typeof nothing {
  const { axes } = state.drawing;
  const isBare = axes[state.line].ends.every(({ at }) => at === undefined);
  const others = TRACED_KEYS.filter((key) => key !== state.line && axes[key].ends.every(({ at }) => at !== undefined));
  if (!isBare || others.length === 0) return nothing;
  return html`<p class="take">
    ${others.map(
      (from) => html`<button type="button" class="link" @click=${() => send({ type: "axis-taken", from })}>
        Take the points of the ${axisName(from)}
      </button>`,
    )}
  </p>`;
}
