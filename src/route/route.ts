import { remembered } from "../basis/remembered.ts";
import { amount, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import type { Line, LineSegment } from "../pipework/line.ts";
import { climbsBeyondLength, climbsTooFar } from "../pipework/line-levels.ts";

/** A point of a route and what lies from it to the next one: pipe, fittings, share and runs of the reach that starts here. */
export interface RouteVertex extends Omit<LineSegment, "length" | "endLevel"> {
  /** Distance along the route in plan, m. */
  readonly chainage: number;
  /** Centreline of the pipe, m over the datum of the levels. */
  readonly elevation: number;
}

export interface Route {
  /** From start to outlet. The last holds the pipe that arrives, and what stands at the outlet. */
  readonly vertices: readonly RouteVertex[];
  /** Whether elevations are above sea level, so that each vertex has its own atmosphere. */
  readonly aboveSeaLevel: boolean;
  /** Altitude of the site, m, where the elevations say none; sea level where left out. */
  readonly altitude?: number;
  /** Fittings lie along their reach, spread evenly; left out where each stands at its vertex and is lost just after it. */
  readonly hasFittingsAlong?: boolean;
  /** How deep the outlet lies under the liquid that it delivers to, m; 0 where left out. */
  readonly outletDepth?: number;
}

/** Level that stands over the outlet of a route at rest: of the liquid over it, and of a pressure head on that, m. */
export function gradeAtOutlet({ vertices, outletDepth = 0 }: Route, pressureHead: number): number {
  return (vertices.at(-1) as RouteVertex).elevation + outletDepth + pressureHead;
}

/** Whether the altitude of a route is known, by its elevations or by its site. */
export function isAltitudeKnown({ aboveSeaLevel, altitude }: Route): boolean {
  return aboveSeaLevel || altitude !== undefined;
}

/** Altitude of a place of a route, m; 0 where nothing is known of it. */
export function altitudeAt({ aboveSeaLevel, altitude = 0 }: Route, elevation: number): number {
  return aboveSeaLevel ? elevation : altitude;
}

/**
 * The reaches between the vertices of a route as a line, one segment a reach, lengths along the pipe [m]. What stands at
 * the last vertex is beyond the last reach and not in it.
 * Formula: L = √(Δx² + Δz²)
 */
export const reachesOf: (route: Route) => Line = remembered(({ vertices }) =>
  vertices.slice(1).map((to, i) => {
    const from = vertices[i] as RouteVertex;
    return { ...from, length: Math.hypot(to.chainage - from.chainage, to.elevation - from.elevation) };
  }),
);

/**
 * The route itself, held to be one.
 * Fails: route-too-short, chainage-not-increasing.
 */
export const checkedRoute: (route: Route) => Result<Route> = remembered(checked);

function checked(route: Route): Result<Route> {
  const { vertices, hasFittingsAlong } = route;
  if (vertices.length < 2) return fail([{ code: "route-too-short", kind: "error", subject: "route" }]);
  const findings = vertices.flatMap(({ chainage, elevation }, i) => {
    const before = vertices[i - 1];
    // A riser stands on its own chainage, and a row of a line may have fittings alone.
    const stands = hasFittingsAlong || elevation !== before?.elevation;
    if (before === undefined || chainage > before.chainage || (chainage === before.chainage && stands)) return [];
    const facts = { before: amount("length", before.chainage) };
    const found = amount("length", chainage);
    return [{ code: "chainage-not-increasing", kind: "error", subject: "route", found, facts } as const];
  });
  return findings.length > 0 ? fail(findings) : succeed(route);
}

export interface LineRouteInput {
  readonly line: Line;
  /** Level at which the line starts, m. */
  readonly startLevel: number;
  /** Level of the outlet, where the last row of the line states none, or of the liquid over it, m. */
  readonly outletLevel: number | null;
  /** Of the site, m; null where it is not known. */
  readonly altitude: number | null;
}

/** Levels of one end that differ by more than this are two levels, m. House choice. */
const SAME_LEVEL = 0.03;
const subject = "line";

/**
 * A line with levels as a route: a row ends at its level, and a level not stated lies between its neighbours along the
 * length of pipe. Exits of the last row stand at the outlet, other fittings lie along their row. A level given for the
 * outlet beside that of the last row is that of the liquid over it.
 * Formula: Δx = √(L² − Δz²)
 * Fails: route-too-short; route-outlet-level-missing; line-climbs-beyond-length.
 * Warns: levels-interpolated (assumed); outlet-levels-differ (check).
 * Source: house choice, levels along the length.
 */
export function routeOfLine({ line, startLevel, outletLevel, altitude }: LineRouteInput): Result<Route> {
  return routeFrom(line, startLevel, outletLevel, altitude);
}

/** Many functions ask for the route of one line. */
const routeFrom = remembered(routed);

function routed(line: Line, startLevel: number, outletLevel: number | null, altitude: number | null): Result<Route> {
  const last = line.at(-1);
  if (last === undefined) return fail([{ code: "route-too-short", kind: "error", subject }]);
  const end = last.endLevel ?? outletLevel ?? undefined;
  if (end === undefined) return fail([{ code: "route-outlet-level-missing", kind: "error", subject }]);
  const known = line.map((run, i) => (i === line.length - 1 ? { ...run, endLevel: end } : run));
  const climbs = climbsTooFar(known, startLevel);
  if (climbs.length > 0) {
    return fail(climbs.map((climb) => climbsBeyondLength(`${subject} row ${climb.row + 1}`, climb)));
  }
  const ends = endLevels(line, startLevel, end);
  const findings: Finding[] = [];
  const assumed = line.slice(0, -1).flatMap(({ endLevel }, i) => (endLevel === undefined ? [i + 1] : []));
  if (assumed.length > 0) {
    const facts = { runs: assumed.join(", ") };
    findings.push({ code: "levels-interpolated", kind: "assumed", subject, facts, cites: LEVELS_CHOICE });
  }
  const outletDepth = outletLevel === null ? 0 : Math.max(0, outletLevel - end);
  if (last.endLevel !== undefined && outletLevel !== null && last.endLevel - outletLevel > SAME_LEVEL) {
    const limit = { quantity: "elevation", value: outletLevel, side: "at least" } as const;
    const found = amount("elevation", last.endLevel);
    findings.push({ code: "outlet-levels-differ", kind: "check", subject, found, limit });
  }
  const vertices: RouteVertex[] = [];
  let chainage = 0;
  let elevation = startLevel;
  for (const [i, { endLevel: _, length, ...run }] of line.entries()) {
    const rise = (ends[i] as number) - elevation;
    const isLast = i === line.length - 1;
    const fittings = isLast ? run.fittings.filter(({ fitting }) => !fitting.isExit) : run.fittings;
    vertices.push({ ...run, fittings, chainage, elevation });
    chainage += Math.sqrt(Math.max(0, length ** 2 - rise ** 2));
    elevation += rise;
    if (isLast) {
      const exits = run.fittings.filter(({ fitting }) => fitting.isExit);
      vertices.push({ ...run, fittings: exits, chainage, elevation });
    }
  }
  const site = altitude === null ? {} : { altitude };
  return succeed({ vertices, aboveSeaLevel: false, hasFittingsAlong: true, outletDepth, ...site }, findings);
}

const LEVELS_CHOICE = {
  source: "house",
  at: "a level not stated lies between its neighbours along the length",
} as const;

/** The level of the end of each row, those not stated on the straight line between the next ones stated. */
function endLevels(line: Line, startLevel: number, end: number): readonly number[] {
  const ends: number[] = [];
  let level = startLevel;
  for (let i = 0; i < line.length; ) {
    let to = i;
    while (to < line.length - 1 && line[to]?.endLevel === undefined) to += 1;
    const given = line[to]?.endLevel ?? end;
    const lengths = line.slice(i, to + 1).map(({ length }) => length);
    const whole = lengths.reduce((sum, length) => sum + length, 0);
    let along = 0;
    for (const length of lengths) {
      along += length;
      ends.push(whole === 0 ? given : level + ((given - level) * along) / whole);
    }
    ends[to] = given;
    level = given;
    i = to + 1;
  }
  return ends;
}
