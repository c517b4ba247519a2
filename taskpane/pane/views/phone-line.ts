import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { changeText } from "../../../shared/duty/change.ts";
import type { PhoneLine, PhonePart } from "../../../shared/duty/phone-line/phone-line.ts";
import { asTyped } from "../../../shared/duty/sums/written-sum.ts";
import type { PaneContext } from "../context.ts";
import { overwritten, phoneSaid, readPhone } from "../phone.ts";

const BOX = "duty-phone";
const SUMMARY = "duty-phone-summary";
const EXAMPLE = "1000 gpm, lift 12 ft, up 60 ft, 20 ft of 8in suction hose, 900 ft 8in HDPE DR17";

/** As many as a narrow pane shows without hiding the rest. */
const MOST_OFFERS = 4;

/** One box for a duty as it is noted on the phone: read, looked through, and only then put into the boxes. */
export function phoneLineView(context: PaneContext): TemplateResult {
  const { state, send, goTo } = context;
  const { text } = state.phone;
  const line = phoneSaid(state.phone, state.duty);
  const isRead = line !== undefined;
  const leave = (): void => {
    send({ type: "phone-left" });
    goTo(BOX);
  };
  return html`<section
    class="phone-line"
    aria-label="Phone line"
    @keydown=${(event: KeyboardEvent) => {
      if (event.key !== "Escape" || !isRead) return;
      event.preventDefault();
      leave();
    }}
  >
    <label for=${BOX}>Phone line: the duty in one sentence</label>
    <div class="entry">
      <textarea
        id=${BOX}
        rows="1"
        spellcheck="false"
        autocomplete="off"
        aria-describedby="${BOX}-help"
        placeholder=${EXAMPLE}
        .value=${live(text)}
        @input=${(event: InputEvent) => send({ type: "phone-typed", text: (event.target as HTMLTextAreaElement).value })}
        @keydown=${(event: KeyboardEvent) => {
          if (event.key !== "Enter" || event.shiftKey || event.isComposing) return;
          event.preventDefault();
          void read(context, text);
        }}
      ></textarea>
      <button type="button" ?disabled=${text.trim() === ""} @click=${() => read(context, text)}>Read</button>
    </div>
    <p class="unseen" id="${BOX}-help">Enter reads it. Nothing is put into a box before you accept.</p>
    ${line === undefined ? nothing : saidView(context, line, leave)}
  </section>`;
}

/** Reads a sentence in the place of what stands in the box, and leads to what it says. */
async function read({ state, send, goTo }: PaneContext, sentence: string): Promise<void> {
  if (sentence.trim() === "") return;
  try {
    const found = await readPhone(sentence, state.duty.unitSet);
    send({ type: "phone-read", of: state.phone.text, read: found });
    goTo(SUMMARY);
  } catch {
    const text = "The phone line was not read, for a part of the program did not load. Try once more.";
    send({ type: "noticed", notice: { kind: "failed", text } });
  }
}

function saidView(context: PaneContext, line: PhoneLine, leave: () => void): TemplateResult {
  const { state, send, goTo } = context;
  const understood = line.parts.filter(({ kind }) => kind === "understood");
  const unread = line.parts.filter(({ kind }) => kind === "not understood");
  const changes = overwritten(state.duty, line);
  const accept = (): void => {
    send({ type: "phone-accepted" });
    goTo(BOX);
  };
  return html`<div class="said" role="group" aria-labelledby=${SUMMARY}>
    <p id=${SUMMARY} tabindex="-1">${summaryText(understood.length, unread.length, line)}</p>
    ${listView(unread.map((part) => unreadView(context, line, part)))}
    ${
      changes.length === 0
        ? nothing
        : html`<p>Boxes that hold something now:</p>
            ${listView(changes.map((change) => html`<li>${changeText(change)}</li>`))}`
    }
    ${listView(understood.map(understoodView))}
    <div class="buttons">
      <button type="button" ?disabled=${boxCount(line) === 0} @click=${accept}>Accept</button>
      <button type="button" @click=${leave}>Leave</button>
    </div>
  </div>`;
}

function listView(items: readonly TemplateResult[]): TemplateResult | typeof nothing {
  return items.length === 0 ? nothing : html`<ul class="said-parts">${items}</ul>`;
}

function summaryText(understood: number, unread: number, line: PhoneLine): string {
  const parts = understood === 1 ? "1 part understood" : `${understood} parts understood`;
  const rest = unread === 0 ? "" : `, ${unread} not`;
  const boxes = boxCount(line);
  const fills = boxes === 0 ? "there is nothing to fill in" : "nothing is filled in before you accept";
  return `${parts}${rest}; ${fills}.`;
}

/** Boxes and rows that accepting fills. */
export function boxCount({ proposal: { unitSet, fields, lines } }: PhoneLine): number {
  const rows = Object.values(lines).flatMap((segments) => segments ?? []);
  return Object.keys(fields).length + rows.length + (unitSet === undefined ? 0 : 1);
}

function understoodView({ text, boxes, remarks }: PhonePart): TemplateResult {
  return html`<li>
    <q class="said-text">${text}</q>
    ${boxes.map(({ label, text: put, value }) => {
      const typed = asTyped(put);
      return html`<span class="said-box"><b>${label}</b> ${typed === value ? typed : `${typed}: ${value}`}</span>`;
    })}
    ${remarks.length === 0 ? nothing : html`<span class="hint">${remarks.join("; ")}</span>`}
  </li>`;
}

function unreadView(context: PaneContext, { text }: PhoneLine, part: PhonePart): TemplateResult {
  return html`<li>
    <q class="said-text">${part.text}</q> <strong class="said-not">not understood:</strong> ${part.remarks.join(" ")}
    <span class="buttons">${part.instead.slice(0, MOST_OFFERS).map(
      (other) => html`<button
        type="button"
        @click=${() => read(context, `${text.slice(0, part.from)}${other}${text.slice(part.to)}`)}
      >
        ${other}
      </button>`,
    )}</span>
  </li>`;
}
