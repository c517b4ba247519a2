/**
 * PVC pipe, inches. ASTM D1785, tables of outside diameters and wall thicknesses, in printed order: nominal pipe
 * size, average outside diameter, least wall of schedules 40, 80 and 120; null where the standard has none.
 *
 * The walls are least walls. The tolerance is +12 % of the wall, so the mean wall is taken as 1.06 times the
 * least, which is how the trade's tables of average inside diameter are made (PVC_MEAN_WALL).
 *
 * Verified: typed from memory of the standard, then every value compared with the tables of the open library
 * fluids 1.0.22 (tests/slow/pipe-oracle.test.ts): equal throughout; diameters and schedules 40 and 80 also with an open
 * engineering data book, equal but for its row of 5 in, whose walls (0.375, 0.420) fit no neighbour. No copy of the
 * standard itself was at hand.
 */
export type PvcPipeRow = readonly [
  nps: string,
  outsideDiameter: number,
  schedule40: number | null,
  schedule80: number | null,
  schedule120: number | null,
];

/** Mean wall per least wall. */
export const PVC_MEAN_WALL = 1.06;

export const PVC_PIPE_D1785: readonly PvcPipeRow[] = [
  ["1/8", 0.405, 0.068, 0.095, null],
  ["1/4", 0.54, 0.088, 0.119, null],
  ["3/8", 0.675, 0.091, 0.126, null],
  ["1/2", 0.84, 0.109, 0.147, 0.17],
  ["3/4", 1.05, 0.113, 0.154, 0.17],
  ["1", 1.315, 0.133, 0.179, 0.2],
  ["1-1/4", 1.66, 0.14, 0.191, 0.215],
  ["1-1/2", 1.9, 0.145, 0.2, 0.225],
  ["2", 2.375, 0.154, 0.218, 0.25],
  ["2-1/2", 2.875, 0.203, 0.276, 0.3],
  ["3", 3.5, 0.216, 0.3, 0.35],
  ["3-1/2", 4, 0.226, 0.318, 0.35],
  ["4", 4.5, 0.237, 0.337, 0.437],
  ["5", 5.563, 0.258, 0.375, 0.5],
  ["6", 6.625, 0.28, 0.432, 0.562],
  ["8", 8.625, 0.322, 0.5, 0.718],
  ["10", 10.75, 0.365, 0.593, 0.843],
  ["12", 12.75, 0.406, 0.687, 1],
  ["14", 14, 0.437, 0.75, null],
  ["16", 16, 0.5, 0.843, null],
  ["18", 18, 0.562, 0.937, null],
  ["20", 20, 0.593, 1.031, null],
  ["24", 24, 0.687, 1.218, null],
];
