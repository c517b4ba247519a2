import { andThen, succeed } from "../../../src/basis/result.ts";
import { gaugeHead, gaugeHeadMethod } from "../../../src/field/gauge-head.ts";
import { timedFlow, timedFlowMethod } from "../../../src/field/timed-flow.ts";
import { readTable } from "../../tables/read-table.ts";
import { defineEntry } from "../entry.ts";
import { quantity, type RangeParameter } from "../parameter.ts";
import { tapBore } from "../parameters/bore.ts";
import { instrument } from "../parameters/field-readings.ts";
import { liquid, temperature } from "../parameters/liquid.ts";

const INSTRUMENT_LEFT_OUT = "a bourdon gauge good to 1 % of a span of twice the reading (house choice)";

const height = (about: string) => quantity("length", { about, whenLeftOut: { value: 0, shown: "0, at the datum" } });
const tapHeight = (side: string) =>
  quantity("length", {
    about: `Height of the ${side} tap over the datum, where the line to its gauge is full of air and not of liquid`,
    whenLeftOut: { value: null, shown: "the line is full of liquid: the height of the gauge counts" },
  });

export const FIELDHEAD = defineEntry({
  id: "FIELDHEAD",
  group: "Pump",
  summary: "Head of a running pump from its gauges, with how far it may be off",
  method:
    "(p_d − p_s)/(ρ g) + (y_d − y_s) + (V_d² − V_s²)/2g + losses between the taps and the flanges; pressures over the atmosphere, a vacuum negative, velocities in the pipes at the taps, heights over any one datum, such as the shaft. A gauge whose line is full of liquid counts with its own height; one whose line is full of air, as vacuum lines usually are, with that of its tap. Without a suction gauge leave its reading, size and instrument out: the height is then that of the open surface, and the losses are those of the suction line. The uncertainty is the root of the sum of squares of the readings' own, at two standard deviations, taken to be independent (JCGM 100). Taps belong two bores from the flange, on a straight run. A running pump has turning parts and pressure behind its taps: guard the coupling, open the cocks slowly, and leave work on it to those trained for it and to local rules.",
  cites: gaugeHeadMethod.cites,
  parameters: {
    flow: quantity("flow", { about: "Flow measured", range: "0 or more" }),
    dischargeReading: quantity("gaugePressure", {
      about: "Reading of the discharge gauge",
      range: "not below absolute zero",
    }),
    suctionReading: quantity("gaugePressure", {
      about: "Reading of the suction gauge; a vacuum is negative",
      example: '-3, or "6.2 inHg vac"',
      range: "not below absolute zero",
      whenLeftOut: { value: 0, shown: "0, the open surface" },
    }),
    dischargeHeight: height("Height of the discharge gauge over the datum"),
    suctionHeight: height("Height of the suction gauge, or of the open surface, over the same datum"),
    dischargeSize: tapBore(
      "Pipe at the discharge tap, or its bore",
      "not known: velocities are left out, which is said",
    ),
    suctionSize: tapBore("Pipe at the suction tap, or its bore", "an open surface, which has no velocity"),
    dischargeTapHeight: tapHeight("discharge"),
    suctionTapHeight: tapHeight("suction"),
    lossToFlanges: quantity("head", {
      about: "Head lost between the taps and the flanges of the pump, both sides together",
      range: "0 or more",
      whenLeftOut: { value: 0, shown: "none" },
    }),
    liquid,
    temperature,
    flowMeter: instrument(
      "flow",
      "What measured the flow, or how far it may be off",
      "good to 5 %, a clamp-on meter (house choice)",
    ),
    dischargeGauge: instrument(
      "pressure",
      "The discharge gauge and its span, or how far it may be off",
      INSTRUMENT_LEFT_OUT,
    ),
    suctionGauge: instrument(
      "pressure",
      "The suction gauge and its span, or how far it may be off",
      INSTRUMENT_LEFT_OUT,
    ),
    heightTolerance: quantity("length", {
      about: "How far the difference of heights may be off",
      range: "0 or more",
      whenLeftOut: { value: null, shown: "0.1 ft (30 mm), a tape (common practice)" },
    }),
  },
  answer: {
    kind: "record",
    name: "head by gauges",
    columns: {
      head: { name: "head", quantity: "head" },
      uncertainty: { name: "may be off by", quantity: "head" },
      pressurePart: { name: "of pressures", quantity: "head" },
      heightPart: { name: "of heights", quantity: "head" },
      velocityPart: { name: "of velocities", quantity: "head" },
      suctionVelocity: { name: "suction velocity", quantity: "velocity" },
      dischargeVelocity: { name: "discharge velocity", quantity: "velocity" },
    },
  },
  examples: [
    {
      args: [70, 80, 5, 6, 1, 1, 1.5, null, null, null, "SG 1.0007, 1 cP"],
      part: [1, 0],
      answer: 188.45,
      within: 0.15,
      source: "Nelik, Pumps & Systems (2012, 2019): 75 psi, 5 ft of heights, 1 and 1.5 in pipe; 173 ft by gauges alone",
    },
    {
      args: [
        "20000 L/min",
        "75 kPa",
        "-127 mmHg",
        0.45,
        -0.075,
        "350 mm",
        "400 mm",
        null,
        null,
        null,
        "1000 kg/m3, 1 cP",
        null,
        null,
        null,
        null,
        null,
        "SI",
      ],
      part: [1, 0],
      answer: 10.15,
      within: 0.01,
      source: "a board examination's problem on a pump test: 10.15 m (its g 9.81, mercury 13.6)",
    },
  ],
  run: ({ liquid, temperature, flow, flowMeter, lossToFlanges, heightTolerance, ...given }) =>
    andThen(liquid.at(temperature), ({ density }) =>
      gaugeHead({
        flow,
        flowInstrument: flowMeter,
        lossToFlanges,
        heightUncertainty: heightTolerance,
        density,
        suction: {
          pressure: given.suctionReading,
          height: given.suctionHeight,
          airTapHeight: given.suctionTapHeight,
          bore: given.suctionSize,
          instrument: given.suctionGauge,
        },
        discharge: {
          pressure: given.dischargeReading,
          height: given.dischargeHeight,
          airTapHeight: given.dischargeTapHeight,
          bore: given.dischargeSize,
          instrument: given.dischargeGauge,
        },
      }),
    ),
});

