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
    <span class="larger-fault" role="status"></span>
  </figure>`;
}

async function showLarger(opener: HTMLElement, title: string, draw: (size: Size) => Drawn): Promise<void> {
  const fault = opener.parentElement?.querySelector(".larger-fault");
  fault?.replaceChildren();
  try {
    const { openLarger } = await import("./larger-view.ts");
    openLarger(opener, title, draw);
  } catch {
    fault?.replaceChildren("A larger view could not be loaded, try again.");
  }
}
