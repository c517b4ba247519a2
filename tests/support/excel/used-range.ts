import { type Box, rangeOf } from "../../../shared/ports/a1.ts";
import type { MemorySheet } from "../memory-sheet.ts";
import { areaBox, around, boxAt, isWhole } from "./addresses.ts";

/** The smallest range that holds every filled cell, and unless only values count every formatted and merged one. */
export function usedRange({ cells, formats, merges }: MemorySheet, valuesOnly: boolean): string | undefined {
  let all: Box | undefined;
  const take = (box: Box): void => {
    all = all === undefined ? box : around(all, box);
  };
  for (const at in cells) take(boxAt(at));
  if (!valuesOnly) {
    for (const area in formats)
      if (!isWhole(area) && Object.keys(formats[area] ?? {}).some(isOfCells)) take(areaBox(area));
    for (const merge of merges) take(boxAt(merge));
  }
  return all === undefined ? undefined : rangeOf(all);
}

/** Of cells themselves, not of the rows or columns they stand in. */
function isOfCells(key: string): boolean {
  return key !== "rowHeight" && key !== "columnWidth";
}
