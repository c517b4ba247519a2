import { namedRows } from "./named-rows.ts";

/**
 * Drive rings of industrial flywheels. SAE J620, smallest first: size, outside (pilot) diameter of the driven ring and
 * bolt circle, each as printed in millimetres and in inches; tapped holes, thread; recess G from the coupling face of the
 * flywheel to the face of the housing, mm.
 *
 * Verified: 6.5 to 18 looked up in a published extract of J620D; pilots and bolt circles of all ten in a reprint of the
 * edition after it; bolt circle, recess, holes and thread of 6.5 to 14 in a pump maker's engine manual: equal throughout.
 * Holes, thread and recess of 21 and 24 are from memory.
 */
export const SAE_FLYWHEELS = namedRows("size pilot pilotInches boltCircle boltCircleInches holes thread recess", [
  [6.5, 215.9, 8.5, 200.02, 7.875, 6, "5/16-18", 30.2],
  [7.5, 241.3, 9.5, 222.25, 8.75, 8, "5/16-18", 30.2],
  [8, 263.52, 10.375, 244.48, 9.625, 6, "3/8-16", 62],
  [10, 314.32, 12.375, 295.28, 11.625, 8, "3/8-16", 53.8],
  [11.5, 352.42, 13.875, 333.38, 13.125, 8, "3/8-16", 39.6],
  [14, 466.72, 18.375, 438.15, 17.25, 8, "1/2-13", 25.4],
  [16, 517.52, 20.375, 488.95, 19.25, 8, "1/2-13", 15.7],
  [18, 571.5, 22.5, 542.92, 21.375, 6, "5/8-11", 15.7],
  [21, 673.1, 26.5, 641.35, 25.25, 12, "5/8-11", 0],
  [24, 733.42, 28.875, 692.15, 27.25, 12, "3/4-10", 0],
]);
