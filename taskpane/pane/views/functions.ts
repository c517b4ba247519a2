import { html, type TemplateResult } from "lit";
import { ref } from "lit/directives/ref.js";
import type { PaneContext } from "../context.ts";
import type { FunctionSurroundings } from "../functions/function-list.ts";
import { laterPart } from "../later-part.ts";
import { closeOnEscape } from "./foot-sheet.ts";

const list = laterPart<FunctionSurroundings>(
  async () => (await import("../functions/function-list.ts")).mountFunctionList,
  "The list of functions could not be loaded. Close it and open it again to try once more.",
);

/** Every function of the catalogue, to be looked up and put into a cell. */
export function functionsView({ host, state, help }: PaneContext): TemplateResult {
  const surroundings: FunctionSurroundings = { host, units: state.duty.unitSet, help };
  return html`<details
    class="functions"
    name="foot-sheet"
    @keydown=${closeOnEscape}
    @toggle=${(event: Event) => {
      const { open, lastElementChild } = event.currentTarget as HTMLDetailsElement;
      if (open) void list.open(lastElementChild as HTMLElement);
    }}
  >
    <summary>Functions</summary>
    <div
      class="foot-sheet function-list"
      ${ref((element) => (element instanceof HTMLElement ? list.lend(element, surroundings) : undefined))}
    ></div>
  </details>`;
}
