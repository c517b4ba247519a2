import { NOT_VERIFIED } from "../../../src/basis/citation.ts";
import { SPECIFIC_GRAVITY_REFERENCE } from "../../../src/basis/constants.ts";
import { checkInputs, type Method } from "../../../src/basis/method.ts";
import { andThen, fail, type Result, succeed } from "../../../src/basis/result.ts";
import { kinematicViscosityOf, type Liquid } from "../../../src/liquid/liquid.ts";
import type { PumpCurve } from "../../../src/pump/pump-curve.ts";
import { pumpCurveMethod } from "../../../src/pump/pump-curve-point.ts";
import { efficiencyAtFlow, headAtFlow, npshRequiredAtFlow, shaftPowerAtFlow } from "../../../src/pump/pump-reading.ts";
import { ratioForDutyMethod, speedForDuty, trimForDuty } from "../../../src/pump/ratio-for-duty.ts";
import { type RunningPump, runningPump, runningPumpMethod } from "../../../src/pump/running-pump.ts";
import { SPECIFIC_GRAVITY, shaftPower, shaftPowerMethod } from "../../../src/pump/shaft-power.ts";
import {
  specificSpeed,
  specificSpeedMethod,
  suctionSpecificSpeed,
  suctionSpecificSpeedMethod,
} from "../../../src/pump/specific-speed.ts";
import { viscousCurve, viscousCurveMethod } from "../../../src/pump/viscous-curve.ts";
import type { Argument } from "../../cells/cell.ts";
import { type CallFacts, defineEntry } from "../entry.ts";
import { quantity } from "../parameter.ts";
import { curve } from "../parameters/curve.ts";
import { temperature } from "../parameters/liquid.ts";
import { speedRatio, trimRatio } from "../parameters/running-pump.ts";
import { LARGE, share } from "../parameters/share.ts";
import { SG } from "../parameters/specific-gravity.ts";
import { type StatedViscosity, viscosity } from "../parameters/viscosity.ts";
import { correctedFor } from "../parameters/viscous-liquid.ts";

const flow = quantity("flow", {
  about: "Flow of the pump",
  range: "from the first point of the curve to its last",
});
const stated = { curve, flow, speedRatio, trimRatio, SG };

interface Stated {
  readonly curve: PumpCurve;
  readonly flow: number;
  readonly speedRatio: number;
  readonly trimRatio: number;
  readonly SG: number;
}

const readingMethod = {
  cites: pumpCurveMethod.cites,
  inputs: { specificGravity: SPECIFIC_GRAVITY },
} as const satisfies Method<"specificGravity">;

/** Reads the curve at the speed and trim stated. */
function readAt(
  { curve, speedRatio, trimRatio, SG }: Stated,
  read: (pump: RunningPump) => Result<number>,
): Result<number> {
  return andThen(checkInputs(readingMethod, { specificGravity: SG }), () =>
    andThen(runningPump({ curve, speedRatio, trimRatio }), read),
  );
}

export const CURVE_METHOD =
  "The curve is a monotone piecewise cubic through its points (PCHIP: Fritsch and Butland slopes, three-point rule at the ends): it passes through every point, makes no hump that is not there and keeps the one that is. It is never read beyond its last point, nor below its first unless that is at zero flow.";
export const AFFINITY_METHOD =
  "At another speed flow goes with the ratio, head with its square, power with its cube, and efficiency is kept; the same rule serves for a trimmed impeller, with efficiency one point lower for each 5 % of trim below 90 %. It overstates a trim: take the maker's curve where there is one.";
const readingCites = [...pumpCurveMethod.cites, ...runningPumpMethod.cites] as const;

/** The curve of the interpolation cases, US gpm, ft and fraction. */
const SMOOTH_CURVE: Argument = [
  ["flow", "head", "efficiency"],
  [0, 140, 0],
  [100, 139, 0.34],
  [200, 135, 0.56],
  [300, 128, 0.7],
  [400, 118, 0.77],
  [500, 105, 0.78],
  [600, 88, 0.73],
];
/** Passes through 3000 gpm, 200 ft, 175 hp; the other rows are made up. */
const HANDBOOK_CURVE: Argument = [
  ["flow", "head", "power"],
  [0, 250, 100],
  [3000, 200, 175],
  [4000, 150, 190],
];

/** Specific speeds go by the units of the set: US gpm and ft, or m³/s and m. */
function conventionOf({ unitSet }: CallFacts): "US" | "SI" {
  return unitSet === "US" ? "US" : "SI";
}

const speed = quantity("speed", { about: "Speed of the pump", example: "1750", range: "above 0" });

