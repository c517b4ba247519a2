import { type Expression, type Handle, partsOf, tableCell } from "../../shared/calc-sheet/expression.ts";
import { optionCells } from "../../shared/calc-sheet/option.ts";
import { type Calculation, type PlanItem, VERDICT_COUNT, workingOrder } from "../../shared/calc-sheet/plan.ts";

/** Cells and tables that an expression of the plan, a chart or a mark refers to before they are placed, or that never are. */
export function readTooEarly(plan: Calculation): readonly string[] {
  const placed = new Set<string>();
  const tooEarly: string[] = [];

  function hold(key: string, by: string): void {
    // A judgement on what a section withheld is open: it may ask for a cell that is not there.
    if (!placed.has(key) && !by.startsWith("criteria.")) tooEarly.push(`${by} reads ${key}`);
  }

  function read(expression: Expression, by: string, isArgument = false): void {
    switch (expression.op) {
      case "value":
        // A call leaves a blank box out; nothing else may read one.
        if (!(isArgument && expression.isField)) hold(expression.key, by);
        break;
      case "range":
      case "part":
        hold(expression.key, by);
        break;
      case "column":
      case "columnSum":
      case "columnLeast":
      case "columnGreatest":
        hold(tableCell(expression.key, 0, expression.column), by);
        break;
      default:
        for (const one of partsOf(expression)) read(one, by, expression.op === "call");
    }
  }

  function place(key: string, expression?: Expression): void {
    if (expression !== undefined) read(expression, key);
    placed.add(key);
  }

  function placeItem(item: PlanItem): void {
    switch (item.kind) {
      case "input":
        place(item.key);
        break;
      case "result":
      case "finding":
        place(item.key, item.expression);
        break;
      case "option":
        for (const { key, expression } of Object.values(optionCells(item)).flat()) place(key, expression);
        break;
      case "line":
        place(item.key);
        item.rows.forEach((_, row) => {
          const at = (of: string): string => tableCell(item.key, row, of);
          for (const { key } of item.stated) place(at(key));
          for (const { key, expression } of item.worked) {
            place(
              at(key),
              expression((of): Handle => ({ op: "value", key: at(of) })),
            );
          }
        });
        break;
      case "inputTable":
        place(item.key);
        item.rows.forEach((_, row) => {
          for (const { key } of item.columns) place(tableCell(item.key, row, key));
        });
        break;
      case "spill":
        place(item.key, item.expression);
        for (let row = 0; row < item.rows - 1; row += 1) {
          for (const { key } of item.columns) place(tableCell(item.key, row, key));
        }
        break;
      case "working":
        for (const { key, cells } of item.columns) {
          for (let row = 0; row < item.rows; row += 1) {
            const filling = typeof cells === "function" ? cells(row) : cells.spill;
            place(tableCell(item.key, row, key), filling ?? undefined);
          }
        }
        place(item.key);
        break;
      case "table":
        item.rows.forEach(({ cells }, row) => {
          item.columns.forEach(({ key }, at) => {
            place(tableCell(item.key, row, key), cells[at]);
          });
        });
        break;
      case "verdicts":
        place(VERDICT_COUNT, item.count);
        for (const { key, state, text } of item.rows) {
          place(key, state);
          place(tableCell(key, 0, "text"), text);
        }
        break;
      case "blocks":
        for (const { rows } of item.blocks) for (const { key, expression } of rows) place(key, expression);
        break;
      case "lines":
        for (const { key, text } of item.rows) place(key, text);
        break;
      default:
        break;
    }
  }

  workingOrder(plan.items).forEach(placeItem);
  // Drawings may stand above what they draw.
  for (const item of plan.items) {
    if (item.kind === "charts") {
      for (const { title, series } of item.charts)
        for (const { x, y } of series) for (const of of [x, y]) read(of, title);
    }
  }
  return [...new Set(tooEarly)];
}
