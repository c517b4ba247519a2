import { NPS_1_TO_24, type RatingTable } from "./flange-rating-table.ts";

/**
 * Pressure-temperature ratings of ductile-iron flanges, ASME B16.42 (2016), castings of ASTM A395. Gauge pressure,
 * without shock, at the temperature of the metal. Each row: temperature, then the rating of each column. The first row
 * holds from -20 °F (-29 °C) up; between rows the rating goes linearly with temperature; above the last there is none.
 * The psi, °F and the bar, °C figures are two tables of the standard, not one converted.
 *
 * Verified: column by column, as `howVerified` says. The bar figures of Class 300 are not the standard's but computed
 * from its psi figures.
 */
export const ASME_B16_42_RATINGS: readonly RatingTable[] = [
  {
    group: "A395 ductile iron",
    system: "US",
    columns: [
      {
        flangeClass: "Class 150",
        sizes: NPS_1_TO_24,
        trust: "read",
        howVerified: "200 to 650 °F read in a reprint, 100 °F from memory and met by one printed data line",
      },
      { flangeClass: "Class 300", sizes: NPS_1_TO_24, trust: "memory", howVerified: "from memory, no second source" },
    ],
    rows: [
      [100, 250, 640],
      [200, 235, 600],
      [300, 215, 565],
      [400, 200, 525],
      [500, 170, 495],
      [600, 140, 465],
      [650, 125, 450],
    ],
  },
  {
    group: "A395 ductile iron",
    system: "SI",
    columns: [
      {
        flangeClass: "Class 150",
        sizes: NPS_1_TO_24,
        trust: "memory",
        howVerified: "from memory, equal to the psi table interpolated",
      },
      {
        flangeClass: "Class 300",
        sizes: NPS_1_TO_24,
        trust: "computed",
        howVerified: "computed from the psi table, which is from memory",
      },
    ],
    rows: [
      [38, 17.2, 44.1],
      [50, 17, 43.5],
      [100, 16, 41.1],
      [150, 14.8, 38.9],
      [200, 13.9, 36.4],
      [250, 12.1, 34.5],
      [300, 10.2, 32.6],
      [343, 8.6, 31],
    ],
  },
];
