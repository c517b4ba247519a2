import { html, nothing, type TemplateResult } from "lit";
import { LOGO_PLACE } from "../../../shared/duty/duty-text.ts";
import { type Logo, MOST_LOGO_BYTES } from "../../../shared/duty/logo.ts";
import { findingText } from "../../../shared/text/finding-text.ts";
import { boxId, type PaneContext } from "../context.ts";
import { logoSource, readLogoFile } from "../logo-file.ts";
import { findingsAt, findingsView } from "./findings.ts";

const ID = boxId(LOGO_PLACE);

/** The firm's picture: a way to choose a file, what is kept, and a way to take it out. */
export function logoView(context: PaneContext): TemplateResult {
  const { state, worked } = context;
  const { logo } = worked.duty;
  const findings = findingsAt(context, LOGO_PLACE);
  return html`<div class="logo" role="group" aria-label="Logo">
    ${logo === undefined ? nothing : pictureView(logo, state.duty.fields.firm.trim())}
    ${findings.length === 0 ? nothing : findingsView(findings, state.duty.unitSet, `${ID}-findings`)}
    <div class="buttons">
      <button id=${ID} type="button" aria-describedby="${ID}-hint" @click=${pickFile}>
        ${state.duty.logo === undefined ? "Choose a logo" : "Choose another logo"}
      </button>
      ${
        state.duty.logo === undefined
          ? nothing
          : html`<button type="button" @click=${() => removeLogo(context)}>Remove the logo</button>`
      }
      <input
        type="file"
        accept="image/png,image/jpeg"
        hidden
        @change=${(event: Event) => openLogo(context, event)}
      />
    </div>
    <p class="hint" id="${ID}-hint">
      A PNG or JPEG picture of at most ${MOST_LOGO_BYTES / 1000} kB. It is kept in the duty and goes wherever that goes.
    </p>
  </div>`;
}

function pictureView(logo: Logo, firm: string): TemplateResult {
  const name = firm === "" ? "Logo" : `Logo of ${firm}`;
  return html`<img src=${logoSource(logo)} alt=${name} width=${logo.widthPx} height=${logo.heightPx} />`;
}

function pickFile(event: Event): void {
  const input = (event.currentTarget as HTMLElement).parentElement?.querySelector("input");
  input?.click();
}

/** The button goes with the logo, so the focus goes to the one that stays. */
function removeLogo({ send, goTo }: PaneContext): void {
  send({ type: "logo-removed" });
  goTo(ID);
}

async function openLogo({ state, send, goTo }: PaneContext, event: Event): Promise<void> {
  const input = event.currentTarget as HTMLInputElement;
  const file = input.files?.[0];
  if (file === undefined) return;
  const failed = (reason: string): void =>
    send({ type: "noticed", notice: { kind: "failed", text: `“${file.name}”: ${reason}` } });
  try {
    const read = await readLogoFile(file);
    if (read.ok) send({ type: "logo-chosen", base64: read.value, name: file.name });
    else failed(read.findings.map((finding) => findingText(finding, state.duty.unitSet)).join(" "));
  } catch (error) {
    failed(error instanceof Error ? error.message : String(error));
  }
  // The same file can then be chosen once more.
  input.value = "";
  goTo(ID);
}
