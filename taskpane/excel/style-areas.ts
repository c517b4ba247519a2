import { addressOf, boxOf, rangeOf } from "../../shared/ports/a1.ts";
import type { CellSpec, StyleSpec } from "../../shared/ports/sheet-spec.ts";

/** The cells of one style as addresses of several areas each, short enough for one call. */
export interface StyledAreas {
  readonly style: StyleSpec;
  readonly addresses: readonly string[];
}

/** Excel takes no longer address of several areas. */
export const LONGEST_ADDRESS = 8192;

/**
 * Groups cells by style. Neighbours join into one rectangle, except across a side on which the style draws a border:
 * Excel draws an area's edges, the style means each cell's.
 */
export function styledAreas(
  cells: readonly CellSpec[],
  styles: Readonly<Record<string, StyleSpec>>,
): readonly StyledAreas[] {
  const byStyle = new Map<string, (readonly [row: number, column: number])[]>();
  for (const { at, style } of cells) {
    if (style === undefined) continue;
    if (styles[style] === undefined) throw new Error(`the sheet has no style “${style}”`);
    const { top, left } = boxOf(at);
    const members = byStyle.get(style);
    if (members === undefined) byStyle.set(style, [[top, left]]);
    else members.push([top, left]);
  }
  return [...byStyle].map(([name, members]) => {
    const style = styles[name] as StyleSpec;
    const joinColumns = style.border?.left === undefined && style.border?.right === undefined;
    const joinRows = style.border?.top === undefined && style.border?.bottom === undefined;
    return { style, addresses: chunked(rectangles(members, joinColumns, joinRows)) };
  });
}

interface Rectangle {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  bottom: number;
}

function rectangles(
  members: readonly (readonly [row: number, column: number])[],
  joinColumns: boolean,
  joinRows: boolean,
): readonly string[] {
  const sorted = [...members].sort(([a, b], [c, d]) => a - c || b - d);
  const runs: { row: number; left: number; right: number }[] = [];
  for (const [row, column] of sorted) {
    const last = runs.at(-1);
    if (last !== undefined && last.row === row && last.right === column) continue;
    if (joinColumns && last !== undefined && last.row === row && last.right === column - 1) last.right = column;
    else runs.push({ row, left: column, right: column });
  }
  const all: Rectangle[] = [];
  const open = new Map<string, Rectangle>();
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
  return all.map((box) =>
    box.top === box.bottom && box.left === box.right ? addressOf(box.top, box.left) : rangeOf(box),
  );
}

function chunked(addresses: readonly string[]): readonly string[] {
  const chunks: string[] = [];
  let chunk = "";
  for (const address of addresses) {
    if (chunk !== "" && chunk.length + 1 + address.length > LONGEST_ADDRESS) {
      chunks.push(chunk);
      chunk = "";
    }
    chunk = chunk === "" ? address : `${chunk},${address}`;
  }
  if (chunk !== "") chunks.push(chunk);
  return chunks;
}
