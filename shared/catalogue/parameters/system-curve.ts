import { andThen } from "../../../src/basis/result.ts";
import type { HeadCurve } from "../../../src/pump/head-curve.ts";
import { type SystemCurvePoint, systemCurveThrough } from "../../../src/pump/system-curve-through.ts";
import type { RangeParameter } from "../parameter.ts";
import { CURVE_COLUMNS } from "./curve.ts";
import { readFlowTable } from "./flow-table.ts";

const COLUMNS = { flow: CURVE_COLUMNS.flow, head: CURVE_COLUMNS.head } as const;

/** A system curve as SYSTEMCURVE spills it: a range of flow and head, with or without a heading row. */
export const systemCurve: RangeParameter<HeadCurve> = {
  takes: "range",
  about: "The system curve, a range of flow and head such as SYSTEMCURVE spills; the more rows, the nearer the answer",
  example: "a range of rows, such as flow | head, then 0 | 60, then 300 | 83, then 600 | 148",
  read: (cells, reading) =>
    andThen(readFlowTable(cells, reading, COLUMNS, { mayBeginAtZero: true }), ({ rows, labels }) =>
      systemCurveThrough({ points: rows as readonly SystemCurvePoint[], subject: reading.name, labels }),
    ),
};