export const PUMPHEAD = defineEntry({
  id: "PUMPHEAD",
  group: "Pump",
  summary: "Head of a pump at a flow, read off its curve at a speed and trim",
  method: `${CURVE_METHOD} ${AFFINITY_METHOD}`,
  cites: readingCites,
  parameters: stated,
  answer: { kind: "quantity", name: "head", quantity: "head" },
  examples: [
    {
      args: [SMOOTH_CURVE, 150],
      answer: 137.436363636,
      within: 1e-8,
      source: "PchipInterpolator of the general-purpose library SciPy",
    },
    {
      args: [HANDBOOK_CURVE, 2000, "0.66666666667"],
      answer: 88.9,
      within: 0.05,
      source: `Hicks, Handbook of Mechanical Engineering Calculations, pump similarity example (${NOT_VERIFIED})`,
    },
  ],
  run: (values) => readAt(values, (pump) => headAtFlow(pump, values.flow)),
});

export const PUMPEFFICIENCY = defineEntry({
  id: "PUMPEFFICIENCY",
  group: "Pump",
  summary: "Efficiency of a pump at a flow as a fraction, read off its curve at a speed and trim",
  method: `${CURVE_METHOD} Efficiency is drawn through zero at zero flow; where the curve gives power alone it is ρgQH/P with water. A column of figures above 1.5 is read as percentages, with a caution. ${AFFINITY_METHOD}`,
  cites: readingCites,
  parameters: stated,
  answer: { kind: "quantity", name: "efficiency", quantity: "ratio" },
  examples: [
    {
      args: [SMOOTH_CURVE, 150],
      answer: 0.462003968254,
      within: 1e-10,
      source: "PchipInterpolator of the general-purpose library SciPy",
    },
  ],
  run: (values) => readAt(values, (pump) => efficiencyAtFlow(pump, values.flow)),
});

export const PUMPNPSHR = defineEntry({
  id: "PUMPNPSHR",
  group: "Pump",
  summary: "NPSH a pump requires at a flow, read off its curve at a speed and trim",
  method: `${CURVE_METHOD} At another speed NPSHR goes with the ratio to the power 2 faster and 1.5 slower, a cautious choice between measured exponents of 1.3 and 2. A trim leaves the eye of the impeller as it is, so NPSHR at a flow stays.`,
  cites: readingCites,
  parameters: stated,
  answer: { kind: "quantity", name: "NPSH required", quantity: "head" },
  examples: [
    {
      args: [
        [
          ["flow", "head", "NPSHR"],
          [0, 100, 4],
          [100, 95, 6],
          [200, 80, 8],
        ],
        165,
        1.1,
      ],
      answer: 8.47,
      within: 1e-9,
      source: "by hand: a straight NPSHR line gives 7 ft at 165/1.1 = 150 gpm; 7 × 1.1² = 8.47 ft",
    },
  ],
  run: (values) => readAt(values, (pump) => npshRequiredAtFlow(pump, values.flow)),
});

export const PUMPPOWER = defineEntry({
  id: "PUMPPOWER",
  group: "Pump",
  summary: "Shaft power of a pump at a flow, read off its curve at a speed and trim",
  method: `${CURVE_METHOD} The power column is that with water and is multiplied by SG. Where the curve gives efficiency alone, power is ρgQH/η: none at zero flow, and a caution below the first efficiency given. ${AFFINITY_METHOD}`,
  cites: readingCites,
  parameters: stated,
  answer: { kind: "quantity", name: "shaft power", quantity: "power" },
  examples: [
    {
      args: [HANDBOOK_CURVE, 2000, "0.66666666667"],
      answer: 51.8,
      within: 0.07,
      source: `Hicks, Handbook of Mechanical Engineering Calculations, pump similarity example (${NOT_VERIFIED})`,
    },
  ],
  run: (values) =>
    readAt(values, (pump) => shaftPowerAtFlow(pump, values.flow, values.SG * SPECIFIC_GRAVITY_REFERENCE)),
});

export const SPEEDRATIO = defineEntry({
  id: "SPEEDRATIO",
  group: "Pump",
  summary: "Speed ratio at which a pump meets a flow and a head",
  method: `The ratio r for which r² H(Q/r) is the head asked for, by Brent's method to double precision. Give the head the system requires at that flow: with static head the flow does not simply go with the speed. ${AFFINITY_METHOD}`,
  cites: ratioForDutyMethod.cites,
  parameters: {
    curve,
    flow: quantity("flow", { about: "Flow of the duty", range: "above 0" }),
    head: quantity("head", {
      about: "Head of the duty, as the system requires it at that flow",
      range: "above 0",
    }),
  },
  answer: { kind: "number", name: "speed ratio" },
  examples: [
    {
      args: [HANDBOOK_CURVE, 2000, 88.8888888889],
      answer: 0.66667,
      within: 1e-5,
      source: `Hicks, Handbook of Mechanical Engineering Calculations, pump similarity example, 1800 to 1200 rpm (${NOT_VERIFIED})`,
    },
  ],
  run: (duty) => speedForDuty(duty),
});

