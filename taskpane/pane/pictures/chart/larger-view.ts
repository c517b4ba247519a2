import { html, render } from "lit";
import { type Drawn, plotView, type Size } from "./plot.ts";

const BESIDE = 48;
const WIDEST = 1100;
/** Title, words and button round the picture. */
const ROUND = 220;
const HEIGHT_IN_PANE = 560;
const TALLEST = 2;

/** A chart over the whole page. Esc or “Close” leads back to what opened it. */
export function openLarger(opener: HTMLElement, title: string, draw: (size: Size) => Drawn): void {
  const dialog = document.createElement("dialog");
  dialog.className = "duty-pane larger-view";
  dialog.setAttribute("aria-label", title);
  const show = (): void => {
    const width = Math.min(WIDEST, window.innerWidth - BESIDE);
    const tall = Math.min(TALLEST, Math.max(1, (window.innerHeight - ROUND) / HEIGHT_IN_PANE));
    render(
      html`<div class="larger-head">
          <h2>${title}</h2>
          <button type="button" @click=${() => dialog.close()}>Close</button>
        </div>
        <figure class="chart">${plotView(title, draw({ width, tall }), width)}</figure>`,
      dialog,
    );
  };
  dialog.addEventListener("close", () => {
    window.removeEventListener("resize", show);
    dialog.remove();
    opener.focus();
  });
  window.addEventListener("resize", show);
  document.body.append(dialog);
  show();
  dialog.showModal();
}
