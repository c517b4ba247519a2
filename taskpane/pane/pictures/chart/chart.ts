import { html, type TemplateResult } from "lit";
import { type Drawn, plotView, type Size } from "./plot.ts";

/** A chart that can be read and seen larger; its picture says in words what it shows. */
export function chartView(title: string, width: number, draw: (size: Size) => Drawn): TemplateResult {
  return html`<figure class="chart">
    ${plotView(title, draw({ width, tall: 1 }), width)}
    <button
      class="link larger"
      type="button"
      aria-label="Larger view: ${title}"
      aria-haspopup="dialog"
      @click=${(event: Event) => showLarger(event.currentTarget as HTMLElement, title, draw)}
    >
      Larger view
    </button>
  </figure>`;
}

async function showLarger(opener: HTMLElement, title: string, draw: (size: Size) => Drawn): Promise<void> {
  opener.removeAttribute("data-failed");
  try {
    const { openLarger } = await import("./larger-view.ts");
    openLarger(opener, title, draw);
  } catch {
    opener.toggleAttribute("data-failed", true);
  }
}
