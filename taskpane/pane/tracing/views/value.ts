import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { CURVE_COLUMNS } from "../../../../shared/pump-table/columns.ts";
import { findingText } from "../../../../shared/text/finding-text.ts";
import type { Position } from "../../../../shared/tracing/calibration.ts";
import { axisName } from "../../../../shared/tracing/traced-amounts.ts";
import { type TracingContext, VALUE_ID } from "../context.ts";
import type { EndMark } from "../drawing.ts";
import { type Size, toBoard } from "../viewport.ts";
import { END_WORDS, headed } from "../words.ts";

/** Size of the box in board pixels, and how far it keeps from its point. */
const BOX = { width: 132, height: 50 } as const;
const APART = 14;

/** The printed value of an axis point, typed beside the point; Enter or Esc goes back to the picture. */
export function valueView({ state, worked, units, send, focusBoard }: TracingContext): TemplateResult | typeof nothing {
  const { asked, drawing, view, board } = state;
  if (asked === undefined) return nothing;
  const { axis, end } = asked;
  const { unit, ends } = drawing.axes[axis];
  const { at, text } = ends[end];
  if (at === undefined) return nothing;
  const { x, y } = placeBeside(toBoard(view, at), asked, board);
  const findings = worked.atEnd(axis, end);
  const isRefused = findings.length > 0;
  const name = headed(CURVE_COLUMNS[axis].name);
  const close = (): void => {
    send({ type: "value-closed" });
    focusBoard();
  };
  const keyDown = (event: KeyboardEvent): void => {
    if (event.key !== "Escape" && (event.key !== "Enter" || isRefused)) return;
    event.preventDefault();
    event.stopPropagation();
    close();
  };
  return html`<div class="value-here" .style=${`left: ${x}px; top: ${y}px; width: ${BOX.width}px`}>
    <label for=${VALUE_ID}>${name} at this point</label>
    <input
      id=${VALUE_ID}
      type="text"
      inputmode="decimal"
      autocomplete="off"
      aria-label="${name} at this point, ${unit}: ${END_WORDS[end]} of the ${axisName(axis)}"
      aria-invalid=${isRefused}
      aria-describedby=${isRefused ? `${VALUE_ID}-refused` : nothing}
      .value=${live(text)}
      @input=${(event: Event) => send({ type: "end-typed", axis, end, text: (event.target as HTMLInputElement).value })}
      @keydown=${keyDown}
    />
    <span class="unit">${unit}</span>
    ${isRefused ? html`<p id="${VALUE_ID}-refused">${findings.map((one) => findingText(one, units)).join(" ")}</p>` : nothing}
  </div>`;
}

/** Above a point of the flow axis and beside one of the other, so that the printed value stays in sight. */
function placeBeside({ x, y }: Position, { axis }: EndMark, board: Size): Position {
  const [left, top] = axis === "flow" ? [x - BOX.width / 2, y - APART - BOX.height] : [x + APART, y - BOX.height / 2];
  const turned = axis === "flow" ? { x: left, y: y + APART } : { x: x - APART - BOX.width, y: top };
  const fits = axis === "flow" ? top >= 0 : left + BOX.width <= board.width;
  const chosen = fits ? { x: left, y: top } : turned;
  return {
    x: Math.min(Math.max(chosen.x, 0), Math.max(0, board.width - BOX.width)),
    y: Math.min(Math.max(chosen.y, 0), Math.max(0, board.height - BOX.height)),
  };
}
