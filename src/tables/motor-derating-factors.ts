/**
 * Output of a motor above 1000 m or 40 °C as a share of its rating, common practice: application guides of motor makers
 * agree on 1.00, 0.97, 0.94, 0.90, 0.86 by altitude to 3000 m; the rest stands in one of them. The two factors are
 * multiplied. Straight lines between rows; nothing beyond 4000 m or 60 °C: ask the maker.
 */
export const MOTOR_ALTITUDE_FACTORS: readonly (readonly [metres: number, factor: number])[] = [
  [1000, 1],
  [1500, 0.97],
  [2000, 0.94],
  [2500, 0.9],
  [3000, 0.86],
  [3500, 0.82],
  [4000, 0.77],
];

export const MOTOR_AMBIENT_FACTORS: readonly (readonly [celsius: number, factor: number])[] = [
  [40, 1],
  [45, 0.96],
  [50, 0.92],
  [55, 0.87],
  [60, 0.82],
];
