import { NOT_VERIFIED } from "../../../src/basis/citation.ts";
import { andThen, succeed } from "../../../src/basis/result.ts";
import { systemCurve, systemCurveMethod } from "../../../src/head/system-curve.ts";
import { totalHead, totalHeadMethod } from "../../../src/head/total-head.ts";
import { standardAtmosphere } from "../../../src/site/atmosphere.ts";
import { greatestSuctionLift, greatestSuctionLiftMethod } from "../../../src/suction/greatest-suction-lift.ts";
import { suctionState, suctionStateMethod } from "../../../src/suction/suction-state.ts";
import { defineEntry } from "../entry.ts";
import { quantity } from "../parameter.ts";
import { ROWS_IN_WORDS } from "../parameters/line.ts";
import { lineOrNothing } from "../parameters/line-or-nothing.ts";
import { liquid, temperature } from "../parameters/liquid.ts";
import { gaugeOf, surfacePressure } from "../parameters/surface-pressure.ts";

export const flow = quantity("flow", { about: "Flow through the line", range: "0 or more" });
const staticHead = quantity("head", {
  about: "Level at the destination less level at the source: liquid surfaces, or the centreline of a free outlet",
  range: "negative where the liquid runs downhill",
});
export const suctionLine = lineOrNothing("The suction line, from the liquid to the pump");
export const dischargeLine = lineOrNothing(
  "The discharge line, from the pump to its outlet; one exit in the last row, free or submerged alike",
);
export const altitude = quantity("elevation", {
  about: "Height of the site above sea level; negative below it",
  whenLeftOut: { value: 0, shown: "0, sea level" },
});
const open = { value: 0, shown: "0, open to the air" };
export const deliveryPressure = quantity("gaugePressure", {
  about: "Gauge pressure at the destination",
  range: "no more vacuum than one standard atmosphere",
  whenLeftOut: open,
});
const LIFT = {
  about: "Height of the pump datum above the liquid surface: positive for a lift, negative for a flooded suction",
} as const;
/** Left out where nobody asks for NPSH. */
export const openLift = quantity("head", {
  ...LIFT,
  whenLeftOut: { value: null, shown: "not stated: NPSH is not judged" },
});

export const TDH = defineEntry({
  id: "TDH",
  group: "System and suction",
  summary: "Total dynamic head a pump must add at a flow",
  method: `Static head, plus the difference of gauge pressures at the two ends over ρg, plus friction and fittings of both lines (Darcy–Weisbach at the Reynolds number of the flow). The velocity head at the outlet is lost once, free or submerged, and counts where the discharge line lists one exit; none or two bring a caution, and so does an exit in the suction line. A line without filled rows is taken as lossless, with a caution. ${ROWS_IN_WORDS} Lay-flat hose in the suction line brings a warning.`,
  cites: totalHeadMethod.cites,
  parameters: {
    flow,
    staticHead,
    suctionLine,
    dischargeLine,
    sourcePressure: quantity("gaugePressure", {
      about: "Gauge pressure on the liquid at the source; negative for a vacuum",
      range: "no more vacuum than one standard atmosphere",
      whenLeftOut: open,
    }),
    deliveryPressure,
    liquid,
    temperature,
  },
  answer: { kind: "quantity", name: "total dynamic head", quantity: "head" },
  examples: [
    {
      args: [
        150,
        14,
        [["ID 303.18 mm rough 0.02 mm", 15, "K 2.1"]],
        [["ID 303.18 mm rough 0.01 mm", 1600, "K 8, 1 exit"]],
        null,
        null,
        "999.70154017 kg/m3, 1.30590142065 cP",
        null,
        "SI",
      ],
      answer: 32.5057183175,
      within: 1e-6,
      source: "energy equation with the Colebrook factor solved to 40 digits, worked apart from this product",
    },
    {
      args: [
        100,
        400,
        [["ID 3.068 in rough 0.0018 in", "0.001 ft", "K 0"]],
        [["ID 3.068 in rough 0.0018 in", 500, "K 28.6292862396, 1 exit"]],
        null,
        null,
        "62.298 lb/ft3, 0.95 cP",
      ],
      answer: 421,
      within: 1,
      source: "Technical Paper 410, example 7-15 (421 ft printed, with the friction factor rounded)",
    },
  ],
  run: ({ liquid, temperature, ...system }) =>
    andThen(liquid.at(temperature), (state) =>
      andThen(totalHead({ ...system, liquid: state }), ({ total }) => succeed(total)),
    ),
});

