/**
 * Close-coupled pump motors, inches. NEMA MG 1 Part 4, types JM (short shaft, seal on the shaft) and JP (long shaft), in
 * printed order: frames, shaft at the impeller U, shaft behind it EL and EM, EQ, ET, shaft length from the face AH, bolt
 * circle AJ, rabbet AK, thread of the face.
 *
 * Verified: 143JM to 286JP looked up in a one-page guide to MG 1; all twelve rows lie inside the limits that an open
 * engineering data book prints of MG 1, 18.33 and 18.34. The maker's drawing decides before metal is cut.
 */
export type NemaPumpShaftRow = readonly [
  frames: readonly [string, string],
  U: number,
  EL: number,
  EM: number,
  EQ: number,
  ET: number,
  AH: number,
  AJ: number,
  AK: number,
  faceThread: string,
];

export const NEMA_PUMP_SHAFTS: readonly NemaPumpShaftRow[] = [
  [["143JM", "145JM"], 0.875, 1.156, 1, 0.625, 2.875, 4.25, 5.875, 4.5, "3/8-16"],
  [["143JP", "145JP"], 0.875, 1.156, 1, 1.5625, 5.9375, 7.3125, 5.875, 4.5, "3/8-16"],
  [["182JM", "184JM"], 0.875, 1.25, 1, 0.625, 2.875, 4.25, 5.875, 4.5, "3/8-16"],
  [["182JP", "184JP"], 0.875, 1.25, 1, 1.5625, 5.9375, 7.3125, 5.875, 4.5, "3/8-16"],
  [["213JM", "215JM"], 0.875, 1.25, 1, 0.625, 2.875, 4.25, 7.25, 8.5, "1/2-13"],
  [["213JP", "215JP"], 1.25, 1.75, 1.375, 2.375, 5.875, 8.125, 7.25, 8.5, "1/2-13"],
  [["254JM", "256JM"], 1.25, 1.75, 1.375, 0.625, 3, 5.25, 7.25, 8.5, "1/2-13"],
  [["254JP", "256JP"], 1.25, 1.75, 1.375, 2.375, 5.875, 8.125, 7.25, 8.5, "1/2-13"],
  [["284JM", "286JM"], 1.25, 1.75, 1.375, 0.625, 3, 5.25, 11, 12.5, "5/8-11"],
  [["284JP", "286JP"], 1.25, 1.75, 1.375, 2.375, 5.875, 8.125, 11, 12.5, "5/8-11"],
  [["324JM", "326JM"], 1.25, 1.75, 1.375, 0.625, 3, 5.25, 11, 12.5, "5/8-11"],
  [["324JP", "326JP"], 1.25, 1.75, 1.375, 2.375, 5.875, 8.125, 11, 12.5, "5/8-11"],
];
