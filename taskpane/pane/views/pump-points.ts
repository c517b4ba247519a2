import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { type CurvePointText, curvePlace, type PumpText, placeKey } from "../../../shared/duty/duty-text.ts";
import { CURVE_POINT, POINT_COLUMNS } from "../../../shared/duty/fields/pump.ts";
import { asTyped } from "../../../shared/duty/sums/written-sum.ts";
import { findingText } from "../../../shared/text/finding-text.ts";
import { printedUnit } from "../../../src/basis/quantities.ts";
import { boxId, type PaneContext } from "../context.ts";
import { pastedCurve, pastedRows } from "../pump/pasted-points.ts";
import { boxFindingsView, findingsAt } from "./findings.ts";
import { sumLineOf, sumLineView } from "./sum-line.ts";

/** Heads of the columns, short enough for a narrow pane. */
const HEADS: Readonly<Record<keyof CurvePointText, string>> = {
  flow: "Flow",
  head: "Head",
  efficiency: "Eff.",
  npshRequired: "NPSHR",
};

/** The curve of the chosen pump, a row a point: typed, or pasted from a sheet. */
export function pumpPointsView(context: PaneContext, pump: PumpText, other?: number): TemplateResult {
  const { send, goTo, state } = context;
  const units = state.duty.unitSet;
  return html`<h3 id=${boxId(curvePlace(other))} tabindex="-1">Curve with water</h3>
    <p class="hint" id="${boxId(curvePlace(other))}-help">
      Flows rising. Efficiency as 74 % or 0.74. To paste rows from a sheet, put the cursor in a box first; rows with a
      heading of flow and head take the place of the whole curve.
    </p>
    <table class="points">
      <thead>
        <tr>
          <th scope="col"><span class="unseen">Point</span></th>
          ${POINT_COLUMNS.map((column) => {
            const unit = column === "efficiency" ? "" : printedUnit(CURVE_POINT[column].quantity, units);
            return html`<th scope="col">${HEADS[column]}<span class="unit">${unit}</span></th>`;
          })}
          <th scope="col"><span class="unseen">Remove</span></th>
        </tr>
      </thead>
      <tbody>
        ${pump.points.map((_, row) => rowView(context, pump, row, other))}
      </tbody>
    </table>
    ${boxFindingsView(context, curvePlace(other))}
    <div class="buttons">
      <button
        type="button"
        @click=${() => {
          send({ type: "point-added", other });
          goTo(boxId(placeKey({ pump: "points", row: pump.points.length, column: "flow", other })));
        }}
      >
        Add a point
      </button>
      <button type="button" @click=${() => void pasteClipboard(context, other)}>Paste from the clipboard</button>
    </div>`;
}

function rowView(context: PaneContext, pump: PumpText, row: number, other: number | undefined): TemplateResult {
  const { send, goTo } = context;
  const found = POINT_COLUMNS.map((column) => placeKey({ pump: "points", row, column, other })).filter(
    (key) => findingsAt(context, key).length > 0,
  );
  const last = pump.points.length - 1;
  return html`<tr>
      <th scope="row">${row + 1}</th>
      ${POINT_COLUMNS.map((column) => html`<td>${cellView(context, pump, { row, column, other })}</td>`)}
      <td>
        <button
          class="remove"
          type="button"
          aria-label="Remove point ${row + 1}"
          title="Remove"
          @click=${() => {
            send({ type: "point-removed", row, other });
            goTo(boxId(placeKey({ pump: "points", row: Math.max(0, Math.min(row, last - 1)), column: "flow", other })));
          }}
        >
          ×
        </button>
      </td>
    </tr>
    ${
      found.length === 0
        ? nothing
        : html`<tr class="row-findings">
            <td colspan="6">
              ${found.map((key) => boxFindingsView(context, key))}
            </td>
          </tr>`
    }`;
}

/** A cell of the curve of a pump. */
interface PointCell {
  readonly row: number;
  readonly column: keyof CurvePointText;
  readonly other: number | undefined;
}

function cellView(context: PaneContext, pump: PumpText, at: PointCell): TemplateResult {
  const { send, state } = context;
  const { row, column } = at;
  const place = { pump: "points", ...at } as const;
  const key = placeKey(place);
  const id = boxId(key);
  const findings = findingsAt(context, key);
  const describedBy = [...sumLineOf(context, place), ...(findings.length === 0 ? [] : [`${id}-findings`])];
  const unit = column === "efficiency" ? "" : `, ${printedUnit(CURVE_POINT[column].quantity, state.duty.unitSet)}`;
  return html`<input
    id=${id}
    type="text"
    autocomplete="off"
    spellcheck="false"
    inputmode="decimal"
    aria-label="Point ${row + 1}: ${CURVE_POINT[column].label}${unit}"
    aria-describedby=${describedBy.length === 0 ? nothing : describedBy.join(" ")}
    aria-invalid=${findings.some(({ kind }) => kind === "error")}
    .value=${live(asTyped(pump.points[row]?.[column] ?? ""))}
    @input=${(event: InputEvent) => send({ type: "typed", place, text: (event.target as HTMLInputElement).value })}
    @keydown=${(event: KeyboardEvent) => walk(event, at)}
    @paste=${(event: ClipboardEvent) => {
      const rows = pastedRows(event.clipboardData?.getData("text/plain") ?? "");
      if (rows === undefined) return;
      event.preventDefault();
      take(context, rows, at);
    }}
  />
    ${sumLineView(context, place, CURVE_POINT[column].quantity)}`;
}

/** Up and down go from row to row, as in a sheet. */
function walk(event: KeyboardEvent, at: PointCell): void {
  const by = event.key === "ArrowDown" || event.key === "Enter" ? 1 : event.key === "ArrowUp" ? -1 : 0;
  if (by === 0) return;
  const next = document.getElementById(boxId(placeKey({ pump: "points", ...at, row: at.row + by })));
  if (next === null) return;
  event.preventDefault();
  next.focus();
}

/** Rows with a heading replace the curve; others are laid over the table from a box on. */
function take({ send, state }: PaneContext, rows: readonly (readonly string[])[], at: PointCell): void {
  const units = state.duty.unitSet;
  const pasted = pastedCurve(rows, units);
  if (pasted === undefined) send({ type: "block-pasted", rows, ...at });
  else if (pasted.ok) send({ type: "curve-pasted", pasted: pasted.value, other: at.other });
  else {
    const reasons = pasted.findings.map((finding) => findingText(finding, units)).join(" ");
    send({ type: "noticed", notice: { kind: "failed", text: `Nothing was pasted. ${reasons}` } });
  }
}

/** Panes inside other programs may refuse a look at the clipboard; pasting into a box always works. */
async function pasteClipboard(context: PaneContext, other: number | undefined): Promise<void> {
  const failed = (text: string): void => context.send({ type: "noticed", notice: { kind: "failed", text } });
  try {
    const rows = pastedRows(await navigator.clipboard.readText());
    if (rows === undefined) failed("The clipboard holds no rows of a table.");
    else take(context, rows, { row: 0, column: "flow", other });
  } catch {
    failed("The clipboard cannot be read from here. Put the cursor in a box of the curve and paste there.");
  }
}
