/**
 * Code letters of NEMA motors: locked-rotor apparent power, kVA for each horsepower, from and to. NEMA MG 1-10.37.2 (=
 * NEC Table 430.7(B)), in printed order; V has no end. The greater figure of the letter is taken.
 *
 * Verified: F and G in a motor maker's table and a guide to generator sizing; the rest not yet verified against the
 * standard; each letter begins where the one before ends.
 */
export type CodeLetterRow = readonly [letter: string, from: number, to: number | null];

export const CODE_LETTERS: readonly CodeLetterRow[] = [
  ["A", 0, 3.14],
  ["B", 3.15, 3.54],
  ["C", 3.55, 3.99],
  ["D", 4, 4.49],
  ["E", 4.5, 4.99],
  ["F", 5, 5.59],
  ["G", 5.6, 6.29],
  ["H", 6.3, 7.09],
  ["J", 7.1, 7.99],
  ["K", 8, 8.99],
  ["L", 9, 9.99],
  ["M", 10, 11.19],
  ["N", 11.2, 12.49],
  ["P", 12.5, 13.99],
  ["R", 14, 15.99],
  ["S", 16, 17.99],
  ["T", 18, 19.99],
  ["U", 20, 22.39],
  ["V", 22.4, null],
];

/** The usual letter by rating, hp: from this rating up. Looked up in two lists. */
export const USUAL_CODE_LETTERS: readonly (readonly [fromHorsepower: number, letter: string])[] = [
  [15, "F"],
  [7.5, "G"],
  [5, "H"],
  [3, "J"],
  [1.5, "K"],
  [0, "L"],
];
