import { tableCell } from "../../shared/calc-sheet/expression.ts";
import { optionCells } from "../../shared/calc-sheet/option.ts";
import type { PlanItem } from "../../shared/calc-sheet/plan.ts";
import { isCellError, isRange } from "../../shared/cells/cell.ts";
import type { WorkedDuty } from "../../shared/package/worked-duty.ts";
import { printedUnit, type Quantity } from "../../src/basis/quantities.ts";

/** A worked cell of the calc sheet as the terminal gives it. */
export type Figure =
  | { readonly value: number; readonly unit?: string }
  | { readonly text: string }
  | { readonly error: string };

/** Every worked cell that the calc sheet prints, by its key, in the duty's unit set; what waits for a box is left out. */
export function dutyFigures({ plan, worked }: WorkedDuty): Readonly<Record<string, Figure>> {
  const figures: Record<string, Figure> = {};
  for (const { key, quantity } of plan.items.flatMap(cellsOf)) {
    const cell = worked.cells.get(key);
    if (cell === undefined || cell === null || cell === "" || isRange(cell)) continue;
    if (isCellError(cell)) {
      if (cell.waitsFor === undefined) figures[key] = { error: cell.message ?? cell.error };
    } else if (typeof cell === "number") {
      const unit = quantity === undefined ? "" : printedUnit(quantity, plan.unitSet);
      figures[key] = unit === "" ? { value: cell } : { value: cell, unit };
    } else figures[key] = { text: String(cell) };
  }
  return figures;
}

interface Cell {
  readonly key: string;
  readonly quantity?: Quantity | undefined;
}

function cellsOf(item: PlanItem): readonly Cell[] {
  switch (item.kind) {
    case "result":
      return [item];
    case "blocks":
      return item.blocks.flatMap(({ rows }) => rows);
    case "line":
      return item.rows.flatMap((_, row) => inRow(item.key, row, item.worked));
    case "table":
      return item.rows.flatMap((_, row) => inRow(item.key, row, item.columns));
    case "option": {
      const { name, verdict, texts } = optionCells(item);
      return [name, verdict, ...texts].map(({ key }) => ({ key }));
    }
    default:
      return [];
  }
}

function inRow(table: string, row: number, columns: readonly Cell[]): readonly Cell[] {
  return columns.map(({ key, quantity }) => ({ key: tableCell(table, row, key), quantity }));
}
