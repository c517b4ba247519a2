import type { Cell } from "../cells/cell.ts";
import { addressOf, type Box, boxOf } from "../ports/a1.ts";
import type { CellSpec, SheetSpec, StyleSpec } from "../ports/sheet-spec.ts";
import type { ReadCell, ReadSheet } from "./read/workbook-content.ts";

/**
 * A sheet of a file as any host can add it. Formulas keep the answers the file held; those of an array or spilling
 * formula go with it. An error value that no formula gave becomes a formula that gives it.
 */
export function toSheetSpec(sheet: ReadSheet): SheetSpec {
  const read = sheet.rows.flatMap(({ cells }) => cells);
  const spilled = new Set(read.flatMap(({ spill }) => (spill === undefined ? [] : addressesIn(boxOf(spill)))));
  const styles: Record<string, StyleSpec> = {};
  const styleOf = (cell: ReadCell): Pick<CellSpec, "style"> => {
    const style = sheet.styles[cell.style];
    if (style === undefined || Object.keys(style).length === 0) return {};
    const name = `style ${cell.style}`;
    styles[name] = style;
    return { style: name };
  };
  const values = new Map(spilled.size === 0 ? [] : read.map((cell) => [addressOf(cell.row, cell.column), cell.value]));

  const cells = read.flatMap((cell): readonly CellSpec[] => {
    const at = addressOf(cell.row, cell.column);
    const { formula, spill, value } = cell;
    const styled = styleOf(cell);
    if (formula !== undefined) {
      const cached = spill === undefined ? value : answersOf(boxOf(spill), values);
      return [{ at, f: formula, cached, ...(spill === undefined ? {} : { spill }), ...styled }];
    }
    if (spilled.has(at) || value === null) return styled.style === undefined ? [] : [{ at, ...styled }];
    if (typeof value === "object") return [{ at, f: value.error, cached: value, ...styled }];
    return [{ at, v: value, ...styled }];
  });

  return {
    name: sheet.name,
    columns: sheet.columns,
    styles,
    cells,
    rowHeights: sheet.rowHeights,
    merges: sheet.merges,
    names: sheet.names,
    lists: sheet.lists,
    rules: sheet.rules,
    freezeRows: sheet.freezeRows,
    gridlines: sheet.gridlines,
    ...(sheet.print === undefined ? {} : { print: sheet.print }),
  };
}

function answersOf({ top, left, bottom, right }: Box, values: ReadonlyMap<string, Cell>): readonly (readonly Cell[])[] {
  const rows: Cell[][] = [];
  for (let row = top; row <= bottom; row += 1) {
    const line: Cell[] = [];
    for (let column = left; column <= right; column += 1) line.push(values.get(addressOf(row, column)) ?? null);
    rows.push(line);
  }
  return rows;
}

function addressesIn({ top, left, bottom, right }: Box): readonly string[] {
  const addresses: string[] = [];
  for (let row = top; row <= bottom; row += 1)
    for (let column = left; column <= right; column += 1) addresses.push(addressOf(row, column));
  return addresses;
}
