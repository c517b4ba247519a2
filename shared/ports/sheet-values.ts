import type { Cell } from "../cells/cell.ts";
import { addressOf, boxOf } from "./a1.ts";
import type { CellSpec, SheetSpec } from "./sheet-spec.ts";

/** What the cells of a sheet show, by address. */
export type SheetValues = ReadonlyMap<string, Cell>;

const NO_ANSWER = { error: "#N/A" } as const;

/** What the cells of a sheet show, a formula its answer; those that another's formula fills too. */
export function valuesOf({ cells }: Pick<SheetSpec, "cells">): SheetValues {
  const values = new Map<string, Cell>();
  for (const { at, v, f, cached, spill } of cells) {
    if (f === undefined) {
      if (!values.has(at)) values.set(at, v ?? null);
      continue;
    }
    const { top, left } = boxOf(spill ?? at);
    // Without its answer there is nothing to show but that.
    const rows: readonly (readonly Cell[])[] = isRows(cached) ? cached : [[cached === undefined ? NO_ANSWER : cached]];
    rows.forEach((row, i) => {
      row.forEach((value, j) => {
        values.set(addressOf(top + i, left + j), value);
      });
    });
  }
  return values;
}

function isRows(cached: CellSpec["cached"]): cached is readonly (readonly Cell[])[] {
  return Array.isArray(cached);
}
