/**
 * Preferred ratings of three-phase motors in horsepower. NEMA MG 1, Table 10-4 (600 hp and above belong to MG 1 Part
 * 20, large machines).
 *
 * Verified: looked up. There is nothing between rows: a motor is bought in a listed rating.
 */
export const MOTOR_RATINGS_NEMA: readonly number[] = [
  0.5, 0.75, 1, 1.5, 2, 3, 5, 7.5, 10, 15, 20, 25, 30, 40, 50, 60, 75, 100, 125, 150, 200, 250, 300, 350, 400, 450, 500,
  600, 700, 800, 900, 1000,
];

/** First rating, hp, that MG 1 treats as a large machine, built to order. */
export const FIRST_LARGE_MACHINE = 600;
