import { outOfRange } from "../../../src/basis/method.ts";
import { amount, andThen, type Finding, fail, type Result, succeed } from "../../../src/basis/result.ts";
import type { PumpCurvePoint } from "../../../src/pump/pump-curve-point.ts";
import { SPEED_RATIO_RANGE } from "../../../src/pump/running-pump.ts";
import { readTable } from "../../tables/read-table.ts";
import type { RangeParameter } from "../parameter.ts";
import { CURVE_COLUMNS, withEfficiencyAsFraction } from "./curve.ts";

const { flow, head, efficiency, power } = CURVE_COLUMNS;
const COLUMNS = {
  flow,
  head,
  efficiency,
  power,
  speed: { name: "speed", also: ["n", "test speed", "pump speed"], quantity: "speed", byUnit: true },
} as const;

/** Points as measured, r/s where the speed of each was; sorted by flow. */
export interface TestPoints {
  readonly points: readonly (PumpCurvePoint & { readonly speed?: number })[];
  readonly labels: readonly string[];
}

export const testPoints: RangeParameter<TestPoints> = {
  takes: "range",
  about:
    "The points measured, a row each, headed flow, head, and where measured efficiency, power (with water), speed; without a header row flow, head",
  example: "a range headed flow | head | power | speed",
  read: (cells, { name, units }) =>
    andThen(readTable(cells, COLUMNS, { place: { name }, units, order: ["flow", "head"] }), ({ rows, heading }) => {
      const sorted = [...rows].sort((one, other) => one.values.flow - other.values.flow);
      const labels = sorted.map(({ label }) => label);
      const given = sorted.map(({ values }) => values);
      if (heading.units.efficiency !== undefined) return succeed({ points: given, labels });
      return andThen(withEfficiencyAsFraction(given, labels, name), (points) => succeed({ points, labels }));
    }),
};

/**
 * The points at the rated speed by the affinity laws: Q/r, H/r², P/r³. Fails: points of which only some, or none of which
 * beside a rated speed, state their speed; a speed that is no test of the rated one.
 */
export function atRatedSpeed(
  { points, labels }: TestPoints,
  ratedSpeed: number | null,
  subject: string,
): Result<TestPoints> {
  if (ratedSpeed !== null && !(ratedSpeed > 0))
    return fail([outOfRange("rated speed", "speed", ratedSpeed, "above", 0)]);
  const stated = points.filter(({ speed }) => speed !== undefined).length;
  if (ratedSpeed === null && stated === 0) return succeed({ points, labels });
  if (ratedSpeed === null || stated < points.length) {
    return fail([
      { code: "acceptance-speed-missing", kind: "error", subject: ratedSpeed === null ? "rated speed" : subject },
    ]);
  }
  const errors: Finding[] = [];
  const remarks: Finding[] = [];
  const carried = points.map((point, i) => {
    const ratio = (point.speed as number) / ratedSpeed;
    const label = `${labels[i]}: speed over the rated speed`;
    if (!(ratio >= SPEED_RATIO_RANGE.least))
      errors.push(outOfRange(label, "ratio", ratio, "at least", SPEED_RATIO_RANGE.least));
    if (ratio > SPEED_RATIO_RANGE.most)
      errors.push(outOfRange(label, "ratio", ratio, "at most", SPEED_RATIO_RANGE.most));
    if (ratio < 0.8 || ratio > 1.2) {
      remarks.push({ code: "speed-far-from-curve", kind: "check", subject: label, found: amount("ratio", ratio) });
    }
    const { flow, head, power } = point;
    return {
      ...point,
      flow: flow / ratio,
      head: head / ratio ** 2,
      ...(power !== undefined && { power: power / ratio ** 3 }),
    };
  });
  return errors.length > 0 ? fail(errors) : succeed({ points: carried, labels }, remarks.slice(0, 1));
}
