import { NOT_VERIFIED } from "../../../src/basis/citation.ts";
import { SPECIFIC_GRAVITY_REFERENCE } from "../../../src/basis/constants.ts";
import { andThen, type Finding, succeed } from "../../../src/basis/result.ts";
import type { LiquidState } from "../../../src/liquid/liquid.ts";
import { particleSettling, particleSettlingMethod } from "../../../src/slurry/particle-settling.ts";
import { serviceClassesFor, serviceClassMethod } from "../../../src/slurry/service-class.ts";
import { slurryDuty, slurryDutyMethod } from "../../../src/slurry/slurry-duty.ts";
import { slurryFlow, slurryFlowMethod } from "../../../src/slurry/slurry-flow.ts";
import { slurryLine, slurryLineMethod } from "../../../src/slurry/slurry-line.ts";
import { defineEntry } from "../entry.ts";
import { choice, type OptionalParameter, quantity, type SingleParameter } from "../parameter.ts";
import { carrier, temperature } from "../parameters/liquid.ts";
import { pipe } from "../parameters/pipe.ts";
import { handedOn, LARGE, share } from "../parameters/share.ts";
import { fines, medianSize, solidsByVolume, solidsByWeight, solidsSG } from "../parameters/solids.ts";
import { zeroDoubted } from "../parameters/zero-doubted.ts";

/** A parameter that may stay unknown. */
function unknown(parameter: SingleParameter<number>): OptionalParameter<number | null> {
  return { ...parameter, fallback: null, whenLeftOut: "not known; found from the others" };
}

const flowOfSlurry = quantity("flow", {
  about: "Flow of the slurry, solids and liquid together",
  range: "above 0",
});

export const SLURRYMIXTURE = defineEntry({
  id: "SLURRYMIXTURE",
  group: "Slurry",
  summary: "Everything about the composition of a slurry from any two of its figures",
  method:
    "Mass and volume of solids and liquid add up: S_m = S_l + C_v (S_s − S_l), C_w = C_v S_s/S_m, dry solids = C_v ρ_s × flow. Give two of solids SG, solids by weight, solids by volume and slurry SG; flow and dry solids together count as one more figure, and either of them alone brings the other. A further figure is compared with what the first two make of it and refused where it is more than 0.5 % off. Exact as long as nothing dissolves and no air is held. Refused where the solids would pack, at 62 % by volume. A percentage answered that is 1 or less is handed on as a text, B2 & “ %”, for another function reads a bare number up to 1 as a fraction. “Equivalent single liquid” is a description that every function with a liquid takes: SG of the slurry, viscosity and vapour pressure of the liquid alone. It serves for pressure, power and NPSH, not for the friction or settling of coarse solids: for those write the liquid with its solids, such as “water with solids 25 %, SG 2.65, d50 0.4 mm”.",
  cites: slurryFlowMethod.cites,
  parameters: {
    solidsSG: unknown(solidsSG),
    solidsByWeight: unknown(solidsByWeight),
    solidsByVolume: unknown(solidsByVolume),
    slurrySG: unknown(
      quantity("ratio", {
        about: "Specific gravity of the slurry, relative to 998.2 kg/m³",
        example: "1.2",
        range: "above 0, at most 23",
      }),
    ),
    flow: unknown(flowOfSlurry),
    drySolids: unknown(
      quantity("massFlow", {
        about: "Mass of dry solids in an hour",
        example: '120, or "100 t/h"',
        range: "above 0",
      }),
    ),
    liquid: carrier,
    temperature,
  },
  answer: {
    kind: "record",
    name: "slurry",
    columns: {
      gravity: { name: "slurry SG" },
      byWeight: { name: "solids by weight", quantity: "percent" },
      byVolume: { name: "solids by volume", quantity: "percent" },
      solidsGravity: { name: "solids SG" },
      flow: { name: "flow", quantity: "flow" },
      drySolids: { name: "dry solids", quantity: "massFlow" },
      asOneLiquid: { name: "equivalent single liquid" },
    },
  },
  examples: [
    {
      args: [2.2, 35, null, null, null, null, "SG 1.2, 1 cP"],
      part: [1, 0],
      answer: 1.43,
      within: 0.005,
      source: "Hydraulic Institute, engineering data, solids and slurries: worked example (1.43 printed)",
    },
    {
      args: [2.65, 30, null, null, null, "100 short ton/h"],
      part: [1, 4],
      // 4 × 100 × (1/2.65 + 0.7/0.3)
      answer: 1084.3,
      within: 2,
      source: "trade formula, gpm = 4 × short tons an hour × (1/S_s + (1 − C_w)/C_w); common practice",
    },
  ],
  run: ({ flow, drySolids, slurrySG: mixtureSG, liquid: named, temperature: at, ...solids }) =>
    andThen(named.at(at), (state) => {
      const liquidSG = state.density / SPECIFIC_GRAVITY_REFERENCE;
      const known = { liquidSG, ...stated({ ...solids, mixtureSG }) };
      return andThen(slurryFlow({ known, flow, drySolids }), ({ mixture, ...rates }) =>
        succeed(
          {
            gravity: mixture.mixtureSG,
            byWeight: mixture.solidsByWeight,
            byVolume: mixture.solidsByVolume,
            solidsGravity: mixture.solidsSG,
            flow: rates.flow,
            drySolids: rates.drySolids,
            asOneLiquid: asOneLiquid(mixture.mixtureSG, state),
          },
          [
            AS_ONE_LIQUID,
            ...handedOn({ "solids by weight": mixture.solidsByWeight, "solids by volume": mixture.solidsByVolume }),
          ],
        ),
      );
    }),
});

