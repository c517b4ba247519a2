import { andThen, type Finding, fail, type Result, succeed } from "../../../src/basis/result.ts";
import { type PumpCurve, pumpCurve } from "../../../src/pump/pump-curve.ts";
import type { PumpCurvePoint } from "../../../src/pump/pump-curve-point.ts";
import type { Cell } from "../../cells/cell.ts";
import type { RangeParameter, Reading } from "../parameter.ts";
import { type FlowTable, readFlowTable } from "./flow-table.ts";

/** Columns of a pump curve, in their order where there is no heading row. */
export const CURVE_COLUMNS = {
  flow: { name: "flow", quantity: "flow", words: /^(?:flow ?rate|flow|capacity|q)(?![a-z])/i, place: 0 },
  head: {
    name: "head",
    quantity: "head",
    words: /^(?:total dynamic head|total head|tdh|head|h)(?![a-z])/i,
    place: 1,
  },
  efficiency: {
    name: "efficiency",
    quantity: "ratio",
    words: /^(?:pump efficiency|efficiency|eff\.?|eta|η)(?![a-z])/i,
    place: 2,
    isOptional: true,
  },
  npshRequired: {
    name: "NPSHR",
    quantity: "head",
    words: /^(?:npsh ?required|npsh ?r|npsh ?3|npsh)(?![a-z])/i,
    place: 3,
    isOptional: true,
  },
  power: {
    name: "power",
    quantity: "power",
    words: /^(?:pump shaft power|shaft power|pump power|power|p2?)(?![a-z])/i,
    isOptional: true,
  },
} as const;

type Key = keyof typeof CURVE_COLUMNS;

/** A number above this in the efficiency column is a percentage. */
const GREATEST_FRACTION = 1.5;

/**
 * A pump curve: a range with a heading row of flow, head, efficiency, NPSHR and power in any order and with units
 * where they differ from the unit set, or without one in the order flow, head, efficiency, NPSHR.
 */
export const curve: RangeParameter<PumpCurve> = {
  takes: "range",
  about:
    "The pump curve, a range with a heading row: flow, head, and where known efficiency, NPSHR, power (with water); without a heading row flow, head, efficiency, NPSHR",
  example:
    "a range of rows, such as flow | head | efficiency, then 0 | 140 | 0, then 300 | 128 | 0.7, then 600 | 88 | 0.73",
  read: readCurve,
};

/** The curve in the cells of a range; findings call it by the name of the reading. */
export function readCurve(cells: readonly (readonly Cell[])[], reading: Reading): Result<PumpCurve> {
  return andThen(readFlowTable<Key>(cells, reading, CURVE_COLUMNS), (table) =>
    andThen(withEfficiencyAsFraction(table, reading.name), (points) =>
      pumpCurve({ points, subject: reading.name, labels: table.labels }),
    ),
  );
}

/**
 * One reading for the whole column: percentages where the heading says so or a figure is above 1.5, fractions
 * otherwise. A column with figures of both kinds is refused.
 */
export function withEfficiencyAsFraction(
  { rows, labels, unitsStated }: FlowTable<Key>,
  subject: string,
): Result<readonly PumpCurvePoint[]> {
  const points = rows as readonly PumpCurvePoint[];
  if (unitsStated.efficiency !== undefined) return succeed(points);
  const isPercent = (value: number | undefined): boolean => value !== undefined && value > GREATEST_FRACTION;
  const percentAt = points.findIndex(({ efficiency }) => isPercent(efficiency));
  if (percentAt < 0) return succeed(points);
  const fractionAt = points.findIndex(({ efficiency = 0 }) => efficiency > 0 && efficiency <= 1);
  const column = `${subject} column “efficiency”`;
  if (fractionAt >= 0) {
    const facts = { percentRow: labels[percentAt] as string, fractionRow: labels[fractionAt] as string };
    return fail([{ code: "efficiency-mixed", severity: "error", subject: column, facts }]);
  }
  const caution: Finding = { code: "efficiency-read-as-percent", severity: "caution", subject: column };
  const read = points.map((point) =>
    point.efficiency === undefined ? point : { ...point, efficiency: point.efficiency / 100 },
  );
  return succeed(read, [caution]);
}
