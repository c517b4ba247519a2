import { DEFAULT_TEMPERATURE, DESCRIPTION_EXAMPLE } from "../../../src/liquid/described-liquid.ts";
import type { Liquid } from "../../../src/liquid/liquid.ts";
import { LIQUID_NAMES, liquidNamed } from "../../../src/liquid/liquid-name.ts";
import { WATER } from "../../../src/liquid/water.ts";
import { type OptionalParameter, quantity, type SingleParameter, text } from "../parameter.ts";
import { zeroDoubted } from "./zero-doubted.ts";

const liquidFacts = {
  about: `The liquid: "water", "sea water 35 g/kg", "ethylene glycol 40 %" (by weight), or its figures, such as "${DESCRIPTION_EXAMPLE}"`,
  example: '"water"',
  choices: LIQUID_NAMES,
};

/** A liquid that must be stated: a name or a description. */
export const statedLiquid: SingleParameter<Liquid> = text<Liquid>(liquidFacts, liquidNamed);

/** The liquid pumped: a name or a description. Water where left out. */
export const liquid: OptionalParameter<Liquid> = text<Liquid>(
  { ...liquidFacts, whenLeftOut: { value: WATER, shown: '"water"' } },
  liquidNamed,
);

/** Temperature of the liquid, K. Exactly 20 °C where left out. */
export const temperature: OptionalParameter<number> = zeroDoubted(
  quantity("temperature", {
    about: "Temperature of the liquid",
    example: '68, or "20 degC"',
    range: "0 °C to 350 °C for water; the freezing point to 100 °C for glycol",
    whenLeftOut: { value: DEFAULT_TEMPERATURE, shown: "68 °F (20 °C)" },
  }),
);
