import { html, nothing, type TemplateResult } from "lit";
import { type DutyText, EMPTY_DUTY } from "../../../shared/duty/duty-text.ts";
import { notKnown, withoutNotKnown } from "../../../shared/duty/not-known.ts";
import { findingText } from "../../../shared/text/finding-text.ts";
import type { PaneContext } from "../context.ts";
import { downloadDuty, readDutyFile } from "../duty-file.ts";
import { notHereView } from "../later/not-here.ts";
import { rememberDuty } from "../recent.ts";
import { findingsView } from "./findings.ts";
import { closeFootSheet, closeOnEscape } from "./foot-sheet.ts";
import { functionsView } from "./functions.ts";
import { recentView } from "./recent.ts";

/** Back and forward, files, the samples to start from, and the functions. */
export function fileBarView(context: PaneContext): TemplateResult {
  const { state, send, later } = context;
  const back = state.past.at(-1);
  const forward = state.future.at(-1);
  return html`<div class="file-bar">
    <div class="buttons">
      <button
        type="button"
        ?disabled=${back === undefined}
        title=${back === undefined ? "Nothing to undo" : `Undo ${back.what}`}
        @click=${() => send({ type: "undone" })}
      >
        Undo
      </button>
      <button
        type="button"
        ?disabled=${forward === undefined}
        title=${forward === undefined ? "Nothing to redo" : `Redo ${forward.what}`}
        @click=${() => send({ type: "redone" })}
      >
        Redo
      </button>
      ${
        state.aside === undefined
          ? nothing
          : html`<button type="button" @click=${() => saveFile(context, state.aside)}>Save the duty put aside</button>`
      }
    </div>
    <details class="samples" name="foot-sheet" @keydown=${closeOnEscape}>
      <summary>File</summary>
      <div class="foot-sheet">
      <div class="buttons">
        <button type="button" @click=${() => saveFile(context)}>Save duty</button>
        <button type="button" @click=${(event: Event) => pickFile(event)}>Open duty</button>
        <input type="file" accept=".json,application/json" hidden @change=${(event: Event) => openFile(context, event)} />
      </div>
      ${recentView(context, closeFootSheet)}
      <h3>Start from a sample</h3>
      ${typeof later === "string" ? notHereView(context, later) : nothing}
      <ul>
        ${(typeof later === "string" ? [] : later.samples).map(
          ({ name, about, duty }) => html`<li>
            <button
              class="sample"
              type="button"
              @click=${(event: Event) => {
                closeFootSheet(event);
                send({ type: "duty-replaced", duty, what: `Started from “${name}”` });
              }}
            >
              ${name}
            </button>
            <p class="hint">${about}</p>
          </li>`,
        )}
        <li>
          <button
            class="sample"
            type="button"
            @click=${(event: Event) => {
              closeFootSheet(event);
              const duty = { ...EMPTY_DUTY, unitSet: state.duty.unitSet };
              send({ type: "duty-replaced", duty, what: "Cleared every box" });
            }}
          >
            Empty duty
          </button>
          <p class="hint">Clears every box. Undo brings the present duty back.</p>
        </li>
      </ul>
      </div>
    </details>
    ${functionsView(context)}
    <a class="help" href="${context.help}index.html" target="_blank" rel="noopener">Help</a>
  </div>`;
}

/** Told as long as it is so. */
export function unkeptView({ state }: PaneContext): TemplateResult {
  return html`<div role="status">
    ${
      state.isUnkept
        ? html`<p class="unkept">
            <strong>This browser keeps no copy of the duty:</strong> its storage is full or switched off. “Save duty”
            before you close or reload this page.
          </p>`
        : nothing
    }
  </div>`;
}

/** What came with the duty that nothing reads: it is saved again with it until it is taken out here. */
export function notKnownView({ state: { duty }, send }: PaneContext): TemplateResult | typeof nothing {
  const found = notKnown(duty);
  if (found.length === 0) return nothing;
  const what = "Took out what is not known";
  return html`<section class="not-known" aria-label="Not known in this duty">
    ${findingsView(found, duty.unitSet)}
    <div class="buttons">
      <button type="button" @click=${() => send({ type: "duty-replaced", duty: withoutNotKnown(duty), what })}>
        Take out what is not known
      </button>
    </div>
  </section>`;
}

function saveFile({ state, send }: PaneContext, duty: DutyText = state.duty): void {
  const name = downloadDuty(duty);
  send({ type: "recent-told", recent: rememberDuty(duty, name) });
  send({ type: "noticed", notice: { kind: "done", text: `Download started: “${name}”.` } });
}

function pickFile(event: Event): void {
  const input = (event.currentTarget as HTMLElement).parentElement?.querySelector("input");
  input?.click();
}

async function openFile({ state, send }: PaneContext, event: Event): Promise<void> {
  const input = event.currentTarget as HTMLInputElement;
  const file = input.files?.[0];
  if (file === undefined) return;
  closeFootSheet(event);
  const failed = (reason: string): void =>
    send({ type: "noticed", notice: { kind: "failed", text: `“${file.name}” was not opened. ${reason}` } });
  try {
    const loaded = await readDutyFile(file);
    if (loaded.ok) {
      send({ type: "recent-told", recent: rememberDuty(loaded.value, file.name) });
      send({ type: "duty-replaced", duty: loaded.value, what: `Opened “${file.name}”` });
    } else failed(loaded.findings.map((finding) => findingText(finding, state.duty.unitSet)).join(" "));
  } catch (error) {
    failed(error instanceof Error ? error.message : String(error));
  }
  // The same file can then be chosen once more.
  input.value = "";
}
