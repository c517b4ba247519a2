/**
 * NEMA Premium nominal full-load efficiency, percent, 60 Hz, 600 V or less. NEMA MG 1 Table 12-12 (= 10 CFR 431.25), in
 * printed order: horsepower, then 2, 4, 6 and 8 poles. Null where the table has no figure.
 *
 * Verified: 1 to 200 hp, 2 to 6 poles, looked up in 10 CFR 431.25 Table 1 and compared with the tables of Natural
 * Resources Canada in the open library fluids 1.0.22 (equal, open and enclosed); enclosed 4-pole motors to 500 hp with the
 * open data of ASHRAE 90.1-2019 (equal); 8 poles to 30 hp looked up in the Federal Register (C1-2013-28776, Table I.5) and
 * to 25 hp in the Washington Administrative Code 51-11C-40508, which has 77.5 for the open 1.5 hp motor where the Register
 * has 77.0. 8 poles above 30 hp and enclosed 2- and 6-pole motors above 200 hp are from memory.
 *
 * Between rows (10 CFR 431.25): at or above the midpoint of two ratings take the higher one, below it the lower one.
 */
export type NemaEfficiencyRow = readonly [
  horsepower: number,
  twoPole: number,
  fourPole: number,
  sixPole: number,
  eightPole: number | null,
];

export const NEMA_PREMIUM_ENCLOSED: readonly NemaEfficiencyRow[] = [
  [1, 77, 85.5, 82.5, 75.5],
  [1.5, 84, 86.5, 87.5, 78.5],
  [2, 85.5, 86.5, 88.5, 84],
  [3, 86.5, 89.5, 89.5, 85.5],
  [5, 88.5, 89.5, 89.5, 86.5],
  [7.5, 89.5, 91.7, 91, 86.5],
  [10, 90.2, 91.7, 91, 89.5],
  [15, 91, 92.4, 91.7, 89.5],
  [20, 91, 93, 91.7, 90.2],
  [25, 91.7, 93.6, 93, 90.2],
  [30, 91.7, 93.6, 93, 91.7],
  [40, 92.4, 94.1, 94.1, 91.7],
  [50, 93, 94.5, 94.1, 92.4],
  [60, 93.6, 95, 94.5, 92.4],
  [75, 93.6, 95.4, 94.5, 93.6],
  [100, 94.1, 95.4, 95, 93.6],
  [125, 95, 95.4, 95, 94.1],
  [150, 95, 95.8, 95.8, 94.1],
  [200, 95.4, 96.2, 95.8, 94.5],
  [250, 95.8, 96.2, 95.8, 95],
  [300, 95.8, 96.2, 95.8, null],
  [350, 95.8, 96.2, 95.8, null],
  [400, 95.8, 96.2, 95.8, null],
  [450, 95.8, 96.2, 95.8, null],
  [500, 95.8, 96.2, 95.8, null],
];

export const NEMA_PREMIUM_OPEN: readonly NemaEfficiencyRow[] = [
  [1, 77, 85.5, 82.5, 75.5],
  [1.5, 84, 86.5, 86.5, 77],
  [2, 85.5, 86.5, 87.5, 86.5],
  [3, 85.5, 89.5, 88.5, 87.5],
  [5, 86.5, 89.5, 89.5, 88.5],
  [7.5, 88.5, 91, 90.2, 89.5],
  [10, 89.5, 91.7, 91.7, 90.2],
  [15, 90.2, 93, 91.7, 90.2],
  [20, 91, 93, 92.4, 91],
  [25, 91.7, 93.6, 93, 91],
  [30, 91.7, 94.1, 93.6, 91.7],
  [40, 92.4, 94.1, 94.1, 91.7],
  [50, 93, 94.5, 94.1, 92.4],
  [60, 93.6, 95, 94.5, 93],
  [75, 93.6, 95, 94.5, 94.1],
  [100, 93.6, 95.4, 95, 94.1],
  [125, 94.1, 95.4, 95, 94.1],
  [150, 94.1, 95.8, 95.4, 94.1],
  [200, 95, 95.8, 95.4, 94.5],
];
