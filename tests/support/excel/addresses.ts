import { type Box, boxOf, rangeOf } from "../../../shared/ports/a1.ts";
import type { MemorySheet } from "../memory-sheet.ts";
import { LIMITS } from "./limits.ts";
import { invalid } from "./problems.ts";

const boxes = new Map<string, Box>();

/** The corners of a range, reckoned once: the same addresses come again with every sheet. */
export function boxAt(ref: string): Box {
  const known = boxes.get(ref);
  if (known !== undefined) return known;
  const box = boxOf(ref);
  boxes.set(ref, box);
  return box;
}

/** "B3", "B3:C9", "A:C", "2:5"; several parted by commas. Throws as Excel does for anything else. */
export function checkedAddress(given: unknown): string {
  const address = String(given);
  if (address.length > LIMITS.address) throw invalid("address too long");
  for (const area of address.split(",")) checkArea(area);
  return address;
}

function checkArea(area: string): void {
  const rows = /^\$?(\d+):\$?(\d+)$/.exec(area);
  const columns = /^\$?([A-Za-z]{1,3}):\$?([A-Za-z]{1,3})$/.exec(area);
  try {
    const box =
      rows !== null
        ? boxOf(`A${rows[1]}:A${rows[2]}`)
        : columns !== null
          ? boxOf(`${columns[1]}1:${columns[2]}1`)
          : boxAt(area);
    if (box.bottom < LIMITS.rows && box.right < LIMITS.columns) return;
  } catch {
    // The same refusal.
  }
  throw invalid(`address ${area}`);
}

/** The cells of an area, a whole row or column cut to what a sheet has. */
export function areaBox(area: string): Box {
  const rows = /^\$?(\d+):\$?(\d+)$/.exec(area);
  if (rows !== null)
    return { top: Number(rows[1]) - 1, bottom: Number(rows[2]) - 1, left: 0, right: LIMITS.columns - 1 };
  const columns = /^\$?([A-Za-z]{1,3}):\$?([A-Za-z]{1,3})$/.exec(area);
  if (columns === null) return boxAt(area);
  return { ...boxOf(`${columns[1]}1:${columns[2]}1`), top: 0, bottom: LIMITS.rows - 1 };
}

/** Whole rows, or columns, as they are written again. */
export function isWhole(area: string): boolean {
  return !/\d/.test(area) || !/[A-Za-z]/.test(area);
}

export function cellAt(row: unknown, column: unknown): string {
  const [top, left] = [Number(row), Number(column)];
  return boxAddress({ top, left, bottom: top, right: left });
}

export function boxAddress(box: Box): string {
  const { top, left, bottom, right } = box;
  if (!(top >= 0 && left >= 0 && bottom < LIMITS.rows && right < LIMITS.columns)) throw invalid("cells off the sheet");
  return rangeOf(box);
}

export function around(a: Box, b: Box): Box {
  return {
    top: Math.min(a.top, b.top),
    left: Math.min(a.left, b.left),
    bottom: Math.max(a.bottom, b.bottom),
    right: Math.max(a.right, b.right),
  };
}

export function overlap(a: Box, b: Box): boolean {
  return a.top <= b.bottom && b.top <= a.bottom && a.left <= b.right && b.left <= a.right;
}

export function contains(outer: Box, inner: Box): boolean {
  return (
    outer.top <= inner.top && outer.left <= inner.left && outer.bottom >= inner.bottom && outer.right >= inner.right
  );
}

/** The range of an object given as an argument, or the text given. */
export function refOf(value: unknown): string {
  return typeof value === "object" && value !== null && "ref" in value ? String(value.ref) : String(value ?? "");
}

/** A range as a chart of a sheet has it: the identity of its own sheet before it where that is another. */
export function refFrom(sheet: MemorySheet, value: unknown): string {
  const node = value as { readonly sheet?: MemorySheet };
  return node.sheet === undefined || node.sheet === sheet ? refOf(value) : `${node.sheet.id}!${refOf(value)}`;
}
