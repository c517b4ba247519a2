import type { Citation } from "../basis/citation.ts";
import { STANDARD_GRAVITY } from "../basis/constants.ts";
import type { Amount } from "../basis/quantities.ts";
import { amount, type Finding } from "../basis/result.ts";
import { LAY_FLAT_PRACTICE } from "../head/line-remarks.ts";
import { vacuumRemarks as collapseRemarks } from "../suction/vacuum-collapse.ts";
import { CLEARING, fallingLegs } from "./falling-leg.ts";
import {
  type GradeLineInput,
  type GradePoint,
  highestSiphon,
  isVacuum,
  type SiphonLimits,
  siphonLimitsMethod,
  type VertexState,
} from "./grade-point.ts";
import { altitudeAt, isAltitudeKnown, type Route } from "./route.ts";

const SEPARATION: Citation = { source: "white-fluid-mechanics", at: "vapour pressure and cavitation" };
const [SUMMIT_CHOICE] = siphonLimitsMethod.cites;
const FILLING_CHOICE: Citation = {
  source: "house",
  at: "at start-up the pump fills the line: maximum of elevation plus losses to there",
};
/** Rise over run. */
const STEEPEST_USUAL = 1;
const subject = "route";

interface Marched extends GradeLineInput {
  readonly startHead: number;
  readonly limits: SiphonLimits;
  readonly isMarchedBack: boolean;
}

/**
 * What a grade line gives cause to say, each remark at the vertex where it is worst.
 * Warns: column-separation, lay-flat-under-vacuum (warnings); air-release, siphon-too-high, route-at-sea-level,
 * separation-not-judged, falling-leg-part-full, start-head-does-not-fill, filling-takes-more,
 * start-head-does-not-deliver, start-head-too-high, pipe-vacuum-collapses, route-exit-midway, route-steep.
 * Source: White, vapour pressure and cavitation; lay-flat, common practice; the limits of vacuum, a choice of ours.
 */
export function gradeLineRemarks(input: Marched, points: readonly GradePoint[]): readonly Finding[] {
  return [
    ...vacuumRemarks(input, points),
    ...collapseRemarks(subject, pipesUnderVacuum(input, points)),
    ...fullBoreRemark(input, points),
    ...fillingRemark(input, points),
    ...deliveryRemark(input, points),
    ...shapeRemarks(input),
  ];
}

function vacuumRemarks({ route, liquid, limits }: Marched, points: readonly GradePoint[]): readonly Finding[] {
  const findings: Finding[] = [];
  const separated = lowestWith(points, "column separation");
  if (separated !== undefined) {
    findings.push({
      code: "column-separation",
      kind: "limit",
      subject,
      found: amount("absolutePressure", separated.atmosphericPressure + separated.leastPressure),
      limit: { quantity: "absolutePressure", value: liquid.vapourPressure ?? 0, side: "above" },
      facts: at(separated),
      cites: SEPARATION,
    });
  }
  const collapsed = lowestOf(
    points.filter((point, i) => isVacuum(point.leastPressure) && layFlatAt(route, i) !== undefined),
  );
  if (collapsed !== undefined) {
    findings.push({
      code: "lay-flat-under-vacuum",
      kind: "limit",
      subject,
      given: layFlatAt(route, points.indexOf(collapsed)) as string,
      found: amount("vacuum", -collapsed.leastPressure),
      facts: at(collapsed),
      cites: LAY_FLAT_PRACTICE,
    });
  }
  const airy = lowestWith(points, "air release");
  if (airy !== undefined) {
    findings.push({
      code: "air-release",
      kind: "check",
      subject,
      found: amount("absolutePressure", airy.atmosphericPressure + airy.leastPressure),
      limit: { quantity: "absolutePressure", value: limits.siphonPressure, side: "at least" },
      facts: at(airy),
      cites: SUMMIT_CHOICE,
    });
  }
  const high = lowestWith(points, "siphon too high");
  if (high !== undefined) {
    findings.push({
      code: "siphon-too-high",
      kind: "check",
      subject,
      found: amount("head", -high.leastPressure / (liquid.density * STANDARD_GRAVITY)),
      limit: { quantity: "head", value: highestSiphon(limits, altitudeAt(route, high.elevation)), side: "at most" },
      facts: at(high),
      cites: SUMMIT_CHOICE,
    });
  }
  const vacuum = points.some(({ leastPressure }) => isVacuum(leastPressure));
  if (vacuum && !isAltitudeKnown(route)) findings.push({ code: "route-at-sea-level", kind: "assumed", subject });
  if (vacuum && liquid.vapourPressure === undefined) {
    findings.push({ code: "separation-not-judged", kind: "check", subject: "liquid" });
  }
  return findings;
}

