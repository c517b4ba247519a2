import { namedRows } from "./named-rows.ts";

/**
 * Flanges of engine flywheel housings. SAE J617 (1992, 2014 and 2020 agree on these nominals), largest first: number,
 * pilot bore, bolt circle and flange outside diameter, each as printed in millimetres and in inches; tapped holes, their
 * inch and metric thread; crankshaft flange to housing face, mm.
 *
 * Verified: pilot, bolt circle and holes of Nos. 6, 4, 2, 1, 0, 00 looked up in a summary of J617-2020; every inch figure,
 * hole and inch thread, and the depth (3-15/16 in, of Nos. 5 and 6 2-13/16 in), in a clutch maker's manual of 2012, p. 148:
 * equal throughout. Metric threads from memory but for that summary; No. 1 is M10 there and M12 in practice: measure.
 */
export const SAE_HOUSINGS = namedRows(
  "number pilot pilotInches boltCircle boltCircleInches flange flangeInches holes inchThread metricThread depth",
  [
    ["00", 787.4, 31, 850.9, 33.5, 882.7, 34.75, 16, "1/2-13", "M12", 100.1],
    ["0", 647.7, 25.5, 679.45, 26.75, 711.2, 28, 16, "1/2-13", "M12", 100.1],
    ["1/2", 584.2, 23, 619.12, 24.375, 647.7, 25.5, 12, "1/2-13", "M12", 100.1],
    ["1", 511.18, 20.125, 530.22, 20.875, 552.4, 21.75, 12, "7/16-14", "M10", 100.1],
    ["2", 447.68, 17.625, 466.72, 18.375, 488.9, 19.25, 12, "3/8-16", "M10", 100.1],
    ["3", 409.58, 16.125, 428.62, 16.875, 450.8, 17.75, 12, "3/8-16", "M10", 100.1],
    ["4", 361.95, 14.25, 381, 15, 403.2, 15.88, 12, "3/8-16", "M10", 100.1],
    ["5", 314.32, 12.375, 333.38, 13.125, 355.6, 14, 8, "3/8-16", "M10", 71.4],
    ["6", 266.7, 10.5, 285.75, 11.25, 307.8, 12.12, 8, "3/8-16", "M10", 71.4],
  ],
);
