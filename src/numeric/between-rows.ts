/** Reads a table by straight lines between its rows of place and figure, places ascending; its end rows beyond them. */
export function betweenRows(rows: readonly (readonly [at: number, figure: number])[], at: number): number {
  const next = rows.findIndex(([x]) => at <= x);
  const [x1, y1] = rows.at(next) as readonly [number, number];
  if (next <= 0) return y1;
  const [x0, y0] = rows[next - 1] as readonly [number, number];
  return y0 + ((y1 - y0) * (at - x0)) / (x1 - x0);
}
