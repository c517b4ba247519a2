import { DEFAULT_TEMPERATURE, DESCRIPTION_EXAMPLE } from "../../../src/liquid/described-liquid.ts";
import type { Liquid } from "../../../src/liquid/liquid.ts";
import { LIQUID_NAMES, liquidNamed } from "../../../src/liquid/liquid-name.ts";
import { WATER } from "../../../src/liquid/water.ts";
import { pumpedLiquidNamed, SLURRY_EXAMPLE } from "../../../src/slurry/slurry-liquid-name.ts";
import { type OptionalParameter, quantity, type SingleParameter, text } from "../parameter.ts";
import { zeroDoubted } from "./zero-doubted.ts";

const NAMED = `"water", "sea water 35 g/kg", "ethylene glycol 40 %" (by weight), or its figures, such as "${DESCRIPTION_EXAMPLE}"`;
const named = { example: '"water"', choices: LIQUID_NAMES };
const pumped = { ...named, about: `The liquid: ${NAMED}; a slurry as “${SLURRY_EXAMPLE}”` };
const waterIfLeftOut = { value: WATER, shown: '"water"' };

/** A liquid as pumped that must be stated: a name or a description, and the solids in it. */
export const statedLiquid: SingleParameter<Liquid> = text<Liquid>(pumped, pumpedLiquidNamed);

/** The liquid as pumped: a name or a description, and the solids in it. Water where left out. */
export const liquid: OptionalParameter<Liquid> = text<Liquid>(
  { ...pumped, whenLeftOut: waterIfLeftOut },
  pumpedLiquidNamed,
);

/** The liquid between solids that have arguments of their own. Water where left out. */
export const carrier: OptionalParameter<Liquid> = text<Liquid>(
  { ...named, about: `The liquid between the solids: ${NAMED}`, whenLeftOut: waterIfLeftOut },
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
