/**
 * Nominal pipe size and nominal diameter side by side, in printed order: NPS, DN. ASME B36.10M (2018): below NPS 4
 * as printed, from NPS 4 up DN is 25 times NPS.
 *
 * Verified: from memory; NPS 1/2 to 24 compared with a second table (tests/published/pipe-schedules.csv).
 */
export type NominalDiameterRow = readonly [nps: string, dn: number];

export const NOMINAL_DIAMETERS: readonly NominalDiameterRow[] = [
  ["1/8", 6],
  ["1/4", 8],
  ["3/8", 10],
  ["1/2", 15],
  ["3/4", 20],
  ["1", 25],
  ["1-1/4", 32],
  ["1-1/2", 40],
  ["2", 50],
  ["2-1/2", 65],
  ["3", 80],
  ["3-1/2", 90],
  ["4", 100],
  ["5", 125],
  ["6", 150],
  ["8", 200],
  ["10", 250],
  ["12", 300],
  ["14", 350],
  ["16", 400],
  ["18", 450],
  ["20", 500],
  ["22", 550],
  ["24", 600],
  ["26", 650],
  ["28", 700],
  ["30", 750],
  ["32", 800],
  ["34", 850],
  ["36", 900],
  ["38", 950],
  ["40", 1000],
  ["42", 1050],
  ["44", 1100],
  ["46", 1150],
  ["48", 1200],
  ["54", 1350],
  ["60", 1500],
  ["64", 1600],
];
