import type { Scalar } from "../../shared/cells/cell.ts";
import { type Box, boxOf } from "../../shared/ports/a1.ts";
import type { CellSpec, StyleSpec } from "../../shared/ports/sheet-spec.ts";
import { textForExcel } from "./cell-text.ts";

/** All cells of a sheet as one rectangle. A null leaves its cell alone, so that nothing stands in the way of a spill. */
export interface CellBlock {
  readonly box: Box;
  readonly contents: readonly (readonly (string | number | boolean | null)[])[];
  /** Missing where no cell has a number format of its own. */
  readonly numberFormats: readonly (readonly (string | null)[])[] | undefined;
}

export function cellBlock(
  cells: readonly CellSpec[],
  styles: Readonly<Record<string, StyleSpec>>,
): CellBlock | undefined {
  if (cells.length === 0) return undefined;
  const placed = cells.map((cell) => ({ ...cell, box: boxOf(cell.at) }));
  const box = placed.reduce<Box>(
    (all, { box: { top, left } }) => ({
      top: Math.min(all.top, top),
      left: Math.min(all.left, left),
      bottom: Math.max(all.bottom, top),
      right: Math.max(all.right, left),
    }),
    { top: Number.POSITIVE_INFINITY, left: Number.POSITIVE_INFINITY, bottom: 0, right: 0 },
  );
  const contents = blank<string | number | boolean>(box);
  const numberFormats = blank<string>(box);
  let formatted = false;
  for (const { box: at, f, v, style } of placed) {
    const [row, column] = [at.top - box.top, at.left - box.left];
    const format = style === undefined ? undefined : styles[style]?.numFmt;
    (contents[row] as unknown[])[column] = f === undefined ? constantForExcel(v ?? null) : `=${f}`;
    if (format !== undefined) {
      (numberFormats[row] as unknown[])[column] = format;
      formatted = true;
    }
  }
  return { box, contents, numberFormats: formatted ? numberFormats : undefined };
}

function blank<T>({ top, left, bottom, right }: Box): (T | null)[][] {
  return Array.from({ length: bottom - top + 1 }, () => new Array<T | null>(right - left + 1).fill(null));
}

/** A constant of a new cell: null where there is nothing to put. */
function constantForExcel(value: Scalar): string | number | boolean | null {
  if (typeof value === "number" && !Number.isFinite(value)) throw new Error(`a cell cannot hold ${value}`);
  if (typeof value !== "string") return value;
  return value === "" ? null : textForExcel(value);
}
