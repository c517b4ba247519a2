import { brent } from "../numeric/brent.ts";
import { leastBetween } from "../numeric/golden-section.ts";
import type { HeadCurve } from "../pump/head-curve.ts";
import { headOf } from "../pump/pump-reading.ts";
import type { StationPump } from "./station-pump.ts";

/**
 * The grade one pump can hold at the common header, m over its own flow in m³/s: level of its source and head, less what
 * its own rows lose. Inverted on its falling part alone, from the flow of the greatest grade to the end.
 */
export interface NetCurve extends HeadCurve {
  readonly topFlow: number;
  readonly topGrade: number;
  /** At the last flow that both its curve and the losses of its own rows are given for. */
  readonly endGrade: number;
  /** Whether its own rows' losses end before its curve does. */
  readonly isCutShort: boolean;
  /** Greatest flow at which it holds a grade: none above its greatest, its last at and below that of the end. */
  readonly flowAt: (grade: number) => number;
}

/** The net curve of one pump. Source: Karassik and others, Pump Handbook, curves less branch losses. */
export function netCurve({ pump, level, ownLoss }: StationPump): NetCurve {
  const leastFlow = Math.max(pump.leastFlow, ownLoss?.leastFlow ?? 0);
  const mostFlow = Math.min(pump.mostFlow, ownLoss?.mostFlow ?? Number.POSITIVE_INFINITY);
  const headAt = (flow: number): number =>
    level + headOf(pump, flow) - (ownLoss === undefined ? 0 : ownLoss.headAt(flow));
  const ownKnots = ownLoss === undefined || ownLoss.knots.length > FEW ? [] : ownLoss.knots;
  const inner = [...pump.curve.points.map((point) => point.flow * pump.flowFactor), ...ownKnots];
  const knots = [leastFlow, ...inner.filter((flow) => flow > leastFlow && flow < mostFlow), mostFlow].sort(
    (a, b) => a - b,
  );
  const topFlow = flowOfTop(knots, headAt);
  const flows = [topFlow, ...knots.filter((flow) => flow > topFlow)];
  const grades = flows.map(headAt);
  const topGrade = grades[0] as number;
  const endGrade = grades[grades.length - 1] as number;
  const flowAt = (grade: number): number => {
    if (grade > topGrade) return 0;
    if (grade <= endGrade) return mostFlow;
    let i = grades.length - 2;
    while ((grades[i] as number) < grade) i -= 1;
    return brent((flow) => headAt(flow) - grade, flows[i] as number, flows[i + 1] as number) ?? (flows[i] as number);
  };
  return {
    leastFlow,
    mostFlow,
    headAt,
    knots,
    ...(ownLoss === undefined && { goesOneWay: true }),
    topFlow,
    topGrade,
    endGrade,
    isCutShort: mostFlow < pump.mostFlow,
    flowAt,
  };
}

/** Pieces of the own rows' losses beside those of the curve: losses are smooth, and more pieces only cost. */
const FEW = 12;

/** Flow of the greatest grade: a knot, or between two where the head rises less than the losses at the second. */
function flowOfTop(knots: readonly number[], headAt: (flow: number) => number): number {
  let before = knots[0] as number;
  let gradeBefore = headAt(before);
  let top = before;
  let greatest = gradeBefore;
  const take = (flow: number, grade: number): void => {
    if (grade < greatest) return;
    greatest = grade;
    top = flow;
  };
  for (let i = 1; i < knots.length; i += 1) {
    const flow = knots[i] as number;
    const grade = headAt(flow);
    if (headAt(before + 1e-3 * (flow - before)) > gradeBefore) {
      const between = leastBetween((at) => -headAt(at), before, flow);
      take(between, headAt(between));
    }
    take(flow, grade);
    before = flow;
    gradeBefore = grade;
  }
  return top;
}
