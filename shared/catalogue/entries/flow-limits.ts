import { amount, andThen, type Finding, succeed } from "../../../src/basis/result.ts";
import {
  shutoffHeating,
  shutoffHeatingMethod,
  thermalMinimumFlow,
  thermalMinimumFlowMethod,
} from "../../../src/pump/heating.ts";
import { leastFlows } from "../../../src/pump/operating-region.ts";
import { bestPointOf } from "../../../src/pump/pump-reading.ts";
import { runningPump } from "../../../src/pump/running-pump.ts";
import { npshLimitFlow, npshLimitFlowMethod } from "../../../src/suction/npsh-limit-flow.ts";
import { defineEntry } from "../entry.ts";
import { quantity } from "../parameter.ts";
import { curve } from "../parameters/curve.ts";
import { EACH_IN_WORDS } from "../parameters/line.ts";
import { pumpsLineOrNothing } from "../parameters/line-or-nothing.ts";
import { liquid, temperature } from "../parameters/liquid.ts";
import { altitude, onSite, suctionLift } from "../parameters/priming.ts";
import { numberOfPumps, speedRatio, trimRatio } from "../parameters/running-pump.ts";
import { gaugeOf, surfacePressure } from "../parameters/surface-pressure.ts";

export const NPSHLIMITFLOW = defineEntry({
  id: "NPSHLIMITFLOW",
  group: "System and suction",
  summary: "Flow at which NPSH available comes down to what the pump requires and its margin",
  method: `NPSHA less the margin meets NPSHR, by Brent's method over the flows the curve gives NPSHR for; of several such flows the largest. The line takes the flow of all pumps, each row its share; NPSHR is that of one pump at its own flow. Where NPSHR rises again at small flows, the first column says from where on NPSH suffices. Without a stated margin as MAXLIFT: the greater of 1.0 m (3.28 ft) and 0.3 NPSHR; a margin of 0 gives the flow at which the two meet. The pump does not stop there: its head falls off and cavitation holds the flow near this figure. “End of the curve” says that NPSH suffices at every flow given. ${EACH_IN_WORDS}`,
  cites: npshLimitFlowMethod.cites,
  parameters: {
    curve,
    suctionLift,
    suctionLine: pumpsLineOrNothing("The suction line, from the liquid to the pump"),
    NPSHMargin: quantity("head", {
      about: "NPSH margin to keep over NPSHR",
      range: "0 or more",
      whenLeftOut: { value: null, shown: "the greater of 1.0 m (3.28 ft) and 0.3 × NPSHR" },
    }),
    altitude,
    sourcePressure: surfacePressure,
    liquid,
    temperature,
    speedRatio,
    trimRatio,
    numberOfPumps,
  },
  answer: {
    kind: "record",
    name: "flows by NPSH",
    columns: {
      least: { name: "from", quantity: "flow" },
      most: { name: "to", quantity: "flow" },
      each: { name: "of each pump", quantity: "flow" },
      npshAvailable: { name: "NPSHA there", quantity: "head" },
      endsBy: { name: "ended by" },
    },
  },
  examples: [
    {
      args: [
        [
          ["flow", "head", "NPSHR"],
          [0, 40, 2],
          [100, 35, 4],
          [200, 20, 6],
        ],
        2,
        [["ID 200 mm rough 0 mm", "0.001 m", "K 0"]],
        1,
        null,
        "-32.67845 kPa",
        "1000 kg/m3, 1 cP, pv 0 kPa",
        null,
        null,
        null,
        null,
        "SI",
      ],
      part: [1, 1],
      answer: 100,
      within: 0.01,
      source: "by hand: 7 m of pressure head less 2 m of lift less 1 m of margin meets NPSHR, 2 + Q/50 m, at 100 L/s",
    },
  ],
  run: ({
    curve,
    speedRatio,
    trimRatio,
    numberOfPumps: pumps,
    sourcePressure,
    liquid,
    temperature,
    altitude,
    NPSHMargin,
    suctionLine,
    ...suction
  }) =>
    andThen(runningPump({ curve, speedRatio, trimRatio }), (pump) =>
      onSite(altitude, liquid.at(temperature), (atmosphericPressure, state) =>
        andThen(
          npshLimitFlow({
            ...suction,
            suctionLine: suctionLine.of(pumps),
            pump,
            pumps,
            npshMargin: NPSHMargin,
            surfacePressure: gaugeOf(sourcePressure, atmosphericPressure),
            atmosphericPressure,
            liquid: state,
          }),
          (found) => succeed({ ...found, each: found.most === null ? null : found.most / pumps }),
        ),
      ),
    ),
});

const HEAT_IN_WORDS =
  "Without a stated specific heat that of the water in the liquid is taken, by its share of the mass: all of water and sewage, less of sea water, brine, glycol and slurries. A liquid known by its figures alone, or no water, takes 1.884 kJ/(kg·K), 0.45 Btu/(lb·°F), of petroleum oils, which is on the safe side; a note says which, and a figure stated replaces it.";

const specificHeat = quantity("specificHeat", {
  about: "Specific heat of the liquid",
  example: '1, or "4.18 kJ/(kg·K)"',
  range: "above 0",
  whenLeftOut: {
    value: null,
    shown:
      "that of the water in it, 1.00 Btu/(lb·°F) or 4.184 kJ/(kg·K) of all water; where that is not known, 0.45 or 1.884",
  },
});

