/**
 * The least of any number of values; +∞ of none. A spread into `Math.min` overflows the call stack where the values are
 * those of a long column.
 */
export function leastOf(values: Iterable<number>): number {
  let found = Number.POSITIVE_INFINITY;
  for (const value of values) found = Math.min(found, value);
  return found;
}

/** The greatest of any number of values; -∞ of none. */
export function greatestOf(values: Iterable<number>): number {
  let found = Number.NEGATIVE_INFINITY;
  for (const value of values) found = Math.max(found, value);
  return found;
}
