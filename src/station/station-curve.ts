import { checkInputs, type Method, outOfRange } from "../basis/method.ts";
import { amount, fail, type Result, succeed } from "../basis/result.ts";
import { brent } from "../numeric/brent.ts";
import { greatestOf, leastOf } from "../numeric/extremes.ts";
import type { Arrangement } from "../pump/head-curve.ts";
import { flowAtHeader, type NetPump } from "./header.ts";
import { netCurve } from "./net-curve.ts";
import { type StationPump, unfitCount } from "./station-pump.ts";

export interface StationCurveInput {
  /** In any order side by side, in the order of flow in series. */
  readonly pumps: readonly StationPump[];
  readonly arrangement: Arrangement;
  /** How many points, both ends among them. */
  readonly points: number;
}

/** Flow of all pumps together, m³/s, and the head they hold there over the common source level, m. */
export interface StationCurvePoint {
  readonly flow: number;
  readonly head: number;
}

export const stationCurveMethod = {
  cites: [
    { source: "white-fluid-mechanics", at: "ch. 11, pumps combined in parallel; pumps combined in series" },
    { source: "pump-handbook", at: "parallel and series operation; curves less branch losses" },
  ],
  inputs: { points: { name: "number of points", quantity: "ratio", atLeast: 2, atMost: 200 } },
} as const satisfies Method<"points">;

/**
 * Head that pumps hold together over their flow, alike or not, m over m³/s: at the header of pumps side by side, each
 * less its own rows and on the falling part of its curve, nothing of one whose greatest is below; behind the last of
 * pumps in series. It ends where the first of them is at the end of its curve. Evenly spaced, but for the flows at which
 * another pump comes in, which take the place of the points next to them.
 * Formula: Q(G) = Σ Q_i(G), solved for G at each flow;  in series H(Q) = Σ H_i(Q)
 * Fails: left-out; a number of pumps that is not whole, or not 1 to 100; points that are not whole or out of range; curves in series without a flow in common.
 * Source: White, Fluid Mechanics, ch. 11; Karassik and others, Pump Handbook; Brent 1973.
 */
export function stationCurve({ pumps, arrangement, points }: StationCurveInput): Result<readonly StationCurvePoint[]> {
  if (pumps.length === 0) {
    return fail([{ code: "left-out", kind: "error", subject: "pumps", suggestions: ["one pump or more"] }]);
  }
  const unfit = unfitCount(pumps);
  if (unfit !== undefined) return fail([unfit]);
  const checked = checkInputs(stationCurveMethod, { points });
  if (!checked.ok) return checked;
  if (!Number.isInteger(points)) {
    const found = amount("ratio", points);
    return fail([{ code: "not-a-whole-number", kind: "error", subject: "number of points", found }]);
  }
  return arrangement === "series" ? inSeries(pumps, points) : sideBySide(pumps, points);
}

function sideBySide(pumps: readonly StationPump[], points: number): Result<readonly StationCurvePoint[]> {
  const nets = pumps.map((of): NetPump => ({ of, net: netCurve(of) }));
  const total = (grade: number): number => nets.reduce((sum, one) => sum + one.of.count * flowAtHeader(one, grade), 0);
  const high = greatestOf(nets.map(({ net }) => net.topGrade));
  const low = greatestOf(nets.map(({ net }) => net.endGrade));
  // Without a check valve a weaker pump takes what the others give near their shutoff.
  const start = total(high) >= 0 ? high : (brent(total, low, high) ?? high);
  const [first, last] = [Math.max(0, total(start)), total(low)];
  const opening = nets.flatMap(({ net }) => (net.topGrade > low && net.topGrade < start ? [total(net.topGrade)] : []));
  const flows = spaced(first, last, points, opening);
  const heads = flows.map((flow, i) => {
    if (i === 0) return start;
    return i === points - 1 ? low : (brent((grade) => total(grade) - flow, low, start) ?? low);
  });
  return succeed(flows.map((flow, i) => ({ flow, head: heads[i] as number })));
}

function inSeries(pumps: readonly StationPump[], points: number): Result<readonly StationCurvePoint[]> {
  const nets = pumps.map((of) => ({ of, net: netCurve({ ...of, level: 0 }) }));
  const first = greatestOf(nets.map(({ net }) => net.leastFlow));
  const last = leastOf(nets.map(({ net }) => net.mostFlow));
  if (last <= first) return fail([outOfRange("minimum flow of the curves in series", "flow", first, "below", last)]);
  return succeed(
    spaced(first, last, points, []).map((flow) => ({
      flow,
      head: nets.reduce((sum, { of, net }) => sum + of.count * net.headAt(flow), 0),
    })),
  );
}

/** Evenly spaced flows, those nearest to a flow that must be among them moved to it. */
function spaced(first: number, last: number, points: number, among: readonly number[]): readonly number[] {
  const flows = Array.from({ length: points }, (_, i) => first + ((last - first) * i) / (points - 1));
  flows[points - 1] = last;
  for (const flow of among) {
    const nearest = Math.round(((flow - first) / (last - first)) * (points - 1));
    if (nearest > 0 && nearest < points - 1) flows[nearest] = flow;
  }
  return flows;
}
