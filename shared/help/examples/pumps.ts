import type { Uses } from "./example.ts";
import { DISCHARGE, PUMP, PUMP_TABLE, READINGS, SUCTION, SYSTEM } from "./ranges.ts";

export const PUMP_USES: Uses = {
  PUMPHEAD: {
    examples: [
      { asks: "The head of the pump at 1,200 US gpm", args: [PUMP, 1200] },
      { asks: "The same at 90 % of the speed of the curve", args: [PUMP, 1200, 0.9] },
    ],
    see: ["PUMPEFFICIENCY", "PUMPPOWER", "PUMPNPSHR", "OPERATINGPOINT"],
  },
  PUMPEFFICIENCY: {
    examples: [{ asks: "The efficiency of the pump at 1,200 US gpm", args: [PUMP, 1200] }],
    see: ["BESTEFFICIENCYPOINT", "PUMPPOWER"],
  },
  PUMPNPSHR: {
    examples: [{ asks: "What NPSH the pump requires at 1,500 US gpm", args: [PUMP, 1500] }],
    see: ["NPSHA", "NPSHMARGIN", "MAXLIFT"],
  },
  PUMPPOWER: {
    examples: [
      { asks: "The shaft power at 1,200 US gpm with a liquid of SG 1.05", args: [PUMP, 1200, null, null, 1.05] },
    ],
    see: ["PUMPMAXPOWER", "SHAFTPOWER", "MOTORSIZE"],
  },
  BESTEFFICIENCYPOINT: {
    examples: [{ asks: "Where the pump runs best", args: [PUMP] }],
    see: ["OPERATINGREGION", "PUMPEFFICIENCY"],
  },
  OPERATINGREGION: {
    examples: [{ asks: "The preferred region of a pump with a specific speed of 2,030", args: [2030] }],
    see: ["BESTEFFICIENCYPOINT", "SPECIFICSPEED"],
  },
  MINTHERMALFLOW: {
    examples: [{ asks: "The minimum flow that keeps the water from heating by more than 15 °F", args: [PUMP, 15] }],
    see: ["SHUTOFFHEATING", "PUMPHEAD"],
  },
  SHUTOFFHEATING: {
    examples: [{ asks: "18 hp put into 25 US gal against a shut valve", args: [18, 25] }],
    see: ["MINTHERMALFLOW", "NOZZLEPRESSURE"],
  },
  ACCEPTANCETEST: {
    examples: [
      {
        asks: "A test compared with 1,200 US gpm at 109 ft, grade 2B",
        args: [
          [
            ["flow", "head", "power"],
            [1000, 118, 41.6],
            [1150, 112.5, 43.4],
            [1250, 108, 44.4],
            [1400, 99.5, 46],
          ],
          1200,
          109,
          "2B",
        ],
      },
    ],
    see: ["FIELDCHECK", "PUMPHEAD"],
  },
  TIMEDFLOW: {
    examples: [{ asks: "A 55 US gal drum filled in 9, 8 and 8.5 seconds", args: [55, [[9], [8], [8.5]]] }],
    see: ["DROPTEST", "FIELDCHECK"],
  },
  FIELDHEAD: {
    examples: [
      {
        asks: "42 psi at the discharge and 9 inHg of vacuum at the suction, both gauges at the shaft, 1,200 US gpm",
        args: [1200, 42, "9 inHg vac", 0, 0, "6 in sch40", "8 in sch40"],
      },
    ],
    see: ["FIELDCHECK", "WIRETOWATER", "FUELTOWATER"],
  },
  WIRETOWATER: {
    examples: [{ asks: "1,200 US gpm at 109 ft for 38 kW at the meter", args: [1200, 109, 38, "94 %"] }],
    see: ["FIELDHEAD", "FUELTOWATER", "ENERGYCOST"],
  },
  FUELTOWATER: {
    examples: [{ asks: "1,200 US gpm at 109 ft for 2.4 US gal of diesel an hour", args: [1200, 109, 2.4, "diesel"] }],
    see: ["FIELDHEAD", "WIRETOWATER", "FUELCOST"],
  },
  FIELDCHECK: {
    examples: [{ asks: "Three readings on site compared with the pump's curve", args: [READINGS, PUMP] }],
    see: ["FIELDREASONS", "FIELDHEAD", "ACCEPTANCETEST"],
  },
  FIELDREASONS: {
    examples: [{ asks: "What would explain the three readings", args: [READINGS, PUMP] }],
    see: ["FIELDCHECK", "FIELDHEAD"],
  },
  PUMPMAXPOWER: {
    examples: [{ asks: "The most the pump takes anywhere on its curve, SG 1.05", args: [PUMP, null, null, 1.05] }],
    see: ["MOTORSIZE", "PUMPPOWER"],
  },
  OPERATINGPOINT: {
    examples: [
      { asks: "Where one pump runs on the two lines", args: [PUMP, SYSTEM] },
      { asks: "Where two run side by side", args: [PUMP, SYSTEM, null, null, 2, "parallel"] },
    ],
    see: ["SYSTEMCURVE", "STATIONCURVE", "PUMPSTOPS", "SPEEDRATIO"],
  },
  PUMPSTOPS: {
    examples: [
      { asks: "What is left when one of two pumps in parallel stops", args: [PUMP, SYSTEM, null, null, 2, "parallel"] },
    ],
    see: ["OPERATINGPOINT", "STATIONCURVE"],
  },
  STATIONCURVE: {
    examples: [
      { asks: "The curve of two pumps side by side, in seven rows", args: [PUMP, null, null, 2, "parallel", null, 7] },
    ],
    see: ["OPERATINGPOINT", "PUMPSTOPS"],
  },
  BOOSTERS: {
    examples: [
      {
        asks: "A pump at the sump and its like at the end of the first run, both at 1,200 US gpm",
        args: [
          [
            ["pump", "flow", "head", "level", "after row"],
            ["at the sump", 0, 136, 110, null],
            [null, 600, 129, null, null],
            [null, 1200, 109, null, null],
            [null, 1800, 73, null, null],
            ["booster", 0, 136, 150, 1],
            [null, 600, 129, null, null],
            [null, 1200, 109, null, null],
            [null, 1800, 73, null, null],
          ],
          1200,
          98,
          SUCTION,
          [
            ["10in HDPE DR17", 900, "1 swing check, 1 gate", null, 150],
            ["10in HDPE DR17", 2600, "4 elbow 45, 1 exit", null, 250],
          ],
        ],
      },
    ],
    see: ["NOZZLECLASSES", "GRADELINE", "OPERATINGPOINT"],
  },
  SPEEDRATIO: {
    examples: [{ asks: "The speed that gives 1,200 US gpm at 102 ft", args: [PUMP, 1200, 102] }],
    see: ["SPEEDTABLE", "TRIMRATIO", "MINSPEED"],
  },
  SPEEDTABLE: {
    examples: [
      {
        asks: "The speeds for 700, 1,000 and 1,200 US gpm on the two lines",
        args: [[[700], [1000], [1200]], PUMP, SYSTEM],
      },
    ],
    see: ["SPEEDRATIO", "MINSPEED", "OPERATINGPOINT"],
  },
  TRIMRATIO: {
    examples: [{ asks: "How far to trim the impeller for 1,200 US gpm at 102 ft", args: [PUMP, 1200, 102] }],
    see: ["SPEEDRATIO", "PUMPHEAD"],
  },
  SPECIFICSPEED: {
    examples: [{ asks: "1,280 US gpm and 106 ft at 1,750 rpm", args: [1750, 1280, 106] }],
    see: ["SUCTIONSPECIFICSPEED", "OPERATINGREGION"],
  },
  SUCTIONSPECIFICSPEED: {
    examples: [{ asks: "1,280 US gpm and an NPSHR of 13 ft at 1,750 rpm", args: [1750, 1280, 13] }],
    see: ["SPECIFICSPEED", "NPSHMARGIN"],
  },
  VISCOUSCURVE: {
    examples: [{ asks: "The pump's curve on an oil of 120 cSt and SG 0.88", args: [PUMP, 1750, "120 cSt", 0.88] }],
    see: ["VISCOSITY", "PUMPMAXPOWER", "SLURRYDERATE"],
  },
  SHAFTPOWER: {
    examples: [
      { asks: "1,200 US gpm at 109 ft with a pump of 76 %", args: [1200, 109, "76 %"] },
      { asks: "75 L/s at 33 m, 76 %, SG 1.1", args: [75, 33, "76 %", 1.1, "SI"] },
    ],
    see: ["PUMPPOWER", "MOTORSIZE", "ENERGYCOST"],
  },
  RANKPUMPS: {
    examples: [
      {
        asks: "Two pumps for 1,200 US gpm to a pond 76 ft above the sump, 12 ft of lift",
        args: [PUMP_TABLE, 1200, 76, SUCTION, DISCHARGE, "water", 60, 1, "parallel", 12, 850],
      },
    ],
    see: ["OPERATINGPOINT", "BESTEFFICIENCYPOINT", "TDH"],
  },
};