/** A leg that falls from a vertex under vacuum, too slow to sweep its air out. */
function fullBoreRemark({ flow, route }: GradeLineInput, points: readonly GradePoint[]): readonly Finding[] {
  for (const { from, froude, clearing } of fallingLegs(flow, route)) {
    const point = points[from] as GradePoint;
    if (!isVacuum(point.leastPressure) || froude >= clearing) continue;
    const facts = { ...at(point), froude: amount("ratio", froude) };
    const limit = { ...amount("ratio", clearing), side: "at least" } as const;
    return [{ code: "falling-leg-part-full", kind: "check", subject, limit, facts, cites: CLEARING }];
  }
  return [];
}

/** A start head below the greatest of elevation plus losses to there. */
function fillingRemark({ startHead, isMarchedBack }: Marched, points: readonly GradePoint[]): readonly Finding[] {
  const needed = (point: GradePoint): number => point.elevation + (startHead - point.energyGrade);
  const summit = points.reduce((highest, point) => (needed(point) > needed(highest) ? point : highest));
  if (needed(summit) <= startHead) return [];
  const code = isMarchedBack ? "filling-takes-more" : "start-head-does-not-fill";
  return [
    {
      code,
      kind: "check",
      subject: "start head",
      found: amount("elevation", startHead),
      limit: { quantity: "elevation", value: needed(summit), side: "at least" },
      facts: at(summit),
      cites: FILLING_CHOICE,
    },
  ];
}

/** The pipe on both sides of each vertex under vacuum. */
function pipesUnderVacuum({ route: { vertices } }: GradeLineInput, points: readonly GradePoint[]) {
  return points.flatMap((point, i) =>
    [vertices[i - 1]?.pipe, vertices[i]?.pipe].flatMap((pipe) =>
      pipe === undefined || !isVacuum(point.leastPressure)
        ? []
        : [{ pipe, vacuum: -point.leastPressure, chainage: at(point).chainage }],
    ),
  );
}

/** Head left at the outlet that is more than the rounding of a start head, m; house choice. */
const LEFT_AT_OUTLET = 0.1;

/** A grade line that ends below the outlet, or so far above it that it tells of another start head or of a shut outlet. */
function deliveryRemark(
  { outletPressure = 0, liquid }: GradeLineInput,
  points: readonly GradePoint[],
): readonly Finding[] {
  const outlet = points.at(-1) as GradePoint;
  const over = outlet.pressure - outletPressure;
  const left = over / (liquid.density * STANDARD_GRAVITY);
  if (left > LEFT_AT_OUTLET) {
    return [{ code: "start-head-too-high", kind: "check", subject: "start head", found: amount("head", left) }];
  }
  if (!isVacuum(over)) return [];
  return [{ code: "start-head-does-not-deliver", kind: "check", subject: "start head", found: amount("head", -left) }];
}

function shapeRemarks({ route: { vertices } }: GradeLineInput): readonly Finding[] {
  const findings: Finding[] = [];
  const midway = vertices.slice(0, -1).find(({ fittings }) => fittings.some(({ fitting }) => fitting.isExit));
  if (midway !== undefined) {
    findings.push({ code: "route-exit-midway", kind: "check", subject, facts: at(midway) });
  }
  const steep = vertices.find((from, i) => {
    const to = vertices[i + 1];
    return to !== undefined && Math.abs(to.elevation - from.elevation) > STEEPEST_USUAL * (to.chainage - from.chainage);
  });
  if (steep !== undefined) {
    findings.push({ code: "route-steep", kind: "check", subject, facts: at(steep) });
  }
  return findings;
}

function layFlatAt({ vertices }: Route, i: number): string | undefined {
  return [vertices[i - 1]?.pipe, vertices[i]?.pipe].find((pipe) => pipe?.collapsible === true)?.name;
}

function lowestWith(points: readonly GradePoint[], state: VertexState): GradePoint | undefined {
  return lowestOf(points.filter((point) => point.state === state));
}

function lowestOf(points: readonly GradePoint[]): GradePoint | undefined {
  return points.reduce<GradePoint | undefined>(
    (lowest, point) => (lowest === undefined || absolute(point) < absolute(lowest) ? point : lowest),
    undefined,
  );
}

function absolute({ atmosphericPressure, leastPressure }: GradePoint): number {
  return atmosphericPressure + leastPressure;
}

function at({ chainage }: Pick<GradePoint, "chainage">): { readonly chainage: Amount } {
  return { chainage: amount("length", chainage) };
}
