import { outOfRange } from "../basis/method.ts";
import { andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import type { LiquidState } from "../liquid/liquid.ts";
import { gravityFlow } from "./gravity-flow.ts";
import { orificeFor } from "./large-orifice.ts";
import { checkedRoute, type Route, type RouteVertex } from "./route.ts";
import type { SummitValve } from "./siphon.ts";

export type AirValve = "combination" | "release only" | "vacuum primer" | "air release";
export type AirValvePlace = "summit" | "fall steepens" | "rise flattens" | "long stretch" | "behind the pump";

/** A place at which a route asks for an air valve. */
export interface AirValveAt {
  /** m */
  readonly chainage: number;
  readonly elevation: number;
  readonly place: AirValvePlace;
  readonly valve: AirValve;
  /** Air that flows into one run while the steepest leg beside it runs empty, m³/s; undefined where no leg falls from here. */
  readonly inflow: number | undefined;
  /** Bore of the orifice that lets it in at 5 psi below the air, and at 2 psi, m. */
  readonly orifice: number | undefined;
  readonly orificeOfThinPipe: number | undefined;
}

export const airValvesMethod = {
  cites: [
    { source: "awwa-m51", at: "ch. 3, locations of air valves; ch. 4, sizing", unverified: true },
    { source: "house", at: "a break of grade from 0.005; a stretch of at most 760 m (2500 ft); places 50 m apart" },
  ],
} as const;

/** Change of slope that counts. House choice. */
const BREAK = 0.005;
/** Longest stretch without a valve, m: 2500 ft. House choice within the 400 to 800 m of AWWA M51. */
const LONGEST = 762;
/** Longest route whose valves are listed, m: a thousand stretches. House choice; a slip of the keys made millions. */
const LONGEST_ROUTE = 1000 * LONGEST;
/** Places nearer than this are one, m. House choice. */
const ONE_PLACE = 50;
const PSI = 6894.757;

interface Place {
  readonly chainage: number;
  readonly place: AirValvePlace;
}

const RANK: readonly AirValvePlace[] = ["summit", "behind the pump", "fall steepens", "rise flattens", "long stretch"];

/**
 * Places of air and vacuum valves along a route, and the orifice that lets air in as the steepest leg beside runs empty;
 * runs side by side have one each.
 * Formula: slopes between vertices; flow of the leg by gravity, air by an isentropic orifice of C_d 0.7
 * Fails: route-too-short, chainage-not-increasing; out-of-range, of a route over 762 km; as `gravityFlow`.
 * Warns: air-valve-on-each-run (check), where runs stand side by side.
 * Source: AWWA M51, ch. 3 and 4 (from memory); the thresholds, house choices.
 */
export function airValves(
  route: Route,
  liquid: LiquidState,
  { summitValve, isLifted }: { readonly summitValve: SummitValve; readonly isLifted: boolean },
): Result<readonly AirValveAt[]> {
  return andThen(checkedRoute(route), ({ vertices }) => {
    const length = (vertices.at(-1) as RouteVertex).chainage - (vertices[0] as RouteVertex).chainage;
    if (length > LONGEST_ROUTE) return fail([outOfRange("route", "length", length, "at most", LONGEST_ROUTE)]);
    const places = withStretches(merged([...(isLifted ? [behindPump(vertices)] : []), ...breaks(vertices)]), vertices);
    const found: AirValveAt[] = [];
    let mostRuns = 1;
    for (const { chainage, place } of places) {
      const steepest = steepestFlow(vertices, chainage, liquid);
      if (!steepest.ok) return steepest;
      const flow = steepest.value.flow > 0 && place !== "behind the pump" ? steepest.value.flow : undefined;
      if (flow !== undefined) mostRuns = Math.max(mostRuns, steepest.value.runs);
      found.push({
        chainage,
        elevation: elevationAt(vertices, chainage),
        place,
        valve: valveAt(place, summitValve),
        inflow: flow,
        orifice: flow && orificeFor(flow, 5 * PSI),
        orificeOfThinPipe: flow && orificeFor(flow, 2 * PSI),
      });
    }
    return succeed(found, mostRuns === 1 ? [] : [onEachRun(mostRuns)]);
  });
}

function onEachRun(runs: number): Finding {
  return { code: "air-valve-on-each-run", kind: "check", subject: "air valves", facts: { runs } };
}

function valveAt(place: AirValvePlace, summitValve: SummitValve): AirValve {
  if (place === "behind the pump") return "air release";
  if (place !== "summit" || summitValve === "air valve" || summitValve === "none") return "combination";
  return summitValve === "vacuum primer" ? "vacuum primer" : "release only";
}

function behindPump([start]: readonly RouteVertex[]): Place {
  return { chainage: (start as RouteVertex).chainage, place: "behind the pump" };
}

/** Summits and breaks of grade at the inner vertices; a riser counts as steep without end. */
function breaks(vertices: readonly RouteVertex[]): readonly Place[] {
  const slopes = vertices.slice(1).map((to, i) => {
    const from = vertices[i] as RouteVertex;
    const run = to.chainage - from.chainage;
    const rise = to.elevation - from.elevation;
    return run > 0 ? rise / run : Math.sign(rise) * Number.MAX_VALUE;
  });
  return slopes.flatMap((after, i): readonly Place[] => {
    const before = slopes[i - 1];
    if (before === undefined) return [];
    const { chainage } = vertices[i] as RouteVertex;
    if (before > 0 && after <= 0) return [{ chainage, place: "summit" }];
    if (before - after < BREAK) return [];
    if (after < 0) return [{ chainage, place: "fall steepens" }];
    return [{ chainage, place: "rise flattens" }];
  });
}

/** Of places that are nearly one, the one that matters more. */
function merged(places: readonly Place[]): readonly Place[] {
  const rank = ({ place }: Place): number => RANK.indexOf(place);
  const kept: Place[] = [];
  for (const place of [...places].sort((a, b) => rank(a) - rank(b))) {
    if (kept.every(({ chainage }) => Math.abs(chainage - place.chainage) >= ONE_PLACE)) kept.push(place);
  }
  return kept.sort((a, b) => a.chainage - b.chainage);
}

/** Places evenly spread over each stretch that has none for too long. */
function withStretches(places: readonly Place[], vertices: readonly RouteVertex[]): readonly Place[] {
  const first = (vertices[0] as RouteVertex).chainage;
  const last = (vertices.at(-1) as RouteVertex).chainage;
  const ends = [first, ...places.map(({ chainage }) => chainage), last];
  const between = ends.slice(1).flatMap((to, i) => {
    const from = ends[i] as number;
    const parts = Math.ceil((to - from) / LONGEST - 1e-9);
    return Array.from({ length: Math.max(0, parts - 1) }, (_, k) => ({
      chainage: from + ((to - from) * (k + 1)) / parts,
      place: "long stretch" as const,
    }));
  });
  return [...places, ...between].sort((a, b) => a.chainage - b.chainage);
}

function elevationAt(vertices: readonly RouteVertex[], chainage: number): number {
  const after = Math.max(
    1,
    vertices.findIndex((vertex) => vertex.chainage >= chainage),
  );
  const [from, to] = [vertices[after - 1] as RouteVertex, vertices[after] as RouteVertex];
  const run = to.chainage - from.chainage;
  return run === 0
    ? to.elevation
    : from.elevation + ((to.elevation - from.elevation) * (chainage - from.chainage)) / run;
}

/** Flow by gravity in a run of the steepest reach that falls away from a place, on either side, and how many such runs. */
function steepestFlow(
  vertices: readonly RouteVertex[],
  at: number,
  liquid: LiquidState,
): Result<{ readonly flow: number; readonly runs: number }> {
  let steepest = { flow: 0, runs: 1 };
  for (const [i, to] of vertices.slice(1).entries()) {
    const from = vertices[i] as RouteVertex;
    if (at < from.chainage || at > to.chainage) continue;
    const rise = to.elevation - from.elevation;
    // Liquid runs back down a rise from its upper end, and down a fall from its upper end on.
    const isAway = rise > 0 ? at > from.chainage || from.chainage === to.chainage : at < to.chainage;
    if (!isAway || rise === 0) continue;
    const sine = Math.abs(rise) / Math.hypot(to.chainage - from.chainage, rise);
    const flow = gravityFlow(from.pipe, sine, liquid);
    if (!flow.ok) return flow;
    if (flow.value > steepest.flow) steepest = { flow: flow.value, runs: from.runs ?? 1 };
  }
  return succeed(steepest);
}
