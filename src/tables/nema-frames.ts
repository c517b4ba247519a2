/**
 * Foot-mounted motors, inches. NEMA MG 1 Part 4, T and TS frames, in printed order: frame, shaft height D, foot holes 2E
 * and 2F, shaft diameter U, shaft length N-W. D is the first two digits of the frame divided by 4. TS shafts are short,
 * for direct coupling only, never belts.
 *
 * Verified: looked up in a hydraulics data book (table 4.4.1, which prints E, half of 2E), and D, 2F, U of frames 143T to
 * 365TS in a second listing.
 */
export type NemaFrameRow = readonly [frame: string, D: number, twoE: number, twoF: number, U: number, NW: number];

export const NEMA_FRAMES: readonly NemaFrameRow[] = [
  ["143T", 3.5, 5.5, 4, 0.875, 2.25],
  ["145T", 3.5, 5.5, 5, 0.875, 2.25],
  ["182T", 4.5, 7.5, 4.5, 1.125, 2.75],
  ["184T", 4.5, 7.5, 5.5, 1.125, 2.75],
  ["213T", 5.25, 8.5, 5.5, 1.375, 3.38],
  ["215T", 5.25, 8.5, 7, 1.375, 3.38],
  ["254T", 6.25, 10, 8.25, 1.625, 4],
  ["256T", 6.25, 10, 10, 1.625, 4],
  ["284T", 7, 11, 9.5, 1.875, 4.62],
  ["284TS", 7, 11, 9.5, 1.625, 3.25],
  ["286T", 7, 11, 11, 1.875, 4.62],
  ["286TS", 7, 11, 11, 1.625, 3.25],
  ["324T", 8, 12.5, 10.5, 2.125, 5.25],
  ["324TS", 8, 12.5, 10.5, 1.875, 3.75],
  ["326T", 8, 12.5, 12, 2.125, 5.25],
  ["326TS", 8, 12.5, 12, 1.875, 3.75],
  ["364T", 9, 14, 11.25, 2.375, 5.88],
  ["364TS", 9, 14, 11.25, 1.875, 3.75],
  ["365T", 9, 14, 12.25, 2.375, 5.88],
  ["365TS", 9, 14, 12.25, 1.875, 3.75],
  ["404T", 10, 16, 12.25, 2.875, 7.25],
  ["404TS", 10, 16, 12.25, 2.125, 4.25],
  ["405T", 10, 16, 13.75, 2.875, 7.25],
  ["405TS", 10, 16, 13.75, 2.125, 4.25],
  ["444T", 11, 18, 14.5, 3.375, 8.5],
  ["444TS", 11, 18, 14.5, 2.375, 4.75],
  ["445T", 11, 18, 16.5, 3.375, 8.5],
  ["445TS", 11, 18, 16.5, 2.375, 4.75],
  ["447T", 11, 18, 20, 3.375, 8.5],
  ["447TS", 11, 18, 20, 2.375, 4.75],
  ["449T", 11, 18, 25, 3.375, 8.5],
  ["449TS", 11, 18, 25, 2.375, 4.75],
];
