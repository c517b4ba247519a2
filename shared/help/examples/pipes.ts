import type { Uses } from "./example.ts";
import { DISCHARGE } from "./ranges.ts";

export const PIPE_USES: Uses = {
  BORE: {
    examples: [
      { asks: "Bore of 10 in HDPE, dimension ratio 17", args: ["10in HDPE DR17"] },
      { asks: "Bore of DN200 schedule 40 steel pipe, in millimetres", args: ["DN200 sch40", "SI"] },
    ],
    see: ["PIPES", "VELOCITY", "PIPESIZE"],
  },
  PIPES: {
    examples: [{ asks: "Every size of the schedule 80 family", args: ["sch80"] }],
    see: ["BORE", "FITTINGS", "PIPESIZE"],
  },
  VELOCITY: {
    examples: [
      { asks: "1,200 US gpm in 8 in schedule 40 pipe", args: [1200, "8in sch40"] },
      { asks: "45 L/s in DN150 schedule 40 pipe, answered in m/s", args: ["45 L/s", "DN150 sch40", "SI"] },
    ],
    see: ["FRICTIONHEAD", "PIPESIZE", "DEPOSITIONVELOCITY"],
  },
  REYNOLDS: {
    examples: [
      { asks: "1,200 US gpm of water at 60 °F in 8 in schedule 40 pipe", args: [1200, "8in sch40", "water", 60] },
    ],
    see: ["FRICTIONFACTOR", "VISCOSITY"],
  },
  FRICTIONFACTOR: {
    examples: [
      { asks: "Reynolds number 450,000 in a pipe with a relative roughness of 0.0002", args: [450000, 0.0002] },
    ],
    see: ["REYNOLDS", "FRICTIONHEAD"],
  },
  FRICTIONHEAD: {
    examples: [
      { asks: "1,200 US gpm in 1,800 ft of 10 in HDPE DR17", args: [1200, "10in HDPE DR17", 1800] },
      {
        asks: "60 L/s in 400 m of DN200 schedule 40, answered in metres",
        args: [60, "DN200 sch40", 400, null, null, "SI"],
      },
      {
        asks: "The same 1,200 US gpm as sea water at 50 °F",
        args: [1200, "10in HDPE DR17", 1800, "sea water 35 g/kg", 50],
      },
    ],
    see: ["HAZENHEAD", "FITTINGHEAD", "LINEHEAD", "TDH"],
  },
  HAZENHEAD: {
    examples: [
      {
        asks: "1,200 US gpm in 1,800 ft of 10 in HDPE DR17 with a C of 150",
        args: [1200, "10in HDPE DR17", 1800, 150],
      },
      { asks: "The same through an old 10 in steel main with a C of 100", args: [1200, "10in sch40", 1800, 100] },
    ],
    see: ["FRICTIONHEAD", "LINEHEAD"],
  },
  FITTINGK: {
    examples: [
      { asks: "A long-radius elbow in 8 in schedule 40", args: ["elbow 90 long", "8in sch40"] },
      { asks: "A butterfly valve in 10 in schedule 40", args: ["butterfly", "10in sch40"] },
    ],
    see: ["FITTINGS", "FITTINGHEAD"],
  },
  FITTINGHEAD: {
    examples: [
      {
        asks: "Check valve, gate valve and two long elbows at 1,200 US gpm in 8 in schedule 40",
        args: [1200, "8in sch40", "1 swing check, 1 gate, 2 elbow 90 long"],
      },
    ],
    see: ["FITTINGK", "FITTINGS", "LINEHEAD"],
  },
  LINEHEAD: {
    examples: [{ asks: "1,200 US gpm through a steel header and 1,800 ft of 10 in HDPE", args: [1200, DISCHARGE] }],
    see: ["FRICTIONHEAD", "FITTINGHEAD", "TDH", "SYSTEMCURVE"],
  },
  PARALLELRUNS: {
    examples: [
      {
        asks: "2,000 US gpm through an 8 in and a 10 in line laid side by side",
        args: [
          2000,
          [
            ["8in HDPE DR17", 1500, "2 elbow 45"],
            ["10in HDPE DR17", 1620, "4 elbow 45"],
          ],
        ],
      },
    ],
    see: ["LINEHEAD", "BRANCHFLOWS"],
  },
  BRANCHFLOWS: {
    examples: [
      {
        asks: "1,500 US gpm brought to a tee that feeds a pond at 174 ft and a tank at 168 ft",
        args: [
          [
            ["8in sch40", 600, "1 exit", 174],
            ["6in sch40", 400, "1 exit", 168],
          ],
          1500,
        ],
      },
    ],
    see: ["PARALLELRUNS", "LINEHEAD"],
  },
  PIPESIZE: {
    examples: [
      { asks: "Smallest schedule 40 pipe for 1,200 US gpm at no more than 8 ft/s", args: [1200, "sch40", 8] },
      {
        asks: "Smallest HDPE DR17 for 1,200 US gpm that loses no more than 1 %",
        args: [1200, "HDPE DR17", null, "1 %"],
      },
    ],
    see: ["VELOCITY", "PIPES", "FRICTIONHEAD"],
  },
  FITTINGS: {
    examples: [{ asks: "Every fitting that can be named", args: [] }],
    see: ["FITTINGK", "FITTINGHEAD"],
  },
};
