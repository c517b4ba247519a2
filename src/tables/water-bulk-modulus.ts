/**
 * Bulk modulus of water, ρ w², relative to that at 20 °C: °C, ratio. IAPWS R7-97, region 1, at one atmosphere, or at the
 * vapour pressure where that is higher. Linear between rows; nothing past the ends.
 *
 * Verified: density and speed of sound worked out with the general-purpose iapws library.
 */
export type WaterBulkModulusRow = readonly [celsius: number, ratio: number];

export const WATER_BULK_MODULUS: readonly WaterBulkModulusRow[] = [
  [0, 0.8953],
  [10, 0.9537],
  [20, 1],
  [30, 1.035],
  [40, 1.059],
  [50, 1.074],
  [60, 1.081],
  [70, 1.08],
  [80, 1.073],
  [90, 1.06],
  [100, 1.042],
  [110, 1.019],
  [120, 0.9933],
  [130, 0.964],
  [140, 0.9318],
  [150, 0.8972],
  [160, 0.8604],
  [170, 0.8218],
  [180, 0.7817],
  [190, 0.7403],
  [200, 0.6979],
];

/** At 20 °C, GPa: the handbook figure, between 2.18 (isothermal) and 2.197 (ρ w² of IAPWS R7-97). */
export const WATER_BULK_MODULUS_AT_20 = 2.19;
