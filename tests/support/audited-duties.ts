import type { CaseText, DutyText } from "../../shared/duty/duty-text.ts";
import { SAMPLE_DUTIES } from "../../shared/duty/samples.ts";
import { BYPASS_CURVE, bypass, otherPump } from "./bypass.ts";
import { dutyText, type Fields, QUARRY } from "./duty-of.ts";
import { filledUp } from "./hostile-places.ts";
import { STATION } from "./station-duty.ts";

const SAND = (SAMPLE_DUTIES[3] as (typeof SAMPLE_DUTIES)[number]).duty;
const CURVE = { ...BYPASS_CURVE, speed: "1180 rpm", impellerDiameter: "14 in" };
const OIL: Fields = { liquid: "SG 0.9, 150 cSt, vapor pressure 0.1 psia" };
const SLURRY: Fields = { solids: "20 %", solidsGravity: "2.65", medianSize: "0.1 mm" };
const UNLIKE = { pump: CURVE, otherPumps: [otherPump(CURVE)] };

function withFields(duty: DutyText, fields: Fields): DutyText {
  return { ...duty, fields: { ...duty.fields, ...fields } };
}

function cases(fieldsOf: (i: number) => CaseText["fields"]): readonly CaseText[] {
  return Array.from({ length: 12 }, (_, i) => ({ name: `case ${i + 1}`, hours: `${100 + i}`, fields: fieldsOf(i) }));
}

/** Rows whose ends lie over and under one another. */
const LEVELLED: DutyText["dischargeLine"] = [112, 140, 125, 150, 174].map((level, i, { length }) => ({
  pipe: "10in sch40",
  length: "300",
  fittings: i === length - 1 ? "1 exit" : "",
  level: `${level}`,
}));

const WET = cases((i) => ({
  flow: `${900 + 10 * i}`,
  sourceLevel: `${96 + i / 2}`,
  temperature: `${60 + i}`,
  deliveryPressure: `${1 + i / 2}`,
}));

const MOTOR: Fields = { driver: "motor", fuelPrice: "", tariff: "0.12" };

/** Cases that run at the speed that gives their flow, by an engine that is rated or not. */
const ENGINE: Fields = { driver: "engine", fuelPrice: "3.90 per US gal", speedControl: "variable" };
const RATED: Fields = { ...ENGINE, engineRating: "150" };
const WATER: Fields = { liquid: "water" };

const SERIES: Fields = {
  driver: "motor",
  pumpLevel: "90",
  deliveryLevel: "360",
  leastStaticHead: "255",
  greatestStaticHead: "270",
  pumpsRunning: "3",
  arrangement: "series",
};

/** Duties that together take nearly every branch of the calculation, for whoever goes through the formulas of their sheets. */
export const AUDITED: readonly { readonly name: string; readonly duty: DutyText }[] = [
  ...SAMPLE_DUTIES,
  { name: "the quarry, every box filled", duty: filledUp(QUARRY) },
  { name: "the quarry, every box filled, motors in series", duty: filledUp(QUARRY, SERIES) },
  { name: "the sand plant, every box filled", duty: filledUp(SAND, { pumpLevel: "5" }) },
  { name: "a station", duty: STATION },
  { name: "a thick liquid", duty: bypass({ ...OIL, pumpsRunning: "2" }, { pump: CURVE }) },
  { name: "a thick liquid, the quarry, every box filled", duty: filledUp(withFields(QUARRY, OIL)) },
  { name: "a thick liquid, unlike pumps", duty: bypass(OIL, UNLIKE) },
  { name: "a slurry, unlike pumps", duty: bypass(SLURRY, UNLIKE) },
  { name: "a thick slurry", duty: bypass({ ...OIL, ...SLURRY, pumpsRunning: "2" }, { pump: CURVE }) },
  { name: "a thick slurry, unlike pumps", duty: bypass({ ...OIL, ...SLURRY }, UNLIKE) },
  {
    name: "a thick liquid, unlike pumps in series along the line",
    duty: bypass(
      { ...OIL, arrangement: "series", flow: "1500", deliveryLevel: "680", stages: "2: level 620 ft, after row 1" },
      UNLIKE,
    ),
  },
  { name: "twelve cases over a line with levels", duty: { ...QUARRY, dischargeLine: LEVELLED, cases: WET } },
  {
    name: "twelve cases at their own speeds, thick, a motor",
    duty: {
      ...withFields(QUARRY, { ...OIL, ...MOTOR, speedControl: "variable" }),
      dischargeLine: LEVELLED,
      cases: WET,
    },
  },
  ...[
    { name: "water", liquid: WATER },
    { name: "a thick liquid", liquid: OIL },
    { name: "a slurry", liquid: { ...WATER, ...SLURRY } },
  ].flatMap(({ name, liquid }) =>
    [RATED, ENGINE].flatMap((engine) => {
      const by = `${name}, twelve cases of speeds asked for, ${engine === RATED ? "an engine" : "an engine not rated"}`;
      const high = cases((i) => ({ flow: `${1800 + 20 * i}`, altitude: `${100 * i}` }));
      return [
        { name: by, duty: { ...withFields(QUARRY, { ...liquid, ...engine }), dischargeLine: LEVELLED, cases: WET } },
        { name: `${by}, unlike pumps`, duty: bypass({ ...liquid, ...engine }, { ...UNLIKE, cases: high }) },
      ];
    }),
  ),
  {
    name: "twelve cases of a slurry",
    duty: { ...SAND, cases: cases((i) => ({ flow: `${140 + i}` })) },
  },
  {
    name: "twelve cases, unlike pumps, thick and water",
    duty: bypass(OIL, {
      ...UNLIKE,
      cases: cases((i) => ({
        flow: `${2500 + 10 * i}`,
        temperature: `${60 + i}`,
        ...(i % 2 === 0 ? {} : { liquid: "water" }),
      })),
    }),
  },
  {
    name: "unlike pumps in series along the line",
    duty: bypass(
      { arrangement: "series", flow: "1500", deliveryLevel: "680", stages: "2: level 620 ft, after row 1" },
      UNLIKE,
    ),
  },
  {
    name: "an engine without a pump",
    duty: dutyText({ driver: "engine", engineRating: "150", tankVolume: "100", pumpLevel: "8" }),
  },
];
