/**
 * Cam and groove couplings: nominal size in inches, DN; working pressure at 70 °F with a nitrile gasket, psi, least and greatest of
 * what makers give (the least is the one to take); then EN 14420-7 in bar, of steel, brass and stainless steel, and of cast
 * aluminium; null where it has none.
 *
 * Verified: the scope of EN 14420-7 looked up in three places, −0.8 to 16 bar, −20 to 65 °C, DN 100 only to 10 bar; psi by common
 * practice of couplings to A-A-59326 (1 to 6 in), from memory.
 */
export type CamlockRow = readonly [
  size: string,
  dn: number,
  least: number,
  greatest: number,
  steel: number | null,
  castAluminium: number | null,
];

/** Vacuum to which EN 14420-7 goes, bar. */
export const CAMLOCK_VACUUM = 0.8;

export const CAMLOCK: readonly CamlockRow[] = [
  ["1/2", 15, 150, 150, null, null],
  ["3/4", 20, 150, 250, 16, 10],
  ["1", 25, 150, 250, 16, 10],
  ["1-1/4", 32, 150, 250, 16, 10],
  ["1-1/2", 40, 150, 250, 16, 10],
  ["2", 50, 150, 250, 16, 10],
  ["2-1/2", 65, 150, 225, 16, 10],
  ["3", 80, 125, 200, 16, 10],
  ["4", 100, 100, 150, 10, 10],
  ["5", 125, 75, 100, null, null],
  ["6", 150, 75, 100, null, null],
  ["8", 200, 50, 75, null, null],
];
