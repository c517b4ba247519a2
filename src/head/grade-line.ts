import { STANDARD_ATMOSPHERE, STANDARD_GRAVITY } from "../basis/constants.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { all, amount, andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { type LineLoss, lineLoss } from "../pipework/line-loss.ts";
import { standardAtmosphere } from "../site/atmosphere.ts";
import { gradeLineRemarks } from "./grade-line-remarks.ts";
import { type GradeLineInput, type GradePoint, highestSiphon, vertexState } from "./grade-point.ts";
import { type Route, reachesOf } from "./route.ts";
import { velocityHead } from "./velocity-head.ts";

export const gradeLineMethod = {
  cites: [
    { source: "white-fluid-mechanics", at: "hydraulic and energy grade lines" },
    { source: "house", at: "limits of vacuum at summits: 30 kPa absolute, 7.0 m of siphon less 1.1 m per 1000 m" },
  ],
  inputs: {
    flow: { name: "flow", symbol: "Q", quantity: "flow", atLeast: 0 },
    startHead: { name: "start head", symbol: "E_0", quantity: "elevation" },
  },
} as const satisfies Method<"flow" | "startHead">;

/**
 * Grade lines [m] and gauge pressure [Pa] at each vertex of a route as the liquid arrives: before its fittings, in the
 * bore it comes through. Each vertex is judged by its lower side, as a straight reach has its least pressure at an end.
 * Formula: E(next) = E − (ΣK + f L/D) V²/(2g), L = √(Δx² + Δz²), hydraulic grade = E − V²/(2g), p = ρ g (grade − z)
 * Fails: out-of-range inputs and elevations; route-too-short, chainage-not-increasing; as `lineLoss`.
 * Warns: as `gradeLineRemarks` and `lineLoss`; altitude-unusual.
 * Source: White, hydraulic and energy grade lines; the limits of vacuum, a choice of ours.
 */
export function gradeLine(input: GradeLineInput): Result<readonly GradePoint[]> {
  const { flow, route, startHead, liquid } = input;
  const checked = checkInputs(gradeLineMethod, { flow, startHead });
  if (!checked.ok) return checked;
  const wrong = routeErrors(route);
  if (wrong.length > 0) return fail(wrong);

  return andThen(lineLoss({ flow, line: reachesOf(route), liquid }), (loss) =>
    andThen(atmospheres(route), (air) => {
      const points = marched(input, loss, air);
      return succeed(points, gradeLineRemarks(input, points));
    }),
  );
}

function marched(
  { flow, route, startHead, liquid }: GradeLineInput,
  { segments }: LineLoss,
  air: readonly number[],
): readonly GradePoint[] {
  const weight = liquid.density * STANDARD_GRAVITY;
  const points: GradePoint[] = [];
  let energyGrade = startHead;
  for (const [i, vertex] of route.vertices.entries()) {
    const { chainage, elevation } = vertex;
    const arriving = route.vertices[i - 1] ?? vertex;
    const fittingHead = segments[i]?.fittingHead ?? 0;
    const hydraulicGrade = energyGrade - velocityHead(flow, arriving.pipe.bore);
    const leastGrade = Math.min(hydraulicGrade, energyGrade - fittingHead - velocityHead(flow, vertex.pipe.bore));
    const pressure = weight * (hydraulicGrade - elevation);
    const leastPressure = weight * (leastGrade - elevation);
    const atmosphericPressure = air[i] as number;
    const state = vertexState({
      gaugePressure: leastPressure,
      atmosphericPressure,
      vapourPressure: liquid.vapourPressure ?? 0,
      headAboveGradeLine: elevation - leastGrade,
      highestSiphon: highestSiphon(route.aboveSeaLevel ? elevation : 0),
      layFlat: arriving.pipe.collapsible === true || vertex.pipe.collapsible === true,
    });
    const grades = { energyGrade, hydraulicGrade, pressure, leastPressure, atmosphericPressure };
    points.push({ chainage, elevation, ...grades, state });
    energyGrade -= fittingHead + (segments[i]?.head ?? 0);
  }
  return points;
}

/** Absolute pressure of the air at each vertex, Pa: of its own elevation where that is known, else of sea level. */
function atmospheres({ vertices, aboveSeaLevel }: Route): Result<readonly number[]> {
  return all(
    vertices.map(({ elevation }) => (aboveSeaLevel ? standardAtmosphere(elevation) : succeed(STANDARD_ATMOSPHERE))),
  );
}

function routeErrors({ vertices }: Route): readonly Finding[] {
  const subject = "route";
  if (vertices.length < 2) return [{ code: "route-too-short", kind: "error", subject }];
  return vertices.flatMap(({ chainage }, i) => {
    const before = vertices[i - 1]?.chainage;
    if (before === undefined || chainage > before) return [];
    const facts = { before: amount("length", before) };
    const found = amount("length", chainage);
    return [{ code: "chainage-not-increasing", kind: "error", subject, found, facts } as const];
  });
}
