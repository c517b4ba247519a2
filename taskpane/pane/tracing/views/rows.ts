import { html, nothing, type TemplateResult } from "lit";
import { failureText } from "../../../../shared/ports/host-fault.ts";
import type { SheetHost } from "../../../../shared/ports/sheet-host.ts";
import { setOf } from "../../../../shared/ports/sheet-set.ts";
import { CURVE_COLUMNS } from "../../../../shared/pump-table/columns.ts";
import { figures } from "../../../../shared/text/figure.ts";
import { rowsToPaste } from "../../../../shared/tracing/curve-rows.ts";
import { curveSheet } from "../../../../shared/tracing/curve-sheet.ts";
import { TRACED_KEYS, type TracedKey } from "../../../../shared/tracing/traced-amounts.ts";
import { remarksView } from "../../views/findings.ts";
import type { TracingContext } from "../context.ts";
import { copyText } from "../copy-text.ts";
import { pumpOfCurve } from "../curve-on-duty.ts";
import { sheetDecimals, sheetNotes } from "../sheet-notes.ts";
import type { RowsKind } from "../state.ts";
import { headed } from "../words.ts";
import { shownAmount, worthAtStart } from "../worked.ts";

const KINDS: readonly { readonly kind: RowsKind; readonly name: string; readonly about: string }[] = [
  { kind: "as-traced", name: "One row a point", about: "as traced; a line without a point at that flow stays blank" },
  { kind: "head-flows", name: "At the flows of the head line", about: "the other lines are read between their points" },
];

/** The traced rows, live, and the ways out for them. */
export function rowsView(context: TracingContext): TemplateResult {
  const { state, worked, units, send } = context;
  return html`<h3>Rows</h3>
    <fieldset class="choices">
      <legend class="unseen">How the lines share rows</legend>
      ${KINDS.map(
        ({ kind, name, about }) => html`<label>
          <input
            type="radio"
            name="duty-tracing-rows"
            id="duty-tracing-rows-${kind}"
            .checked=${state.rows === kind}
            @change=${() => send({ type: "rows-picked", rows: kind })}
          />
          <span><strong>${name}</strong> ${about}</span>
        </label>`,
      )}
    </fieldset>
    ${tableView(context)} ${remarksView("About these rows", worked.findings, units)}
    ${remarksView("As a table of pump curves", worked.tableFindings, units)} ${outView(context)}
    <p class="hint">
      Traced figures are as good as the picture and the click. Check them against printed values before anything rests
      on them; the pump maker’s certified curve governs.
    </p>`;
}

function tableView({ state, worked }: TracingContext): TemplateResult {
  const rows = worked.rows[state.curve] ?? [];
  if (rows.length === 0) return html`<p class="hint">No point can be read yet.</p>`;
  const columns = TRACED_KEYS.filter((key) => rows.some((row) => row[key] !== undefined));
  return html`<table class="traced-rows">
    <caption class="unseen">
      Traced rows of the current curve
    </caption>
    <thead>
      <tr>
        <th scope="col">Flow, ${worked.units.flow}</th>
        ${columns.map((key) => html`<th scope="col">${headed(CURVE_COLUMNS[key].name)}, ${worked.units[key]}</th>`)}
      </tr>
    </thead>
    <tbody>
      ${rows.map(
        (row) =>
          html`<tr>
            <td>${shown(worked, "flow", row.flow, columns)}</td>
            ${columns.map((key) => html`<td>${row[key] === undefined ? nothing : shown(worked, key, row[key], columns)}</td>`)}
          </tr>`,
      )}
    </tbody>
  </table>`;
}

function shown(
  { calibrations }: TracingContext["worked"],
  key: "flow" | TracedKey,
  value: number,
  columns: readonly TracedKey[],
): string {
  const read = columns.map((column) => calibrations[column]).find((one) => one?.ok === true);
  const calibration = key === "flow" ? read : calibrations[key];
  if (calibration?.ok !== true) return figures(value);
  const side = key === "flow" ? "flow" : "amount";
  return shownAmount(value, calibration.value.axes[side], worthAtStart(calibration.value)[side]);
}

