import { DEFAULT_TEMPERATURE } from "../../../src/liquid/described-liquid.ts";
import { LIQUID_NAMES, liquidNamed } from "../../../src/liquid/liquid-name.ts";
import { atmosphereMethod } from "../../../src/site/atmosphere.ts";
import { SERVICES } from "../../../src/tables/services.ts";
import { amount, meant, oneOf } from "../field.ts";

export const liquid = {
  service: oneOf(SERVICES, {
    label: "Service",
    help: "What the pump is for. Where nothing else is stated it decides how far its head may come out above the curve and which NPSH margin is kept. Blank: not listed.",
  }),
  liquid: meant(liquidNamed, {
    label: "Liquid",
    choices: LIQUID_NAMES,
    whenBlank: "water",
    help: 'A name such as water or sea water, or a description such as "SG 1.12, 3.5 cP, pv 2.3 kPa".',
  }),
  temperature: amount({
    label: "Liquid temperature",
    quantity: "temperature",
    // What a pump of this kind is built for, −100 °C to 400 °C: house choice. The liquid itself is asked besides.
    bounds: { atLeast: 173.15, atMost: 673.15 },
    whenBlank: DEFAULT_TEMPERATURE,
    help: "Hottest liquid to be pumped; it decides the vapour pressure.",
  }),
  altitude: amount({
    label: "Site altitude",
    quantity: "elevation",
    bounds: atmosphereMethod.inputs.altitude,
    whenBlank: 0,
    help: "Height of the site above sea level; it decides the atmospheric pressure.",
  }),
};