export const SLURRYLINE = defineEntry({
  id: "SLURRYLINE",
  group: "Slurry",
  summary: "What a settling slurry does in a run of pipe: velocity against settling, and friction",
  method:
    "Velocity of the slurry against the deposition velocity of DEPOSITIONVELOCITY, under which solids settle, and against its design minimum. Friction where the solids are suspended is Wilson's i_m = i_l + 0.22 (S_m − S_l) (V/V50)^−M in metres of water, with V50 = 3.93 d50^0.35 ((S_s − 1)/1.65)^0.45 over the fourth root of the relative viscosity, and M = 1/ln(d85/d50), held between 0.25 and 1.7; 1.7 without d85. Its 0.22 is half of the friction 0.44 of sliding solids, where half of them slide: no more than all of them are ever taken to. Below a d50 of 0.1 mm the greater of that and of one liquid with Thomas's viscosity, and the notes say where it is not turbulent. Above 0.018 of the bore all solids are taken to slide, 0.44 (S_m − S_l). Where a bed lies at rest the gradient is that of the flow that just moves it, and the regime says so. In metres of slurry none is below that of the clear liquid: so more solids never seem to lose less. The gradients answered are percent, that is metres per 100 m: of the liquid alone in metres of it, of the slurry in metres of slurry. Each fit scatters by 25 to 30 %; upward slopes of 15° to 60° need up to 30 % more velocity. Hold it at the least flow and the largest true bore.",
  cites: slurryLineMethod.cites,
  parameters: {
    flow: quantity("flow", { about: "Flow of the slurry", range: "at least 0" }),
    pipe: pipe("The pipe, at its largest true bore"),
    d50: medianSize("above 0, below the bore"),
    solidsSG,
    solidsByVolume,
    d85: quantity("size", {
      about: "Size that 85 % of the solids by weight are smaller than",
      example: '0.04, or "1 mm"',
      range: "at least d50",
      whenLeftOut: { value: null, shown: "narrow grading, M = 1.7" },
    }),
    liquid: carrier,
    temperature,
  },
  answer: {
    kind: "record",
    name: "slurry in the pipe",
    columns: {
      velocity: { name: "velocity", quantity: "velocity" },
      limiting: { name: "deposition velocity", quantity: "velocity" },
      over: { name: "velocity / deposition", quantity: "ratio" },
      design: { name: "design minimum", quantity: "velocity" },
      verdict: { name: "verdict" },
      regime: { name: "regime" },
      liquidGradient: { name: "gradient of the liquid", quantity: "percent" },
      slurryGradient: { name: "gradient of the slurry", quantity: "percent" },
    },
  },
  examples: [
    {
      // 4 m/s in 200 mm is 0.04 π m³/s; S_m = 1 + 0.15 × 1.65.
      args: ["0.12566370614359 m3/s", "ID 200 mm rough 0.045 mm", 0.4, 2.65, 15, null, "SG 1, 1.0034 cSt", null, "SI"],
      part: [1, 7],
      answer: 7.40590892297,
      within: 1e-6,
      source:
        "Wilson, Addie, Sellgren and Clift, heterogeneous flow, worked apart from this product: 0.0923887 m of water over 1.2475",
    },
    {
      args: ["0.12566370614359 m3/s", "ID 150 mm rough 0.045 mm", 0.5, 2.65, 15, null, "SG 1, 1.0034 cSt", null, "SI"],
      part: [1, 1],
      answer: 2.18779769198,
      within: 2e-7,
      source: "Durand (1953) with F_L of Schiller & Herbich (1991), equation worked apart from this product",
    },
  ],
  run: ({ d50: particleSize, d85: coarseSize, liquid: named, temperature: at, ...rest }) =>
    andThen(named.at(at), (state) =>
      andThen(slurryLine({ ...rest, particleSize, coarseSize, liquid: state }), (run) =>
        succeed({
          velocity: run.velocity,
          limiting: run.limiting,
          over: run.ratio,
          design: run.design,
          verdict: run.verdict,
          regime: run.regime,
          liquidGradient: run.liquidGradient,
          slurryGradient: run.slurryGradient,
        }),
      ),
    ),
});

