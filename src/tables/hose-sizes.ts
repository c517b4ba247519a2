/**
 * Usual nominal bores of suction, discharge and lay-flat hose. The nominal bore is the bore: hose is named by its
 * inside diameter (ISO 1307), with a tolerance of about 1.5 mm. No dimensional standard fixes the bore of lay-flat
 * hose; it grows some 2 to 10 % under pressure, for which no credit is taken.
 *
 * Verified: common practice, no source.
 */
export const HOSE_INCHES = [
  "1",
  "1-1/4",
  "1-1/2",
  "2",
  "2-1/2",
  "3",
  "4",
  "5",
  "6",
  "8",
  "10",
  "12",
  "14",
  "16",
  "18",
] as const;

export const HOSE_MILLIMETRES = [25, 32, 38, 50, 63, 65, 75, 80, 100, 125, 150, 200, 250, 300, 350, 400, 450] as const;
