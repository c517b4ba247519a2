import type { Argument } from "../../cells/cell.ts";

type Rows = Exclude<Argument, null | string | number | boolean | { readonly error: unknown }>;

/** Cells that several examples read: one job, so that the pages can be followed from one to the next. */

/** 30 ft of 8 in suction hose. */
export const SUCTION: Rows = [["8in suction hose", 30, "1 entrance bell, 2 hose bend"]];

/** A steel header at the pump, then 1,800 ft of polyethylene. */
export const DISCHARGE: Rows = [
  ["8in sch40", 20, "1 swing check, 1 gate, 2 elbow 90 long"],
  ["10in HDPE DR17 PE4710", 1800, "4 elbow 45, 1 exit"],
];

/** The same two lines over a hill: the last column is the level at the end of each run. */
export const OVER_THE_HILL: Rows = [
  ["10in HDPE DR17 PE4710", 900, "1 swing check, 1 gate", "", 212],
  ["10in HDPE DR17 PE4710", 900, "4 elbow 45, 1 exit", "", 174],
];

/** A metric line of steel and polyethylene. */
export const METRIC_SUCTION: Rows = [["DN200 sch40", 8, "1 foot valve, 1 elbow 90 long"]];

/** An invented 6 in pump at 1,750 rpm. */
export const PUMP: Rows = [
  ["flow", "head", "efficiency", "NPSHR", "power"],
  [0, 136, "", "", 18],
  [300, 134, 0.34, 7.8, 30],
  [600, 129, 0.57, 8.8, 34.3],
  [900, 121, 0.7, 10.2, 39.3],
  [1200, 109, 0.76, 12.2, 43.5],
  [1500, 93, 0.74, 15.1, 47.6],
  [1800, 73, 0.65, 19, 51.1],
];

/** What the two lines ask for over 76 ft, as SYSTEMCURVE spills it, to a tenth of a foot. */
export const SYSTEM: Rows = [
  ["flow", "head"],
  [0, 76],
  [400, 78.6],
  [800, 85.5],
  [1200, 96.3],
  [1600, 111],
  [2000, 129.6],
];

/** A small invented table of pumps. */
export const PUMP_TABLE: Rows = [
  ["pump", "speed", "impeller diameter", "flow", "head", "efficiency", "NPSHR"],
  ["Invented 6×11", 1750, 11, 0, 136, "", ""],
  ["Invented 6×11", 1750, 11, 600, 129, 0.57, 8.8],
  ["Invented 6×11", 1750, 11, 1200, 109, 0.76, 12.2],
  ["Invented 6×11", 1750, 11, 1800, 73, 0.65, 19],
  ["Invented 8×12", 1780, 12, 0, 150, "", ""],
  ["Invented 8×12", 1780, 12, 1000, 140, 0.7, 10],
  ["Invented 8×12", 1780, 12, 2000, 118, 0.81, 15],
  ["Invented 8×12", 1780, 12, 2800, 88, 0.72, 24],
];

/** Readings on site at three settings of the valve. */
export const READINGS: Rows = [
  ["flow", "head", "shaft power"],
  [600, 126, 34.5],
  [1000, 113, 41.2],
  [1300, 98.5, 45],
];
