import { namedRows } from "./named-rows.ts";

/**
 * Flanges of engine flywheel housings. SAE J617 (1992, 2014 and 2020 agree on these nominals), largest first: number,
 * pilot bore, bolt circle and flange outside diameter, each as printed in millimetres and in inches; tapped holes, their
 * inch and metric thread; crankshaft flange to housing face, mm (null where not known).
 *
 * Verified: pilot, bolt circle and holes of Nos. 6, 4, 2, 1, 0, 00 looked up in a summary of J617-2020; pilots of 3 and
 * 1/2 in a service manual; No. 5, the bolt circles of 3 and 1/2, threads in part and every outside diameter from memory.
 * The metric thread of No. 1 is M10 in that summary and M12 in practice: measure.
 */
export const SAE_HOUSINGS = namedRows(
  "number pilot pilotInches boltCircle boltCircleInches flange flangeInches holes inchThread metricThread depth",
  [
    ["00", 787.4, 31, 850.9, 33.5, 882.7, 34.75, 16, "1/2-13", "M12", 100.1],
    ["0", 647.7, 25.5, 679.45, 26.75, 711.2, 28, 16, "1/2-13", "M12", 100.1],
    ["1/2", 584.2, 23, 619.12, 24.375, 647.7, 25.5, 12, "1/2-13", "M12", null],
    ["1", 511.18, 20.125, 530.22, 20.875, 552.4, 21.75, 12, "7/16-14", "M10", 100.1],
    ["2", 447.68, 17.625, 466.72, 18.375, 488.9, 19.25, 12, "3/8-16", "M10", 100.1],
    ["3", 409.58, 16.125, 428.62, 16.875, 450.8, 17.75, 12, "3/8-16", "M10", null],
    ["4", 361.95, 14.25, 381, 15, 403.2, 15.88, 12, "3/8-16", "M10", 100.1],
    ["5", 314.32, 12.375, 333.38, 13.125, 355.6, 14, 8, "3/8-16", "M10", 71.4],
    ["6", 266.7, 10.5, 285.75, 11.25, 307.8, 12.12, 8, "3/8-16", "M10", 71.4],
  ],
);
