import { html, nothing, svg, type TemplateResult } from "lit";
import { CURVE_COLUMNS } from "../../../../shared/pump-table/columns.ts";
import { amountsAt, type Position, positionOf } from "../../../../shared/tracing/calibration.ts";
import type { TracedLine } from "../../../../shared/tracing/points.ts";
import { TRACED_KEYS } from "../../../../shared/tracing/traced-amounts.ts";
import { readNumber } from "../../../../src/basis/quantity-text.ts";
import { findingsView } from "../../views/findings.ts";
import { BOARD_ID, type TracingContext } from "../context.ts";
import { lineInHand, placeOf } from "../drawing.ts";
import type { Gestures } from "../gestures.ts";
import { DRAG, isSelected, type TracingState } from "../state.ts";
import { type Size, toBoard } from "../viewport.ts";
import { headed, markName, placeWords, taskWords, zoomText } from "../words.ts";
import { shownAmount, worthAtStart } from "../worked.ts";
import { valueView } from "./value.ts";

/** How many times the board's own scale the magnifier shows, and no larger than so many pixels a picture pixel. */
const LOUPE = { size: 92, times: 4, largest: 40, margin: 6 } as const;
const CROSS = { arm: 11, gap: 3 } as const;
const RADIUS = 4.5;

/** The picture with its marks, the tools above it and what is under the crosshair below. */
export function boardView(context: TracingContext, gestures: Gestures): TemplateResult {
  const { state, worked } = context;
  const { board } = state;
  // Safari and Chromium take a wheel listener for passive otherwise, and the page would zoom.
  const wheel = { handleEvent: gestures.wheel, passive: false };
  return html`${lineChoice(context)}
    <p class="task" id="duty-tracing-task">${taskWords(state, worked)}</p>
    ${toolsView(context)}
    <div class="board-place">
    <div
      id=${BOARD_ID}
      class="board"
      .style=${`width: ${board.width}px; height: ${board.height}px`}
      tabindex="0"
      role="application"
      aria-label="Picture of the curve, ${CURVE_COLUMNS[state.line].name} current line"
      aria-describedby="duty-tracing-task duty-tracing-keys"
      @pointerdown=${gestures.pointerDown}
      @pointermove=${gestures.pointerMove}
      @pointerup=${gestures.pointerUp}
      @pointercancel=${gestures.pointerUp}
      @pointerleave=${gestures.pointerLeave}
      @wheel=${wheel}
      @keydown=${gestures.keyDown}
      @keyup=${gestures.keyUp}
      @focus=${gestures.focus}
      @blur=${gestures.blur}
      >
        ${drawingView(state)}
      </div>
      ${valueView(context)}
    </div>
    <p class="under-cross">
      <span>${placeWords(worked, state.cursor)}</span><span>${zoomText(state)}</span>
    </p>
    ${selectedView(context)}
    ${worked.calibration === undefined || worked.calibration.findings.length === 0 ? nothing : findingsView(worked.calibration.findings, context.units)}
    <details class="keys">
      <summary>Mouse and keys on the picture</summary>
      <dl id="duty-tracing-keys">
        ${KEYS.map(
          ([keys, what]) =>
            html`<div>
              <dt>${keys}</dt>
              <dd>${what}</dd>
            </div>`,
        )}
      </dl>
    </details>`;
}

const KEYS = [
  ["Click", "sets an axis point or adds a point; press, shift and let go to place it finely"],
  ["Drag a point", "moves it"],
  ["Arrows", "move the crosshair or the picked point by one pixel of the screen; Shift ten, Alt a tenth"],
  ["Enter", "sets a point at the crosshair, lets go of the picked point, or goes to the value of a picked axis point"],
  ["Enter in the value", "goes back to the picture, for the next point"],
  ["Tab", "picks the next point, then leaves the picture"],
  ["Delete", "removes the picked point"],
  ["Esc", "lets go"],
  ["+, −, 0", "zoom in, zoom out, whole picture; Ctrl with the wheel zooms too"],
  ["Middle button, Space and drag, wheel, Ctrl and arrows", "move the picture"],
  ["Ctrl+Z, Ctrl+Y", "undo, redo"],
] as const;

function lineChoice({ state, send }: TracingContext): TemplateResult {
  return html`<fieldset class="lines-choice">
    <legend>Line to trace against flow</legend>
    ${TRACED_KEYS.map((key) => {
      const count = state.drawing.curves[state.curve]?.lines[key].length ?? 0;
      return html`<label>
        <input
          type="radio"
          name="duty-tracing-line"
          id="duty-tracing-line-${key}"
          .checked=${state.line === key}
          @change=${() => send({ type: "line-picked", line: key })}
        />
        <span>${headed(CURVE_COLUMNS[key].name)}${count === 0 ? nothing : html` <small>${count}</small>`}</span>
      </label>`;
    })}
  </fieldset>`;
}

