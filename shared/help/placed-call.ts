import { greatestOf } from "../../src/numeric/extremes.ts";
import type { Entry } from "../catalogue/entry.ts";
import { type Argument, type Cell, isRange } from "../cells/cell.ts";
import { formulaText } from "./formula-text.ts";

interface PlacedRange {
  readonly at: string;
  readonly cells: readonly (readonly Cell[])[];
  readonly firstRow: number;
}

/** The formula with its ranges where they would stand on a sheet, one below the other from A1. */
export function placed(
  entry: Entry,
  args: readonly Argument[],
): { readonly formula: string; readonly ranges: readonly PlacedRange[] } {
  const ranges: PlacedRange[] = [];
  let firstRow = 1;
  const shown = args.map((argument) => {
    if (!isRange(argument)) return argument;
    const lastColumn = String.fromCharCode(64 + greatestOf(argument.map(({ length }) => length)));
    const at = `A${firstRow}:${lastColumn}${firstRow + argument.length - 1}`;
    ranges.push({ at, cells: argument, firstRow });
    firstRow += argument.length + 1;
    return { at };
  });
  return { formula: formulaText(entry, shown), ranges };
}
