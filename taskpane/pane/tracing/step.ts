import { html } from "lit";
import { ref } from "lit/directives/ref.js";
import type { Step } from "../context.ts";
import type { Surroundings, Tracer } from "./tracer.ts";

/** What the pane lends each step now, and its tracer once that has come. */
const mounted = new WeakMap<Element, { surroundings: Surroundings; tracer?: Tracer }>();

const NOT_LOADED = "The tracer could not be loaded. Close this step and open it again to try once more.";

/** Rows of a pump curve from a picture of it. Few need it, so it is loaded when the step is first opened, and kept. */
export const traceCurve: Step = {
  key: "tracing",
  title: "Trace a curve",
  holdsWork: true,
  view: ({ host, state }) => {
    const surroundings = { host, units: state.duty.unitSet };
    const atElement = (element: Element | undefined): void => {
      if (!(element instanceof HTMLElement)) return;
      const known = mounted.get(element);
      if (known !== undefined) {
        known.surroundings = surroundings;
        known.tracer?.update(surroundings);
      } else if (!state.closedSteps.has("tracing")) void mount(element, surroundings);
    };
    return html`<div class="tracing" ${ref(atElement)}></div>`;
  },
};

async function mount(element: HTMLElement, surroundings: Surroundings): Promise<void> {
  const entry: { surroundings: Surroundings; tracer?: Tracer } = { surroundings };
  mounted.set(element, entry);
  try {
    const { mountTracer } = await import("./tracer.ts");
    element.replaceChildren();
    entry.tracer = mountTracer(element, entry.surroundings);
  } catch {
    element.textContent = NOT_LOADED;
    mounted.delete(element);
  }
}
