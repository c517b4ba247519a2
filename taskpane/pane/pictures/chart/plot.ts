import { html, nothing, type TemplateResult } from "lit";
import type { Readable } from "./readable.ts";
import { reader } from "./reader.ts";

/** How large a picture is drawn: its width in px, and its heights over those it has in the pane. */
export interface Size {
  readonly width: number;
  readonly tall: number;
}

export interface Drawn {
  readonly svg: TemplateResult;
  /** Nothing where there is nothing to read along an axis. */
  readonly readable?: Readable;
  /** Under it: what it shows, and what no label in it says. */
  readonly caption: TemplateResult | string | typeof nothing;
}

/** The picture with what reads it, and its words. */
export function plotView(title: string, { svg, readable, caption }: Drawn, width: number): TemplateResult {
  return html`<div class="chart-plot">
      ${svg}
      ${
        readable === undefined
          ? nothing
          : html`<div
              class="chart-reader"
              role="slider"
              tabindex="0"
              aria-label="${title}, read along ${readable.along.toLowerCase()}"
              data-width=${width}
              ${reader(readable)}
            ></div>`
      }
    </div>
    ${readable === undefined ? nothing : html`<p class="chart-readout hint" aria-hidden="true"></p>`}
    <figcaption>${caption}</figcaption>`;
}
