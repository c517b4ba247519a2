/**
 * Usual working pressure of hose at 20 °C, psi, and the vacuum it stands, inHg, by nominal bore in inches: least and greatest of
 * what makers give. The least is the one to take; the maker's figure replaces it, and the coupling often holds less than the hose.
 *
 * Verified: common practice, no source. Suction hose of PVC and rubber looked up with the couplings of one maker; lay-flat hose
 * lies within the types of EN ISO 8029 (4, 7 and 10 bar at 23 °C, looked up).
 */
export type HoseRow = readonly [inches: number, least: number, greatest: number, vacuum: number];

export const HOSE_RATINGS = {
  PVC_SUCTION: [
    [1, 80, 120, 29],
    [1.5, 65, 100, 29],
    [2, 55, 90, 29],
    [2.5, 50, 75, 29],
    [3, 45, 70, 29],
    [4, 35, 60, 29],
    [5, 30, 50, 28],
    [6, 25, 50, 28],
    [8, 20, 40, 27],
    [10, 15, 35, 26],
    [12, 15, 30, 25],
  ],
  RUBBER_SUCTION: [
    [1.5, 100, 150, 29],
    [2, 100, 150, 29],
    [2.5, 100, 150, 29],
    [3, 100, 150, 29],
    [4, 100, 150, 29],
    [5, 100, 150, 29],
    [6, 100, 150, 29],
    [8, 75, 150, 29],
    [10, 75, 150, 29],
    [12, 75, 150, 29],
    [14, 50, 100, 27],
    [16, 50, 100, 27],
    [18, 50, 100, 25],
  ],
  PVC_LAYFLAT: [
    [1.5, 60, 80, 0],
    [2, 55, 80, 0],
    [2.5, 50, 75, 0],
    [3, 50, 75, 0],
    [4, 45, 75, 0],
    [5, 40, 65, 0],
    [6, 35, 60, 0],
    [8, 30, 50, 0],
    [10, 25, 40, 0],
    [12, 20, 35, 0],
  ],
  HEAVY_LAYFLAT: [
    [1.5, 130, 200, 0],
    [2, 125, 150, 0],
    [2.5, 110, 150, 0],
    [3, 100, 150, 0],
    [4, 100, 150, 0],
    [5, 75, 125, 0],
    [6, 75, 125, 0],
    [8, 60, 100, 0],
    [10, 50, 75, 0],
    [12, 40, 75, 0],
  ],
  TPU_LAYFLAT: [
    [2, 150, 300, 0],
    [3, 150, 250, 0],
    [4, 150, 250, 0],
    [5, 150, 225, 0],
    [6, 125, 200, 0],
    [8, 125, 200, 0],
    [10, 100, 200, 0],
    [12, 100, 200, 0],
    [14, 80, 150, 0],
    [16, 75, 150, 0],
  ],
  DISCHARGE: [
    [1.5, 125, 150, 0],
    [2, 125, 150, 0],
    [2.5, 125, 150, 0],
    [3, 125, 150, 0],
    [4, 100, 150, 0],
    [6, 100, 150, 0],
    [8, 75, 150, 0],
    [10, 75, 150, 0],
    [12, 75, 125, 0],
  ],
} as const satisfies Record<string, readonly HoseRow[]>;

export type HoseKind = keyof typeof HOSE_RATINGS;
