/**
 * Output of a motor above 1000 m (3300 ft) or 40 °C as a share of its rating, by bands: the factor holds for the whole
 * band below its figure. The two factors are multiplied. No credit for cool air. Beyond 4000 m or 60 °C: ask the maker.
 *
 * Verified: by altitude one column in an application manual of NEMA motors, a drive supplier's bands (0.97 from 3300 to
 * 5000 ft, 0.94 to 6600 …) and, to 3000 m, a servo maker's table; another servo maker has 0.95, 0.89 and 0.84 at 2000,
 * 3000 and 4000 m. By ambient one list. Makers print 5000, 6600, 8300, 9900 and 11 500 ft for the figures in metres,
 * some metres more; the metres end the band here, on the careful side, in every unit set. Full output alone reaches to
 * 3300 ft, as every nameplate has it.
 */
export const MOTOR_ALTITUDE_BANDS: readonly (readonly [toMetres: number, factor: number])[] = [
  [1005.84, 1],
  [1500, 0.97],
  [2000, 0.94],
  [2500, 0.9],
  [3000, 0.86],
  [3500, 0.82],
  [4000, 0.77],
];

export const MOTOR_AMBIENT_BANDS: readonly (readonly [toCelsius: number, factor: number])[] = [
  [40, 1],
  [45, 0.96],
  [50, 0.92],
  [55, 0.87],
  [60, 0.82],
];