function outView(context: TracingContext): TemplateResult {
  const { state, worked, host, send } = context;
  const ready = worked.toWrite !== undefined;
  const busy = state.writing.kind === "writing";
  return html`<div class="out">
      <button type="button" aria-disabled=${!ready} @click=${() => (ready ? copy(context) : undefined)}>
        Copy rows
      </button>
      <label class="decimal">
        Decimal sign of the spreadsheet
        <select
          id="duty-tracing-decimal"
          @change=${(event: Event) =>
            send({ type: "decimal-sign-picked", sign: (event.target as HTMLSelectElement).value === "," ? "," : "." })}
        >
          <option value="." .selected=${state.decimalSign === "."}>point</option>
          <option value="," .selected=${state.decimalSign === ","}>comma</option>
        </select>
      </label>
    </div>
    ${
      host === undefined
        ? html`<p class="hint">No workbook is open here to write a sheet to; “Copy rows” works everywhere.</p>`
        : html`<button
            class="write"
            type="button"
            aria-disabled=${!ready || busy}
            @click=${() => (ready && !busy ? write(context, host) : undefined)}
          >
            ${busy ? "Writing the sheet …" : "Write to a sheet"}
          </button>`
    }
    ${useView(context)}
    <div class="write-state" role="status">
      ${ready ? nothing : html`<p>Rows can go out once there are points and no error stands above.</p>`}
      ${outcomeView(context)}
    </div>
    ${
      state.toCopy === undefined
        ? nothing
        : html`<label class="by-hand">
            This program lets no page copy. Select these rows and press Ctrl+C:
            <textarea readonly rows="6" .value=${state.toCopy} @focus=${(event: Event) => (event.target as HTMLTextAreaElement).select()}></textarea>
          </label>`
    }`;
}

/** The curve in front, straight to the duty. */
function useView({ state, worked, units, use }: TracingContext): TemplateResult | typeof nothing {
  const curve = worked.toWrite?.[state.curve];
  if (curve === undefined) return nothing;
  const pump = pumpOfCurve(curve, worked.units, units);
  return pump === undefined
    ? html`<p class="hint">For the duty each row needs a head: take the rows at the flows of the head line.</p>`
    : html`<button type="button" @click=${() => use(pump)}>Use this curve on the duty</button>`;
}

function outcomeView({ state: { writing } }: TracingContext): TemplateResult | typeof nothing {
  switch (writing.kind) {
    case "copied":
      return html`<p class="done">${writing.rows === 1 ? "1 row" : `${writing.rows} rows`} copied, with a heading.</p>`;
    case "written":
      return html`<p class="done">Written to “${writing.sheet}”.</p>`;
    case "failed":
      return html`<p class="failed"><strong>Not written:</strong> ${writing.reason}</p>`;
    default:
      return nothing;
  }
}

async function copy({ worked, state, send }: TracingContext): Promise<void> {
  if (worked.toWrite === undefined) return;
  const text = rowsToPaste(worked.toWrite, worked.units, state.decimalSign);
  const rows = worked.toWrite.reduce((sum, curve) => sum + curve.rows.length, 0);
  if (await copyText(text)) send({ type: "writing", writing: { kind: "copied", rows } });
  else send({ type: "copy-refused", rows: text });
}

async function write({ state, worked, send }: TracingContext, host: SheetHost): Promise<void> {
  if (worked.toWrite === undefined) return;
  const spec = curveSheet({
    curves: worked.toWrite,
    units: worked.units,
    decimals: sheetDecimals(worked),
    notes: sheetNotes(state, worked),
  });
  send({ type: "writing", writing: { kind: "writing" } });
  try {
    const [sheet = spec.name] = await host.addSheets(setOf(spec));
    send({ type: "writing", writing: { kind: "written", sheet } });
  } catch (error) {
    send({ type: "writing", writing: { kind: "failed", reason: failureText(error) } });
  }
}