function toolsView({ state, send }: TracingContext): TemplateResult {
  const tool = (label: string, sign: string, press: () => void, disabled = false): TemplateResult =>
    html`<button type="button" aria-label=${label} title=${label} ?disabled=${disabled} @click=${press}>${sign}</button>`;
  return html`<div class="tools" role="group" aria-label="Picture tools">
    ${tool("Zoom in", "+", () => send({ type: "zoomed", by: 1.5 }))}
    ${tool("Zoom out", "−", () => send({ type: "zoomed", by: 1 / 1.5 }))}
    ${tool("Whole picture", "Whole", () => send({ type: "fitted" }))}
    <span class="gap"></span>
    ${tool("Undo on the picture", "Undo", () => send({ type: "undone" }), state.past.length === 0)}
    ${tool("Redo on the picture", "Redo", () => send({ type: "redone" }), state.future.length === 0)}
  </div>`;
}

/** The picked mark, with its amounts to be typed where it is a point. */
function selectedView(context: TracingContext): TemplateResult | typeof nothing {
  const { state, worked, send, focusBoard } = context;
  const { selected, drawing } = state;
  if (selected === undefined) return nothing;
  const at = placeOf(drawing, state, selected);
  const read =
    selected.kind === "point" && worked.calibration?.ok === true && at !== undefined
      ? amountsAt(worked.calibration.value, at)
      : undefined;
  return html`<div class="picked" role="group" aria-label="Picked point">
    <span class="picked-name">${markName(state, selected)}</span>
    ${read === undefined ? nothing : html`${amountBox(context, "flow")} ${amountBox(context, "amount")}`}
    <button
      type="button"
      @click=${() => {
        send({ type: "removed" });
        focusBoard();
      }}
    >
      Remove
    </button>
  </div>`;
}

/** A box that shows an amount of the picked point and moves the point to what is typed: a shut-off flow of exactly 0. */
function amountBox({ state, worked, send }: TracingContext, key: "flow" | "amount"): TemplateResult | typeof nothing {
  const { selected, drawing } = state;
  const { calibration } = worked;
  const at = selected === undefined ? undefined : placeOf(drawing, state, selected);
  if (calibration?.ok !== true || at === undefined) return nothing;
  const amounts = amountsAt(calibration.value, at);
  if (amounts === undefined) return nothing;
  const axis = calibration.value.axes[key];
  const name = key === "flow" ? "Flow" : headed(CURVE_COLUMNS[state.line].name);
  const shown = shownAmount(amounts[key], axis, worthAtStart(calibration.value)[key] / 10);
  const take = (event: Event): void => {
    const box = event.currentTarget as HTMLInputElement;
    const typed = readNumber(box.value, name);
    const to = typed.ok ? positionOf(calibration.value, { ...amounts, [key]: typed.value }) : undefined;
    if (to === undefined) {
      box.value = shown;
      return;
    }
    send({ type: "moved", at: to, run: DRAG });
    send({ type: "let-go" });
  };
  return html`<label>
    ${name}
    <input
      type="text"
      autocomplete="off"
      aria-label="${name} of the picked point, ${axis.unit}"
      .value=${shown}
      @change=${take}
    />
    <span class="unit">${axis.unit}</span>
  </label>`;
}

function drawingView(state: TracingState): TemplateResult {
  const { picture, view, board, drawing, line, aim } = state;
  if (picture === undefined) return html``;
  const at = (position: Position): Position => toBoard(view, position);
  const others = drawing.curves.flatMap((curve, index) =>
    TRACED_KEYS.filter((key) => index !== state.curve || key !== line).map((key) => curve.lines[key]),
  );
  const corner = at({ x: 0, y: 0 });
  const smooth = view.scale > 3 ? "pixelated" : "auto";
  return html`<svg width=${board.width} height=${board.height} aria-hidden="true">
    <image
      href=${picture.url}
      x=${corner.x}
      y=${corner.y}
      width=${picture.width * view.scale}
      height=${picture.height * view.scale}
      preserveAspectRatio="none"
      image-rendering=${smooth}
    />
    ${others.map((points) => pathView(points, at, "other"))}
    ${(["flow", line] as const).map((axis) => axisView(state, axis, at))}
    ${pathView(lineInHand(drawing, state), at, "traced")}
    ${lineInHand(drawing, state).map(({ id, at: place }) => {
      const { x, y } = at(place);
      const picked = isSelected(state, { kind: "point", id });
      return svg`<circle class="point ${picked ? "is-picked" : ""}" cx=${x} cy=${y} r=${picked ? RADIUS + 1.5 : RADIUS} />`;
    })}
    ${state.active ? crossView(at(state.cursor), aim === undefined ? "" : "aiming") : nothing}
    ${state.active ? loupeView(state, picture, at(state.cursor)) : nothing}
  </svg>`;
}

