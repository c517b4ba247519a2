/**
 * Motors with flange, millimetres. IEC 60072-1 and EN 50347, four poles and slower: frame (= shaft height), flange, its
 * bolt circle and spigot, shaft diameter D and length E. Two-pole shafts are smaller from frame 225, see below.
 * Mounting: B3 foot; B5 flange; B35 foot and FF flange; B14 and B34 FT face.
 *
 * Not yet verified against the standard; bolt circle = the number of the flange, spigot below bolt circle, monotone.
 */
export type IecFrameRow = readonly [
  frame: number,
  flange: string,
  boltCircle: number,
  spigot: number,
  shaftDiameter: number,
  shaftLength: number,
];

export const IEC_FRAMES: readonly IecFrameRow[] = [
  [71, "FF130", 130, 110, 14, 30],
  [80, "FF165", 165, 130, 19, 40],
  [90, "FF165", 165, 130, 24, 50],
  [100, "FF215", 215, 180, 28, 60],
  [112, "FF215", 215, 180, 28, 60],
  [132, "FF265", 265, 230, 38, 80],
  [160, "FF300", 300, 250, 42, 110],
  [180, "FF300", 300, 250, 48, 110],
  [200, "FF350", 350, 300, 55, 110],
  [225, "FF400", 400, 350, 60, 140],
  [250, "FF500", 500, 450, 65, 140],
  [280, "FF500", 500, 450, 75, 140],
  [315, "FF600", 600, 550, 80, 170],
];

/** Shafts of two-pole motors where they differ: frame, diameter, length. Not yet verified. */
export const IEC_TWO_POLE_SHAFTS: readonly (readonly [frame: number, shaftDiameter: number, shaftLength: number])[] = [
  [225, 55, 110],
  [250, 60, 140],
  [280, 65, 140],
  [315, 65, 140],
];
