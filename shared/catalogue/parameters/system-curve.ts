import { andThen, type Finding, succeed } from "../../../src/basis/result.ts";
import type { HeadCurve } from "../../../src/pump/head-curve.ts";
import { systemCurveThrough } from "../../../src/pump/system-curve-through.ts";
import { isBlank } from "../../cells/cell.ts";
import type { Heading, Rows } from "../../tables/heading.ts";
import { readTable } from "../../tables/read-table.ts";
import type { RangeParameter } from "../parameter.ts";
import { CURVE_COLUMNS } from "./curve.ts";

const COLUMNS = { flow: CURVE_COLUMNS.flow, head: CURVE_COLUMNS.head } as const;

/** A system curve as SYSTEMCURVE spills it: a range of flow and head, with or without a heading row. */
export const systemCurve: RangeParameter<HeadCurve> = {
  takes: "range",
  about: "The system curve, a range of flow and head such as SYSTEMCURVE spills; the more rows, the nearer the answer",
  example: "a range of rows, such as flow | head, then 0 | 60, then 300 | 83, then 600 | 148",
  read: (cells, { name, units }) =>
    andThen(
      readTable(cells, COLUMNS, { place: { name }, units, order: ["flow", "head"], alsoRow: zeroRowOf }),
      ({ rows }) => {
        const labels = rows.map(({ label }) => label);
        const [first] = rows;
        const isDoubted = first?.values.flow === 0 && first.values.head === 0;
        const doubted: readonly Finding[] = isDoubted
          ? [{ code: "zero-may-be-blank", kind: "check", subject: first.label }]
          : [];
        const figures = rows.map(({ values }) => values);
        return andThen(succeed(figures, doubted), (points) => systemCurveThrough({ points, subject: name, labels }));
      },
    ),
};

/**
 * The row of zeros that stands first, where the next filled row has a flow: a point of the curve, though a blank row may
 * arrive like it.
 */
function zeroRowOf(rows: Rows, { at, firstRow }: Heading<"flow" | "head">): number | undefined {
  const first = rows.findIndex((row, i) => i >= firstRow && !row.every(isBlank));
  if (first <= firstRow || isBlank(rows[first]?.[at.flow ?? 0] ?? null)) return undefined;
  const before = rows.slice(firstRow, first).findLastIndex((row) => row.some((cell) => cell === 0));
  return before < 0 ? undefined : firstRow + before;
}
