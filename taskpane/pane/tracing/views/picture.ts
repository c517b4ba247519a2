import { html, nothing, type TemplateResult } from "lit";
import { TRACED_KEYS } from "../../../../shared/tracing/traced-amounts.ts";
import { findingsView } from "../../views/findings.ts";
import type { TracingContext } from "../context.ts";

/** Opens a picture: chosen, dropped or pasted. */
export function pictureView(context: TracingContext): TemplateResult {
  const { state, units, open } = context;
  const { picture, unreadable } = state;
  const isOpen = picture !== undefined;
  return html`<p class="hint" ?hidden=${isOpen}>
      Turns the lines of a printed pump curve into rows of figures. Take a flat scan or a screen picture; a photograph
      taken at a slant is not straightened.
    </p>
    <div class="picture-place ${isOpen ? "taken" : ""}">
      <button type="button" @click=${(event: Event) => pickFile(event)}>
        ${isOpen ? "Open another image" : "Open an image"}
      </button>
      <input
        type="file"
        accept="image/*"
        hidden
        aria-label="Picture of the curve"
        @change=${(event: Event) => {
          const input = event.currentTarget as HTMLInputElement;
          const file = input.files?.[0];
          if (file !== undefined) open(file);
          // The same file can then be chosen once more.
          input.value = "";
        }}
      />
      <span class="hint"
        >${isOpen ? html`${picture.name}, ${picture.width} × ${picture.height} pixels` : "or drop one here, or paste one with Ctrl+V"}</span
      >
    </div>
    ${isOpen ? nothing : html`<p class="hint">The picture stays in this program’s memory; it is not stored or sent.</p>`}
    ${unreadable === undefined ? nothing : findingsView([{ code: "tracing-picture-unreadable", kind: "error", subject: "picture", given: unreadable }], units)}
    ${questionView(context)}`;
}

function questionView({ state, units, send, focusBoard }: TracingContext): TemplateResult | typeof nothing {
  const { offered, drawing } = state;
  if (offered === undefined) return nothing;
  const points = drawing.curves.reduce(
    (sum, { lines }) => sum + TRACED_KEYS.reduce((count, key) => count + lines[key].length, 0),
    0,
  );
  const answer = (replace: boolean): void => {
    send({ type: "picture-answered", replace, units });
    focusBoard();
  };
  return html`<div class="question" role="alertdialog" aria-labelledby="duty-tracing-question">
    <p id="duty-tracing-question">
      “${offered.name}” takes the place of the present picture. Its axes and ${points} traced
      ${points === 1 ? "point" : "points"} go, and cannot be brought back.
    </p>
    <button type="button" @click=${() => answer(true)}>Take the new picture</button>
    <button type="button" @click=${() => answer(false)}>Keep the present one</button>
  </div>`;
}

function pickFile(event: Event): void {
  const input = (event.currentTarget as HTMLElement).parentElement?.querySelector("input");
  input?.click();
}
