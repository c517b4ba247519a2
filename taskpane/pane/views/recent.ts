import { html, nothing, type TemplateResult } from "lit";
import { loadDuty } from "../../../shared/duty/saved.ts";
import { findingText } from "../../../shared/text/finding-text.ts";
import type { PaneContext } from "../context.ts";
import { forgetRecent, type RecentDuty, rememberDuty } from "../recent.ts";

/** The duties opened or saved last in this browser, each opened with one click. */
export function recentView(context: PaneContext, done: (event: Event) => void): TemplateResult {
  const { recent } = context.state;
  return html`${recent.duties.length === 0 ? nothing : listView(context, done)}
  ${
    recent.isKept
      ? nothing
      : html`<p class="unkept">This browser keeps no list of recent duties: its storage is full or switched off.</p>`
  }`;
}

function listView(context: PaneContext, done: (event: Event) => void): TemplateResult {
  const { state, send } = context;
  return html`<h3>Recent duties</h3>
    <table class="recent">
      <thead class="unseen">
        <tr>
          <th scope="col">File</th>
          <th scope="col">Tag</th>
          <th scope="col">Opened or saved</th>
        </tr>
      </thead>
      <tbody>
        ${state.recent.duties.map(
          (one) => html`<tr>
            <td>
              <button
                class="link"
                type="button"
                @click=${(event: Event) => {
                  done(event);
                  open(context, one);
                }}
              >
                ${one.name}
              </button>
            </td>
            <td>${one.tag}</td>
            <td>${dayOf(one.at)}</td>
          </tr>`,
        )}
      </tbody>
    </table>
    <div class="buttons">
      <button type="button" @click=${() => send({ type: "recent-told", recent: forgetRecent() })}>Clear this list</button>
    </div>
    <p class="hint">Kept in this browser alone; your files stay as they are.</p>`;
}

function open({ state, send }: PaneContext, { name, text }: RecentDuty): void {
  const loaded = loadDuty(text);
  if (!loaded.ok) {
    const reasons = loaded.findings.map((finding) => findingText(finding, state.duty.unitSet)).join(" ");
    send({ type: "noticed", notice: { kind: "failed", text: `“${name}” was not opened. ${reasons}` } });
    return;
  }
  send({ type: "recent-told", recent: rememberDuty(loaded.value, name) });
  send({ type: "duty-replaced", duty: loaded.value, what: `Opened “${name}”` });
}

/** "29 Nov 2026". */
export function dayOf(at: number): string {
  return new Date(at).toLocaleDateString("en-GB", { day: "numeric", month: "short", year: "numeric" });
}
