import { STANDARD_GRAVITY } from "../basis/constants.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { amount, andThen, type Finding, type Result, succeed } from "../basis/result.ts";
import type { LiquidState } from "../liquid/liquid.ts";
import { greatestOf, leastOf } from "../numeric/extremes.ts";
import { lineSurge, lineSurgeMethod } from "../pressure/line-surge.ts";
import { withPassedOn } from "../pressure/passed-on-surge.ts";
import { drainDown } from "./drain-down.ts";
import { gradeLine } from "./grade-line.ts";
import type { GradePoint, SiphonLimits } from "./grade-point.ts";
import { heightOver } from "./height-over.ts";
import { march } from "./march.ts";
import { gradeAtOutlet, type Route, type RouteVertex, reachesOf } from "./route.ts";

export interface LinePressuresInput {
  /** Running, m³/s. */
  readonly flow: number;
  readonly route: Route;
  readonly liquid: LiquidState;
  /** Of the liquid, Pa. */
  readonly bulkModulus: number;
  /** Energy line at the start, m; null marches back from the outlet. */
  readonly startHead: number | null;
  /** Gauge pressure over the outlet, Pa. */
  readonly outletPressure: number;
  /** Level to which the pumps hold the line against a shut valve: source and shutoff heads, m. */
  readonly shutoffLevel: number | null;
  /** Flow while the line fills, m³/s; the running one where null. */
  readonly fillingFlow: number | null;
  /** As usual where left out. */
  readonly limits?: SiphonLimits | undefined;
}

/** Gauge pressures in one run of a line, Pa: the greatest and least of its two ends. */
export interface RunPressures {
  readonly pipe: string;
  /** m */
  readonly from: number;
  readonly to: number;
  /** The lower end of the run, m. */
  readonly lowest: number;
  readonly running: number;
  readonly shutoff: number | undefined;
  /** Pumps stopped, the check valve shut, the line full to the highest point beyond. */
  readonly standing: number;
  /** At rest with no air let in at the summits: what hangs on the outlet, no lower than vapour pressure. */
  readonly hanging: number;
  /** While it fills, with the front at the governing summit; 0 beyond it. */
  readonly filling: number;
  /** Rise, and fall, if the flow stops at once: the run's own, or what a neighbour passes on. */
  readonly surge: number;
  /** The greatest of running and shutoff, with the surge on it. */
  readonly withSurge: number;
  /** The least of running and at rest, and that less the surge, no lower than vapour pressure. */
  readonly least: number;
  readonly leastWithSurge: number;
}

export const linePressuresMethod = {
  cites: [
    { source: "white-fluid-mechanics", at: "hydraulic and energy grade lines" },
    ...lineSurgeMethod.cites,
    { source: "wylie-streeter", at: "waves at a change of pipe", unverified: true },
  ],
  inputs: {
    flow: { name: "flow", symbol: "Q", quantity: "flow", atLeast: 0 },
    shutoffLevel: { name: "shutoff level", quantity: "elevation" },
    fillingFlow: { name: "filling flow", symbol: "Q_fill", quantity: "flow", atLeast: 0 },
  },
} as const satisfies Method<"flow" | "shutoffLevel" | "fillingFlow">;

/**
 * The pressures a line has to stand, run by run, gauge, Pa: running, against a shut valve, standing, filling, with the
 * surge of a sudden stop, and the least. Each is greatest at the low end of its run.
 * Formula: p = ρ g (grade − z);  surge ρ a V of the run, or 2 (A1/a1)/(A1/a1 + A2/a2) of its neighbour's
 * Fails: as `gradeLine` and `lineSurge`; inputs outside the method's bounds.
 * Warns: as these; column-separates-on-surge (check).
 * Source: White; Joukowsky 1898; Wylie and Streeter. A screen, no transient study.
 */
