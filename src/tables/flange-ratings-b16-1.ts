import { NPS_1_TO_12, NPS_14_TO_24, type RatingTable } from "./flange-rating-table.ts";

/**
 * Pressure-temperature ratings of grey-iron flanges, ASME B16.1 (2015), castings of ASTM A126, by class of iron and by
 * size. Gauge pressure, without shock. Each row: °F, then psi of each column; null where the column has ended. The
 * first row holds from -20 °F up; between rows the rating goes linearly with temperature; nothing above 450 °F.
 *
 * Verified: column by column, as `howVerified` says.
 */
export const ASME_B16_1_RATINGS: readonly RatingTable[] = [
  {
    group: "A126 Class B",
    system: "US",
    columns: [
      {
        flangeClass: "Class 125",
        sizes: NPS_1_TO_12,
        trust: "read",
        howVerified: "150, 200, 250, 300 and 450 °F read in a reprint, the rest from memory",
      },
      {
        flangeClass: "Class 125",
        sizes: NPS_14_TO_24,
        trust: "read",
        howVerified: "150, 200, 250 and 300 °F read in a reprint, the rest from memory",
      },
      { flangeClass: "Class 250", sizes: NPS_1_TO_12, trust: "memory", howVerified: "from memory" },
      { flangeClass: "Class 250", sizes: NPS_14_TO_24, trust: "memory", howVerified: "from memory" },
    ],
    rows: [
      [150, 200, 150, 500, 300],
      [200, 190, 135, 460, 280],
      [225, 180, 130, 440, 270],
      [250, 175, 125, 415, 260],
      [275, 170, 120, 395, 250],
      [300, 165, 110, 375, 240],
      [325, 155, 105, 355, 230],
      [353, 150, 100, 335, 220],
      [375, 145, null, 315, 210],
      [406, 140, null, 290, 200],
      [425, 130, null, 270, null],
      [450, 125, null, 250, null],
    ],
  },
  {
    group: "A126 Class A",
    system: "US",
    columns: [
      { flangeClass: "Class 125", sizes: NPS_1_TO_12, trust: "memory", howVerified: "from memory" },
      { flangeClass: "Class 250", sizes: NPS_1_TO_12, trust: "memory", howVerified: "from memory" },
    ],
    rows: [
      [150, 175, 400],
      [200, 165, 370],
      [225, 155, 355],
      [250, 150, 340],
      [275, 145, 325],
      [300, 140, 310],
      [325, 130, 295],
      [353, 125, 280],
      [375, null, 265],
      [406, null, 250],
    ],
  },
];