const times: RangeParameter<readonly number[]> = {
  takes: "range",
  about: "Time in which it filled, or a column of them",
  quantity: "duration",
  example: "9, or a column 9, 8, 7",
  read: (cells, { name, units }) =>
    andThen(
      readTable(
        cells.flat().map((cell) => [cell]),
        { time: { name: "time", also: ["t", "duration"], quantity: "duration", needed: true } },
        { place: { name }, units, order: ["time"] },
      ),
      ({ rows }) => succeed(rows.map(({ values }) => values.time)),
    ),
};

export const TIMEDFLOW = defineEntry({
  id: "TIMEDFLOW",
  group: "Pump",
  summary: "Flow by the time in which a vessel of known volume fills",
  method:
    "The mean of volume over time of all times, times the outlets that run alike and of which one was tried. Good to some 3 % with times of 10 s and more (common practice).",
  cites: timedFlowMethod.cites,
  parameters: {
    vesselVolume: quantity("volume", { about: "Volume of the vessel", range: "above 0" }),
    times,
    outlets: quantity("ratio", {
      about: "How many equal outlets run together",
      example: "46",
      range: "a whole number from 1 to 100 000",
      whenLeftOut: { value: 1, shown: "1" },
    }),
  },
  answer: { kind: "quantity", name: "flow", quantity: "flow" },
  examples: [
    {
      args: [10, [[9], [8], [7]], 46, "SI"],
      answer: 58,
      within: 0.2,
      source:
        "NSW Department of Primary Industries, Primefact 1410 (2015): 10 L in 9, 8 and 7 s, 46 sprinklers, 58 L/s",
    },
  ],
  run: ({ vesselVolume: volume, ...test }) => timedFlow({ ...test, volume }),
});
