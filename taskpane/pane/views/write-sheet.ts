import { html, nothing, type TemplateResult } from "lit";
import { dutySheets } from "../../../shared/calc-sheet/duty-sheets.ts";
import type { SheetHost } from "../../../shared/ports/sheet-host.ts";
import { findingText } from "../../../shared/text/finding-text.ts";
import type { Finding } from "../../../src/basis/result.ts";
import type { PaneContext, Step } from "../context.ts";
import { findingsView } from "./findings.ts";
import { openPointsView } from "./open-points.ts";

/** Puts the duty on a sheet of its own. */
export const writeSheet: Step = {
  key: "write",
  title: "Calc sheet",
  view: (context) => (context.host === undefined ? noHostView() : buttonView(context, context.host)),
};

const LOGO_LEFT_OUT: Finding = { code: "logo-left-out", kind: "check", subject: "logo" };

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
      Adds sheets with live formulas: every figure you gave in its own cell, every step, its sources and findings on the
      sheet of the duty; prices and costs, where any are given, on one for nobody outside; and the tables both rest on.
      No sheet that exists is touched.
    </p>
    ${
      worked.duty.logo === undefined || host.holdsPictures()
        ? nothing
        : findingsView([LOGO_LEFT_OUT], state.duty.unitSet)
    }
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
      return html`<p class="done">Written to ${namesOf(writing.sheets)}.</p>`;
    case "failed":
      return html`<p class="failed"><strong>Not written:</strong> ${writing.reason} Nothing was changed in the workbook.</p>`;
    default:
      return nothing;
  }
}

/** “Duty P-101”, “P-101 estimate” and “P-101 workings”. */
function namesOf(sheets: readonly string[]): string {
  const quoted = sheets.map((name) => `“${name}”`);
  return [quoted.slice(0, -1).join(", "), ...quoted.slice(-1)].filter((part) => part !== "").join(" and ");
}

async function write({ state, send }: PaneContext, host: SheetHost): Promise<void> {
  send({ type: "writing", writing: { kind: "writing" } });
  try {
    const set = dutySheets(state.duty);
    if (set.ok) {
      const sheets = await host.addSheets(set.value);
      send({ type: "writing", writing: { kind: "written", sheets } });
    } else {
      const reason = set.findings.map((finding) => findingText(finding, state.duty.unitSet)).join(" ");
      send({ type: "writing", writing: { kind: "failed", reason } });
    }
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    send({ type: "writing", writing: { kind: "failed", reason: /[.!?]$/.test(reason) ? reason : `${reason}.` } });
  }
}
