import type { LineKey } from "../../../shared/duty/duty-text.ts";
import type { Step } from "../context.ts";
import { LINE_TITLES } from "../state.ts";
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
    view: (context) => lineEditorView(context, line),
  };
}

export const suctionLine = lineStep("suctionLine");
export const dischargeLine = lineStep("dischargeLine");