export const SLURRYDUTY = defineEntry({
  id: "SLURRYDUTY",
  group: "Slurry",
  summary: "What a slurry duty asks of a pump on its curves for water: head to choose it by, and power",
  method:
    "Head and efficiency ratio as SLURRYDERATE has them, by Cave; or, where the reading of a maker's or the handbook's chart is given, that reading brought to these solids: times ((S_s − 1)/1.65)^0.65 (1 − X)² C_v/15 %. The chart itself is not held here. Head on water = head of slurry over the head ratio: read the pump's curve for water at it. Power = ρ_m g Q H_m over efficiency on water times the efficiency ratio; power over water is that against the same pump at the same flow on water of SG 1. Heads are in metres or feet of what is pumped, so SG never multiplies a head; it enters the power alone. NPSHR rises too: allow its figure on water over the head ratio. Refused as SLURRYDERATE is, and where the ratio comes out below 0.5. A caution where the liquid between the solids is not near water, for which the fits were made.",
  cites: slurryDutyMethod.cites,
  parameters: {
    flow: quantity("flow", { about: "Flow of the slurry", range: "at least 0" }),
    slurryHead: quantity("head", {
      about: "Total head in metres or feet of slurry",
      range: "at least 0",
    }),
    d50: medianSize("0.0227 mm to 10 mm; above that with a warning"),
    solidsSG,
    solidsByVolume,
    fines,
    impellerDiameter: quantity("size", {
      about: "Outside diameter of the impeller",
      example: '14, or "350 mm"',
      range: "50 mm to 5 m (2 in to 16 ft)",
      whenLeftOut: { value: null, shown: "no pump selected yet" },
    }),
    waterEfficiency: zeroDoubted(
      share({
        ...LARGE,
        about: "Efficiency of the pump on water at this flow",
        example: '0.75, or "75 %"',
        range: "above 0, at most 100 %",
        whenLeftOut: { value: null, shown: "no shaft power" },
      }),
    ),
    chartReduction: zeroDoubted(
      share({
        about: "Head reduction read from a chart at the impeller's size and d50, for solids SG 2.65 at 15 % by volume",
        example: '14, or "14 %"',
        range: "0 to below 100 %",
        whenLeftOut: { value: null, shown: "by Cave" },
      }),
    ),
    liquid: carrier,
    temperature,
  },
  answer: {
    kind: "record",
    name: "slurry duty",
    columns: {
      headRatio: { name: "head ratio" },
      efficiencyRatio: { name: "efficiency ratio" },
      waterHead: { name: "head on water", quantity: "head" },
      gravity: { name: "slurry SG" },
      powerOverWater: { name: "power over water" },
      shaftPower: { name: "shaft power", quantity: "power" },
    },
  },
  examples: [
    {
      // 25 % by weight of SG 2.65 is 11.1731843575 % by volume: head ratio 0.832982054699; 24 m over it.
      args: [100, 24, 1.5, 2.65, 11.1731843575, null, 400, null, null, null, null, "SI"],
      part: [1, 2],
      answer: 28.8121453092701,
      within: 1e-7,
      source: "Cave (1976), equation worked apart from this product; head on slurry over the head ratio",
    },
    {
      args: [100, 24, 1.5, 4.4, 6, 8, 400, null, 14, null, null, "SI"],
      part: [1, 0],
      answer: 0.92,
      within: 0.006,
      source: "Pump Handbook, slurry chapter: solids-effect example (14 % read, 8 % printed for the slurry)",
    },
  ],
  run: ({ d50: particleSize, liquid: named, temperature: at, ...rest }) =>
    andThen(named.at(at), (state) =>
      andThen(slurryDuty({ ...rest, particleSize, liquid: state }), (duty) =>
        succeed({
          headRatio: duty.headRatio,
          efficiencyRatio: duty.efficiencyRatio,
          waterHead: duty.waterHead,
          gravity: duty.mixtureSG,
          powerOverWater: duty.powerRatio,
          shaftPower: duty.shaftPower,
        }),
      ),
    ),
});

