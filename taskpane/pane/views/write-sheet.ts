import { html, nothing, type TemplateResult } from "lit";
import { dutySheet } from "../../../shared/calc-sheet/duty-sheet.ts";
import type { SheetHost } from "../../../shared/ports/sheet-host.ts";
import { findingText } from "../../../shared/text/finding-text.ts";
import type { PaneContext, Step } from "../context.ts";
import { openPointsView } from "./open-points.ts";

/** Puts the duty on a sheet of its own. */
export const writeSheet: Step = {
  key: "write",
  title: "Calc sheet",
  view: (context) => (context.host === undefined ? noHostView() : buttonView(context, context.host)),
};

function noHostView(): TemplateResult {
  return html`<p>
    This page holds no workbook. To get the calc sheet, open Dutybook in Excel or in its workbench page; “Save duty”
    takes what you typed along.
  </p>`;
}

function buttonView(context: PaneContext, host: SheetHost): TemplateResult {
  const { state, worked } = context;
  const complete = worked.isComplete;
  const busy = state.writing.kind === "writing";
  const ready = complete && !busy;
  return html`<p class="hint">
      Adds a sheet with live formulas: every figure you gave in its own cell, every step, its sources and findings. No
      sheet that exists is touched.
    </p>
    <button
      class="write"
      type="button"
      aria-disabled=${!ready}
      aria-describedby="duty-write-state"
      @click=${() => (ready ? write(context, host) : undefined)}
    >
      ${busy ? "Writing the sheet …" : "Write the calc sheet"}
    </button>
    <div id="duty-write-state" class="write-state" role="status">
      ${complete ? nothing : html`<p>The sheet can be written once the duty is complete.</p>`} ${outcomeView(context)}
    </div>
    ${complete ? nothing : openPointsView(context)}`;
}

function outcomeView({ state: { writing } }: PaneContext): TemplateResult | typeof nothing {
  switch (writing.kind) {
    case "written":
      return html`<p class="done">Written to “${writing.sheet}”.</p>`;
    case "failed":
      return html`<p class="failed"><strong>Not written:</strong> ${writing.reason} Nothing was changed in the workbook.</p>`;
    default:
      return nothing;
  }
}

async function write({ state, send }: PaneContext, host: SheetHost): Promise<void> {
  send({ type: "writing", writing: { kind: "writing" } });
  try {
    const spec = dutySheet(state.duty);
    if (spec.ok) {
      const sheet = await host.addSheet(spec.value);
      send({ type: "writing", writing: { kind: "written", sheet } });
    } else {
      const reason = spec.findings.map((finding) => findingText(finding, state.duty.unitSet)).join(" ");
      send({ type: "writing", writing: { kind: "failed", reason } });
    }
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    send({ type: "writing", writing: { kind: "failed", reason: /[.!?]$/.test(reason) ? reason : `${reason}.` } });
  }
}
