import { type Box, rangeOf } from "../../shared/ports/a1.ts";

/** Excel takes no longer address of several areas. */
export const LONGEST_ADDRESS = 8192;

/** Cells as rectangles, neighbours joined as far as asked. */
export function rectangles(
  members: readonly (readonly [row: number, column: number])[],
  joinColumns: boolean,
  joinRows: boolean,
): readonly Box[] {
  const sorted = [...members].sort(([a, b], [c, d]) => a - c || b - d);
  const runs: { row: number; left: number; right: number }[] = [];
  for (const [row, column] of sorted) {
    const last = runs.at(-1);
    if (last !== undefined && last.row === row && last.right === column) continue;
    if (joinColumns && last !== undefined && last.row === row && last.right === column - 1) last.right = column;
    else runs.push({ row, left: column, right: column });
  }
  const all: { top: number; left: number; bottom: number; right: number }[] = [];
  const open = new Map<string, (typeof all)[number]>();
  for (const { row, left, right } of runs) {
    const key = `${left}:${right}`;
    const above = open.get(key);
    if (joinRows && above !== undefined && above.bottom === row - 1) {
      above.bottom = row;
      continue;
    }
    const rectangle = { left, right, top: row, bottom: row };
    open.set(key, rectangle);
    all.push(rectangle);
  }
  return all;
}

/** Areas as addresses of several each, none longer than Excel takes. */
export function addressesOf(areas: readonly Box[]): readonly string[] {
  const chunks: string[] = [];
  let chunk = "";
  for (const area of areas) {
    const address = rangeOf(area);
    if (chunk !== "" && chunk.length + 1 + address.length > LONGEST_ADDRESS) {
      chunks.push(chunk);
      chunk = "";
    }
    chunk = chunk === "" ? address : `${chunk},${address}`;
  }
  if (chunk !== "") chunks.push(chunk);
  return chunks;
}
