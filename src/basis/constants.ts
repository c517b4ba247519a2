/** Standard acceleration of free fall, m/s². Exact; NIST SP 811, table B.8. */
export const STANDARD_GRAVITY = 9.80665;

/** Standard atmosphere, Pa. Exact; NIST SP 811, table B.8. */
export const STANDARD_ATMOSPHERE = 101_325;

/**
 * Density that specific gravity is relative to, kg/m³: water at 20 °C and one atmosphere (IAPWS-IF97
 * gives 998.206). Handbooks differ by up to 0.18 %; this one is used everywhere and printed on the sheet.
 */
export const SPECIFIC_GRAVITY_REFERENCE = 998.2;

/** No liquid has a greater specific gravity (mercury 13.6): more is a density typed for it. House choice. */
export const GREATEST_SPECIFIC_GRAVITY = 25;

/** Ice point, K. Exact by definition of the Celsius scale. */
export const CELSIUS_ZERO = 273.15;
