import { ALL_SIZES, type RatingTable } from "./flange-rating-table.ts";

const GREY_ABOVE_PN16 = "in the ratios of the PN16 row; that grey iron goes to this PN is from memory";

/**
 * Pressure-temperature ratings of cast-iron PN flanges, EN 1092-2 (1997). Gauge pressure. Each row: °C, then bar of each
 * column. The first row holds from -10 °C up; between rows the rating goes linearly with temperature.
 *
 * Verified: column by column, as `howVerified` says. Ductile iron falls in the ratios 1, 0.97, 0.92, 0.87, 0.80, 0.70
 * at every PN, grey iron 1, 0.90, 0.84, 0.80, 0.74, 0.70, 0.60. The stronger ductile irons have lower ratios when hot,
 * 1, 0.95, 0.90, 0.80, 0.70, from memory alone. The PN itself is the rating of cold metal by definition.
 */
export const EN_1092_2_RATINGS: readonly RatingTable[] = [
  {
    group: "EN-GJS-400-15 / 400-18 (LT)",
    system: "SI",
    columns: [
      {
        flangeClass: "PN10",
        sizes: ALL_SIZES,
        trust: "memory",
        coldTrust: "read",
        howVerified: "from memory, in the ratios of the PN16 row",
      },
      { flangeClass: "PN16", sizes: ALL_SIZES, trust: "read", howVerified: "read in a reprint" },
      {
        flangeClass: "PN25",
        sizes: ALL_SIZES,
        trust: "memory",
        coldTrust: "read",
        howVerified: "from memory, in the ratios of the PN16 row",
      },
      {
        flangeClass: "PN40",
        sizes: ALL_SIZES,
        trust: "memory",
        coldTrust: "read",
        howVerified: "from memory, in the ratios of the PN16 row",
      },
    ],
    rows: [
      [120, 10, 16, 25, 40],
      [150, 9.7, 15.5, 24.3, 38.8],
      [200, 9.2, 14.7, 23, 36.8],
      [250, 8.7, 13.9, 21.8, 34.8],
      [300, 8, 12.8, 20, 32],
      [350, 7, 11.2, 17.5, 28],
    ],
  },
  {
    group: "EN-GJL-250",
    system: "SI",
    columns: [
      { flangeClass: "PN6", sizes: ALL_SIZES, trust: "read", howVerified: "read in a reprint" },
      {
        flangeClass: "PN10",
        sizes: ALL_SIZES,
        trust: "memory",
        coldTrust: "read",
        howVerified: "from memory, in the ratios of the other rows",
      },
      { flangeClass: "PN16", sizes: ALL_SIZES, trust: "read", howVerified: "read in a reprint" },
      { flangeClass: "PN25", sizes: ALL_SIZES, trust: "memory", howVerified: GREY_ABOVE_PN16 },
      { flangeClass: "PN40", sizes: ALL_SIZES, trust: "memory", howVerified: GREY_ABOVE_PN16 },
    ],
    rows: [
      [120, 6, 10, 16, 25, 40],
      [150, 5.4, 9, 14.4, 22.5, 36],
      [180, 5, 8.4, 13.4, 21, 33.6],
      [200, 4.8, 8, 12.8, 20, 32],
      [230, 4.4, 7.4, 11.8, 18.5, 29.6],
      [250, 4.2, 7, 11.2, 17.5, 28],
      [300, 3.6, 6, 9.6, 15, 24],
    ],
  },
  {
    group: "EN-GJS-500-7 / 600-3",
    system: "SI",
    columns: (["PN10", "PN16", "PN25", "PN40"] as const).map((flangeClass) => ({
      flangeClass,
      sizes: ALL_SIZES,
      trust: "memory",
      coldTrust: "read",
      howVerified: "from memory, no second source: provisional",
    })),
    rows: [
      [120, 10, 16, 25, 40],
      [150, 9.5, 15.2, 23.8, 38],
      [200, 9, 14.4, 22.5, 36],
      [250, 8, 12.8, 20, 32],
      [300, 7, 11.2, 17.5, 28],
    ],
  },
];
