/** Whether a figure is at most its limit; equality counts as within, at a relative 1e-9. */
export function isAtMost(found: number, limit: number): boolean {
  return found <= limit + 1e-9 * Math.abs(limit);
}
