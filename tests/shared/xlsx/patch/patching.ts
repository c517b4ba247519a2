import type { CellSpec, SheetSpec } from "../../../../shared/ports/sheet-spec.ts";
import { sheetChanges } from "../../../../shared/xlsx/patch/changes.ts";
import { type PatchedSheet, patchedWorkbook } from "../../../../shared/xlsx/patch/patch-workbook.ts";
import { readWorkbook } from "../../../../shared/xlsx/read-workbook.ts";
import { toSheetSpec } from "../../../../shared/xlsx/to-sheet-spec.ts";

const USUAL_WIDTH = 8.43;

export function specsOf(bytes: Uint8Array): readonly SheetSpec[] {
  const outcome = readWorkbook(bytes);
  if (!outcome.ok) throw new Error(outcome.refusal.message);
  return outcome.workbook.sheets.map(toSheetSpec);
}

/** A sheet with cells in place of those at the same address. A cell with nothing but its address is taken out. */
export function withCells(sheet: SheetSpec, ...cells: readonly CellSpec[]): SheetSpec {
  const changed = new Set(cells.map(({ at }) => at));
  const kept = sheet.cells.filter(({ at }) => !changed.has(at));
  return { ...sheet, cells: [...kept, ...cells.filter((cell) => Object.keys(cell).length > 1)] };
}

/** The file after a change to one of its sheets, and with sheets added. */
export function patchedWith(
  bytes: Uint8Array,
  change: (sheet: SheetSpec) => SheetSpec,
  { sheet: edited, added = [] }: { readonly sheet?: string; readonly added?: readonly SheetSpec[] } = {},
): Uint8Array {
  const sheets = specsOf(bytes).map((sheet, i): PatchedSheet => {
    const now = (edited === undefined ? i === 0 : sheet.name === edited) ? change(sheet) : sheet;
    return { kind: "opened", name: sheet.name, now, changes: sheetChanges(sheet, now, USUAL_WIDTH) };
  });
  return patchedWorkbook(bytes, [...sheets, ...added.map((spec): PatchedSheet => ({ kind: "added", spec }))]);
}
