import { html } from "lit";
import { ref } from "lit/directives/ref.js";
import type { Step } from "../context.ts";
import { mountTracer, type Tracer } from "./tracer.ts";

const tracers = new WeakMap<Element, Tracer>();

/** Rows of a pump curve from a picture of it. */
export const traceCurve: Step = {
  key: "tracing",
  title: "Trace a curve",
  view: ({ host, state }) => {
    const surroundings = { host, units: state.duty.unitSet };
    const atElement = (element: Element | undefined): void => {
      if (!(element instanceof HTMLElement)) return;
      const tracer = tracers.get(element);
      if (tracer !== undefined) tracer.update(surroundings);
      // Made when the step is first opened, and kept while it is closed again.
      else if (!state.closedSteps.has("tracing")) tracers.set(element, mountTracer(element, surroundings));
    };
    return html`<div class="tracing" ${ref(atElement)}></div>`;
  },
};
