import { NOT_VERIFIED } from "../../../src/basis/citation.ts";
import type { UnitSetName } from "../../../src/basis/quantities.ts";
import { andThen, succeed } from "../../../src/basis/result.ts";
import { operatingRegion, operatingRegionMethod } from "../../../src/pump/operating-region.ts";
import { pumpCurveMethod } from "../../../src/pump/pump-curve-point.ts";
import { bestPointOf } from "../../../src/pump/pump-reading.ts";
import { runningPump } from "../../../src/pump/running-pump.ts";
import { US_PER_SI } from "../../../src/pump/specific-speed.ts";
import { defineEntry } from "../entry.ts";
import { quantity } from "../parameter.ts";
import { curve } from "../parameters/curve.ts";

export const BESTEFFICIENCYPOINT = defineEntry({
  id: "BESTEFFICIENCYPOINT",
  group: "Pump",
  summary: "Flow, head and efficiency of a pump at its best efficiency point (BEP)",
  method:
    "The point of the highest efficiency given; where the curve gives power alone, that of the highest ρgQH/P along it. At another speed or trim flow goes with the ratio and head with its square, and efficiency loses a point for each 5 % of trim below 90 %.",
  cites: pumpCurveMethod.cites,
  parameters: {
    curve,
    speedRatio: quantity("ratio", {
      about: "Speed of the pump over the speed of the curve",
      example: "0.9",
      range: "0.2 to 2.5",
      whenLeftOut: { value: 1, shown: "1, the speed of the curve" },
    }),
    trimRatio: quantity("ratio", {
      about: "Diameter of the trimmed impeller over that of the curve",
      example: "0.95",
      range: "0.75 to 1",
      whenLeftOut: { value: 1, shown: "1, the impeller of the curve" },
    }),
  },
  answer: {
    kind: "record",
    name: "best efficiency point",
    columns: {
      flow: { name: "flow", quantity: "flow" },
      head: { name: "head", quantity: "head" },
      efficiency: { name: "efficiency", quantity: "ratio" },
    },
  },
  examples: [
    {
      args: [
        [
          ["flow", "head", "efficiency"],
          [0, 140, 0],
          [400, 118, 0.77],
          [500, 105, 0.78],
          [600, 88, 0.73],
        ],
        0.9,
      ],
      part: [1, 0],
      answer: 450,
      within: 1e-9,
      source: "by hand: the highest efficiency is that of 500 gpm, and flow goes with the speed: 500 × 0.9",
    },
  ],
  run: (stated) =>
    andThen(runningPump(stated), (pump) =>
      andThen(bestPointOf(pump), ({ flow, head, efficiency }) => succeed({ flow, head, efficiency })),
    ),
});

export const OPERATINGREGION = defineEntry({
  id: "OPERATINGREGION",
  group: "Pump",
  summary: "Preferred operating region of a pump and its minimum flows, in % of best efficiency flow",
  method:
    "70 to 120 % up to a specific speed of N_s 4500 (n_s 87), 80 to 115 % up to N_s 9000 (n_s 174), 90 to 110 % above. Summaries of the standard print 80 to 110 and 80 to 120 % for the middle one; where the last begins is a choice of this product. Without a specific speed, what pumps of the first two kinds share. Where no maker states a minimum continuous flow it is doubted below 30 % and broken below 10 %, above N_s 4500 below 50 and 30 %: a choice of this product. The maker's own region governs.",
  cites: operatingRegionMethod.cites,
  parameters: {
    specificSpeed: quantity("ratio", {
      about: "Specific speed at best efficiency, as SPECIFICSPEED gives it: rpm, US gpm, ft with US, rpm, m³/s, m else",
      example: "2030",
      range: "above 0",
      whenLeftOut: { value: null, shown: "not known" },
    }),
  },
  answer: {
    kind: "record",
    name: "operating region",
    columns: {
      least: { name: "preferred from, % of BEP flow" },
      most: { name: "preferred to, % of BEP flow" },
      doubted: { name: "doubted below, % of BEP flow" },
      continuous: { name: "not continuous below, % of BEP flow" },
    },
  },
  examples: [
    {
      args: [2030],
      part: [1, 1],
      answer: 120,
      within: 1e-9,
      source: `ANSI/HI 9.6.3 (${NOT_VERIFIED}): 70 to 120 % of best efficiency flow for low specific speeds`,
    },
  ],
  run: ({ specificSpeed }, { unitSet }) =>
    andThen(operatingRegion(inSI(specificSpeed, unitSet)), ({ least, most, doubted, continuous }) =>
      succeed({
        least: percent(least),
        most: percent(most),
        doubted: percent(doubted),
        continuous: percent(continuous),
      }),
    ),
});

function percent(share: number): number {
  return Math.round(100 * share);
}

/** A specific speed, of the suction too, goes by the units of the set: US gpm and ft, or m³/s and m. */
export function inSI(specificSpeed: number | null, unitSet: UnitSetName): number | undefined {
  if (specificSpeed === null) return undefined;
  return unitSet === "US" ? specificSpeed / US_PER_SI : specificSpeed;
}
