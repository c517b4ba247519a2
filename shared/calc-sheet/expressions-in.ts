import { type Expression, partsOf } from "./expression.ts";
import type { PlanItem } from "./plan.ts";

/** All that an item of a plan works out. */
export function expressionsIn(item: PlanItem): readonly Expression[] {
  switch (item.kind) {
    case "result":
    case "finding":
    case "spill":
      return [item.expression];
    case "option":
      return [item.name, item.verdict, ...item.remarks.map(({ text }) => text)];
    case "table":
      return item.rows.flatMap(({ cells }) => cells);
    case "working":
      return item.columns.flatMap(({ cells }) =>
        typeof cells === "function"
          ? Array.from({ length: item.rows }, (_, row) => cells(row)).filter((cell) => cell !== null)
          : [cells.spill],
      );
    case "line":
      return item.worked.map(({ expression }) => expression((column) => ({ op: "value", key: column })));
    case "verdicts":
      return [item.count, ...item.rows.flatMap(({ state, text }) => [state, text])];
    case "blocks":
      return item.blocks.flatMap(({ rows }) => rows.map(({ expression }) => expression));
    case "lines":
      return item.rows.map(({ text }) => text);
    default:
      return [];
  }
}

/** The keys of all single cells that these items read. */
export function cellsReadBy(items: readonly PlanItem[]): ReadonlySet<string> {
  const read = new Set<string>();
  const gather = (expression: Expression): void => {
    if (expression.op === "value") read.add(expression.key);
    for (const part of partsOf(expression)) gather(part);
  };
  for (const item of items) for (const expression of expressionsIn(item)) gather(expression);
  return read;
}
