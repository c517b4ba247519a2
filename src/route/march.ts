import { remembered } from "../basis/remembered.ts";
import { andThen, type Result, succeed } from "../basis/result.ts";
import { velocityHead } from "../head/velocity-head.ts";
import type { LiquidState } from "../liquid/liquid.ts";
import { flowIn, type Line } from "../pipework/line.ts";
import { lossInAll } from "../pipework/line-loss.ts";
import { gradeAtOutlet, type Route, type RouteVertex, reachesOf } from "./route.ts";

/** What a flow loses along a route, by its vertices, m of the liquid. */
export interface LostAlong {
  /** Lost from the start to each vertex, before what stands at it. */
  readonly lost: readonly number[];
  /** Lost in the fittings that stand at each vertex, just after it; 0 where they lie along the reach. */
  readonly lostAfter: readonly number[];
  /** Lost in the fittings that stand at the outlet, but the exit. */
  readonly lostStanding: number;
}

/** The same, with the velocity heads. */
export interface March extends Omit<LostAlong, "lostStanding"> {
  /** Velocity head as the liquid arrives, and as it goes on. */
  readonly arriving: readonly number[];
  readonly leaving: readonly number[];
  /** Lost at the outlet: its velocity head once, listed as an exit or not, and other fittings that stand there. */
  readonly lostAtOutlet: number;
}

/**
 * Head lost along a route [m], each reach at its own share of the flow.
 * Formula: (ΣK + f L/D) V²/(2g), reach by reach
 * Fails, warns: as `lineLoss`.
 * Source: White, hydraulic and energy grade lines.
 */
export function march(flow: number, route: Route, liquid: LiquidState): Result<March> {
  return marched(route, flow, liquid);
}

/** The same flow is followed along a route for its grade line, its siphons and its pressures. */
const marched = remembered((route: Route, flow: number, liquid: LiquidState): Result<March> => {
  const { vertices } = route;
  return andThen(lostAlong(flow, route, liquid), ({ lost, lostAfter, lostStanding }) => {
    const leaving = vertices.map((vertex) => velocityHead(flowIn(vertex, flow), vertex.pipe.bore));
    const arriving = leaving.map((own, i) => leaving[i - 1] ?? own);
    return succeed({ lost, lostAfter, arriving, leaving, lostAtOutlet: lostStanding + (arriving.at(-1) as number) });
  });
});

/** As `march`, the losses alone: what a line that fills is held against, at flows that nothing else asks for. */
export function lostAlong(flow: number, route: Route, liquid: LiquidState): Result<LostAlong> {
  return lostBy(route, flow, liquid);
}

const lostBy = remembered((route: Route, flow: number, liquid: LiquidState): Result<LostAlong> => {
  const { vertices, hasFittingsAlong = false } = route;
  const lost: number[] = [];
  const lostAfter: number[] = [];
  let sum = 0;
  let lostStanding = 0;
  const losses = lossInAll({ flow, line: vertexByVertex(route), liquid }, (_, __, { head, fittingHead }) => {
    lost.push(sum);
    lostAfter.push(hasFittingsAlong || lost.length === vertices.length ? 0 : fittingHead);
    sum += fittingHead + head;
    lostStanding = fittingHead;
  });
  return andThen(losses, () => succeed({ lost, lostAfter, lostStanding }));
});

/** The reaches of a route and what stands at its outlet, one segment a vertex. The exit is no fitting of the march. */
const vertexByVertex: (route: Route) => Line = remembered((route) => {
  const outlet = route.vertices.at(-1) as RouteVertex;
  const standing = outlet.fittings.filter(({ fitting }) => !fitting.isExit);
  return [...reachesOf(route), { ...outlet, length: 0, fittings: standing }];
});

/** Level of the energy line at the start of a route that ends in the open at its last vertex, under liquid or a pressure head, m. */
export function startOf({ lost, lostAtOutlet }: March, route: Route, pressureHead = 0): number {
  return gradeAtOutlet(route, pressureHead) + lostAtOutlet + (lost.at(-1) as number);
}
