/**
 * Bolts and studs of flange joints. Inch: thread, nominal diameter in, threads per inch, tensile stress area in², root
 * area in². Metric, coarse thread: thread, nominal diameter mm, pitch mm, tensile stress area mm², root area mm². Tensile stress area: ASME B1.1 (2003)
 * appendix B, 0.7854 (D − 0.9743/n)²; ISO 898-1, 0.7854 (d − 0.9382 P)². Root area: 0.7854 (D − 1.3/n)² and 0.7854 (d − 1.22687 P)². Flange bolts of
 * 1-1/8 in and more are of the eight-thread series.
 *
 * Verified: areas worked from the formulas and compared with handbook values, from memory; they agree to the last figure.
 */
export type InchBoltRow = readonly [
  size: string,
  thread: string,
  diameter: number,
  threadsPerInch: number,
  tensileArea: number,
  rootArea: number,
];

export const INCH_BOLTS: readonly InchBoltRow[] = [
  ["1/2", "1/2-13 UNC", 0.5, 13, 0.1419, 0.1257],
  ["5/8", "5/8-11 UNC", 0.625, 11, 0.226, 0.2017],
  ["3/4", "3/4-10 UNC", 0.75, 10, 0.3345, 0.3019],
  ["7/8", "7/8-9 UNC", 0.875, 9, 0.4617, 0.4192],
  ["1", "1-8 UNC", 1, 8, 0.6057, 0.5509],
  ["1-1/8", "1-1/8-8 8UN", 1.125, 8, 0.7905, 0.7276],
  ["1-1/4", "1-1/4-8 8UN", 1.25, 8, 0.9997, 0.9289],
  ["1-3/8", "1-3/8-8 8UN", 1.375, 8, 1.2335, 1.1547],
  ["1-1/2", "1-1/2-8 8UN", 1.5, 8, 1.4918, 1.405],
];

export type MetricBoltRow = readonly [
  size: string,
  thread: string,
  diameter: number,
  pitch: number,
  tensileArea: number,
  rootArea: number,
];

export const METRIC_BOLTS: readonly MetricBoltRow[] = [
  ["M10", "M10x1.5", 10, 1.5, 58, 52.3],
  ["M12", "M12x1.75", 12, 1.75, 84.3, 76.2],
  ["M16", "M16x2", 16, 2, 156.7, 144.1],
  ["M20", "M20x2.5", 20, 2.5, 244.8, 225.2],
  ["M22", "M22x2.5", 22, 2.5, 303.4, 281.5],
  ["M24", "M24x3", 24, 3, 352.5, 324.3],
  ["M27", "M27x3", 27, 3, 459.4, 427.1],
  ["M30", "M30x3.5", 30, 3.5, 560.6, 519],
  ["M33", "M33x3.5", 33, 3.5, 693.6, 647.2],
  ["M36", "M36x4", 36, 4, 816.7, 759.3],
  ["M39", "M39x4", 39, 4, 975.8, 912.9],
  ["M42", "M42x4.5", 42, 4.5, 1120.9, 1045.1],
  ["M45", "M45x4.5", 45, 4.5, 1306, 1224.1],
  ["M48", "M48x5", 48, 5, 1473.1, 1376.6],
  ["M52", "M52x5", 52, 5, 1757.8, 1652.2],
];

/**
 * Torque that puts 50 ksi on the root area of a lubricated low-alloy steel stud, lbf·ft, plain and with a coated stud.
 * ASME PCC-1 (2013), table 1. For another stress it goes in proportion.
 *
 * Verified: read in a reprint of the table.
 */
export type ReferenceTorqueRow = readonly [size: string, plain: number, coated: number];

export const REFERENCE_TORQUES: readonly ReferenceTorqueRow[] = [
  ["1/2", 60, 45],
  ["5/8", 120, 90],
  ["3/4", 210, 160],
  ["7/8", 350, 250],
  ["1", 500, 400],
  ["1-1/8", 750, 550],
  ["1-1/4", 1050, 800],
  ["1-3/8", 1400, 1050],
  ["1-1/2", 1800, 1400],
];