export function linePressures(input: LinePressuresInput): Result<readonly RunPressures[]> {
  const { flow, route, liquid, bulkModulus, startHead, outletPressure, shutoffLevel, fillingFlow, limits } = input;
  const checked = checkInputs(linePressuresMethod, {
    flow,
    shutoffLevel: shutoffLevel ?? 0,
    fillingFlow: fillingFlow ?? flow,
  });
  return andThen(checked, () =>
    andThen(gradeLine({ flow, route, startHead, liquid, outletPressure, limits }), (points) =>
      andThen(march(fillingFlow ?? flow, route, liquid), ({ lost }) =>
        andThen(lineSurge({ flow, line: reachesOf(route), liquid, bulkModulus }), ({ runs, line }) =>
          andThen(drainDown(route, Number.NEGATIVE_INFINITY), ({ standing }) => {
            const reaches = reachesOf(route);
            const own = runs.map(({ counts, waveSpeed, pressureChange }, i) => {
              const { pipe, runs: beside = 1 } = reaches[i] as (typeof reaches)[number];
              const area = beside * (Math.PI / 4) * pipe.bore ** 2;
              // A short run is back before it has risen; it sees what the line and its neighbours send.
              return { area, waveSpeed, pressureChange: counts ? pressureChange : line.pressureChange };
            });
            const found = pressuresOf(input, points, { lost, standing, surges: withPassedOn(own) });
            return succeed(found, separations(found, input, points));
          }),
        ),
      ),
    ),
  );
}

interface Grades {
  readonly lost: readonly number[];
  readonly standing: readonly number[];
  readonly surges: readonly number[];
}

function pressuresOf(
  { route, liquid, shutoffLevel, outletPressure }: LinePressuresInput,
  points: readonly GradePoint[],
  { lost, standing, surges }: Grades,
): readonly RunPressures[] {
  const weight = liquid.density * STANDARD_GRAVITY;
  const { vertices } = route;
  const toReach = vertices.map(({ elevation }, i) => elevation + (lost[i] as number));
  const fillStart = greatestOf(toReach);
  const governing = toReach.indexOf(fillStart);
  const floor = (liquid.vapourPressure ?? 0) - leastOf(points.map(({ atmosphericPressure }) => atmosphericPressure));
  const outletGrade = gradeAtOutlet(route, outletPressure / weight);
  return surges.map((surge, i) => {
    const ends = [i, i + 1];
    const over = (grade: (end: number) => number): readonly number[] =>
      ends.map((end) => weight * heightOver(grade(end), (vertices[end] as RouteVertex).elevation));
    const [from, to] = ends.map((end) => points[end] as GradePoint) as [GradePoint, GradePoint];
    const runningEnds = [Math.max(from.pressure, from.leastPressure), to.pressure];
    const running = greatestOf(runningEnds);
    const shutoff = shutoffLevel === null ? undefined : greatestOf(over(() => shutoffLevel));
    const stood = over((end) => Math.max(standing[end] as number, outletGrade));
    const filled = i < governing ? over((end) => fillStart - (lost[end] as number)) : [0];
    const least = Math.min(from.leastPressure, to.leastPressure, leastOf(stood));
    return {
      pipe: (vertices[i] as RouteVertex).pipe.name,
      from: from.chainage,
      to: to.chainage,
      lowest: Math.min(from.elevation, to.elevation),
      running,
      shutoff,
      standing: greatestOf(stood),
      hanging: Math.max(floor, leastOf(over(() => outletGrade))),
      filling: Math.max(0, greatestOf(filled)),
      surge,
      withSurge: Math.max(running, shutoff ?? running) + surge,
      least,
      leastWithSurge: Math.max(floor, least - surge),
    };
  });
}

/** The run in which a sudden stop would take the pressure to the vapour pressure, once for the line. */
function separations(
  runs: readonly RunPressures[],
  { liquid }: LinePressuresInput,
  points: readonly GradePoint[],
): readonly Finding[] {
  const air = leastOf(points.map(({ atmosphericPressure }) => atmosphericPressure));
  const vapour = (liquid.vapourPressure ?? 0) - air;
  const at = runs.findIndex(({ least, surge }) => surge > 0 && least - surge <= vapour);
  if (at < 0) return [];
  const subject = `run ${at + 1}, ${runs[at]?.pipe}`;
  const [, cites] = linePressuresMethod.cites;
  return [{ code: "column-separates-on-surge", kind: "check", subject, found: amount("gaugePressure", vapour), cites }];
}