function pathView(points: TracedLine, at: (position: Position) => Position, kind: string): TemplateResult {
  const places = points.map((point) => at(point.at));
  const d = places.map(({ x, y }, i) => `${i === 0 ? "M" : "L"}${x} ${y}`).join("");
  return svg`<path class="${kind} under" d="${d}" /><path class=${kind} d="${d}" />
    ${kind === "other" ? places.map(({ x, y }) => svg`<circle class="other" cx=${x} cy=${y} r="2.5" />`) : nothing}`;
}

/** The two points of an axis as squares, and the line between them. */
function axisView(
  state: TracingState,
  axis: "flow" | TracingState["line"],
  at: (position: Position) => Position,
): TemplateResult {
  const { ends } = state.drawing.axes[axis];
  const kind = axis === "flow" ? "flow-axis" : "amount-axis";
  const places = ends.map((end) => (end.at === undefined ? undefined : at(end.at)));
  const [first, second] = places;
  const marks = places.map((place, end) => {
    if (place === undefined) return nothing;
    const picked = isSelected(state, { kind: "end", axis, end: end === 0 ? 0 : 1 });
    const half = picked ? RADIUS + 2 : RADIUS;
    // The flow axis has upright bars and the other level ones, so that both show where they share the origin.
    const [dx, dy] = axis === "flow" ? [0, half + 3] : [half + 3, 0];
    return svg`<path class="end ${kind} under" d="M${place.x - dx} ${place.y - dy}L${place.x + dx} ${place.y + dy}" />
      <path class="end ${kind} ${picked ? "is-picked" : ""}" d="M${place.x - dx} ${place.y - dy}L${place.x + dx} ${place.y + dy}" />`;
  });
  return svg`${
    first === undefined || second === undefined
      ? nothing
      : svg`<path class="axis-line ${kind}" d="M${first.x} ${first.y}L${second.x} ${second.y}" />`
  }${marks}`;
}

function crossView({ x, y }: Position, kind: string): TemplateResult {
  const { arm, gap } = CROSS;
  const d = `M${x - arm} ${y}H${x - gap}M${x + gap} ${y}H${x + arm}M${x} ${y - arm}V${y - gap}M${x} ${y + gap}V${y + arm}`;
  return svg`<path class="cross under" d="${d}" /><path class="cross ${kind}" d="${d}" />`;
}

/** A magnifier in the upper corner that the crosshair is not near. */
function loupeView(state: TracingState, picture: Size & { readonly url: string }, cross: Position): TemplateResult {
  const { view, board, cursor, drawing } = state;
  const { size, margin } = LOUPE;
  const scale = Math.min(LOUPE.largest, view.scale * LOUPE.times);
  const reach = size / 2 / scale;
  const isOnRight = cross.x < board.width / 2;
  const left = isOnRight ? board.width - size - margin : margin;
  const middle = size / 2;
  const on = (position: Position): Position => ({
    x: (position.x - cursor.x + reach) * scale,
    y: (position.y - cursor.y + reach) * scale,
  });
  const corner = on({ x: 0, y: 0 });
  return svg`<svg class="loupe" x=${left} y=${margin} width=${size} height=${size} viewBox="0 0 ${size} ${size}">
    <rect class="loupe-ground" width=${size} height=${size} />
    <image
      href=${picture.url}
      x=${corner.x}
      y=${corner.y}
      width=${picture.width * scale}
      height=${picture.height * scale}
      preserveAspectRatio="none"
      image-rendering=${scale > 3 ? "pixelated" : "auto"}
    />
    ${lineInHand(drawing, state).map((point) => {
      const { x, y } = on(point.at);
      return svg`<circle class="loupe-point" cx=${x} cy=${y} r="2" />`;
    })}
    <path class="loupe-cross under" d="M0 ${middle}H${middle - 5}M${middle + 5} ${middle}H${size}M${middle} 0V${middle - 5}M${middle} ${middle + 5}V${size}" />
    <path class="loupe-cross" d="M0 ${middle}H${middle - 5}M${middle + 5} ${middle}H${size}M${middle} 0V${middle - 5}M${middle} ${middle + 5}V${size}" />
    <rect class="loupe-edge" x="0.75" y="0.75" width=${size - 1.5} height=${size - 1.5} />
  </svg>`;
}
