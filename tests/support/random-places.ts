/** So many of the numbers from 0 on, below a count, in order; the same for the same seed. */
export function randomPlaces(below: number, count: number, seed: number): readonly number[] {
  const places = new Set<number>();
  let state = seed;
  while (places.size < Math.min(count, below)) {
    // A linear congruential generator with the constants of Numerical Recipes (Press and others, 2nd edition, 7.1).
    state = (Math.imul(1_664_525, state) + 1_013_904_223) >>> 0;
    places.add(Math.floor((state / 2 ** 32) * below));
  }
  return [...places].sort((a, b) => a - b);
}
