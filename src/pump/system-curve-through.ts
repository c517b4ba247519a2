import type { Method } from "../basis/method.ts";
import { checkInputs } from "../basis/method.ts";
import { amount, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { pchip, valueAt } from "../numeric/pchip.ts";
import type { HeadCurve } from "./head-curve.ts";

export interface SystemCurvePoint {
  /** m³/s */
  readonly flow: number;
  /** m of the pumped liquid; negative where the system runs by itself. */
  readonly head: number;
}

export interface SystemCurveThroughInput {
  readonly points: readonly SystemCurvePoint[];
  /** Name of the curve in findings. */
  readonly subject: string;
  /** What the reader calls each point, such as "system curve row 3". */
  readonly labels: readonly string[];
}

export const systemCurveThroughMethod = {
  cites: [
    { source: "fritsch-butland-1984", at: "monotone piecewise cubic interpolant" },
    { source: "house", at: "interpolated over the square of the flow, with which friction goes nearly" },
  ],
  inputs: {
    flow: { name: "flow", symbol: "Q", quantity: "flow", atLeast: 0, atMost: 1000 },
    head: { name: "head", symbol: "H", quantity: "head", atLeast: -10_000, atMost: 10_000 },
  },
} as const satisfies Method<keyof SystemCurvePoint>;

/**
 * A system curve through its points, never beyond them, m over m³/s: a monotone piecewise cubic in the square of the
 * flow, exact for H = H_s + k Q² and near it for turbulent friction.
 * Fails: not-a-number; out-of-range; curve-flow-not-ascending; curve-too-few-points (two at least).
 * Warns: caution system-curve-falls.
 * Source: Fritsch and Butland 1984; the square of the flow is a house choice.
 */
export function systemCurveThrough({ points, subject, labels }: SystemCurveThroughInput): Result<HeadCurve> {
  const errors: Finding[] = [];
  let fallsAt: number | undefined;
  for (const [i, point] of points.entries()) {
    const checked = checkInputs(systemCurveThroughMethod, point);
    errors.push(...checked.findings.map((finding) => ({ ...finding, subject: `${labels[i]}: ${finding.subject}` })));
    const before = points[i - 1];
    if (before === undefined) continue;
    if (!(point.flow > before.flow)) {
      const found = amount("flow", point.flow);
      const facts = { before: amount("flow", before.flow) };
      errors.push({
        code: "curve-flow-not-ascending",
        kind: "error",
        subject: `${labels[i]}: flow`,
        found,
        facts,
      });
    }
    if (point.head < before.head) fallsAt ??= i;
  }
  if (errors.length > 0) return fail(errors);
  if (points.length < 2) {
    return fail([{ code: "curve-too-few-points", kind: "error", subject, facts: { given: points.length, least: 2 } }]);
  }
  const knots = points.map(({ flow }) => flow);
  const drawn = pchip(
    knots.map((flow) => flow * flow),
    points.map(({ head }) => head),
  );
  return succeed(
    {
      leastFlow: knots[0] as number,
      mostFlow: knots.at(-1) as number,
      headAt: (flow) => valueAt(drawn, flow * flow),
      knots,
      goesOneWay: true,
    },
    fallsAt === undefined ? [] : [{ code: "system-curve-falls", kind: "check", subject: labels[fallsAt] as string }],
  );
}
