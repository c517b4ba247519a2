/** Shares of a level that sums along a route round off: differences below them are no height. */
const ROUNDED = 1e-12;

/** Height of a grade over an elevation [m]; 0 where they differ by rounding alone, as at a free outlet marched back from. */
export function heightOver(grade: number, elevation: number): number {
  const height = grade - elevation;
  return Math.abs(height) <= ROUNDED * Math.max(Math.abs(grade), Math.abs(elevation)) ? 0 : height;
}
