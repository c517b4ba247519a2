/**
 * Polyethylene pipe by dimension ratio (DR), inches: nominal size, average outside diameter. IPS sizes from ASTM
 * F714 (ASTM D3035 below 3 in), DIPS sizes from AWWA C906, which are the ductile-iron diameters of AWWA C151.
 * In rising outside diameter.
 *
 * Least wall = outside diameter / DR. Mean wall = 1.06 times the least wall, so the average inside diameter is
 * OD − 2.12 OD/DR, the industry's design rule (PPI Handbook of Polyethylene Pipe). No wall below LEAST_WALL is
 * made (ASTM D3035) nor, in common practice, a least wall above GREATEST_WALL; such sizes are left out.
 *
 * Verified: from memory of the standards. The IPS outside diameters and which sizes have which DR were compared
 * with the ASTM F2619 tables of the open library fluids 1.0.22 (tests/slow/pipe-oracle.test.ts); the DIPS
 * diameters with those of AWWA C151-17 in an open engineering data book and, from 4 in, with the list of AWWA C900 there:
 * equal. The fraction sizes 5-3/8, 7-1/8, 13-3/8 and 21-1/2 have no second source.
 */
export type PolyethyleneRow = readonly [size: string, outsideDiameter: number];

export const POLYETHYLENE_DIMENSION_RATIOS = [7, 7.3, 9, 11, 13.5, 15.5, 17, 19, 21, 26, 32.5, 41] as const;

/** Mean wall per least wall. */
export const POLYETHYLENE_MEAN_WALL = 1.06;

/** Inches. */
export const POLYETHYLENE_LEAST_WALL = 0.062;

/** Inches. Least wall of the thickest pipe in the ASTM F2619 tables is 3.43 in. */
export const POLYETHYLENE_GREATEST_WALL = 3.5;

export const POLYETHYLENE_IPS: readonly PolyethyleneRow[] = [
  ["1/2", 0.84],
  ["3/4", 1.05],
  ["1", 1.315],
  ["1-1/4", 1.66],
  ["1-1/2", 1.9],
  ["2", 2.375],
  ["3", 3.5],
  ["4", 4.5],
  ["5-3/8", 5.375],
  ["5", 5.563],
  ["6", 6.625],
  ["7-1/8", 7.125],
  ["8", 8.625],
  ["10", 10.75],
  ["12", 12.75],
  ["13-3/8", 13.375],
  ["14", 14],
  ["16", 16],
  ["18", 18],
  ["20", 20],
  ["21-1/2", 21.5],
  ["22", 22],
  ["24", 24],
  ["26", 26],
  ["28", 28],
  ["30", 30],
  ["32", 32],
  ["34", 34],
  ["36", 36],
  ["42", 42],
  ["48", 48],
  ["54", 54],
];

export const POLYETHYLENE_DIPS: readonly PolyethyleneRow[] = [
  ["3", 3.96],
  ["4", 4.8],
  ["6", 6.9],
  ["8", 9.05],
  ["10", 11.1],
  ["12", 13.2],
  ["14", 15.3],
  ["16", 17.4],
  ["18", 19.5],
  ["20", 21.6],
  ["24", 25.8],
  ["30", 32],
  ["36", 38.3],
  ["42", 44.5],
  ["48", 50.8],
];
