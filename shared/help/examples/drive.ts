import type { Uses } from "./example.ts";
import { SUCTION } from "./ranges.ts";

export const DRIVE_USES: Uses = {
  MOTORSIZE: {
    examples: [
      { asks: "A pump that takes 43.5 hp at most, with a margin of 15 %", args: [43.5, 1.15] },
      { asks: "32 kW, IEC ratings", args: [32, 1.15, "IEC", "SI"] },
    ],
    see: ["MOTORDATA", "PUMPMAXPOWER", "GENERATORSIZE"],
  },
  ENGINESITEPOWER: {
    examples: [{ asks: "A 75 hp engine, turbocharged, at 6,500 ft and 95 °F", args: [75, 6500, 95, "turbo"] }],
    see: ["ENGINELOAD", "FUELRATE"],
  },
  DRIVEARRANGEMENT: {
    examples: [{ asks: "A diesel engine for 43.5 hp at 1,750 rpm", args: ["engine", 43.5, 1750] }],
    see: ["BELTDRIVE", "HOUSINGMATCH", "MOTORDATA"],
  },
  FUELRATE: {
    examples: [{ asks: "Diesel burnt at 43.5 hp", args: [43.5] }],
    see: ["FUELCOST", "FUELTANKHOURS", "ENGINELOAD"],
  },
  MOTORDATA: {
    examples: [{ asks: "A motor for 43.5 hp at 1,750 rpm on 460 V", args: [43.5, 1750, 1.15, "NEMA", 460] }],
    see: ["MOTORSIZE", "GENERATORSIZE", "DRIVEARRANGEMENT"],
  },
  MINSPEED: {
    examples: [{ asks: "How slow a pump with a shutoff head of 136 ft may run against 76 ft", args: [76, 136, 1750] }],
    see: ["SPEEDTABLE", "SPEEDRATIO"],
  },
  GENERATORSIZE: {
    examples: [
      {
        asks: "A generator for a 50 hp motor started through a soft starter",
        args: [50, "94 %", 0.86, "soft starter"],
      },
    ],
    see: ["MOTORDATA", "MOTORSIZE"],
  },
  ENGINELOAD: {
    examples: [
      {
        asks: "43.5 hp off a 75 hp engine at 850 ft and 95 °F, 5 % to the fan",
        args: [43.5, 75, "5 %", 850, 95, "turbo"],
      },
    ],
    see: ["ENGINESITEPOWER", "FUELRATE", "FUELTANKHOURS"],
  },
  FUELTANKHOURS: {
    examples: [{ asks: "A 100 US gal tank at 2.3 US gal an hour, 90 % of it usable", args: [100, 2.3, "90 %"] }],
    see: ["FUELTANKSIZE", "FUELRATE"],
  },
  FUELTANKSIZE: {
    examples: [{ asks: "A tank for 24 hours at 2.3 US gal an hour, 10 % kept back", args: [24, 2.3, "90 %", "10 %"] }],
    see: ["FUELTANKHOURS", "FUELRATE", "FUELCOST"],
  },
  BELTDRIVE: {
    examples: [
      {
        asks: "43.5 hp from 1,770 rpm by 8 in and 10 in sheaves, 30 in between the shafts",
        args: [43.5, 1770, 8, 10, "30 in"],
      },
    ],
    see: ["DRIVEARRANGEMENT", "MOTORDATA"],
  },
  HOUSINGMATCH: {
    examples: [
      { asks: "An SAE 3 engine housing to an SAE 3 pump adapter, 11.5 in flywheel", args: ["SAE 3", "SAE 3", "11.5"] },
    ],
    see: ["FLYWHEELHOUSINGS", "DRIVEARRANGEMENT"],
  },
  FLYWHEELHOUSINGS: {
    examples: [{ asks: "Every SAE housing and its flywheels", args: [] }],
    see: ["HOUSINGMATCH"],
  },
  MOTORFRAMES: {
    examples: [{ asks: "Every frame there is", args: [] }],
    see: ["MOTORDATA", "DRIVEARRANGEMENT"],
  },
};

export const PRIMING_USES: Uses = {
  PRIMETIME: {
    examples: [
      {
        asks: "A 50 cfm air pump on 30 ft of 8 in hose, 12 ft of lift, 25 US gal of casing, at 850 ft",
        args: [SUCTION, 12, 50, 25, 850],
      },
    ],
    see: ["PRIMECURVE", "PRIMINGLIFT", "PRIMINGMETHODS"],
  },
  PRIMINGMETHODS: {
    examples: [{ asks: "A lift of 12 ft on raw sewage", args: [12, SUCTION, "sewage", 850] }],
    see: ["PRIMETIME", "PRIMINGLIFT"],
  },
  PRIMINGLIFT: {
    examples: [
      { asks: "The highest lift of a 50 cfm air pump at 6,500 ft where NPSH allows 18 ft", args: [50, 18, 6500] },
    ],
    see: ["MAXLIFT", "PRIMETIME", "ATMOSPHERE"],
  },
  PRIMECURVE: {
    examples: [{ asks: "How the water rises in the suction while the pump primes", args: [SUCTION, 12, 50, 25, 850] }],
    see: ["PRIMETIME", "PRIMINGLIFT"],
  },
  EDUCTORAIR: {
    examples: [{ asks: "A 1/4 in nozzle on 100 psi of compressed air", args: [0.25, 100, 70] }],
    see: ["PRIMINGMETHODS", "PRIMINGLIFT"],
  },
};
