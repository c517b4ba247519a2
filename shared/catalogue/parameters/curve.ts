import { andThen, type Finding, fail, type Result, succeed } from "../../../src/basis/result.ts";
import { type PumpCurve, pumpCurve } from "../../../src/pump/pump-curve.ts";
import type { PumpCurvePoint } from "../../../src/pump/pump-curve-point.ts";
import type { Cell } from "../../cells/cell.ts";
import { CURVE_COLUMNS as POINT_COLUMNS } from "../../pump-table/columns.ts";
import { readTable } from "../../tables/read-table.ts";
import type { RangeParameter, Reading } from "../parameter.ts";

const { flow, head, npshRequired, power } = POINT_COLUMNS;
const efficiency = { ...POINT_COLUMNS.efficiency, quantity: "ratio" } as const;

/** Columns of a pump curve; power is read under a heading alone. */
export const CURVE_COLUMNS = { flow, head, efficiency, npshRequired, power } as const;

/** A number above this in the efficiency column is a percentage. */
const GREATEST_FRACTION = 1.5;

/**
 * A pump curve: a range with a heading row of flow, head, efficiency, NPSHR and power in any order and with units
 * where they differ from the unit set, or without one in the order flow, head, efficiency, NPSHR.
 */
export const curve: RangeParameter<PumpCurve> = {
  takes: "range",
  about:
    "The pump curve, a range with a header row: flow, head, and where known efficiency, NPSHR, power (with water); without a header row flow, head, efficiency, NPSHR",
  example:
    "a range of rows, such as flow | head | efficiency, then 0 | 140 | 0, then 300 | 128 | 0.7, then 600 | 88 | 0.73",
  read: readCurve,
};

/** The curve in the cells of a range; findings call it by the name of the reading. */
function readCurve(cells: readonly (readonly Cell[])[], { name, units }: Reading): Result<PumpCurve> {
  const order = ["flow", "head", "efficiency", "npshRequired"] as const;
  return andThen(readTable(cells, CURVE_COLUMNS, { place: { name }, units, order }), ({ rows, heading }) => {
    const given: readonly PumpCurvePoint[] = rows.map(({ values }) => values);
    const labels = rows.map(({ label }) => label);
    const isStated = heading.units.efficiency !== undefined;
    return andThen(isStated ? succeed(given) : withEfficiencyAsFraction(given, labels, name), (points) =>
      pumpCurve({ points, subject: name, labels }),
    );
  });
}

/**
 * One reading for a whole column whose heading states no unit: percentages where a figure is above 1.5, fractions
 * otherwise. A column with figures of both kinds is refused.
 */
export function withEfficiencyAsFraction<P extends PumpCurvePoint>(
  points: readonly P[],
  labels: readonly string[],
  subject: string,
): Result<readonly P[]> {
  const percentAt = points.findIndex(({ efficiency: given = 0 }) => given > GREATEST_FRACTION);
  if (percentAt < 0) return succeed(points);
  const fractionAt = points.findIndex(({ efficiency: given = 0 }) => given > 0 && given <= 1);
  const column = `${subject} column “efficiency”`;
  if (fractionAt >= 0) {
    const facts = { percentRow: labels[percentAt] as string, fractionRow: labels[fractionAt] as string };
    return fail([{ code: "efficiency-mixed", kind: "error", subject: column, facts }]);
  }
  const caution: Finding = { code: "efficiency-read-as-percent", kind: "check", subject: column };
  const read = points.map((point) =>
    point.efficiency === undefined ? point : { ...point, efficiency: point.efficiency / 100 },
  );
  return succeed(read, [caution]);
}