export const SLURRYCLASS = defineEntry({
  id: "SLURRYCLASS",
  group: "Slurry",
  summary: "A pump's head and impeller tip speed against the suggested limits of the slurry service classes",
  method: `Tip speed = π × diameter × speed. Both are compared with the limits suggested for service classes 1 to 4 of the slurry pump standard, light to very heavy; the limits are ${NOT_VERIFIED}. Which class a slurry is, its chart of slurry SG against d50 says; that chart is not held here. Head per stage is that of one impeller.`,
  cites: serviceClassMethod.cites,
  parameters: {
    headPerStage: quantity("head", { about: "Head of one impeller", range: "at least 0" }),
    impellerDiameter: quantity("size", {
      about: "Outside diameter of the impeller",
      example: '14, or "350 mm"',
      range: "at least 0",
    }),
    speed: quantity("speed", { about: "Speed of the pump", range: "at least 0" }),
  },
  answer: {
    kind: "table",
    name: "service classes",
    columns: {
      class: { name: "class" },
      service: { name: "service" },
      head: { name: "maximum head", quantity: "head" },
      metal: { name: "maximum tip speed, metal", quantity: "velocity" },
      elastomer: { name: "maximum tip speed, elastomer", quantity: "velocity" },
      tipSpeed: { name: "tip speed", quantity: "velocity" },
      verdict: { name: "verdict" },
    },
  },
  examples: [
    {
      args: [55, 500, 1000, "SI"],
      part: [1, 5],
      answer: 26.1799387799,
      within: 1e-9,
      source: "by hand: π × 0.5 m × 1000/60 r/s",
    },
    {
      args: [55, 500, 1000, "SI"],
      part: [3, 6],
      answer: "head above; tip speed above for elastomer",
      source: `ANSI/HI 12.1-12.6, class 3: 52 m, 33 m/s metal, 26 m/s elastomer (${NOT_VERIFIED})`,
    },
  ],
  run: ({ headPerStage, impellerDiameter, speed }) => {
    const tipSpeed = Math.PI * impellerDiameter * speed;
    return andThen(serviceClassesFor({ headPerStage, tipSpeed }), (classes) =>
      succeed(
        classes.map((of) => ({
          class: of.serviceClass,
          service: of.service,
          head: of.headPerStage,
          metal: of.metal,
          elastomer: of.elastomer,
          tipSpeed,
          verdict: of.verdict,
        })),
      ),
    );
  },
});

