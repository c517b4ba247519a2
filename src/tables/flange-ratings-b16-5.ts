import { NPS_HALF_TO_24, type RatingTable } from "./flange-rating-table.ts";

/**
 * Pressure-temperature ratings of steel flanges, ASME B16.5 (2017), by material group: 1.1 carbon steel (A216 WCB, A105),
 * 1.2 (A216 WCC, A352 LCC), 2.1 (A351 CF8, A182 F304), 2.2 (A351 CF8M, A182 F316), 2.3 (A182 F304L, F316L), 2.8 duplex,
 * 3.17 (A351 CN7M, alloy 20). Gauge pressure, without shock, at the temperature of the metal. Each row: temperature, then
 * the rating of each column. The first row holds from -20 °F (-29 °C) up; between rows the rating goes linearly with temperature; above the last there is none here.
 * The psi, °F and the bar, °C figures are two tables of the standard, not one converted.
 *
 * Verified: column by column, as `howVerified` says. Every column falls or stays with temperature, and the two unit
 * systems agree within 3 %.
 */
export const ASME_B16_5_RATINGS: readonly RatingTable[] = [
  {
    group: "1.1",
    system: "US",
    columns: [
      {
        flangeClass: "Class 150",
        sizes: NPS_HALF_TO_24,
        trust: "read",
        howVerified: "to 650 °F read in two reprints, above from memory",
      },
      {
        flangeClass: "Class 300",
        sizes: NPS_HALF_TO_24,
        trust: "read",
        howVerified: "to 650 °F read in a reprint, above from memory; editions before 2009 had 675 psi at 200 °F",
      },
    ],
    rows: [
      [100, 285, 740],
      [200, 260, 680],
      [300, 230, 655],
      [400, 200, 635],
      [500, 170, 605],
      [600, 140, 570],
      [650, 125, 550],
      [700, 110, 530],
      [750, 95, 505],
      [800, 80, 410],
    ],
  },
  {
    group: "1.1",
    system: "SI",
    columns: [
      { flangeClass: "Class 150", sizes: NPS_HALF_TO_24, trust: "read", howVerified: "read in three reprints" },
      { flangeClass: "Class 300", sizes: NPS_HALF_TO_24, trust: "read", howVerified: "read in three reprints" },
    ],
    rows: [
      [38, 19.6, 51.1],
      [50, 19.2, 50.1],
      [100, 17.7, 46.6],
      [150, 15.8, 45.1],
      [200, 13.8, 43.8],
      [250, 12.1, 41.9],
      [300, 10.2, 39.8],
      [325, 9.3, 38.7],
      [350, 8.4, 37.6],
      [375, 7.4, 36.4],
      [400, 6.5, 34.7],
      [425, 5.5, 28.8],
    ],
  },
  {
    group: "1.2",
    system: "US",
    columns: [
      {
        flangeClass: "Class 150",
        sizes: NPS_HALF_TO_24,
        trust: "read",
        howVerified: "read in a reprint of the 2003 edition",
      },
      {
        flangeClass: "Class 300",
        sizes: NPS_HALF_TO_24,
        trust: "read",
        howVerified: "read in a reprint of the 2003 edition",
      },
    ],
    rows: [
      [100, 290, 750],
      [200, 260, 750],
      [300, 230, 730],
      [400, 200, 705],
      [500, 170, 665],
      [600, 140, 605],
      [650, 125, 590],
    ],
  },
  {
    group: "1.2",
    system: "SI",
    columns: [
      { flangeClass: "Class 150", sizes: NPS_HALF_TO_24, trust: "read", howVerified: "read in a reprint" },
      { flangeClass: "Class 300", sizes: NPS_HALF_TO_24, trust: "read", howVerified: "read in a reprint" },
    ],
    rows: [
      [38, 19.8, 51.7],
      [50, 19.5, 51.7],
      [100, 17.7, 51.5],
      [150, 15.8, 50.2],
      [200, 13.8, 48.6],
      [250, 12.1, 46.3],
      [300, 10.2, 42.9],
    ],
  },
  {
    group: "2.1",
    system: "US",
    columns: [
      { flangeClass: "Class 150", sizes: NPS_HALF_TO_24, trust: "memory", howVerified: "from memory" },
      { flangeClass: "Class 300", sizes: NPS_HALF_TO_24, trust: "memory", howVerified: "from memory" },
    ],
    rows: [
      [100, 275, 720],
      [200, 230, 600],
      [300, 205, 540],
      [400, 190, 495],
      [500, 170, 465],
      [600, 140, 440],
      [650, 125, 430],
    ],
  },
  {
    group: "2.1",
    system: "SI",
    columns: [
      { flangeClass: "Class 150", sizes: NPS_HALF_TO_24, trust: "memory", howVerified: "from memory" },
      { flangeClass: "Class 300", sizes: NPS_HALF_TO_24, trust: "memory", howVerified: "from memory" },
    ],
    rows: [
      [38, 19, 49.6],
      [50, 18.3, 47.8],
      [100, 15.7, 40.9],
      [150, 14.2, 37],
      [200, 13.2, 34.5],
      [250, 12.1, 32.5],
      [300, 10.2, 30.9],
    ],
  },
  {
    group: "2.2",
    system: "US",
    columns: [
      {
        flangeClass: "Class 150",
        sizes: NPS_HALF_TO_24,
        trust: "memory",
        howVerified: "from memory, agrees with the bar table",
      },
      {
        flangeClass: "Class 300",
        sizes: NPS_HALF_TO_24,
        trust: "memory",
        howVerified: "from memory, agrees with the bar table",
      },
    ],
    rows: [
      [100, 275, 720],
      [200, 235, 620],
      [300, 215, 560],
      [400, 195, 515],
      [500, 170, 480],
      [600, 140, 450],
      [650, 125, 440],
    ],
  },
  {
    group: "2.2",
    system: "SI",
    columns: [
      {
        flangeClass: "Class 150",
        sizes: NPS_HALF_TO_24,
        trust: "read",
        howVerified: "to 200 °C read in two reprints, above in one",
      },
      {
        flangeClass: "Class 300",
        sizes: NPS_HALF_TO_24,
        trust: "read",
        howVerified: "to 200 °C read in two reprints, above in one",
      },
    ],
    rows: [
      [38, 19, 49.6],
      [50, 18.4, 48.1],
      [100, 16.2, 42.2],
      [150, 14.8, 38.5],
      [200, 13.7, 35.7],
      [250, 12.1, 33.4],
      [300, 10.2, 31.6],
      [350, 8.4, 30.3],
      [400, 6.5, 29.4],
    ],
  },
  {
    group: "2.3",
    system: "US",
    columns: [
      { flangeClass: "Class 150", sizes: NPS_HALF_TO_24, trust: "memory", howVerified: "from memory" },
      { flangeClass: "Class 300", sizes: NPS_HALF_TO_24, trust: "memory", howVerified: "from memory" },
    ],
    rows: [
      [100, 230, 600],
      [200, 195, 510],
      [300, 175, 455],
      [400, 160, 420],
      [500, 150, 395],
      [600, 140, 370],
      [650, 125, 365],
    ],
  },
  {
    group: "2.3",
    system: "SI",
    columns: [
      {
        flangeClass: "Class 150",
        sizes: NPS_HALF_TO_24,
        trust: "read",
        howVerified: "read in an open table of ratings",
      },
      {
        flangeClass: "Class 300",
        sizes: NPS_HALF_TO_24,
        trust: "read",
        howVerified: "read in an open table of ratings",
      },
    ],
    rows: [
      [38, 15.9, 41.4],
      [50, 15.3, 40],
      [100, 13.3, 34.8],
      [150, 12, 31.4],
      [200, 11.2, 29.2],
      [250, 10.5, 27.5],
      [300, 10, 26.1],
    ],
  },
  {
    group: "2.8",
    system: "US",
    columns: [
      { flangeClass: "Class 150", sizes: NPS_HALF_TO_24, trust: "memory", howVerified: "from memory" },
      { flangeClass: "Class 300", sizes: NPS_HALF_TO_24, trust: "memory", howVerified: "from memory" },
    ],
    rows: [
      [100, 290, 750],
      [200, 260, 745],
      [300, 230, 665],
      [400, 200, 615],
      [500, 170, 580],
      [600, 140, 555],
    ],
  },
  {
    group: "2.8",
    system: "SI",
    columns: [
      { flangeClass: "Class 150", sizes: NPS_HALF_TO_24, trust: "memory", howVerified: "from memory" },
      { flangeClass: "Class 300", sizes: NPS_HALF_TO_24, trust: "memory", howVerified: "from memory" },
    ],
    rows: [
      [38, 20, 51.7],
      [50, 19.5, 51.7],
      [100, 17.7, 50.7],
      [150, 15.8, 45.9],
      [200, 13.8, 42.7],
      [250, 12.1, 40.5],
      [300, 10.2, 38.9],
    ],
  },
  {
    group: "3.17",
    system: "US",
    columns: [
      { flangeClass: "Class 150", sizes: NPS_HALF_TO_24, trust: "memory", howVerified: "from memory" },
      { flangeClass: "Class 300", sizes: NPS_HALF_TO_24, trust: "memory", howVerified: "from memory" },
    ],
    rows: [
      [100, 230, 600],
      [200, 200, 520],
      [300, 180, 465],
      [400, 160, 420],
      [500, 150, 390],
      [600, 140, 360],
    ],
  },
  {
    group: "3.17",
    system: "SI",
    columns: [
      { flangeClass: "Class 150", sizes: NPS_HALF_TO_24, trust: "memory", howVerified: "from memory" },
      { flangeClass: "Class 300", sizes: NPS_HALF_TO_24, trust: "memory", howVerified: "from memory" },
    ],
    rows: [
      [38, 15.9, 41.4],
      [50, 15.4, 40.1],
      [100, 13.5, 35.3],
      [150, 12.3, 32],
      [200, 11.3, 29.4],
      [250, 10.4, 27.2],
    ],
  },
];
