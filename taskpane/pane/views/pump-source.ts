import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import type { SheetHost } from "../../../shared/ports/sheet-host.ts";
import type { PaneContext } from "../context.ts";
import type { Reading } from "../pump/offers.ts";
import { addInventedPumps, importPumpFiles, readWorkbookPumps } from "../pump/read-offers.ts";
import { findingsView } from "./findings.ts";

/** Where the pumps come from: sheets of the workbook, files, or the invented library. */
export function pumpSourceView(context: PaneContext): TemplateResult {
  const { state, host } = context;
  const busy = state.offers.reading.kind === "busy";
  return html`<p class="hint">
      Curves one row a point: pump, speed, impeller diameter, flow, head, efficiency, NPSHR. A list of the pumps with
      their limits of speed and impeller may stand beside them.
    </p>
    <div class="buttons">
      ${
        host === undefined
          ? nothing
          : html`<button type="button" ?disabled=${busy} @click=${() => void readWorkbookPumps(context, host)}>
              ${state.offers.candidates === undefined ? "Read the workbook" : "Read the workbook again"}
            </button>`
      }
      <button type="button" ?disabled=${busy} @click=${(event: Event) => pickFiles(event)}>Import files</button>
      <input
        type="file"
        accept=".csv,.txt,.xlsx,text/csv"
        multiple
        hidden
        data-use="pumps"
        @change=${(event: Event) => takeFiles(context, event)}
      />
      <button type="button" ?disabled=${busy} @click=${() => void addInventedPumps(context)}>
        Add the invented library
      </button>
    </div>
    ${host === undefined ? nothing : placesView(context, host)}
    <div class="source-state" role="status">${stateView(context)}</div>
    ${remarksView(context)}`;
}

function placesView({ state, send }: PaneContext, host: SheetHost): TemplateResult {
  return html`<details class="places">
    <summary>Sheets or ranges to read</summary>
    <div class="cell">
      <label for="duty-pumps-places">Sheets</label>
      <input
        id="duty-pumps-places"
        type="text"
        autocomplete="off"
        spellcheck="false"
        placeholder="every sheet with the headings"
        aria-describedby="duty-pumps-places-help"
        .value=${live(state.offers.places)}
        @input=${(event: InputEvent) => send({ type: "places-typed", text: (event.target as HTMLInputElement).value })}
      />
    </div>
    <p class="hint" id="duty-pumps-places-help">
      Left blank, every sheet is read that heads pump, flow and head in one row, and the limits of every list of pumps.
      Otherwise sheets by name or ranges, parted by semicolons: Pump curves!A4:H220; Pumps. What is changed in
      ${host.kind === "excel" ? "the workbook" : "the grid"} counts once it is read again.
    </p>
  </details>`;
}

function stateView({ state }: PaneContext): TemplateResult | typeof nothing {
  const { reading, candidates } = state.offers;
  switch (reading.kind) {
    case "busy":
      return busyView(reading);
    case "failed":
      return html`<p class="failed"><strong>Not read:</strong> ${reading.reason}</p>`;
    default: {
      if (candidates === undefined) return nothing;
      const count = candidates.pumps.length;
      const sheets = reading.kind === "read" ? reading.sheets : [];
      return html`<p>
        ${count === 1 ? "1 pump" : `${count} pumps`} from ${candidates.from}.
        ${sheets.length === 0 ? nothing : `Added the sheets ${sheets.map((name) => `“${name}”`).join(" and ")}.`}
      </p>`;
    }
  }
}

/** What is being done, how far it has come, and the way out of it. */
function busyView({ what, share, stop }: Extract<Reading, { kind: "busy" }>): TemplateResult {
  const isOver = stop?.signal.aborted ?? false;
  return html`<p>${what}</p>
    ${
      stop === undefined
        ? nothing
        : html`<p class="progress">
            <progress aria-label="Read so far" max="1" .value=${share ?? 0}></progress>
            <button type="button" ?disabled=${isOver} @click=${() => stop.abort()}>Cancel</button>
          </p>`
    }`;
}

/** What stands against the last reading, and what is doubtful in the pumps at hand. */
function remarksView({ state }: PaneContext): TemplateResult | typeof nothing {
  const { reading, candidates } = state.offers;
  const units = state.duty.unitSet;
  if (reading.kind === "failed") {
    return reading.findings.length === 0 ? nothing : findingsView(reading.findings, units);
  }
  const findings = candidates?.findings ?? [];
  if (findings.length === 0) return nothing;
  return html`<details class="left-out" ?open=${findings.some(({ kind }) => kind === "error")}>
    <summary>${findings.length === 1 ? "1 remark" : `${findings.length} remarks`} on the tables</summary>
    ${findingsView(findings, units)}
  </details>`;
}

function pickFiles(event: Event): void {
  const input = (event.currentTarget as HTMLElement).parentElement?.querySelector("input");
  input?.click();
}

function takeFiles(context: PaneContext, event: Event): void {
  const input = event.currentTarget as HTMLInputElement;
  const files = [...(input.files ?? [])];
  // The same file can then be chosen once more.
  input.value = "";
  if (files.length > 0) void importPumpFiles(context, files);
}
