import { html, nothing, type TemplateResult } from "lit";
import { boxId, type PaneContext } from "../context.ts";
import type { OpenPoint } from "../open-point.ts";

/** What keeps the duty from being complete, by name, each a way to its box. */
export function openPointsView(context: PaneContext): TemplateResult {
  const { missing, wrong } = context.worked;
  return html`${wrong.length === 0 ? nothing : listView(context, "Inputs to correct:", wrong)}
  ${missing.length === 0 ? nothing : listView(context, "Still to give:", missing)}`;
}

function listView({ goTo }: PaneContext, title: string, points: readonly OpenPoint[]): TemplateResult {
  return html`<div class="open-points">
    <p>${title}</p>
    <ul>
      ${points.map(
        ({ place, name }) => html`<li>
          <button class="link" type="button" @click=${() => goTo(boxId(place))}>${name}</button>
        </li>`,
      )}
    </ul>
  </div>`;
}
