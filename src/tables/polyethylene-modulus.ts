/**
 * Apparent modulus of polyethylene pipe under a lasting load at 73 °F (23 °C), psi: hours, that of PE3XXX (PE3608, PE80) and of
 * PE4XXX (PE4710, PE100). Plastics Pipe Institute, Handbook of PE Pipe, chapter 3, table B.1.1. Between rows log against log;
 * below half an hour its row, beyond 50 years none.
 *
 * Verified: looked up in a public scan of the page, psi and MPa columns within 0.8 MPa of each other. The scan hides the rows of
 * 1, 10, 24 and 1000 h and of 10 and 100 years.
 */
export const POLYETHYLENE_MODULUS = [
  [0.5, 78_000, 82_000],
  [2, 71_000, 74_000],
  [12, 60_000, 63_000],
  [100, 52_000, 55_000],
  [8760, 38_000, 40_000],
  [438_000, 28_000, 29_000],
] as const satisfies readonly (readonly [hours: number, pe3: number, pe4: number])[];

/**
 * What a wall's temperature leaves of that modulus: °F, factor. Table B.1.2 of the same chapter, from memory, no second
 * source. Straight lines between; colder than the first row that row, warmer than the last none.
 */
export const POLYETHYLENE_MODULUS_TEMPERATURE = [
  [40, 1.49],
  [50, 1.32],
  [60, 1.18],
  [73, 1],
  [80, 0.93],
  [90, 0.82],
  [100, 0.73],
  [110, 0.64],
  [120, 0.58],
  [130, 0.5],
  [140, 0.43],
] as const satisfies readonly (readonly [temperature: number, factor: number])[];

/** Of polyethylene under a lasting load. From memory of the handbook. */
export const POLYETHYLENE_POISSON = 0.45;
