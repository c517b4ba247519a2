import { andThen, succeed } from "../../../src/basis/result.ts";
import { depositionVelocity, depositionVelocityMethod } from "../../../src/slurry/deposition-velocity.ts";
import { pumpDerating, pumpDeratingMethod } from "../../../src/slurry/pump-derating.ts";
import { slurryMixture, slurryMixtureMethod } from "../../../src/slurry/slurry-mixture.ts";
import { defineEntry } from "../entry.ts";
import { quantity } from "../parameter.ts";
import { carrier, temperature } from "../parameters/liquid.ts";
import { pipe } from "../parameters/pipe.ts";
import { handedOn } from "../parameters/share.ts";
import { fines, medianSize, solidsByVolume, solidsByWeight, solidsSG } from "../parameters/solids.ts";

const liquidSG = quantity("ratio", {
  about: "Specific gravity of the liquid between the solids",
  example: "1",
  range: "0.1 to 23",
  whenLeftOut: { value: 1, shown: "1, water" },
});
const mixtureParameters = { solidsSG, solidsByWeight, liquidSG };

const REFERENCE_SLURRY = "equation of the cited work, worked apart from this product";

export const SLURRYSG = defineEntry({
  id: "SLURRYSG",
  group: "Slurry",
  summary: "Specific gravity of a slurry from its solids by weight",
  method:
    "Mass and volume of solids and liquid add up: 1/S_m = C_w/S_s + (1 − C_w)/S_l. Exact as long as nothing dissolves and no air is held. Refused where the solids would pack, at 62 % by volume.",
  cites: slurryMixtureMethod.cites,
  unitless: true,
  parameters: mixtureParameters,
  answer: { kind: "number", name: "slurry SG" },
  examples: [
    {
      args: [2.2, 35, 1.2],
      answer: 1.43,
      within: 0.005,
      source: "Hydraulic Institute, engineering data, solids and slurries: worked example (1.43 printed)",
    },
    {
      args: [2.5, 30],
      answer: 1.22,
      within: 0.001,
      source: "public engineering reference page, slurry density example (1220 kg/m³ printed)",
    },
  ],
  run: (figures) => andThen(slurryMixture(figures), ({ mixtureSG }) => succeed(mixtureSG)),
});

export const SOLIDSBYVOLUME = defineEntry({
  id: "SOLIDSBYVOLUME",
  group: "Slurry",
  summary: "Solids in percent by volume from percent by weight",
  method:
    "C_v = C_w S_m/S_s with the slurry SG of the mass balance. Answers in percent: 14.6 means 14.6 %. An answer up to 1 is handed on as a text, B2 & “ %”, for another function reads a bare number up to 1 as a fraction. Refused where the solids would pack, at 62 % by volume.",
  cites: slurryMixtureMethod.cites,
  unitless: true,
  parameters: mixtureParameters,
  answer: { kind: "quantity", name: "solids by volume", quantity: "percent" },
  examples: [
    {
      args: [2.5, 30],
      answer: 14.6341463415,
      within: 1e-9,
      source: "by hand: (30/2.5) / (30/2.5 + 70/1) = 12/82",
    },
  ],
  run: (figures) =>
    andThen(slurryMixture(figures), ({ solidsByVolume: share }) =>
      succeed(share, handedOn({ "solids by volume": share })),
    ),
});

