import { andThen } from "../../../src/basis/result.ts";
import { headOfPressure, pressureHeadMethod, pressureOfHead } from "../../../src/head/pressure-head.ts";
import { defineEntry } from "../entry.ts";
import { quantity } from "../parameter.ts";
import { liquid, temperature } from "../parameters/liquid.ts";

const HOW =
  "ρ is that of the liquid at its temperature, solids and all; 2.31 ft a psi is that of cold water rounded. A vacuum of more than one standard atmosphere is refused: no gauge can read it.";

export const PRESSUREHEAD = defineEntry({
  id: "PRESSUREHEAD",
  group: "System and suction",
  summary: "Head of the liquid that a gauge pressure is worth",
  method: `h = p/(ρ g). ${HOW}`,
  cites: pressureHeadMethod.cites,
  parameters: {
    pressure: quantity("gaugePressure", {
      about: "Gauge pressure, or a difference of pressures; negative for a vacuum",
      example: '60, or "4 bar"',
      range: "no more vacuum than one standard atmosphere",
    }),
    liquid,
    temperature,
  },
  answer: { kind: "quantity", name: "head", quantity: "head" },
  examples: [
    {
      args: [60, "water", 68],
      answer: 138.648,
      within: 0.002,
      source: "p/(ρ g) with the density of water at 68 °F by IAPWS-IF97, worked apart from this product",
    },
  ],
  run: ({ pressure, liquid, temperature }) =>
    andThen(liquid.at(temperature), ({ density }) => headOfPressure(pressure, density)),
});

export const HEADPRESSURE = defineEntry({
  id: "HEADPRESSURE",
  group: "System and suction",
  summary: "Gauge pressure that a head of the liquid gives",
  method: `p = ρ g h. ${HOW}`,
  cites: pressureHeadMethod.cites,
  parameters: {
    head: quantity("head", {
      about: "Head of the liquid; negative below the gauge",
      range: "not so far below that it would be more than a vacuum",
    }),
    liquid,
    temperature,
  },
  answer: { kind: "quantity", name: "pressure", quantity: "gaugePressure" },
  examples: [
    {
      args: [100, "SG 1.12"],
      answer: 48.4676813,
      within: 5e-6,
      source: "by hand: 100 ft × 1.12 × 998.2 kg/m³ × 9.80665 m/s²; the trade's 2.31 gives 48.485",
    },
  ],
  run: ({ head, liquid, temperature }) =>
    andThen(liquid.at(temperature), ({ density }) => pressureOfHead(head, density)),
});
