import type { Uses } from "./example.ts";
import { DISCHARGE, METRIC_SUCTION, OVER_THE_HILL, PUMP, SUCTION, SYSTEM } from "./ranges.ts";

export const SYSTEM_USES: Uses = {
  PRESSUREHEAD: {
    examples: [
      { asks: "60 psi of water in feet", args: [60, "water", 60] },
      { asks: "4 bar of sea water in metres", args: ["4 bar", "sea water 35 g/kg", 15, "SI"] },
    ],
    see: ["HEADPRESSURE", "TDH"],
  },
  HEADPRESSURE: {
    examples: [{ asks: "231 ft of water as a gauge pressure", args: [231, "water", 60] }],
    see: ["PRESSUREHEAD", "NOZZLEPRESSURE"],
  },
  TDH: {
    examples: [
      {
        asks: "1,200 US gpm from a sump to a pond 76 ft above it, through 30 ft of hose and 1,820 ft of line",
        args: [1200, 76, SUCTION, DISCHARGE, null, null, "water", 60],
      },
    ],
    see: ["LINEHEAD", "SYSTEMCURVE", "NPSHA", "OPERATINGPOINT"],
  },
  SYSTEMCURVE: {
    examples: [
      {
        asks: "What the two lines ask for up to 2,000 US gpm, in six rows",
        args: [76, SUCTION, DISCHARGE, 2000, 6],
      },
    ],
    see: ["TDH", "OPERATINGPOINT", "ROUTECURVE"],
  },
  NPSHA: {
    examples: [
      {
        asks: "1,200 US gpm with the pump 12 ft above the water, 850 ft above the sea, water at 60 °F",
        args: [1200, 12, SUCTION, 850, null, "water", 60],
      },
      {
        asks: "60 L/s with the pump 1.5 m below the surface of a tank at 70 °C",
        args: [60, -1.5, METRIC_SUCTION, 200, null, "water", 70, "SI"],
      },
    ],
    see: ["NPSHMARGIN", "MAXLIFT", "PUMPNPSHR", "VAPORPRESSURE"],
  },
  NPSHMARGIN: {
    examples: [{ asks: "Margin over an NPSHR of 12.2 ft for dewatering", args: [12.2, "dewatering"] }],
    see: ["NPSHA", "PUMPNPSHR", "MAXLIFT"],
  },
  MAXLIFT: {
    examples: [
      {
        asks: "How far a pump with an NPSHR of 12.2 ft may stand above the water at 850 ft, with a margin of 3 ft",
        args: [1200, SUCTION, 12.2, 3, 850, "water", 60],
      },
    ],
    see: ["NPSHA", "NPSHLIMITFLOW", "PRIMINGLIFT"],
  },
  NPSHLIMITFLOW: {
    examples: [
      {
        asks: "The flow at which a 16 ft lift leaves the pump no NPSH to spare, with a margin of 3 ft",
        args: [PUMP, 16, SUCTION, 3, 850, null, "water", 60],
      },
    ],
    see: ["NPSHA", "MAXLIFT", "PUMPNPSHR"],
  },
  SUBMERGENCE: {
    examples: [{ asks: "1,200 US gpm into a 14 in bell with 4 ft of water over it", args: [1200, 14, 4] }],
    see: ["SUMPVOLUME", "WORKINGVOLUME"],
  },
  SUMPVOLUME: {
    examples: [{ asks: "A sump of 15 ft by 12 ft between 8 ft and 3 ft", args: ["15 ft x 12 ft", 8, 3] }],
    see: ["DRAWDOWNTIME", "WORKINGVOLUME", "PUMPCYCLE"],
  },
  DRAWDOWNTIME: {
    examples: [
      {
        asks: "Drawing a flooded pit of 200 ft by 150 ft down by 6 ft while 300 US gpm come in",
        args: ["200 ft x 150 ft", 6, 0, PUMP, SYSTEM, 300],
      },
    ],
    see: ["SUMPVOLUME", "DROPTEST", "OPERATINGPOINT"],
  },
  DROPTEST: {
    examples: [
      { asks: "A wet well of 15 ft by 12 ft that falls 3 ft in 4 minutes", args: ["15 ft x 12 ft", 3, 0, "4 min"] },
    ],
    see: ["TIMEDFLOW", "FIELDCHECK", "DRAWDOWNTIME"],
  },
  WORKINGVOLUME: {
    examples: [{ asks: "1,200 US gpm and no more than 6 starts an hour", args: [1200, 6] }],
    see: ["PUMPCYCLE", "SUMPVOLUME"],
  },
  PUMPCYCLE: {
    examples: [{ asks: "3,000 US gal between the floats, 1,200 US gpm out, 400 US gpm in", args: [3000, 1200, 400] }],
    see: ["WORKINGVOLUME", "SUMPVOLUME"],
  },
  GRADELINE: {
    examples: [
      {
        asks: "The pressure along a line over a hill at 1,200 US gpm, the energy line starting at 245 ft",
        args: [1200, OVER_THE_HILL, 245, "water", 60, 110],
      },
    ],
    see: ["FILLHEAD", "SIPHONCREDIT", "LINEPRESSURES", "AIRVALVES"],
  },
  FILLHEAD: {
    examples: [
      {
        asks: "The head that carries 600 US gpm over a summit at 212 ft while the line fills",
        args: [600, 98, SUCTION, OVER_THE_HILL, 110],
      },
    ],
    see: ["SIPHONCREDIT", "FILLTIME", "ROUTECURVE"],
  },
  SIPHONCREDIT: {
    examples: [
      {
        asks: "Whether the fall from the summit to the pond may be counted on",
        args: [1200, 98, SUCTION, OVER_THE_HILL, 110, "air valve", "free"],
      },
    ],
    see: ["FILLHEAD", "ROUTECURVE", "GRADELINE"],
  },
  ROUTECURVE: {
    examples: [
      {
        asks: "What the line over the hill requires up to 1,600 US gpm, the fall beyond the summit not counted on",
        args: [98, SUCTION, OVER_THE_HILL, 110, 1600, 5, "no"],
      },
    ],
    see: ["SYSTEMCURVE", "SIPHONCREDIT", "OPERATINGPOINT"],
  },
  FILLTIME: {
    examples: [
      {
        asks: "How long a pump takes to fill the line over the hill",
        args: [
          [
            ["flow", "head"],
            [0, 160],
            [600, 152],
            [1200, 132],
            [1800, 98],
          ],
          98,
          SUCTION,
          OVER_THE_HILL,
          110,
        ],
      },
    ],
    see: ["FILLHEAD", "DRAINDOWN", "PRIMETIME"],
  },
  DRAINDOWN: {
    examples: [
      { asks: "What the line over the hill holds and lets go when the pump stops", args: [98, OVER_THE_HILL, 110] },
    ],
    see: ["FILLTIME", "AIRVALVES", "PUMPCYCLE"],
  },
  AIRVALVES: {
    examples: [{ asks: "Where the line over the hill requires air valves", args: [OVER_THE_HILL, 110] }],
    see: ["GRADELINE", "DRAINDOWN", "COLLAPSEPRESSURE"],
  },
};
