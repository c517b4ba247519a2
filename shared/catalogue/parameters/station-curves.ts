import { append } from "../../../src/basis/append.ts";
import { outOfRange } from "../../../src/basis/method.ts";
import { amount, andThen, type Finding, fail, type Result, succeed } from "../../../src/basis/result.ts";
import { type PumpCurve, pumpCurve } from "../../../src/pump/pump-curve.ts";
import type { PumpCurvePoint } from "../../../src/pump/pump-curve-point.ts";
import { type Cell, isBlank } from "../../cells/cell.ts";
import { leftOut } from "../../cells/refused-cell.ts";
import { CURVE_COLUMNS as POINT_COLUMNS } from "../../pump-table/columns.ts";
import { type ReadColumns, readTable, type TableRow } from "../../tables/read-table.ts";
import { yesOrNo } from "../../tables/yes-or-no.ts";
import type { RangeParameter, Reading } from "../parameter.ts";
import { CURVE_COLUMNS, withEfficiencyAsFraction } from "./curve.ts";

/** One curve of a range, and what its rows say of the pump; blank where they say nothing. */
export interface StatedPump {
  /** Blank where the range holds one curve without a name. */
  readonly name: string;
  readonly curve: PumpCurve;
  readonly speed?: number;
  readonly speedRatio?: number;
  readonly trimRatio?: number;
  readonly level?: number;
  readonly checkValve?: boolean;
  readonly count?: number;
  /** Rows of the discharge line before it. */
  readonly afterRow?: number;
}

const COLUMNS = {
  ...CURVE_COLUMNS,
  pump: { name: "pump", also: POINT_COLUMNS.pump.also },
  speed: POINT_COLUMNS.speed,
  diameter: POINT_COLUMNS.diameter,
  speedRatio: { name: "speed ratio", also: ["n2/n1", "relative speed"], quantity: "ratio", atLeast: 0 },
  trimRatio: { name: "trim ratio", also: ["d2/d1", "impeller ratio"], quantity: "ratio", atLeast: 0 },
  level: { name: "level", also: ["source level", "source level over the common one"], quantity: "elevation" },
  checkValve: { name: "check valve", also: ["non-return valve"], read: yesOrNo },
  afterRow: { name: "after row", also: ["stands after row", "after row of the line"], quantity: "ratio", atLeast: 0 },
  count: { name: "count", also: ["how many", "number of pumps", "pumps"], quantity: "ratio", atLeast: 0 },
} as const satisfies ReadColumns;

type Row = TableRow<typeof COLUMNS>;

/** What a pump has one of, whatever row states it. */
const OWN = ["speed", "diameter", "speedRatio", "trimRatio", "level", "checkValve", "afterRow", "count"] as const;
/** A blank cell can arrive as 0. */
const ABOVE_ZERO: ReadonlySet<(typeof OWN)[number]> = new Set([
  "speed",
  "diameter",
  "speedRatio",
  "trimRatio",
  "count",
]);

/** One pump curve, or several: then a column “pump” says whose each row is, and columns more how each pump runs. */
export const stationCurves: RangeParameter<readonly StatedPump[]> = {
  takes: "range",
  about:
    "The pump curve, a range: flow, head, and where known efficiency, NPSHR, power (with water). Several pumps stand one below the other under a heading with a column pump; optional besides: speed, speed ratio, trim ratio, level, check valve, count, after row",
  example:
    "a range of rows, such as pump | flow | head | count, then A | 0 | 140 | 2, then A | 600 | 88, then B | 0 | 120 | 1, then B | 500 | 70",
  read: readCurves,
};

function readCurves(cells: readonly (readonly Cell[])[], { name, units }: Reading): Result<readonly StatedPump[]> {
  const order = ["flow", "head", "efficiency", "npshRequired"] as const;
  return andThen(readTable(cells, COLUMNS, { place: { name }, units, order }), ({ rows, heading }) => {
    const isStated = heading.units.efficiency !== undefined;
    const given: readonly PumpCurvePoint[] = rows.map(({ values }) => values);
    const labels = rows.map(({ label }) => label);
    return andThen(isStated ? succeed(given) : withEfficiencyAsFraction(given, labels, name), (points) => {
      const groups = new Map<string, { name: string; rows: Row[]; points: PumpCurvePoint[] }>();
      let last = "";
      for (const [i, row] of rows.entries()) {
        if (!isBlank(row.values.pump ?? null)) last = row.values.pump as string;
        const key = last.toLowerCase();
        const group = groups.get(key) ?? { name: last, rows: [], points: [] };
        group.rows.push(row);
        group.points.push(points[i] as PumpCurvePoint);
        groups.set(key, group);
      }
      const nameless = groups.get("")?.rows[0];
      if (nameless !== undefined && groups.size > 1)
        return leftOut(nameless.placeOf("pump"), POINT_COLUMNS.pump.wanted);
      const pumps: StatedPump[] = [];
      const findings: Finding[] = [];
      let isWhole = true;
      const unfit = unfitCounts([...groups.values()]);
      if (unfit.length > 0) return fail(unfit);
      for (const group of groups.values()) {
        const read = pumpOf(group, name);
        append(findings, read.findings);
        if (read.ok) pumps.push(read.value);
        else isWhole = false;
      }
      return isWhole ? succeed(pumps, findings) : fail(findings);
    });
  });
}

/**
 * Counts that are not whole, and those of 0 that are no blank cells: another cell of the column arrives blank, or another
 * pump states its count on every row.
 */
function unfitCounts(pumps: readonly { readonly rows: readonly Row[] }[]): readonly Finding[] {
  const isStated = pumps.some(
    ({ rows }) =>
      rows.some(({ values: { count } }) => count === undefined) ||
      (rows.length > 1 && rows.every(({ values: { count = 0 } }) => count > 0)),
  );
  return pumps.flatMap(({ rows }) =>
    rows.flatMap(({ values: { count }, placeOf }): readonly Finding[] => {
      if (count === undefined) return [];
      const subject = placeOf("count");
      if (count === 0 && isStated) return [outOfRange(subject, "ratio", count, "at least", 1)];
      if (Number.isInteger(count)) return [];
      return [{ code: "not-a-whole-number", kind: "error", subject, found: amount("ratio", count) }];
    }),
  );
}

function pumpOf(
  {
    name,
    rows,
    points,
  }: { readonly name: string; readonly rows: readonly Row[]; readonly points: readonly PumpCurvePoint[] },
  range: string,
): Result<StatedPump> {
  const own: Partial<Record<(typeof OWN)[number], number | boolean>> = {};
  const errors: Finding[] = [];
  for (const { values, placeOf } of rows) {
    for (const key of OWN) {
      const value = values[key];
      if (value === undefined || (value === 0 && ABOVE_ZERO.has(key))) continue;
      const first = own[key];
      own[key] ??= value;
      if (first === undefined || first === value) continue;
      errors.push({ code: "pump-stated-twice", kind: "error", subject: placeOf(key), given: name });
    }
  }
  if (errors.length > 0) return fail(errors);
  const labels = rows.map(({ label }) => label);
  const subject = name === "" ? range : name;
  return andThen(pumpCurve({ points, subject, labels }), (curve) => {
    const { diameter: _, ...stated } = own;
    return succeed({ name, curve, ...stated } as StatedPump);
  });
}
