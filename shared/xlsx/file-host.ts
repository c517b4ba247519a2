import type { Cell, Scalar } from "../cells/cell.ts";
import { addressOf, type Box, boxOf } from "../ports/a1.ts";
import type { SheetHost } from "../ports/sheet-host.ts";
import { freeSheetName } from "../ports/sheet-name.ts";
import type { CellSpec, SheetSpec } from "../ports/sheet-spec.ts";
import { type FileForm, fileCells } from "./write/file-cells.ts";
import type { WorkbookProperties } from "./write/properties.ts";
import { writeWorkbook } from "./write-workbook.ts";

/** Sheets on their way into an .xlsx file. A file never calculates: formulas show the answers they came with. */
export interface FileHost extends SheetHost {
  readonly kind: "file";
  /** The bytes of the file as it stands. */
  readonly save: (form: FileForm) => Uint8Array;
}

/** What a formula shows once an input has changed and nobody has worked it out again. */
const NOT_CALCULATED: Cell = { error: "#N/A", message: "not worked out since an input changed" };

export function fileHost(properties: WorkbookProperties = {}): FileHost {
  let sheets: readonly SheetSpec[] = [];

  const sheetNamed = (name: string): SheetSpec => {
    const sheet = sheets.find((one) => one.name.toLowerCase() === name.toLowerCase());
    if (sheet === undefined) throw new Error(`there is no sheet "${name}"`);
    return sheet;
  };

  const placeOf = (ref: string): { readonly sheet: SheetSpec; readonly box: Box } => {
    const cut = ref.lastIndexOf("!");
    if (cut < 0) throw new Error(`a reference names its sheet: ${ref}`);
    const sheet = sheetNamed(
      ref
        .slice(0, cut)
        .replace(/^'(.*)'$/s, "$1")
        .replaceAll("''", "'"),
    );
    const range = ref.slice(cut + 1);
    const named = Object.entries(sheet.names ?? {}).find(([name]) => name.toLowerCase() === range.toLowerCase());
    return { sheet, box: boxOf(named?.[1] ?? range) };
  };

  return {
    kind: "file",
    addSheet: async (spec) => {
      const name = freeSheetName(
        spec.name,
        sheets.map((sheet) => sheet.name),
      );
      const added = { ...spec, name };
      // A sheet that cannot be written is refused here, not when the file is saved.
      for (const form of ["add-in", "values"] as const) writeWorkbook({ sheets: [added], form });
      sheets = [...sheets, added];
      return name;
    },
    sheetNames: async () => sheets.map(({ name }) => name),
    read: async (refs) =>
      refs.map((ref) => {
        const { sheet, box } = placeOf(ref);
        const cells = fileCells(sheet, "add-in");
        return rowsOf(box, (at) => {
          const cell = cells.get(at);
          return cell?.formula !== undefined && cell.value === undefined ? NOT_CALCULATED : (cell?.value ?? null);
        });
      }),
    write: async (values) => {
      const places = Object.entries(values).map(([ref, value]) => ({ ref, value, ...placeOf(ref) }));
      let next = sheets;
      for (const { ref, value, sheet, box } of places) {
        if (box.top !== box.bottom || box.left !== box.right) throw new Error(`${ref} is not one cell`);
        next = next.map((one) => (one.name === sheet.name ? written(one, addressOf(box.top, box.left), value) : one));
      }
      sheets = next.every((sheet, i) => sheet === sheets[i]) ? sheets : next.map(withoutAnswers);
    },
    onCalculated: () => () => {},
    save: (form) => writeWorkbook({ sheets, properties, form }),
  };
}

/** The sheet with that constant in the cell; the sheet itself where it holds it already. */
function written(sheet: SheetSpec, at: string, value: Scalar): SheetSpec {
  const there = sheet.cells.find((cell) => cell.at.replaceAll("$", "").toUpperCase() === at);
  if (there?.f !== undefined || fileCells(sheet, "add-in").get(at)?.spilled === true)
    throw new Error(`${sheet.name}!${at} holds a formula, not an input`);
  if ((there?.v ?? null) === value) return sheet;
  const cells =
    there === undefined
      ? [...sheet.cells, { at, v: value }]
      : sheet.cells.map((cell) => (cell === there ? { ...cell, v: value } : cell));
  return { ...sheet, cells };
}

/** An answer to other inputs is worse than none. */
function withoutAnswers(sheet: SheetSpec): SheetSpec {
  return {
    ...sheet,
    cells: sheet.cells.map(({ cached: _, ...cell }): CellSpec => cell),
  };
}

function rowsOf({ top, left, bottom, right }: Box, cellAt: (at: string) => Cell): readonly (readonly Cell[])[] {
  const rows: Cell[][] = [];
  for (let row = top; row <= bottom; row += 1) {
    const line: Cell[] = [];
    for (let column = left; column <= right; column += 1) line.push(cellAt(addressOf(row, column)));
    rows.push(line);
  }
  return rows;
}
