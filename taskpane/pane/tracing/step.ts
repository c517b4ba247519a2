import { html } from "lit";
import { ref } from "lit/directives/ref.js";
import type { PumpText } from "../../../shared/duty/duty-text.ts";
import type { Step } from "../context.ts";
import { laterPart } from "../later-part.ts";
import type { Surroundings } from "./tracer.ts";

const tracer = laterPart<Surroundings>(
  async () => (await import("./tracer.ts")).mountTracer,
  "The tracer could not be loaded. Close this step and open it again to try once more.",
);

/** Rows of a pump curve from a picture of it. */
export const traceCurve: Step = {
  key: "tracing",
  title: "Trace a curve",
  holdsWork: true,
  view: ({ host, state, send, goTo }) => {
    const use = (pump: PumpText): void => {
      const name = pump.name.trim() === "" ? "The traced curve" : `“${pump.name.trim()}”`;
      send({ type: "pump-chosen", pump, notice: `${name} is on the duty as traced.` });
      goTo("duty-step-pump");
    };
    const surroundings = { host, units: state.duty.unitSet, use };
    const atElement = (element: Element | undefined): void => {
      if (!(element instanceof HTMLElement)) return;
      tracer.lend(element, surroundings);
      if (!state.closedSteps.has("tracing")) void tracer.open(element);
    };
    return html`<div class="tracing" ${ref(atElement)}></div>`;
  },
};