export const MINTHERMALFLOW = defineEntry({
  id: "MINTHERMALFLOW",
  group: "Pump",
  summary: "Flow below which the liquid warms in the pump by more than allowed",
  method: `ΔT = (P − ρ g Q H)/(ρ Q c_p) by the power curve where it is given, which stays finite at no flow, or g H (1/η − 1)/c_p by efficiency. Where NPSH available is given, the liquid warms no further than leaves it as much as NPSHR: the rise of its vapour pressure is compared with the NPSH margin, NPSHR below its first flow being that of the first. The hydraulic minimum beside it is the maker's to state: without one 30 % of best efficiency flow, below which continuous running is doubted (house choice); it is nearly always the greater, and the greater governs. ${HEAT_IN_WORDS}`,
  cites: thermalMinimumFlowMethod.cites,
  parameters: {
    curve,
    allowedRise: quantity("temperatureDifference", {
      about: "Rise of the liquid allowed in one pass",
      example: '15, or "8 K difference"',
      range: "above 0, at most 100 K",
      whenLeftOut: { value: null, shown: "8 K (14.4 °F)" },
    }),
    NPSHA: quantity("head", {
      about: "NPSH available at the pump, where it is to limit the rise",
      range: "0 or more",
      whenLeftOut: { value: null, shown: "not counted" },
    }),
    liquid,
    temperature,
    specificHeat,
    speedRatio,
    trimRatio,
  },
  answer: {
    kind: "record",
    name: "minimum flows",
    columns: {
      flow: { name: "minimum flow by heating", quantity: "flow" },
      allowedRise: { name: "rise allowed", quantity: "temperatureDifference" },
      limitedBy: { name: "limited by" },
      riseAtBest: { name: "rise at best efficiency", quantity: "temperatureDifference" },
      hydraulic: { name: "hydraulic minimum, doubted below", quantity: "flow" },
      governs: { name: "greater of the two", quantity: "flow" },
    },
  },
  examples: [
    {
      args: [
        [
          ["flow", "head", "power"],
          [0, 100, 20.0],
          [5, 100, 24.894499015],
          [10, 100, 29.78899803],
          [20, 100, 39.57799606],
          [40, 90, 55.240392908],
        ],
        1,
        null,
        null,
        null,
        null,
        null,
        null,
        "SI",
      ],
      part: [1, 0],
      answer: 4.78873,
      within: 1e-4,
      source: "by hand: 20 kW of losses at every flow, 20 kW/(998.2 kg/m³ × 4184 J/(kg·K) × 1 K) = 4.789 L/s",
    },
  ],
  run: ({ curve, allowedRise, NPSHA, liquid, temperature, specificHeat, speedRatio, trimRatio }) =>
    andThen(runningPump({ curve, speedRatio, trimRatio }), (pump) =>
      andThen(bestPointOf(pump), (best) =>
        andThen(
          thermalMinimumFlow({
            pump,
            allowedRise,
            specificHeat,
            liquid,
            temperature,
            npshAvailable: NPSHA,
          }),
          (found) => {
            const hydraulic = leastFlows().doubted * best.flow;
            const governs = Math.max(found.flow, hydraulic);
            return succeed(
              { ...found, hydraulic, governs },
              found.flow < hydraulic ? [below(found.flow, hydraulic)] : [],
            );
          },
        ),
      ),
    ),
});

function below(flow: number, hydraulic: number): Finding {
  const facts = { hydraulic: amount("flow", hydraulic) };
  return { code: "thermal-below-hydraulic", kind: "check", subject: "flow", found: amount("flow", flow), facts };
}

export const SHUTOFFHEATING = defineEntry({
  id: "SHUTOFFHEATING",
  group: "Pump",
  summary: "How fast a pump that runs against a closed valve warms, a minute",
  method: `dT/dt = P₀/(m c_p + m_metal c_metal), iron 0.46 kJ/(kg·K); nothing is lost to the air. ${HEAT_IN_WORDS} Power at shutoff is that of the curve at zero flow (PUMPPOWER). A pump shut in boils its liquid and may burst: it is not run so.`,
  cites: shutoffHeatingMethod.cites,
  parameters: {
    shutoffPower: quantity("power", { about: "Shaft power at zero flow", range: "above 0" }),
    liquidVolume: quantity("volume", { about: "Liquid in the casing", range: "above 0" }),
    metalMass: quantity("mass", {
      about: "Mass of the casing and the impeller",
      range: "0 or more",
      whenLeftOut: { value: 0, shown: "none counted: warms faster" },
    }),
    liquid,
    temperature,
    specificHeat,
  },
  answer: { kind: "quantity", name: "rise a minute", quantity: "temperatureDifference" },
  examples: [
    {
      args: [30, 60, 300, "1000 kg/m3, 1 cP", null, 4.18, "SI"],
      answer: 4.629,
      within: 0.002,
      source: "by hand: 30 kW over 60 kg × 4.18 + 300 kg × 0.46 kJ/K, 388.8 kJ/K, for 60 s",
    },
  ],
  run: ({ shutoffPower: shaftPower, liquid, temperature, ...rest }) =>
    andThen(liquid.at(temperature), (state) =>
      andThen(shutoffHeating({ ...rest, shaftPower, liquid: state }), (rate) => succeed(60 * rate)),
    ),
});
