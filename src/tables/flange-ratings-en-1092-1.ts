import { ALL_SIZES, type RatedGroup, type RatingRow, type RatingTable } from "./flange-rating-table.ts";

/**
 * Pressure-temperature ratings of steel PN flanges, EN 1092-1 (2007 + A1:2013), by material group: 3E0 carbon steel
 * (P245GH, P250GH, GP240GH, SA-105), 10E0 304L, 11E0 304, 12E0 321 and 347, 13E0 316L, 14E0 316 and CF8M, 15E0 316Ti,
 * 16E0 duplex. Gauge pressure. Each row: °C, then bar of PN6, 10, 16, 25 and 40. The first row, the PN itself, holds from
 * -10 °C up; between rows the rating goes linearly with temperature, never between PNs; nothing above the last.
 *
 * Verified: no pressure but those of the first row, which define the PN, was read anywhere; groups 3E0 and 13E0 to 16E0
 * were looked up, the others are from memory. Every figure follows from the rule PN × (R/1.5)/140, at most the PN, cut to
 * 0.1 bar, with R the proof strength at temperature in MPa. Group 3E1 (P280GH, P295GH, SA-216 WCB) is not held: its
 * strengths could not be checked, and 3E0, which is lower, is used for its steels.
 */
const PNS = ["PN6", "PN10", "PN16", "PN25", "PN40"] as const;

function group(name: RatedGroup, howVerified: string, rows: readonly RatingRow[]): RatingTable {
  const columns = PNS.map(
    (flangeClass) => ({ flangeClass, sizes: ALL_SIZES, trust: "memory", coldTrust: "read", howVerified }) as const,
  );
  return { group: name, system: "SI", columns, rows };
}

export const EN_1092_1_RATINGS: readonly RatingTable[] = [
  group("3E0", "from memory, each figure met by the rule", [
    [50, 6, 10, 16, 25, 40],
    [100, 5.5, 9.2, 14.8, 23.2, 37.1],
    [150, 5.2, 8.8, 14, 22, 35.2],
    [200, 5, 8.3, 13.3, 20.8, 33.3],
    [250, 4.5, 7.6, 12.1, 19, 30.4],
    [300, 4.1, 6.9, 11, 17.2, 27.6],
  ]),
  group("10E0", "from memory; worked by the rule from strengths of EN 10028-7, from memory", [
    [50, 6, 10, 16, 25, 40],
    [100, 5.1, 8.6, 13.7, 21.5, 34.4],
    [150, 4.6, 7.7, 12.3, 19.2, 30.8],
    [200, 4.2, 7, 11.2, 17.5, 28],
    [250, 3.9, 6.5, 10.4, 16.3, 26],
    [300, 3.6, 6, 9.6, 15.1, 24.1],
  ]),
  group("11E0", "from memory; worked by the rule from strengths of EN 10028-7, from memory", [
    [50, 6, 10, 16, 25, 40],
    [100, 5.4, 9, 14.5, 22.7, 36.3],
    [150, 4.9, 8.1, 13.1, 20.4, 32.7],
    [200, 4.4, 7.4, 11.9, 18.6, 29.9],
    [250, 4.1, 6.9, 11, 17.2, 27.6],
    [300, 3.8, 6.4, 10.2, 16, 25.7],
  ]),
  group("12E0", "from memory; worked by the rule from strengths of EN 10028-7, from memory; last figure doubtful", [
    [50, 6, 10, 16, 25, 40],
    [100, 5.9, 9.9, 15.8, 24.7, 39.6],
    [150, 5.6, 9.3, 14.9, 23.3, 37.3],
    [200, 5.3, 8.8, 14.1, 22.1, 35.4],
    [250, 5, 8.4, 13.4, 21, 33.7],
    [300, 4.7, 7.9, 12.7, 19.8, 31.8],
  ]),
  group("13E0", "from memory; worked by the rule from strengths of EN 10028-7, from memory; the PN40 row agrees", [
    [50, 6, 10, 16, 25, 40],
    [100, 5.6, 9.4, 15.1, 23.6, 37.9],
    [150, 5.1, 8.6, 13.7, 21.5, 34.4],
    [200, 4.7, 7.9, 12.7, 19.8, 31.8],
    [250, 4.4, 7.4, 11.9, 18.6, 29.9],
    [300, 4.1, 6.9, 11, 17.2, 27.6],
  ]),
  group("14E0", "from memory; worked by the rule from strengths of EN 10028-7, from memory; the PN40 row agrees", [
    [50, 6, 10, 16, 25, 40],
    [100, 6, 10, 16, 25, 40],
    [150, 5.4, 9, 14.5, 22.7, 36.3],
    [200, 5, 8.4, 13.4, 21, 33.7],
    [250, 4.7, 7.9, 12.7, 19.8, 31.8],
    [300, 4.4, 7.4, 11.8, 18.5, 29.7],
  ]),
  group("15E0", "from memory; worked by the rule from strengths of EN 10028-7, from memory; the PN40 row agrees", [
    [50, 6, 10, 16, 25, 40],
    [100, 6, 10, 16, 25, 40],
    [150, 5.8, 9.8, 15.6, 24.5, 39.2],
    [200, 5.6, 9.3, 14.9, 23.3, 37.3],
    [250, 5.3, 8.8, 14.1, 22.1, 35.4],
    [300, 5, 8.3, 13.3, 20.8, 33.3],
  ]),
  group("16E0", "from memory; the rule gives the whole PN", [
    [50, 6, 10, 16, 25, 40],
    [100, 6, 10, 16, 25, 40],
    [150, 6, 10, 16, 25, 40],
    [200, 6, 10, 16, 25, 40],
    [250, 6, 10, 16, 25, 40],
  ]),
];
