import type { Uses } from "./example.ts";
import { DISCHARGE, SUCTION } from "./ranges.ts";

export const ESTIMATE_USES: Uses = {
  ENERGYCOST: {
    examples: [{ asks: "43.5 hp for 2,400 hours at 0.12 a kWh, motor 94 %", args: [43.5, 2400, 0.12, "94 %"] }],
    see: ["FUELCOST", "LIFECYCLECOST", "WIRETOWATER"],
  },
  LIFECYCLECOST: {
    examples: [{ asks: "46,000 to buy and 21,000 a year for 8 years at 6 %", args: [46000, 21000, 8, "6 %"] }],
    see: ["ENERGYCOST", "FUELCOST", "SELLINGPRICE"],
  },
  TAKEOFF: {
    examples: [{ asks: "The two lines of the job, Class 150 flanges", args: [SUCTION, DISCHARGE, 150] }],
    see: ["PIPEMASS", "SELLINGPRICE"],
  },
  PIPEMASS: {
    examples: [{ asks: "20 ft of 8 in schedule 40, full of water", args: ["8in sch40", 1, 20] }],
    see: ["TAKEOFF", "BENDTHRUST"],
  },
  BENDTHRUST: {
    examples: [{ asks: "A 45° bend in 10 in HDPE DR17 at 80 psi", args: ["10in HDPE DR17", 80, 45] }],
    see: ["PIPEMASS", "SURGE"],
  },
  COLLAPSEPRESSURE: {
    examples: [
      {
        asks: "10 in HDPE DR17 of PE4710 under vacuum for 12 hours at 73 °F",
        args: ["10in HDPE DR17 PE4710", 12, 73, "3 %"],
      },
    ],
    see: ["PIPERATING", "AIRVALVES", "GRADELINE"],
  },
  SELLINGPRICE: {
    examples: [
      {
        asks: "46,000 of direct cost, 12 % overhead, 5 % contingency, a 20 % margin",
        args: [46000, "12 %", "5 %", "20 %", "margin"],
      },
    ],
    see: ["RENTAL", "LIFECYCLECOST", "TAKEOFF"],
  },
  RENTAL: {
    examples: [
      {
        asks: "45 days at 150 a day, 450 a week, 1,350 a month, 600 each way",
        args: [45, 150, 450, 1350, null, null, 600, 600],
      },
    ],
    see: ["SELLINGPRICE", "FUELCOST"],
  },
  FUELCOST: {
    examples: [
      { asks: "43.5 hp for 2,400 hours with diesel at 3.90 per US gal", args: [43.5, 2400, "3.90 per US gal"] },
    ],
    see: ["FUELRATE", "ENERGYCOST", "FUELTOWATER"],
  },
  VERDICTS: {
    examples: [
      {
        asks: "A flange, the NPSH and the motor, each against its limit",
        args: [
          [
            ["verdict", "what", "found", "limit", "unit", "must be"],
            ["pressure", "discharge flange NPS 6, Class 150", 168, 250, "psig", "at most"],
            ["npsh", "NPSH available", 14.1, 15.2, "ft", "at least"],
            ["driver", "power to be rated for", 48, 50, "hp", "at most"],
          ],
        ],
      },
    ],
    see: ["FINDINGS", "NOTES"],
  },
  FINDINGS: {
    examples: [
      {
        asks: "The notes of two calls as one list, the gravest first",
        args: [
          [
            ["where", "notes"],
            ["discharge", "Check: Confirm the grade.\nLimit: 1,150 psi is above the rating."],
            ["suction", "Check: Confirm the grade."],
          ],
        ],
      },
    ],
    see: ["NOTES", "VERDICTS"],
  },
};