export const TRIMRATIO = defineEntry({
  id: "TRIMRATIO",
  group: "Pump",
  summary: "Impeller trim ratio at which a pump meets a flow and a head",
  method:
    "The ratio t of diameters for which t² H(Q/t) is the head asked for, by Brent's method to double precision, from 0.75 to 1. Trimming is not similarity and the rule removes too much: a caution gives the diameters to begin with, from 0.80 to 0.85 of the calculated cut. Keep above the maker's minimum diameter; above a specific speed of 60 (N_s 3000) cut no further than 90 %.",
  cites: ratioForDutyMethod.cites,
  parameters: {
    curve,
    flow: quantity("flow", { about: "Flow of the duty", range: "above 0" }),
    head: quantity("head", {
      about: "Head of the duty, as the system requires it at that flow",
      range: "above 0",
    }),
  },
  answer: { kind: "number", name: "trim ratio" },
  examples: [
    {
      args: [
        [
          ["flow", "head"],
          [0, 60],
          [600, 55],
          [1200, 45],
          [1500, 36],
        ],
        1080,
        36.45,
      ],
      answer: 0.9,
      within: 1e-9,
      source: `handbook trim rule, 13 in to 11.7 in: 1200 gpm at 45 ft become 1080 gpm at 36.45 ft (${NOT_VERIFIED})`,
    },
  ],
  run: (duty) => trimForDuty(duty),
});

export const SPECIFICSPEED = defineEntry({
  id: "SPECIFICSPEED",
  group: "Pump",
  summary: "Specific speed of a pump, in US units for US and in SI units for SI and METRIC",
  method:
    "n √Q / H^0.75 at best efficiency, with the largest impeller and the head of one stage. With units US: rpm, US gpm, ft (N_s). With SI and METRIC alike: rpm, m³/s, m (n_s). N_s = 51.645 n_s. By the standard the flow is that of the whole pump, also for a double-suction impeller; many European texts halve it.",
  cites: specificSpeedMethod.cites,
  parameters: {
    speed,
    flow: quantity("flow", { about: "Flow at best efficiency", range: "above 0" }),
    head: quantity("head", { about: "Head of one stage at best efficiency", range: "above 0" }),
  },
  answer: { kind: "number", name: "specific speed" },
  examples: [
    {
      args: [1750, "0.0694 m3/s", "18.4 m", "SI"],
      answer: 51.92,
      within: 0.05,
      source: "Davis (2010), page 3-29",
    },
    {
      args: [1180, 4500, 85],
      answer: 2827.6397,
      within: 1e-3,
      source: "course exercise on a cooling-water pump, worked apart from this product",
    },
  ],
  run: (duty, facts) => specificSpeed({ ...duty, convention: conventionOf(facts) }),
});

export const SUCTIONSPECIFICSPEED = defineEntry({
  id: "SUCTIONSPECIFICSPEED",
  group: "Pump",
  summary: "Suction specific speed of a pump, in US units for US and in SI units for SI and METRIC",
  method:
    "n √Q / NPSHR^0.75 at best efficiency with the largest impeller; NPSHR at 3 % head drop. For a double-suction impeller give the flow through one eye, half of the whole. With units US: rpm, US gpm, ft; with SI and METRIC: rpm, m³/s, m. A caution above 11 000 (US) or 213 (SI).",
  cites: suctionSpecificSpeedMethod.cites,
  parameters: {
    speed,
    flow: quantity("flow", { about: "Flow through one eye at best efficiency", range: "above 0" }),
    NPSHR: quantity("head", { about: "NPSH required at best efficiency", range: "above 0" }),
  },
  answer: { kind: "number", name: "suction specific speed" },
  examples: [
    {
      args: [1180, 4500, 15],
      answer: 10385.3185,
      within: 1e-3,
      source: "course exercise on a cooling-water pump, worked apart from this product",
    },
  ],
  run: ({ speed, flow, NPSHR }, facts) =>
    suctionSpecificSpeed({ speed, flow, npshRequired: NPSHR, convention: conventionOf(facts) }),
});

interface StatedThickness {
  readonly viscosity: StatedViscosity | null;
  readonly SG: number;
  readonly liquid: Liquid | null;
  readonly temperature: number;
}

/** How thick and how heavy a liquid is: as stated, or by its name. */
function thickness({
  viscosity,
  SG,
  liquid,
  temperature,
}: StatedThickness): Result<{ readonly kinematicViscosity: number; readonly specificGravity: number }> {
  if (viscosity !== null) {
    const { kind, value } = viscosity;
    const kinematicViscosity = kind === "kinematic" ? value : value / (SG * SPECIFIC_GRAVITY_REFERENCE);
    return succeed({ kinematicViscosity, specificGravity: SG });
  }
  if (liquid === null) {
    return fail([{ code: "left-out", kind: "error", subject: "viscosity", suggestions: ['"120 cSt"', "the liquid"] }]);
  }
  return andThen(liquid.at(temperature), (state) =>
    succeed({
      kinematicViscosity: kinematicViscosityOf(state),
      specificGravity: state.density / SPECIFIC_GRAVITY_REFERENCE,
    }),
  );
}

