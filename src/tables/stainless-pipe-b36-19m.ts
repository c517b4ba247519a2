/**
 * Stainless steel pipe, inches. ASME B36.19M (2018), table of dimensions, in printed order: nominal pipe size
 * (NPS), outside diameter, nominal wall of schedules 5S, 10S, 40S and 80S; null where the standard has none.
 * From NPS 14 up 10S is thinner than schedule 10 of B36.10M, and from NPS 12 up 40S and 80S are 0.375 and
 * 0.500 in, not schedules 40 and 80.
 *
 * Verified: typed from memory of the standard, then every value compared with the millimetre schedule tables of
 * the open library fluids 1.0.22 (tests/slow/pipe-oracle.test.ts): largest difference in wall 0.005 mm, which is
 * that table's rounding. No copy of the standard itself was at hand.
 */
export type StainlessPipeRow = readonly [
  nps: string,
  outsideDiameter: number,
  schedule5S: number | null,
  schedule10S: number | null,
  schedule40S: number | null,
  schedule80S: number | null,
];

export const STAINLESS_PIPE_B36_19M: readonly StainlessPipeRow[] = [
  ["1/8", 0.405, null, 0.049, 0.068, 0.095],
  ["1/4", 0.54, null, 0.065, 0.088, 0.119],
  ["3/8", 0.675, null, 0.065, 0.091, 0.126],
  ["1/2", 0.84, 0.065, 0.083, 0.109, 0.147],
  ["3/4", 1.05, 0.065, 0.083, 0.113, 0.154],
  ["1", 1.315, 0.065, 0.109, 0.133, 0.179],
  ["1-1/4", 1.66, 0.065, 0.109, 0.14, 0.191],
  ["1-1/2", 1.9, 0.065, 0.109, 0.145, 0.2],
  ["2", 2.375, 0.065, 0.109, 0.154, 0.218],
  ["2-1/2", 2.875, 0.083, 0.12, 0.203, 0.276],
  ["3", 3.5, 0.083, 0.12, 0.216, 0.3],
  ["3-1/2", 4, 0.083, 0.12, 0.226, 0.318],
  ["4", 4.5, 0.083, 0.12, 0.237, 0.337],
  ["5", 5.563, 0.109, 0.134, 0.258, 0.375],
  ["6", 6.625, 0.109, 0.134, 0.28, 0.432],
  ["8", 8.625, 0.109, 0.148, 0.322, 0.5],
  ["10", 10.75, 0.134, 0.165, 0.365, 0.5],
  ["12", 12.75, 0.156, 0.18, 0.375, 0.5],
  ["14", 14, 0.156, 0.188, 0.375, 0.5],
  ["16", 16, 0.165, 0.188, 0.375, 0.5],
  ["18", 18, 0.165, 0.188, 0.375, 0.5],
  ["20", 20, 0.188, 0.218, 0.375, 0.5],
  ["22", 22, 0.188, 0.218, null, null],
  ["24", 24, 0.218, 0.25, 0.375, 0.5],
  ["30", 30, 0.25, 0.312, null, null],
];
