import { html, nothing } from "lit";
import { fieldsOf } from "../../../shared/duty/fields.ts";
import { spelt } from "../../../shared/text/spelling.ts";
import type { Step } from "../context.ts";
import { fieldsView } from "./fields.ts";
import { figureView } from "./figure.ts";

const FIELDS = fieldsOf("liquid");

export const liquidAndSite: Step = {
  key: "liquid",
  title: "Liquid and site",
  holds: FIELDS,
  view: (context) => {
    const { results } = context.worked;
    const units = context.state.duty.unitSet;
    return html`${fieldsView(context, FIELDS)}
    ${
      results === undefined
        ? nothing
        : html`<dl class="in-line">
            ${figureView("Density", results.density, "density", units)}
            ${figureView("viscosity", results.viscosity, "dynamicViscosity", units)}
            ${figureView(spelt("vapour pressure", units), results.vapourPressure, "absolutePressure", units)}
            ${figureView("atmosphere", results.atmosphere, "absolutePressure", units)}
          </dl>`
    }`;
  },
};
