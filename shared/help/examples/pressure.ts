import type { Uses } from "./example.ts";
import { DISCHARGE, OVER_THE_HILL } from "./ranges.ts";

export const PRESSURE_USES: Uses = {
  LINEPRESSURES: {
    examples: [
      {
        asks: "The pressures the line over the hill has to stand, running and against a shut valve",
        args: [1200, OVER_THE_HILL, 110, 245, 256],
      },
    ],
    see: ["PIPERATING", "GRADELINE", "SURGE"],
  },
  FLANGERATING: {
    examples: [
      { asks: "Ductile iron, Class 150, at 70 °F", args: ["ductile iron", "Class 150", 70] },
      { asks: "Carbon steel, PN16, at 80 °C", args: ["carbon steel", "PN16", 80, "METRIC"] },
    ],
    see: ["FLANGECLASS", "FLANGECHECK", "FLANGERATINGS"],
  },
  FLANGECLASS: {
    examples: [
      { asks: "The lowest class of ductile iron that holds 255 psi at 70 °F", args: ["ductile iron", 255, 70] },
      { asks: "The lowest class of carbon steel that holds 14 bar at 60 °C", args: ["carbon steel", 14, 60, "METRIC"] },
    ],
    see: ["FLANGERATING", "FLANGECHECK", "NOZZLECLASSES"],
  },
  FLANGECHECK: {
    examples: [{ asks: "A Class 150 flange of ductile iron at 180 psi", args: ["ductile iron", "Class 150", 180, 70] }],
    see: ["FLANGECLASS", "FLANGERATING", "BOLTTORQUE"],
  },
  SUCTIONPRESSURE: {
    examples: [{ asks: "A tank 22 ft above the pump, under 5 psi", args: [132, 110, 5] }],
    see: ["NOZZLEPRESSURE", "NOZZLECLASSES"],
  },
  NOZZLEPRESSURE: {
    examples: [
      {
        asks: "The second of two pumps in series, 140 ft of head each, 5 psi at the first suction",
        args: [5, 140, 1, 2],
      },
    ],
    see: ["NOZZLECLASSES", "SUCTIONPRESSURE", "FLANGECLASS"],
  },
  FLANGEDIMENSIONS: {
    examples: [
      { asks: "8 in Class 150, steel", args: ["8", "Class 150", "carbon steel"] },
      { asks: "DN200 PN16, in millimetres", args: ["DN200", "PN16", "carbon steel", "METRIC"] },
    ],
    see: ["BOLTTORQUE", "STUDLENGTH"],
  },
  SURGE: {
    examples: [
      { asks: "A flow of 5.5 ft/s that stops at once in 10 in HDPE DR17", args: [5.5, "10in HDPE DR17 PE4710"] },
      { asks: "The same in 10 in schedule 40 steel", args: [5.5, "10in sch40"] },
    ],
    see: ["LINESURGE", "LINEPRESSURES", "PIPERATING"],
  },
  PIPERATING: {
    examples: [
      { asks: "10 in HDPE DR17 of PE4710 at 73 °F", args: ["10in HDPE DR17 PE4710", 73] },
      { asks: "8 in schedule 40, A53 B electric-welded", args: ["8in sch40", 70, null, "A53 B ERW"] },
    ],
    see: ["LINEPRESSURES", "SURGE", "COLLAPSEPRESSURE"],
  },
  LINESURGE: {
    examples: [{ asks: "1,200 US gpm that stop at once, run by run", args: [1200, DISCHARGE] }],
    see: ["SURGE", "LINEPRESSURES"],
  },
  FLANGERATINGS: {
    examples: [{ asks: "Every rating there is", args: [] }],
    see: ["FLANGERATING", "FLANGECLASS"],
  },
  NOZZLECLASSES: {
    examples: [
      {
        asks: "Two equal pumps in series, 5 psi at the first suction, Class 150 offered",
        args: [
          [
            ["pump", "maximum head", "suction flange", "discharge flange"],
            ["first", 140, "NPS 8", "NPS 6"],
            ["second", 140, "NPS 8", "NPS 6"],
          ],
          5,
          "ductile iron",
          "150",
        ],
      },
    ],
    see: ["NOZZLEPRESSURE", "FLANGECLASS", "BOOSTERS"],
  },
  BOLTTORQUE: {
    examples: [
      { asks: "8 in Class 150 flange at 150 psi with a fibre gasket", args: ["8", "Class 150", 150, "fibre 1/16 in"] },
      {
        asks: "DN200 PN16 at 10 bar with a rubber gasket, class 8.8 bolts, lubricated",
        args: [
          "DN200",
          "PN16",
          10,
          "EPDM 75 A",
          "carbon steel",
          "8.8",
          0.16,
          null,
          null,
          null,
          null,
          null,
          null,
          "METRIC",
        ],
      },
    ],
    see: ["STUDLENGTH", "FLANGEDIMENSIONS", "FLANGECHECK"],
  },
  STUDLENGTH: {
    examples: [{ asks: "Two flanges of 1.125 in, a 1/16 in gasket, 3/4 in studs", args: [1.125, 1.125, 0.75, 0.0625] }],
    see: ["BOLTTORQUE", "FLANGEDIMENSIONS"],
  },
};