export const SYSTEMCURVE = defineEntry({
  id: "SYSTEMCURVE",
  group: "System and suction",
  summary: "Head the system requires from zero flow to the maximum, as a table",
  method: `Total head at evenly spaced flows, both ends included. The friction factor is worked out again at each flow, not scaled with the square of one. ${ROWS_IN_WORDS}`,
  cites: systemCurveMethod.cites,
  parameters: {
    staticHead,
    suctionLine,
    dischargeLine,
    maximumFlow: quantity("flow", { about: "Flow of the last row of the table", range: "above 0" }),
    numberOfPoints: quantity("ratio", {
      about: "How many rows, zero and the maximum flow among them",
      example: "11",
      range: "a whole number from 2 to 200",
      whenLeftOut: { value: 11, shown: "11" },
    }),
    pressureDifference: quantity("pressureDifference", {
      about: "Pressure at the destination less pressure at the source",
      whenLeftOut: { value: 0, shown: "0, both open to the air" },
    }),
    liquid,
    temperature,
  },
  answer: {
    kind: "table",
    name: "system curve",
    columns: {
      flow: { name: "flow", quantity: "flow" },
      head: { name: "head", quantity: "head" },
    },
  },
  examples: [
    {
      args: [
        14,
        [["ID 303.18 mm rough 0.02 mm", 15, "K 2.1"]],
        [["ID 303.18 mm rough 0.01 mm", 1600, "K 8, 1 exit"]],
        300,
        3,
        null,
        "999.70154017 kg/m3, 1.30590142065 cP",
        null,
        "SI",
      ],
      part: [2, 1],
      answer: 32.5057183175,
      within: 1e-6,
      source: "energy equation with the Colebrook factor solved to 40 digits, worked apart from this product",
    },
  ],
  run: ({ maximumFlow: greatestFlow, numberOfPoints: points, liquid, temperature, ...system }) =>
    andThen(liquid.at(temperature), (state) => systemCurve({ ...system, greatestFlow, points, liquid: state })),
});

export const NPSHA = defineEntry({
  id: "NPSHA",
  group: "System and suction",
  summary: "Net positive suction head available at the pump datum",
  method: `Absolute pressure on the liquid surface less vapour pressure, over ρg, less the suction lift and the head lost in the suction line. The pressure of the air is that of the standard atmosphere at the site's altitude; weather takes off up to 3 kPa (0.3 m). A source pressure written as absolute, “12 psia”, is counted from that air; a gauge pressure of one atmosphere is doubted. The velocity head at the inlet belongs to NPSHA and is not taken off. ${ROWS_IN_WORDS} Ask at the maximum flow the pump can reach, the lowest level, the hottest liquid. A liquid described without a vapour pressure is refused.`,
  cites: suctionStateMethod.cites,
  parameters: {
    flow,
    suctionLift: quantity("head", LIFT),
    suctionLine,
    altitude,
    sourcePressure: surfacePressure,
    liquid,
    temperature,
  },
  answer: { kind: "quantity", name: "NPSH available", quantity: "head" },
  examples: [
    {
      args: [
        "0.5 ft3/s",
        25,
        [["ID 4 in rough 0 in", "0.001 ft", "K 11.7588"]],
        null,
        5,
        "62.364 lb/ft3, 1.1 cP, pv 0.256 psi",
      ],
      answer: 13.9,
      within: 0.05,
      source: "Technical Paper 410, example 7-32 (the 6 ft lost in the line entered as a coefficient)",
    },
  ],
  run: ({ sourcePressure, liquid, temperature, altitude, ...suction }) =>
    andThen(standardAtmosphere(altitude), (atmosphericPressure) =>
      andThen(liquid.at(temperature), (state) =>
        andThen(
          suctionState({
            ...suction,
            surfacePressure: gaugeOf(sourcePressure, atmosphericPressure),
            atmosphericPressure,
            liquid: state,
          }),
          ({ npshAvailable }) => succeed(npshAvailable),
        ),
      ),
    ),
});

export const MAXLIFT = defineEntry({
  id: "MAXLIFT",
  group: "System and suction",
  summary: "Maximum static suction lift from an open surface that leaves the pump its NPSH and a margin",
  method: `Atmospheric less vapour pressure, over ρg, less the head lost in the suction line, NPSHR and the margin. Where no margin is given, NPSH available is kept at least 1.0 m (3.28 ft) above NPSHR and at least 1.3 times it. ${ROWS_IN_WORDS} The answer is by NPSH alone: where it is more than priming reaches in practice (7.6 m or 25 ft at sea level, less with altitude) a caution states that limit. A negative answer means the pump must be flooded by so much.`,
  cites: greatestSuctionLiftMethod.cites,
  parameters: {
    flow,
    suctionLine,
    NPSHR: quantity("head", {
      about: "NPSH the pump requires at this flow (3 % head drop)",
      range: "0 or more",
    }),
    NPSHMargin: quantity("head", {
      about: "NPSH margin to keep over NPSHR",
      range: "0 or more",
      whenLeftOut: { value: null, shown: "the greater of 1.0 m (3.28 ft) and 0.3 × NPSHR" },
    }),
    altitude,
    liquid,
    temperature,
  },
  answer: { kind: "quantity", name: "maximum suction lift", quantity: "head" },
  examples: [
    {
      args: [
        "0.5 ft3/s",
        [["ID 4 in rough 0 in", "0.001 ft", "K 20"]],
        15,
        0,
        null,
        "62.22 lb/ft3, 0.8 cP, pv 0.5069 psi",
      ],
      answer: 7.65,
      within: 0.02,
      source: `Munson, Young & Okiishi, Fundamentals of Fluid Mechanics, example 12.3 (${NOT_VERIFIED})`,
    },
  ],
  run: ({ liquid, temperature, altitude, NPSHR, NPSHMargin, ...suction }) =>
    andThen(standardAtmosphere(altitude), (atmosphericPressure) =>
      andThen(liquid.at(temperature), (state) =>
        greatestSuctionLift({
          ...suction,
          npshRequired: NPSHR,
          npshMargin: NPSHMargin,
          atmosphericPressure,
          liquid: state,
        }),
      ),
    ),
});
