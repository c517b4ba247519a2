/**
 * Full-load current of three-phase induction motors, amperes. NEC (NFPA 70) Table 430.250, in printed order: rated
 * horsepower, then at 115, 200, 208, 230, 460, 575 and 2300 V. Null where the table has no figure.
 *
 * For sizing branch circuits and their protection. The nameplate of the motor wins for everything else.
 *
 * Verified: looked up in a reprint of the 2008 table; two other listings agree in every 460 V figure they print.
 * There is nothing to read between rows: a rating that is not listed has no figure.
 */
export const NEC_VOLTAGES = [115, 200, 208, 230, 460, 575, 2300] as const;

export type NecCurrentRow = readonly [horsepower: number, ...amperes: readonly (number | null)[]];

export const MOTOR_CURRENTS_NEC: readonly NecCurrentRow[] = [
  [0.5, 4.4, 2.5, 2.4, 2.2, 1.1, 0.9, null],
  [0.75, 6.4, 3.7, 3.5, 3.2, 1.6, 1.3, null],
  [1, 8.4, 4.8, 4.6, 4.2, 2.1, 1.7, null],
  [1.5, 12, 6.9, 6.6, 6, 3, 2.4, null],
  [2, 13.6, 7.8, 7.5, 6.8, 3.4, 2.7, null],
  [3, null, 11, 10.6, 9.6, 4.8, 3.9, null],
  [5, null, 17.5, 16.7, 15.2, 7.6, 6.1, null],
  [7.5, null, 25.3, 24.2, 22, 11, 9, null],
  [10, null, 32.2, 30.8, 28, 14, 11, null],
  [15, null, 48.3, 46.2, 42, 21, 17, null],
  [20, null, 62.1, 59.4, 54, 27, 22, null],
  [25, null, 78.2, 74.8, 68, 34, 27, null],
  [30, null, 92, 88, 80, 40, 32, null],
  [40, null, 120, 114, 104, 52, 41, null],
  [50, null, 150, 143, 130, 65, 52, null],
  [60, null, 177, 169, 154, 77, 62, 16],
  [75, null, 221, 211, 192, 96, 77, 20],
  [100, null, 285, 273, 248, 124, 99, 26],
  [125, null, 359, 343, 312, 156, 125, 31],
  [150, null, 414, 396, 360, 180, 144, 37],
  [200, null, 552, 528, 480, 240, 192, 49],
  [250, null, null, null, null, 302, 242, 60],
  [300, null, null, null, null, 361, 289, 72],
  [350, null, null, null, null, 414, 336, 83],
  [400, null, null, null, null, 477, 382, 95],
  [450, null, null, null, null, 515, 412, 103],
  [500, null, null, null, null, 590, 472, 118],
];
