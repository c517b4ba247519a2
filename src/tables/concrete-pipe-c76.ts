/**
 * Reinforced concrete pipe, inches: designated diameter, which is the bore, its metric designation, and walls A, B and C; null where
 * there is none. ASTM C76. The bore may be 1 to 1.5 % off.
 *
 * Verified: diameters and wall B looked up in a road department's design manual, equal to the bore in feet and 1 in; walls A and C
 * and the metric designations from memory, C being B and 0.75 in.
 */
export type ConcretePipeRow = readonly [
  inches: number,
  millimetres: number,
  wallA: number,
  wallB: number,
  wallC: number | null,
];

export const CONCRETE_PIPE_C76: readonly ConcretePipeRow[] = [
  [12, 300, 1.75, 2, null],
  [15, 375, 1.875, 2.25, null],
  [18, 450, 2, 2.5, null],
  [21, 525, 2.25, 2.75, null],
  [24, 600, 2.5, 3, 3.75],
  [27, 675, 2.625, 3.25, 4],
  [30, 750, 2.75, 3.5, 4.25],
  [33, 825, 2.875, 3.75, 4.5],
  [36, 900, 3, 4, 4.75],
  [42, 1050, 3.5, 4.5, 5.25],
  [48, 1200, 4, 5, 5.75],
  [54, 1350, 4.5, 5.5, 6.25],
  [60, 1500, 5, 6, 6.75],
  [66, 1650, 5.5, 6.5, 7.25],
  [72, 1800, 6, 7, 7.75],
  [78, 1950, 6.5, 7.5, 8.25],
  [84, 2100, 7, 8, 8.75],
  [90, 2250, 7.5, 8.5, 9.25],
  [96, 2400, 8, 9, 9.75],
  [102, 2550, 8.5, 9.5, 10.25],
  [108, 2700, 9, 10, 10.75],
];
