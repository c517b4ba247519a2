import { andThen, succeed } from "../../../src/basis/result.ts";
import { asPumped, asPumpedMethod } from "../../../src/slurry/as-pumped.ts";
import { slurryLiquidMethod } from "../../../src/slurry/slurry-liquid.ts";
import { defineEntry } from "../entry.ts";
import { quantity } from "../parameter.ts";
import { statedLiquid, temperature } from "../parameters/liquid.ts";
import { handedOn } from "../parameters/share.ts";

export const ASPUMPED = defineEntry({
  id: "ASPUMPED",
  group: "Slurry",
  summary: "A liquid as pumped, solids and all: its SG, what it carries, and what a pump keeps of its head on water",
  method:
    "Mass and volume of solids and liquid add up, from any two figures of the solids. Head and efficiency ratio are those of SLURRYDERATE where d50 is stated: 1 without solids, with solids that float and down to a d50 of 0.0227 mm, where the loss is nothing; 1 too where d50 is not stated, with a word on it. Power goes with SG × head ratio / efficiency ratio; pressure with SG, and the head ratio taken as 1, for solids may be gone from the pump while the line is full of slurry.",
  cites: [...slurryLiquidMethod.cites, ...asPumpedMethod.cites],
  parameters: {
    liquid: statedLiquid,
    temperature,
    impellerDiameter: quantity("size", {
      about: "Outside diameter of the impeller",
      example: '14, or "350 mm"',
      range: "50 mm to 5 m (2 in to 16 ft)",
      whenLeftOut: { value: null, shown: "no pump selected yet" },
    }),
  },
  answer: {
    kind: "record",
    name: "as pumped",
    columns: {
      gravity: { name: "SG" },
      byWeight: { name: "solids by weight", quantity: "percent" },
      byVolume: { name: "solids by volume", quantity: "percent" },
      solidsGravity: { name: "solids SG" },
      carrierGravity: { name: "SG of the clear liquid" },
      headRatio: { name: "head ratio" },
      efficiencyRatio: { name: "efficiency ratio" },
    },
  },
  examples: [
    {
      args: ["SG 1, 1.0034 cSt with solids 25 %, SG 2.65"],
      part: [1, 0],
      answer: 1.18435754189944,
      within: 1e-12,
      source: "by hand: 1 / (0.25/2.65 + 0.75/1)",
    },
    {
      args: ["SG 1, 1.0034 cSt with solids 25 %, SG 2.65, d50 1.5 mm", null, "400 mm"],
      part: [1, 5],
      answer: 0.832982054698932,
      within: 1e-9,
      source: "Cave (1976), equation of the cited work, worked apart from this product",
    },
    {
      args: ["water with solids 0 %, SG 2.65, d50 1.5 mm"],
      part: [1, 5],
      answer: 1,
      within: 1e-12,
      source: "by definition: without solids the pump keeps all its head",
    },
  ],
  run: ({ liquid, temperature: at, impellerDiameter }) =>
    andThen(liquid.at(at), (state) =>
      andThen(asPumped(state, impellerDiameter), (of) =>
        succeed(
          {
            gravity: of.specificGravity,
            byWeight: of.solidsByWeight,
            byVolume: of.solidsByVolume,
            solidsGravity: of.solidsGravity,
            carrierGravity: of.carrierGravity,
            headRatio: of.headRatio,
            efficiencyRatio: of.efficiencyRatio,
          },
          handedOn({ "solids by weight": of.solidsByWeight, "solids by volume": of.solidsByVolume }),
        ),
      ),
    ),
});
