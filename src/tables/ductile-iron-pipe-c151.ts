/**
 * Ductile-iron pipe, inches. AWWA C151/A21.51: nominal size, outside diameter, nominal wall of the standard
 * pressure classes (DUCTILE_IRON_PRESSURE_CLASSES, psi), nominal wall of the special thickness classes
 * (DUCTILE_IRON_THICKNESS_CLASSES); null where the standard has none. Last, from AWWA C104/A21.4, the standard
 * thickness of the cement-mortar lining; double thickness is twice that.
 *
 * Verified: outside diameters and all walls of the pressure classes compared with an open engineering data book that
 * cites AWWA C151-17 (18 sizes, equal throughout, with its dashes); special classes of 4 to 54 in with a pipe maker's
 * catalogue, table 3-12 (15 sizes, equal), those of 3 in with a flow-meter maker's manual (table A4, equal but for one
 * misprint there). Special classes of 60 and 64 in and the linings are from memory. Some pages print an older edition's
 * walls under the pressure classes (12 in 0.31). Held by test against the pressure-class rule of AWWA C150 (calculated
 * wall, service allowance and casting allowance, never below the printed least) and the even steps of the special classes.
 */
export type DuctileIronRow = readonly [
  size: string,
  outsideDiameter: number,
  pressureClassWalls: readonly (number | null)[],
  thicknessClassWalls: readonly (number | null)[],
  lining: number,
];

export const DUCTILE_IRON_PRESSURE_CLASSES = [150, 200, 250, 300, 350] as const;
export const DUCTILE_IRON_THICKNESS_CLASSES = [50, 51, 52, 53, 54, 55, 56] as const;

export const DUCTILE_IRON_C151: readonly DuctileIronRow[] = [
  ["3", 3.96, [null, null, null, null, 0.25], [null, 0.25, 0.28, 0.31, 0.34, 0.37, 0.4], 1 / 16],
  ["4", 4.8, [null, null, null, null, 0.25], [null, 0.26, 0.29, 0.32, 0.35, 0.38, 0.41], 1 / 16],
  ["6", 6.9, [null, null, null, null, 0.25], [0.25, 0.28, 0.31, 0.34, 0.37, 0.4, 0.43], 1 / 16],
  ["8", 9.05, [null, null, null, null, 0.25], [0.27, 0.3, 0.33, 0.36, 0.39, 0.42, 0.45], 1 / 16],
  ["10", 11.1, [null, null, null, null, 0.26], [0.29, 0.32, 0.35, 0.38, 0.41, 0.44, 0.47], 1 / 16],
  ["12", 13.2, [null, null, null, null, 0.28], [0.31, 0.34, 0.37, 0.4, 0.43, 0.46, 0.49], 1 / 16],
  ["14", 15.3, [null, null, 0.28, 0.3, 0.31], [0.33, 0.36, 0.39, 0.42, 0.45, 0.48, 0.51], 3 / 32],
  ["16", 17.4, [null, null, 0.3, 0.32, 0.34], [0.34, 0.37, 0.4, 0.43, 0.46, 0.49, 0.52], 3 / 32],
  ["18", 19.5, [null, null, 0.31, 0.34, 0.36], [0.35, 0.38, 0.41, 0.44, 0.47, 0.5, 0.53], 3 / 32],
  ["20", 21.6, [null, null, 0.33, 0.36, 0.38], [0.36, 0.39, 0.42, 0.45, 0.48, 0.51, 0.54], 3 / 32],
  ["24", 25.8, [null, 0.33, 0.37, 0.4, 0.43], [0.38, 0.41, 0.44, 0.47, 0.5, 0.53, 0.56], 3 / 32],
  ["30", 32, [0.34, 0.38, 0.42, 0.45, 0.49], [0.39, 0.43, 0.47, 0.51, 0.55, 0.59, 0.63], 1 / 8],
  ["36", 38.3, [0.38, 0.42, 0.47, 0.51, 0.56], [0.43, 0.48, 0.53, 0.58, 0.63, 0.68, 0.73], 1 / 8],
  ["42", 44.5, [0.41, 0.47, 0.52, 0.57, 0.63], [0.47, 0.53, 0.59, 0.65, 0.71, 0.77, 0.83], 1 / 8],
  ["48", 50.8, [0.46, 0.52, 0.58, 0.64, 0.7], [0.51, 0.58, 0.65, 0.72, 0.79, 0.86, 0.93], 1 / 8],
  ["54", 57.56, [0.51, 0.58, 0.65, 0.72, 0.79], [0.57, 0.65, 0.73, 0.81, 0.89, 0.97, 1.05], 1 / 8],
  ["60", 61.61, [0.54, 0.61, 0.68, 0.76, 0.83], [0.61, 0.69, 0.77, 0.85, 0.93, 1.01, 1.09], 1 / 8],
  ["64", 65.67, [0.56, 0.64, 0.72, 0.8, 0.87], [0.64, 0.72, 0.8, 0.88, 0.96, 1.04, 1.12], 1 / 8],
];
