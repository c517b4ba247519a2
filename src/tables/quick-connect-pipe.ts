/**
 * Quick-connect pipe of bypass, dewatering and irrigation lines. Galvanised thin-wall steel with lever couplings, mm and bar: size
 * in inches, outside diameter, wall (least, the one to take, greatest), usual working pressure (least, greatest). Aluminium
 * irrigation tubing, of which the outside diameter is the size: size in inches, wall in mm (least, greatest), usual working
 * pressure in psi (least, greatest). The coupling sets the pressure, and the least is the one to take. No standard fixes the
 * diameters of the steel: pipes of two systems do not couple.
 *
 * Verified: 12 to 20 bar, 6 m and bores to 300 mm looked up for the family of steel pipe; its walls and its sizes from 8 in up, and
 * aluminium, are from memory of practice (ASAE S263); least walls of aluminium looked up in a public standard of practice.
 */
export type QuickConnectSteelRow = readonly [
  size: string,
  outsideDiameter: number,
  leastWall: number,
  wall: number,
  greatestWall: number,
  least: number,
  greatest: number,
];

export const QUICK_CONNECT_STEEL: readonly QuickConnectSteelRow[] = [
  ["2", 50, 0.9, 1, 1.2, 12, 20],
  ["2-3/4", 70, 0.9, 1, 1.25, 12, 20],
  ["3", 76, 1, 1, 1.25, 12, 20],
  ["3-1/2", 89, 1, 1, 1.5, 12, 20],
  ["4", 108, 1, 1.5, 1.5, 12, 20],
  ["5", 133, 1.25, 1.5, 1.5, 12, 16],
  ["6", 159, 1.5, 1.5, 2, 10, 16],
  ["8", 216, 1.5, 2, 2.5, 8, 12],
  ["10", 254, 2, 2, 3, 6, 10],
  ["12", 305, 2, 2, 3, 5, 10],
];

export type QuickConnectAluminiumRow = readonly [
  size: string,
  leastWall: number,
  greatestWall: number,
  least: number,
  greatest: number,
];

export const QUICK_CONNECT_ALUMINIUM: readonly QuickConnectAluminiumRow[] = [
  ["2", 1.27, 1.65, 100, 150],
  ["3", 1.27, 1.65, 100, 150],
  ["4", 1.27, 1.65, 100, 150],
  ["5", 1.32, 1.72, 100, 150],
  ["6", 1.47, 1.92, 100, 150],
  ["7", 1.47, 1.92, 100, 150],
  ["8", 1.63, 2.11, 100, 150],
  ["10", 1.63, 2.11, 96, 125],
  ["12", 1.83, 2.38, 90, 117],
];
