import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { MOST_REVISIONS, type Place, placeKey, type RevisionText } from "../../../shared/duty/duty-text.ts";
import { boxId, type PaneContext } from "../context.ts";
import { today } from "../today.ts";

const BOXES: readonly { readonly box: keyof RevisionText; readonly label: string; readonly isLong?: true }[] = [
  { box: "revision", label: "Revision" },
  { box: "date", label: "Date" },
  { box: "by", label: "By" },
  { box: "change", label: "What changed", isLong: true },
];

/** The revisions a duty has been through, the oldest first; each box can be written over. */
export function revisionHistoryView({ state, send, goTo }: PaneContext): TemplateResult {
  const rows = state.duty.revisions ?? [];
  const isFull = rows.length >= MOST_REVISIONS;
  const { revision, preparedBy, preparedInitials } = state.duty.fields;
  const by = (preparedInitials.trim() || preparedBy).trim();
  return html`<h3>Revision history</h3>
    ${rows.map((row, at) => rowView(send, row, at))}
    <button
      class="add"
      type="button"
      ?disabled=${isFull}
      @click=${() => {
        send({ type: "revision-added", revision: { revision: revision.trim(), date: today(), by } });
        goTo(boxId(placeKey({ issue: rows.length, box: "change" })));
      }}
    >
      Add a revision
    </button>
    ${isFull ? html`<p class="hint">A duty keeps ${MOST_REVISIONS} revisions: remove one to add another. A new revision of the sheets puts the two oldest into one row.</p>` : nothing}`;
}

function rowView(send: PaneContext["send"], row: RevisionText, at: number): TemplateResult {
  const name = row.revision.trim() === "" ? `Row ${at + 1}` : `Revision ${row.revision.trim()}`;
  return html`<div class="row case" role="group" aria-label=${name}>
    <div class="row-head">
      <span class="row-number">${at + 1}</span>
      <span class="row-buttons">
        <button
          type="button"
          aria-label="Remove ${name}"
          title="Remove"
          @click=${() => send({ type: "revision-removed", row: at })}
        >
          ×
        </button>
      </span>
    </div>
    ${BOXES.map(({ box, label, isLong }) => {
      const place: Place = { issue: at, box };
      const id = boxId(placeKey(place));
      const typed = (event: InputEvent): void =>
        send({ type: "typed", place, text: (event.target as HTMLInputElement | HTMLTextAreaElement).value });
      return html`<div class="cell">
        <label for=${id}>${label}</label>
        <div class="entry">
          ${
            isLong
              ? html`<textarea id=${id} rows="2" .value=${live(row[box])} @input=${typed}></textarea>`
              : html`<input id=${id} type="text" autocomplete="off" spellcheck="false" .value=${live(row[box])} @input=${typed} />`
          }
        </div>
      </div>`;
    })}
  </div>`;
}