export const DEPOSITIONVELOCITY = defineEntry({
  id: "DEPOSITIONVELOCITY",
  group: "Slurry",
  summary: "Limiting deposition velocity: mean velocity under which solids come to rest in a level pipe",
  method:
    "The greater of Durand's F_L √(2 g D (S − 1)) with the factor of Schiller and Herbich, F_L = 1.3 C_v^0.125 (1 − exp(−6.9 d50)), d50 in mm, and of Thomas's 9.0 (g ν (S − 1))^0.37 (D/ν)^0.11 for grains too fine for that fit. S is the SG of the solids over that of the liquid. NOTES gives the fits of Wasp and of Oroskar and Turian beside it, Durand with the factor 1.34 of coarse, narrowly graded solids, and the design minimum: the largest of 1.2 times the answer, 0.3 m/s (1 ft/s) above it, and the most careful of Wasp and Oroskar and Turian up to 1.2 times Durand with 1.34. The same rule holds at every size, so none falls between two methods. Oroskar and Turian's share of solids is held at 30.1 %, where its factor has its top, so that more solids never pass more easily. Each fit scatters by 25 to 30 %. Upward slopes of 15° to 60° need up to 30 % more. Broad grading needs less; take d85 for d50 to be on the safe side. Notes outside 2 to 15 % by volume, below 0.02 mm (ask for the rheology), below 0.1 mm (check that it stays turbulent), above 2 mm, above 0.018 of the bore and above 20 mm. Hold the velocity at the least flow and the largest true bore. The name speaks of solids settling in the pipe; it is not the fall of a particle in still liquid.",
  cites: depositionVelocityMethod.cites,
  parameters: {
    pipe: pipe("The pipe, at its largest true bore"),
    d50: medianSize("above 0, below the bore"),
    solidsSG,
    solidsByVolume,
    liquid: carrier,
    temperature,
  },
  answer: { kind: "quantity", name: "limiting deposition velocity", quantity: "velocity" },
  examples: [
    {
      args: ["ID 150 mm rough 0.045 mm", 0.5, 2.65, 15, "SG 1, 1.0034 cSt", null, "SI"],
      answer: 2.18779769198,
      within: 2e-7,
      source: `Durand (1953) with F_L of Schiller & Herbich (1991), ${REFERENCE_SLURRY}`,
    },
  ],
  run: ({ pipe: { bore }, d50, liquid: named, temperature: at, ...solids }) =>
    andThen(named.at(at), (state) =>
      andThen(depositionVelocity({ ...solids, bore, particleSize: d50, liquid: state }), ({ limiting }) =>
        succeed(limiting),
      ),
    ),
});

export const SLURRYDERATE = defineEntry({
  id: "SLURRYDERATE",
  group: "Slurry",
  summary: "How much of its head and efficiency on water a pump keeps on a slurry",
  method:
    "Head ratio by Cave, 1 − 0.0385 (S − 1) (1 + 4/S) C_w ln(d50/0.0227 mm), for solids in water of SG 1; C_w follows from the percent by volume. Fines, the share of the solids below 75 µm by weight, take off the loss by (1 − X)², as the pump handbook's chart method does; leave them out for the safe side. The efficiency ratio is taken equal to the head ratio, which holds for small pumps and is on the safe side for impellers above 0.4 m (16 in); above 20 % by volume efficiency may fall more. The impeller diameter brings that remark and does not enter the fit. All this is the choice of this product; NOTES gives the ratio by Kazim beside it. Tests scatter by 0.1 to either side. Refused below 0.0227 mm, where the slurry is one liquid, and where the ratio comes out below 0.5; nothing is held at a limit. Head on water = slurry head over head ratio; heads are in metres or feet of what is pumped, so SG never multiplies a head.",
  cites: pumpDeratingMethod.cites,
  parameters: {
    impellerDiameter: quantity("size", {
      about: "Outside diameter of the impeller",
      example: '14, or "350 mm"',
      range: "50 mm to 5 m (2 in to 16 ft)",
    }),
    d50: medianSize("0.0227 mm to 10 mm; above that with a warning"),
    solidsSG,
    solidsByVolume,
    fines,
  },
  answer: {
    kind: "record",
    name: "ratios to water",
    columns: {
      headRatio: { name: "head ratio" },
      efficiencyRatio: { name: "efficiency ratio" },
    },
  },
  examples: [
    {
      // 25 % by weight of SG 2.65 is (25/2.65) / (25/2.65 + 75) = 11.1731843575 % by volume.
      args: ["400 mm", "1.5 mm", 2.65, 11.1731843575],
      part: [1, 0],
      answer: 0.832982054698932,
      within: 1e-9,
      source: `Cave (1976), ${REFERENCE_SLURRY}`,
    },
  ],
  run: ({ d50, ...inputs }) =>
    andThen(pumpDerating({ ...inputs, particleSize: d50 }), ({ headRatio, efficiencyRatio }) =>
      succeed({ headRatio, efficiencyRatio }),
    ),
});