export const SETTLINGVELOCITY = defineEntry({
  id: "SETTLINGVELOCITY",
  group: "Slurry",
  summary: "How fast particles fall in still liquid, alone and among others",
  method:
    "Ferguson and Church: w = R g d²/(18 ν + √(0.75 C2 R g d³)), R the excess of density over that of the liquid, C2 = 1.0 for natural grains and 0.4 for spheres. Among others they fall slower, by (1 − C_v)^n with n from 4.65 to 2.39 by Richardson and Zaki. For the upflow that a riser needs and the rest that a sump or a pond gives; in a running pipe solids are kept up by turbulence: see DEPOSITIONVELOCITY.",
  cites: particleSettlingMethod.cites,
  parameters: {
    particleSize: quantity("size", {
      about: "Size of the particles",
      example: '0.02, or "0.5 mm"',
      range: "above 0, at most 1 m",
    }),
    solidsSG,
    solidsByVolume: {
      ...solidsByVolume,
      fallback: 0,
      whenLeftOut: "0, one particle alone",
    },
    shape: choice(["grain", "sphere"], {
      about: "Natural grains, or smooth spheres",
      whenLeftOut: "grain",
    }),
    liquid: carrier,
    temperature,
  },
  answer: {
    kind: "record",
    name: "fall",
    columns: {
      alone: { name: "alone", quantity: "velocity" },
      amongOthers: { name: "among others", quantity: "velocity" },
    },
  },
  examples: [
    {
      args: ["0.5 m", 2.65478, null, null, "SG 1, 1.0034 cSt", null, "SI"],
      part: [1, 0],
      answer: 3.28873,
      within: 0.003,
      source: "by hand, a stone so large that viscosity is nothing: √(4 R g d/(3 C2)), R = 1.65478, d = 0.5 m",
    },
  ],
  run: ({ liquid: named, temperature: at, ...particle }) =>
    andThen(named.at(at), (state) =>
      andThen(particleSettling({ ...particle, liquid: state }), ({ alone, hindered }) =>
        succeed({ alone, amongOthers: hindered }),
      ),
    ),
});

const AS_ONE_LIQUID: Finding = {
  code: "slurry-as-one-liquid",
  kind: "check",
  subject: "the equivalent single liquid",
};

/** Only the figures that are known. */
function stated<K extends string>(figures: Readonly<Record<K, number | null>>): { readonly [F in K]?: number } {
  return Object.fromEntries(Object.entries(figures).filter(([, figure]) => figure !== null)) as { [F in K]?: number };
}

/** Enough figures that no rounding shows in a pressure. */
const DIGITS = 6;

/** "SG 1.23, 1.002 cP, pv 2.339 kPa" */
function asOneLiquid(mixtureSG: number, { dynamicViscosity, vapourPressure }: LiquidState): string {
  const shown = (value: number): number => Number(value.toPrecision(DIGITS));
  const vapour = vapourPressure === undefined ? "" : `, pv ${shown(vapourPressure / 1e3)} kPa`;
  return `SG ${shown(mixtureSG)}, ${shown(dynamicViscosity * 1e3)} cP${vapour}`;
}
