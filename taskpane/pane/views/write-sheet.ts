import { html, nothing, type TemplateResult } from "lit";
import type { FoundDuty } from "../../../shared/calc-sheet/open-again/duties-in.ts";
import { changeText } from "../../../shared/duty/change.ts";
import { dutyChanges } from "../../../shared/duty/revision.ts";
import type { NextIssue } from "../../../shared/package/next-issue.ts";
import type { SheetHost } from "../../../shared/ports/sheet-host.ts";
import type { Finding } from "../../../src/basis/result.ts";
import type { PaneContext, StepContent } from "../context.ts";
import { sheetOf } from "../sheet-duties.ts";
import { write } from "../write.ts";
import { customerCopyView } from "./customer-copy.ts";
import { findingsView } from "./findings.ts";
import { openPointsView } from "./open-points.ts";

/** Puts the duty on a sheet of its own. */
export const writeSheet: StepContent = {
  view: (context) => {
    const { state, host, worked } = context;
    const standing = sheetOf(state.duty, state.found);
    return html`${host === undefined ? noHostView() : liveView(context, host, standing)}
    ${customerCopyView(context, host, standing)} ${worked.isComplete ? nothing : openPointsView(context)}`;
  },
};

const LOGO_LEFT_OUT: Finding = { code: "logo-left-out", kind: "check", subject: "logo" };
const RECORD_LEFT_OUT: Finding = { code: "record-left-out", kind: "check", subject: "duty" };

const CALCULATES_BY_HAND: Finding = { code: "calculates-by-hand", kind: "check", subject: "Excel" };

/** What this host cannot put on the sheets. */
function leftOut(host: SheetHost, hasLogo: boolean): readonly Finding[] {
  return [
    ...(hasLogo && !host.holdsPictures() ? [LOGO_LEFT_OUT] : []),
    ...(host.holdsRecords() ? [] : [RECORD_LEFT_OUT]),
  ];
}

function noHostView(): TemplateResult {
  return html`<p>
    No workbook is open here. To get the live calc sheet, open Dutybook in Excel or in its workbench page; “Save
    duty” takes what you typed along.
  </p>`;
}

function liveView(context: PaneContext, host: SheetHost, standing: FoundDuty | undefined): TemplateResult {
  const { state, worked } = context;
  const complete = worked.isComplete;
  const busy = state.writing.kind === "writing";
  const told = [
    ...leftOut(host, worked.duty.logo !== undefined),
    ...(state.calculatesByHand ? [CALCULATES_BY_HAND] : []),
  ];
  const ready = complete && !busy && state.copying.kind !== "copying";
  const isSame = standing !== undefined && dutyChanges(standing.back.duty, state.duty).length === 0;
  return html`<h3>Internal</h3>
    <p class="hint">
      Adds sheets with live formulas: every figure you gave in its own cell, every step, its sources and findings on the
      sheet of the duty; prices and costs, where any are given, on one for nobody outside; and the tables both rest on.
      Existing sheets are not changed.
    </p>
    ${
      standing === undefined
        ? nothing
        : html`<p class="hint">
            ${
              isSame
                ? `“${standing.sheet}” says the same already. Write it again all the same?`
                : `“${standing.sheet}” stays as it is; what changed since goes into the revision history.`
            }
          </p>`
    }
    ${told.length === 0 ? nothing : findingsView(told, state.duty.unitSet)}
    <button
      class="write"
      type="button"
      aria-disabled=${!ready}
      aria-describedby="duty-write-state"
      @click=${() => (ready ? write(context, host, isSame ? undefined : standing) : undefined)}
    >
      ${busy ? "Writing the sheet …" : wordsOf(standing, isSame)}
    </button>
    <div id="duty-write-state" class="write-state" role="status">
      ${complete ? nothing : html`<p>The sheet can be written once the duty is complete.</p>`} ${outcomeView(context)}
    </div>`;
}

function outcomeView({ state: { writing } }: PaneContext): TemplateResult | typeof nothing {
  switch (writing.kind) {
    case "written":
      return html`<p class="done">Written to ${namesOf(writing.sheets)}.</p>
        ${writing.issue === undefined ? nothing : issueView(writing.issue)}`;
    case "failed":
      return html`<p class="failed"><strong>Not written:</strong> ${writing.reason}</p>`;
    default:
      return nothing;
  }
}

function wordsOf(standing: FoundDuty | undefined, isSame: boolean): string {
  if (standing === undefined) return "Write the calc sheet";
  return isSame ? "Write the calc sheet again" : "Write as a new revision";
}

/** What changed, prices too: the pane is for nobody outside. */
function issueView({ revision, changes }: NextIssue): TemplateResult {
  return html`<p>${revision === "" ? "State the revision: nobody can count it up." : `Revision ${revision}.`} What changed:</p>
    <ul class="changes">
      ${changes.map((one) => html`<li>${changeText(one)}</li>`)}
    </ul>`;
}

/** “Duty P-101”, “P-101 estimate” and “P-101 workings”. */
function namesOf(sheets: readonly string[]): string {
  const quoted = sheets.map((name) => `“${name}”`);
  return [quoted.slice(0, -1).join(", "), ...quoted.slice(-1)].filter((part) => part !== "").join(" and ");
}
