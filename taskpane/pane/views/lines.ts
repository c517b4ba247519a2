import { html, nothing, type TemplateResult } from "lit";
import type { LineKey } from "../../../shared/duty/duty-text.ts";
import type { PaneContext, Step } from "../context.ts";
import { LINE_TITLES } from "../state.ts";
import { figureView } from "./figure.ts";
import { lineEditorView } from "./line-editor.ts";

function lineStep(line: LineKey): Step {
  return {
    key: line,
    title: LINE_TITLES[line],
    holds: [line],
    brief: ({ state }) => {
      const rows = state.duty[line].length;
      return rows === 1 ? "1 row" : `${rows} rows`;
    },
    view: (context) =>
      html`${lineEditorView(context, line)} ${line === "dischargeLine" ? volumesView(context) : nothing}`,
  };
}

/** What a pump draws out before it pumps, and what has to be filled, once both lines are stated. */
function volumesView({ state, worked }: PaneContext): TemplateResult | typeof nothing {
  const { suctionVolume, runningVolume } = worked.results;
  const units = state.duty.unitSet;
  if (suctionVolume === undefined || runningVolume === undefined) return nothing;
  return html`<dl class="in-line">
      ${figureView("Volumes: suction of one pump, to prime it", suctionVolume, "volume", units)}
      ${figureView("both lines in use, to fill", runningVolume, "volume", units)}
    </dl>`;
}

export const suctionLine = lineStep("suctionLine");
export const dischargeLine = lineStep("dischargeLine");
