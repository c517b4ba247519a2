import { html, nothing, type TemplateResult } from "lit";
import type { FoundDuty } from "../../../shared/calc-sheet/open-again/duties-in.ts";
import type { DutyText } from "../../../shared/duty/duty-text.ts";
import { dutyChanges } from "../../../shared/duty/revision.ts";
import { failureText } from "../../../shared/ports/host-fault.ts";
import type { SheetHost } from "../../../shared/ports/sheet-host.ts";
import type { SheetSet } from "../../../shared/ports/sheet-set.ts";
import { findingText } from "../../../shared/text/finding-text.ts";
import type { Finding } from "../../../src/basis/result.ts";
import { part } from "../../part.ts";
import type { PaneContext } from "../context.ts";
import { handOver, WORKBOOK_TYPE } from "../hand-over.ts";
import type { Copying } from "../state.ts";
import { today } from "../today.ts";

/**
 * The results for whoever asked for them, in one step. An Excel that cannot hand a file over still takes the sheet; the
 * other hosts give the file alone.
 *
 * @param standing the sheet of the duty that stands in the workbook
 */
export function customerCopyView(
  context: PaneContext,
  host: SheetHost | undefined,
  standing: FoundDuty | undefined,
): TemplateResult {
  const { state, worked } = context;
  const differing = sameRevision(standing, state.duty);
  const isBusy = state.copying.kind === "copying";
  const isReady = worked.isComplete && !isBusy && state.writing.kind !== "writing" && differing === undefined;
  const button = (words: string, make: (set: SheetSet) => Promise<Copying>): TemplateResult =>
    html`<button
      type="button"
      aria-disabled=${!isReady}
      aria-describedby="duty-copy-state"
      @click=${() => (isReady ? copy(context, make) : undefined)}
    >
      ${words}
    </button>`;
  const isExcel = host?.kind === "excel";
  return html`<h3>For the customer</h3>
    <p class="hint">
      One protected sheet of results: no formula, no price, no estimate.
      ${isExcel ? "Add it and move it to a new workbook, or save it as a file." : "It is saved as a file of its own (.xlsx)."}
    </p>
    <div class="buttons">
      ${isExcel ? button("Add the customer’s copy", (set) => added(set, host)) : nothing}
      ${button(isExcel ? "Save it as a file" : "Save the customer’s copy", saved)}
    </div>
    <div id="duty-copy-state" class="write-state" role="status">
      ${
        differing === undefined
          ? nothing
          : html`<p>
              “${differing.sheet}” is of the same revision and says otherwise: write the new revision first, or take the
              sheet’s.
            </p>`
      }
      ${worked.isComplete ? nothing : html`<p>The copy can be made once the duty is complete.</p>`} ${stateView(state.copying)}
    </div>`;
}

/** The standing sheet where it carries the revision of this duty and is not of the same inputs; prices are none of the customer’s. */
function sameRevision(standing: FoundDuty | undefined, duty: DutyText): FoundDuty | undefined {
  if (standing === undefined) return undefined;
  const revision = duty.fields.revision.trim();
  if (revision === "" || standing.back.duty.fields.revision.trim() !== revision) return undefined;
  const changes = dutyChanges(standing.back.duty, duty).filter(({ isInternal }) => !isInternal);
  return changes.length === 0 ? undefined : standing;
}

function stateView(copying: Copying): TemplateResult | typeof nothing {
  switch (copying.kind) {
    case "idle":
      return nothing;
    case "copying":
      return html`<p>Making the copy …</p>`;
    case "added":
      return html`<p class="done">
        Added as “${copying.sheet}”. To send it alone: right-click its tab, Move or Copy, new book.
      </p>`;
    case "saved":
      return html`<p class="done">Download started: “${copying.file}”.</p>`;
    case "failed":
      return html`<p class="failed"><strong>No copy was made:</strong> ${copying.reason}</p>`;
  }
}

async function added(set: SheetSet, host: SheetHost): Promise<Copying> {
  const [sheet = ""] = await host.addSheets(set);
  return { kind: "added", sheet };
}

async function saved(set: SheetSet): Promise<Copying> {
  // The pane loads what writes files when one is asked for.
  const { bookOfSet } = await part(import("../../../shared/xlsx/book-of-set.ts"));
  const { sheetNames, bytes } = bookOfSet(set);
  const file = `${sheetNames[0] ?? ""}.xlsx`.replace(/[<>"|]/g, " ");
  handOver(file, bytes as Uint8Array<ArrayBuffer>, WORKBOOK_TYPE);
  return { kind: "saved", file };
}

async function copy({ state, send }: PaneContext, make: (set: SheetSet) => Promise<Copying>): Promise<void> {
  send({ type: "copying", copying: { kind: "copying" } });
  // The pane is drawn before the work begins.
  await new Promise((resolve) => setTimeout(resolve, 0));
  try {
    const { customerCopy } = await part(import("../../../shared/calc-sheet/duty-sheets.ts"));
    const set = customerCopy(state.duty, today());
    const reason = (findings: readonly Finding[]): string =>
      findings.map((finding) => findingText(finding, state.duty.unitSet)).join(" ");
    send({
      type: "copying",
      copying: set.ok ? await make(set.value) : { kind: "failed", reason: reason(set.findings) },
    });
  } catch (error) {
    send({ type: "copying", copying: { kind: "failed", reason: failureText(error) } });
  }
}
