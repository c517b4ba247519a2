import { type Expression, partsOf } from "./expression.ts";
import type { CalcSheetPlan } from "./plan.ts";
import { tableCell } from "./work-out.ts";

/**
 * The longest chain of add-in functions on a sheet: how many of them must answer one after another before the last
 * cell is known. Native operations count for nothing; each add-in function counts one link.
 */
export function longestChain(plan: CalcSheetPlan): number {
  const depths = new Map<string, number>();

  function depthOf(expression: Expression): number {
    switch (expression.op) {
      case "value":
        return depths.get(expression.key) ?? 0;
      case "columnSum": {
        const { key, column } = expression;
        const rows = [...depths.keys()].filter((cell) => cell.startsWith(`${key}.`) && cell.endsWith(`.${column}`));
        return Math.max(0, ...rows.map((cell) => depths.get(cell) ?? 0));
      }
      case "call":
        return 1 + deepest(expression);
      case "notes":
        return depthOf(expression.of);
      default:
        return deepest(expression);
    }
  }

  function deepest(expression: Expression): number {
    return Math.max(0, ...partsOf(expression).map(depthOf));
  }

  for (const item of plan.items) {
    if (item.kind === "result" || item.kind === "curve" || item.kind === "finding") {
      depths.set(item.key, depthOf(item.expression));
    }
    if (item.kind === "line") {
      item.rows.forEach((_, row) => {
        for (const { key, expression } of item.worked) {
          depths.set(
            tableCell(item.key, row, key),
            depthOf(expression((column) => ({ op: "value", key: tableCell(item.key, row, column) }))),
          );
        }
      });
    }
  }
  return Math.max(0, ...depths.values());
}
