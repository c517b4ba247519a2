import { html, nothing } from "lit";
import { fieldsOf } from "../../../shared/duty/fields.ts";
import type { Step } from "../context.ts";
import { fieldView } from "./field.ts";
import { figureView } from "./figure.ts";

const FIELDS = fieldsOf("liquid");

export const liquidAndSite: Step = {
  key: "liquid",
  title: "Liquid and site",
  holds: FIELDS,
  view: (context) => {
    const { results } = context.worked;
    const units = context.state.duty.unitSet;
    return html`${FIELDS.map((key) => fieldView(context, key))}
    ${
      results === undefined
        ? nothing
        : html`<dl class="figures">
            ${figureView("Density", results.density, "density", units)}
            ${figureView("Dynamic viscosity", results.viscosity, "dynamicViscosity", units)}
            ${figureView("Vapour pressure", results.vapourPressure, "absolutePressure", units)}
            ${figureView("Atmospheric pressure", results.atmosphere, "absolutePressure", units)}
          </dl>`
    }`;
  },
};
