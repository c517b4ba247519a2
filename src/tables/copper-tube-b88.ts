/**
 * Copper water tube, inches. ASTM B88, table of dimensions, in printed order: standard size, outside diameter
 * (1/8 in more than the standard size), nominal wall of types K, L and M; null where the standard has none.
 *
 * Verified: all 18 sizes compared with an open engineering data book that cites ASTM B88: equal but for two slips there
 * (3-1/2 in with a diameter of 6.625, a wall of 1-1/4 in of 0.050). The outside-diameter rule and the printed weights of
 * some sizes hold it by test.
 */
export type CopperTubeRow = readonly [
  size: string,
  outsideDiameter: number,
  typeK: number | null,
  typeL: number | null,
  typeM: number | null,
];

export const COPPER_TUBE_B88: readonly CopperTubeRow[] = [
  ["1/4", 0.375, 0.035, 0.03, null],
  ["3/8", 0.5, 0.049, 0.035, 0.025],
  ["1/2", 0.625, 0.049, 0.04, 0.028],
  ["5/8", 0.75, 0.049, 0.042, null],
  ["3/4", 0.875, 0.065, 0.045, 0.032],
  ["1", 1.125, 0.065, 0.05, 0.035],
  ["1-1/4", 1.375, 0.065, 0.055, 0.042],
  ["1-1/2", 1.625, 0.072, 0.06, 0.049],
  ["2", 2.125, 0.083, 0.07, 0.058],
  ["2-1/2", 2.625, 0.095, 0.08, 0.065],
  ["3", 3.125, 0.109, 0.09, 0.072],
  ["3-1/2", 3.625, 0.12, 0.1, 0.083],
  ["4", 4.125, 0.134, 0.11, 0.095],
  ["5", 5.125, 0.16, 0.125, 0.109],
  ["6", 6.125, 0.192, 0.14, 0.122],
  ["8", 8.125, 0.271, 0.2, 0.17],
  ["10", 10.125, 0.338, 0.25, 0.212],
  ["12", 12.125, 0.405, 0.28, 0.254],
];
