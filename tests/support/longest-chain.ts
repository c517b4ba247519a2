import { type Expression, partsOf, tableCell } from "../../shared/calc-sheet/expression.ts";
import { optionCells } from "../../shared/calc-sheet/option.ts";
import type { CalcSheetPlan } from "../../shared/calc-sheet/plan.ts";

const CLOSING: readonly string[] = ["VERDICTS", "FINDINGS"];

/**
 * The longest chain of add-in functions on a sheet: how many of them must answer one after another before the last
 * cell is known. Native operations count for nothing; each add-in function counts one link.
 */
export function longestChain(plan: CalcSheetPlan): number {
  const depths = new Map<string, number>();
  const working = new Set<string>();

  function depthOf(expression: Expression): number {
    switch (expression.op) {
      case "value":
      case "part":
        return depths.get(expression.key) ?? 0;
      case "range":
        // The range of a line or of a table of inputs holds inputs alone.
        return working.has(expression.key) ? deepestUnder(`${expression.key}.`, "") : 0;
      case "columnSum":
      case "columnLeast":
      case "columnGreatest":
      case "column":
        return deepestUnder(`${expression.key}.`, `.${expression.column}`);
      case "call":
        // Verdicts and findings close the sheet: drawn from all the rest, and nothing is drawn from them.
        return (CLOSING.includes(expression.entry.id) ? 0 : 1) + deepest(partsOf(expression));
      case "notes":
        return depthOf(expression.of);
      default:
        return deepest(partsOf(expression));
    }
  }

  function deepest(expressions: readonly Expression[]): number {
    return Math.max(0, ...expressions.map(depthOf));
  }

  function deepestUnder(start: string, end: string): number {
    let most = 0;
    for (const [cell, depth] of depths) if (cell.startsWith(start) && cell.endsWith(end)) most = Math.max(most, depth);
    return most;
  }

  for (const item of plan.items) {
    switch (item.kind) {
      case "result":
      case "finding":
      case "spill":
        depths.set(item.key, depthOf(item.expression));
        break;
      case "option":
        for (const { key, expression } of Object.values(optionCells(item)).flat()) depths.set(key, depthOf(expression));
        break;
      case "line":
        item.rows.forEach((_, row) => {
          for (const { key, expression } of item.worked) {
            depths.set(
              tableCell(item.key, row, key),
              depthOf(expression((of) => ({ op: "value", key: tableCell(item.key, row, of) }))),
            );
          }
        });
        break;
      case "table":
        item.rows.forEach(({ cells }, row) => {
          item.columns.forEach(({ key }, i) => {
            depths.set(tableCell(item.key, row, key), deepest(cells.slice(i, i + 1)));
          });
        });
        break;
      case "working":
        working.add(item.key);
        for (const { key, cells } of item.columns) {
          for (let row = 0; row < item.rows; row += 1) {
            const expression = typeof cells === "function" ? cells(row) : cells.spill;
            if (expression !== null) depths.set(tableCell(item.key, row, key), depthOf(expression));
          }
        }
        break;
      default:
        break;
    }
  }
  return Math.max(0, ...depths.values());
}
