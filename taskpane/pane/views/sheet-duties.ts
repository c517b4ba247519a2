import { html, nothing, type TemplateResult } from "lit";
import type { FoundDuty } from "../../../shared/calc-sheet/open-again/duties-in.ts";
import { changeText } from "../../../shared/duty/change.ts";
import { dutyChanges } from "../../../shared/duty/revision.ts";
import type { SheetHost } from "../../../shared/ports/sheet-host.ts";
import { findingText } from "../../../shared/text/finding-text.ts";
import type { PaneContext } from "../context.ts";
import { sheetOf } from "../sheet-duties.ts";
import { write } from "../write.ts";

const AGREES = "sheet-agrees";

/** The duties in the workbook: how they differ from that of the pane, and the way to take either side. */
export function sheetDutiesView(context: PaneContext): TemplateResult | typeof nothing {
  const { state } = context;
  const { found, unread } = state;
  if (unread !== undefined) {
    return html`<section class="sheet-duties" aria-label="Duties in the workbook">
      <p class="failed"><strong>The duties on the sheets were not read:</strong> ${unread}</p>
    </section>`;
  }
  if (found === undefined || found.duties.length + found.lost.length === 0) return nothing;
  const own = sheetOf(state.duty, found);
  return html`<section class="sheet-duties" aria-label="Duties in the workbook">
    ${found.duties.map((one) => (one === own ? ownView(context, one) : otherView(context, one)))}
    ${found.lost.map(
      ({ sheet, findings }) => html`<p class="hint">
        “${sheet}” cannot be brought back: ${findings.map((finding) => findingText(finding, state.duty.unitSet)).join(" ")}
      </p>`,
    )}
  </section>`;
}

/** The duty of the pane, on its sheet. */
function ownView(context: PaneContext, found: FoundDuty): TemplateResult {
  const changes = dutyChanges(context.state.duty, found.back.duty);
  if (changes.length === 0) {
    return html`<p class="agrees" id=${AGREES} tabindex="-1">“${found.sheet}” and the pane agree.</p>${remarksView(found)}`;
  }
  const count = changes.length === 1 ? "1 input differs" : `${changes.length} inputs differ`;
  return html`<details class="differs">
      <summary>${count} between the pane and “${found.sheet}”</summary>
      <ul>
        ${changes.map((one) => html`<li>${changeText({ ...one, after: `${one.after === "" ? "blank" : one.after} on the sheet` })}</li>`)}
      </ul>
    </details>
    ${remarksView(found)}
    <div class="buttons">${bringButton(context, found, "Take the sheet’s")}${keepButton(context, found)}</div>
    <p class="hint">
      ${
        context.worked.isComplete
          ? "To keep the pane’s is to write it as a new revision, on sheets of its own: “" +
            found.sheet +
            "” stays as it is."
          : "The pane’s can be kept, as a new revision on sheets of its own, once it is complete."
      }
    </p>`;
}

function keepButton(context: PaneContext, found: FoundDuty): TemplateResult | typeof nothing {
  const { host, worked, state } = context;
  if (host === undefined) return nothing;
  const isReady = worked.isComplete && state.writing.kind !== "writing";
  return html`<button
    type="button"
    aria-disabled=${!isReady}
    @click=${() => (isReady ? keepPanes(context, host, found) : undefined)}
  >
    Keep the pane’s
  </button>`;
}

function otherView(context: PaneContext, found: FoundDuty): TemplateResult {
  return html`<div class="buttons">${bringButton(context, found, `Bring back the duty of “${found.sheet}”`)}</div>`;
}

async function keepPanes(context: PaneContext, host: SheetHost, found: FoundDuty): Promise<void> {
  await write(context, host, found);
  stayWithReader(context);
}

function bringButton(context: PaneContext, found: FoundDuty, words: string): TemplateResult {
  const bring = (): void => {
    context.send({ type: "duty-replaced", duty: found.back.duty, what: broughtWords(found) });
    stayWithReader(context);
  };
  return html`<button type="button" @click=${bring}>
    ${words}
  </button>`;
}

/** The button pressed is gone once the two sides agree: the line that says so has the focus then, unless it is elsewhere by now. */
function stayWithReader({ goTo }: PaneContext): void {
  if (document.activeElement === null || document.activeElement === document.body) goTo(AGREES);
}

/** What is said once it is in the pane. */
export function broughtWords({ sheet, back: { taken, remarks } }: FoundDuty): string {
  const changed = taken.length === 1 ? "1 input changed there" : `${taken.length} inputs changed there`;
  const look = remarks.length === 0 ? "" : `, ${remarks.length} to look at`;
  return `Brought back the duty of “${sheet}”${taken.length === 0 ? "" : `, with ${changed}`}${look}`;
}

/** What could not be taken from the sheet, or is worked out there in another way. */
function remarksView({ back: { remarks } }: FoundDuty): TemplateResult | typeof nothing {
  if (remarks.length === 0) return nothing;
  return html`<details class="differs">
    <summary>${remarks.length === 1 ? "1 thing" : `${remarks.length} things`} on the sheet to look at</summary>
    <ul>
      ${remarks.map(({ text }) => html`<li>${text}</li>`)}
    </ul>
  </details>`;
}