export const VISCOUSCURVE = defineEntry({
  id: "VISCOUSCURVE",
  group: "Pump",
  summary: "Curve of a pump corrected for a viscous liquid, as a table",
  method:
    "ANSI/HI 9.6.7 with B from the best efficiency point of the curve, worked out in m³/h, m, cSt and rpm whatever the units; the constant the standard prints for US units gives a B 0.40 % lower. Flow and efficiency are corrected by one ratio each, head by a ratio that falls with flow; the shutoff head stays. The curve is that of one stage with water and needs efficiency or power. The best efficiency flow is that of the highest efficiency given. Newtonian liquids, radial impellers (specific speed up to 60, N_s 3100), 1 to 4000 cSt, and B below 40, above which it refuses. A liquid no thicker than water at its freezing point (1.8 cSt) changes nothing, and none where B is 1 or less. Speed and trim ratio say how the pump runs, which decides B; the points stay those of the curve's own speed and impeller, so that the other functions read them at the same ratios. Power is that at the curve's own speed with the liquid itself, by its SG relative to 998.2 kg/m³; the 367 of the standard is 0.2 % more. NPSHR rises by the standard's rule for a radial inlet, the more careful of its two (equation from memory).",
  cites: viscousCurveMethod.cites,
  parameters: {
    curve,
    speed,
    viscosity: { ...viscosity, fallback: null, whenLeftOut: "that of the liquid below" },
    SG,
    speedRatio,
    trimRatio,
    liquid: correctedFor("viscosity and SG say what it is"),
    temperature,
  },
  answer: {
    kind: "table",
    name: "viscous curve",
    columns: {
      flow: { name: "flow", quantity: "flow" },
      head: { name: "head", quantity: "head" },
      efficiency: { name: "efficiency", quantity: "ratio" },
      power: { name: "power", quantity: "power" },
      npshRequired: { name: "NPSHR", quantity: "head" },
    },
  },
  examples: [
    {
      args: [
        [
          ["flow", "head", "efficiency"],
          [0, 94, 0],
          [66, 89, 0.58],
          [88, 83.5, 0.655],
          [110, 77, 0.68],
          [132, 68, 0.66],
        ],
        2950,
        "120 cSt",
        0.9,
        null,
        null,
        null,
        null,
        "METRIC",
      ],
      part: [4, 1],
      answer: 72.21,
      within: 0.01,
      source: "worked example of ANSI/HI 9.6.7: 110 m³/h, 77 m, 2950 rpm, 120 cSt (other rows made up)",
    },
  ],
  run: ({ curve, speed, speedRatio, trimRatio, ...stated }) =>
    andThen(
      andThen(thickness(stated), (of) => viscousCurve({ curve, speed, speedRatio, trimRatio, ...of })),
      (points) =>
        succeed(
          points.map(({ flow, head, efficiency, power, npshRequired }) => ({
            flow,
            head,
            efficiency,
            power,
            npshRequired,
          })),
        ),
    ),
});

export const SHAFTPOWER = defineEntry({
  id: "SHAFTPOWER",
  group: "Pump",
  summary: "Power a pump takes at its shaft",
  method:
    "ρgQH/η with ρ = SG × 998.2 kg/m³, exact; the 3960 of the trade agrees within 0.04 %. An efficiency of 1 gives the hydraulic power. Size the driver for the maximum power on the curve and the heaviest liquid, not for the duty alone.",
  cites: shaftPowerMethod.cites,
  parameters: {
    flow: quantity("flow", { about: "Flow of the pump", range: "0 or more" }),
    head: quantity("head", { about: "Total head of the pump, of the liquid pumped", range: "0 or more" }),
    efficiency: share({
      ...LARGE,
      about: "Efficiency of the pump",
      example: '0.75, or "75 %"',
      range: "above 0, at most 100 %",
    }),
    SG,
  },
  answer: { kind: "quantity", name: "shaft power", quantity: "power" },
  examples: [
    {
      args: [100, 30, 0.75, 1, "SI"],
      answer: 39.15599212,
      within: 1e-7,
      source: "P = ρgQH/η worked apart from this product",
    },
    {
      args: [1188, 100, 1],
      answer: 30,
      within: 0.05,
      source: "water-operator training quiz: maximum flow of 30 hp at 100 ft, by the trade's 3960",
    },
  ],
  run: ({ SG, ...duty }) => shaftPower({ ...duty, specificGravity: SG }),
});
