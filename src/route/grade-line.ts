import { STANDARD_ATMOSPHERE, STANDARD_GRAVITY } from "../basis/constants.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { remembered } from "../basis/remembered.ts";
import { all, andThen, type Result, succeed } from "../basis/result.ts";
import type { LiquidState } from "../liquid/liquid.ts";
import { standardAtmosphere } from "../site/atmosphere.ts";
import { gradeLineRemarks } from "./grade-line-remarks.ts";
import {
  type GradeLineInput,
  type GradePoint,
  highestSiphon,
  type SiphonLimits,
  siphonLimitsMethod,
  USUAL_SIPHON,
  vertexState,
} from "./grade-point.ts";
import { heightOver } from "./height-over.ts";
import { type March, march, startOf } from "./march.ts";
import { altitudeAt, checkedRoute, isAltitudeKnown, type Route } from "./route.ts";

export const gradeLineMethod = {
  cites: [{ source: "white-fluid-mechanics", at: "hydraulic and energy grade lines" }, ...siphonLimitsMethod.cites],
  inputs: {
    flow: { name: "flow", symbol: "Q", quantity: "flow", atLeast: 0 },
    startHead: { name: "start head", symbol: "E_0", quantity: "elevation" },
    outletPressure: { name: "outlet pressure", quantity: "gaugePressure", atLeast: -STANDARD_ATMOSPHERE },
    ...siphonLimitsMethod.inputs,
  },
} as const satisfies Method<"flow" | "startHead" | "outletPressure" | keyof SiphonLimits>;

/**
 * Grade lines [m] and gauge pressure [Pa] at each vertex of a route as the liquid arrives: before the fittings that stand
 * there, in the bore it comes through. Each vertex is judged by its lower side, as a straight reach has its least pressure
 * at an end. A start head left out is marched back from the outlet.
 * Formula: E(next) = E − (ΣK + f L/D) V²/(2g), L = √(Δx² + Δz²), hydraulic grade = E − V²/(2g), p = ρ g (grade − z);
 * from the outlet E = z + p/(ρ g) + V²/(2g)
 * Fails: out-of-range inputs and elevations; route-too-short, chainage-not-increasing; as `lineLoss`.
 * Warns: as `gradeLineRemarks` and `lineLoss`; altitude-unusual.
 * Source: White, hydraulic and energy grade lines; the limits of vacuum, a choice of ours.
 */
export function gradeLine(input: GradeLineInput): Result<readonly GradePoint[]> {
  const { flow, route, startHead, liquid, outletPressure = 0, limits = USUAL_SIPHON } = input;
  const { siphonHeight, siphonHeightLoss, siphonPressure } = limits;
  return gradeOf(route, flow, startHead, liquid, outletPressure, siphonHeight, siphonHeightLoss, siphonPressure);
}

/** The siphons of a state and the pressures of its runs ask for the same grade line. */
const gradeOf = remembered(grade);

function grade(
  route: Route,
  flow: number,
  startHead: number | null,
  liquid: LiquidState,
  outletPressure: number,
  siphonHeight: number,
  siphonHeightLoss: number,
  siphonPressure: number,
): Result<readonly GradePoint[]> {
  const limits = { siphonHeight, siphonHeightLoss, siphonPressure };
  const checked = checkInputs(gradeLineMethod, { flow, startHead: startHead ?? 0, outletPressure, ...limits });
  if (!checked.ok) return checked;
  return andThen(checkedRoute(route), () =>
    andThen(march(flow, route, liquid), (marched) =>
      andThen(atmospheres(route), (air) => {
        const start = startHead ?? startOf(marched, route, outletPressure / weightOf(liquid));
        const known = { flow, route, startHead: start, liquid, outletPressure, limits };
        const points = pointsOf(known, marched, air);
        return succeed(points, gradeLineRemarks({ ...known, isMarchedBack: startHead === null }, points));
      }),
    ),
  );
}

function pointsOf(
  { route, startHead, liquid, limits }: GradeLineInput & { readonly startHead: number; readonly limits: SiphonLimits },
  { lost, lostAfter, arriving, leaving }: March,
  air: readonly number[],
): readonly GradePoint[] {
  const weight = weightOf(liquid);
  return route.vertices.map(({ chainage, elevation, pipe }, i) => {
    const energyGrade = startHead - (lost[i] as number);
    const hydraulicGrade = energyGrade - (arriving[i] as number);
    const leastGrade = Math.min(hydraulicGrade, energyGrade - (lostAfter[i] as number) - (leaving[i] as number));
    const pressure = weight * heightOver(hydraulicGrade, elevation);
    const leastPressure = weight * heightOver(leastGrade, elevation);
    const atmosphericPressure = air[i] as number;
    const state = vertexState({
      gaugePressure: leastPressure,
      atmosphericPressure,
      vapourPressure: liquid.vapourPressure ?? 0,
      headAboveGradeLine: elevation - leastGrade,
      highestSiphon: highestSiphon(limits, altitudeAt(route, elevation)),
      siphonPressure: limits.siphonPressure,
      layFlat: pipe.collapsible === true || route.vertices[i - 1]?.pipe.collapsible === true,
    });
    return { chainage, elevation, energyGrade, hydraulicGrade, pressure, leastPressure, atmosphericPressure, state };
  });
}

/** ρ g, N/m³. */
function weightOf({ density }: LiquidState): number {
  return density * STANDARD_GRAVITY;
}

/** Absolute pressure of the air at each vertex, Pa: of its own elevation, of the site, or of sea level. */
function atmospheres(route: Route): Result<readonly number[]> {
  if (!isAltitudeKnown(route)) return succeed(route.vertices.map(() => STANDARD_ATMOSPHERE));
  return all(route.vertices.map(({ elevation }) => standardAtmosphere(altitudeAt(route, elevation))));
}
