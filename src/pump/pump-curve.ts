import { amount, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { type Pchip, pchip } from "../numeric/pchip.ts";
import { type BestEfficiency, bestEfficiencyOf } from "./best-efficiency.ts";
import { curveRemarks, isGiven, orderErrors, pointErrors, powerErrors } from "./pump-curve-checks.ts";
import { type PumpCurvePoint, pumpCurveMethod } from "./pump-curve-point.ts";

export interface PumpCurveInput {
  readonly points: readonly PumpCurvePoint[];
  /** Name of the curve in findings. */
  readonly subject: string;
  /** What the reader calls each point, such as "curve row 3". */
  readonly labels: readonly string[];
}

/** A pump curve at the speed and impeller it was given for, ready to be read. Made by `pumpCurve`. */
export interface PumpCurve {
  readonly points: readonly PumpCurvePoint[];
  readonly leastFlow: number;
  readonly mostFlow: number;
  readonly head: Pchip;
  /** From zero efficiency at zero flow. */
  readonly efficiency?: Pchip;
  readonly npshRequired?: Pchip;
  readonly power?: Pchip;
  /** Missing where the curve gives neither efficiency nor power. */
  readonly bestEfficiency?: BestEfficiency;
}

/** Fewest points a curve, or a column of it, is drawn through. */
const FEWEST_POINTS = 3;
/**
 * A pump curve from its points: head, and where given efficiency (through zero at zero flow), NPSHR and power, each a
 * monotone piecewise cubic in flow, read from first point to last and never beyond. A column needs three points; a 0
 * counts as not given.
 * Fails: not-a-number; out-of-range; curve-flow-not-ascending; curve-too-few-points; curve-does-not-fall, head greatest
 * at the last point; power-below-hydraulic.
 * Warns: as `curveRemarks`.
 * Source: Fritsch and Butland 1984.
 */
export function pumpCurve({ points, subject, labels }: PumpCurveInput): Result<PumpCurve> {
  const errors = [...pointErrors(points, labels), ...orderErrors(points, labels)];
  if (errors.length > 0) return fail(errors);
  if (points.length < FEWEST_POINTS) return fail([tooFewPoints(subject, points.length)]);
  const first = points[0] as PumpCurvePoint;
  const last = points.at(-1) as PumpCurvePoint;
  if (last.head >= first.head && points.every(({ head }) => head <= last.head)) {
    return fail([doesNotFall(subject, first.head, last.head)]);
  }
  const efficiency = columnOf(points, "efficiency", subject);
  const npshRequired = columnOf(points, "npshRequired", subject);
  const power = columnOf(points, "power", subject);
  const columnErrors = [efficiency, npshRequired, power].flatMap(({ findings }) => findings);
  if (!efficiency.ok || !npshRequired.ok || !power.ok) return fail(columnErrors);
  const impossible = powerErrors(points, labels);
  if (impossible.length > 0) return fail(impossible);

  const flows = points.map(({ flow }) => flow);
  const drawn = {
    points,
    leastFlow: flows[0] as number,
    mostFlow: flows.at(-1) as number,
    head: pchip(
      flows,
      points.map(({ head }) => head),
    ),
    ...(efficiency.value && { efficiency: efficiency.value }),
    ...(npshRequired.value && { npshRequired: npshRequired.value }),
    ...(power.value && { power: power.value }),
  };
  const bestEfficiency = bestEfficiencyOf(drawn);
  return succeed({ ...drawn, ...(bestEfficiency && { bestEfficiency }) }, curveRemarks(points, subject, labels));
}

function tooFewPoints(subject: string, given: number): Finding {
  return { code: "curve-too-few-points", kind: "error", subject, facts: { given, least: FEWEST_POINTS } };
}

function doesNotFall(subject: string, first: number, last: number): Finding {
  const facts = { last: amount("head", last) };
  return { code: "curve-does-not-fall", kind: "error", subject, found: amount("head", first), facts };
}

/** The interpolant of a column that may have gaps; nothing where the column is empty. */
function columnOf(
  points: readonly PumpCurvePoint[],
  column: "efficiency" | "npshRequired" | "power",
  subject: string,
): Result<Pchip | undefined> {
  const given = points.filter((point) => isGiven(point[column]));
  if (given.length === 0) return succeed(undefined);
  const flows = given.map(({ flow }) => flow);
  const values = given.map((point) => point[column] as number);
  if (column === "efficiency" && flows[0] !== 0) {
    flows.unshift(0);
    values.unshift(0);
  }
  if (flows.length < FEWEST_POINTS) {
    return fail([tooFewPoints(`${subject} column “${pumpCurveMethod.inputs[column].name}”`, given.length)]);
  }
  return succeed(pchip(flows, values));
}
