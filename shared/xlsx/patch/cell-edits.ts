import { addressOf } from "../../ports/a1.ts";
import type { SheetSpec } from "../../ports/sheet-spec.ts";
import { type FileCell, fileCells, stored } from "../write/file-cells.ts";
import type { CellChange, StyleChange } from "./changes.ts";
import type { CellContent, CellEdit } from "./sheet-edits.ts";

/**
 * The changed cells of a sheet in the words of a file.
 *
 * @param sheet as it is now
 * @param restyled the number of the format that cells of such a number get
 */
export function cellEdits(
  sheet: SheetSpec,
  changes: readonly CellChange[],
  restyled: (now: number, change: StyleChange) => number,
): readonly CellEdit[] {
  const typed = new Set(
    changes.flatMap(({ row, column, content }) => (content?.kind === "formula" ? [addressOf(row, column)] : [])),
  );
  const formulas = fileCells({ ...sheet, cells: sheet.cells.filter(({ at }) => typed.has(at)) });
  return changes.map(({ row, column, content, style }) => ({
    row,
    column,
    ...(content === undefined ? {} : { content: inFile(content, formulas.get(addressOf(row, column))) }),
    ...(style === undefined ? {} : { style: (now: number) => restyled(now, style) }),
  }));
}

function inFile(content: NonNullable<CellChange["content"]>, typed: FileCell | undefined): CellContent {
  if (content.kind === "constant") return content;
  const value = stored(content.value);
  if (content.kind === "answer")
    return { kind: "answer", value, ...(content.spill === undefined ? {} : { fills: content.spill }) };
  const { formula = "", fills } = typed ?? {};
  return { kind: "formula", formula, value, ...(fills === undefined ? {} : { fills }) };
}
