import type { CountedFitting } from "../pipework/fitting.ts";
import type { Line } from "../pipework/line.ts";
import type { Pipe } from "../pipework/pipe.ts";

/** A surveyed point of a route and what lies from it to the next one. */
export interface RouteVertex {
  /** Distance along the route in plan, m. */
  readonly chainage: number;
  /** Centreline of the pipe, m over the datum of the survey. */
  readonly elevation: number;
  /** Pipe of the reach that starts here; at the last vertex, the pipe that arrives. */
  readonly pipe: Pipe;
  /** Fittings at this vertex, in the bore of `pipe`; their loss falls just after it. */
  readonly fittings: readonly CountedFitting[];
}

export interface Route {
  readonly vertices: readonly RouteVertex[];
  /** Whether elevations are above sea level, so that each vertex has its own atmosphere. */
  readonly aboveSeaLevel: boolean;
}

/**
 * The reaches between the vertices of a route as a line, one segment a reach, lengths along the pipe [m]. Fittings of
 * the last vertex stand beyond the last reach and are not in it.
 * Formula: L = √(Δx² + Δz²)
 */
export function reachesOf({ vertices }: Route): Line {
  return vertices.slice(1).map((to, i) => {
    const { chainage, elevation, pipe, fittings } = vertices[i] as RouteVertex;
    return { pipe, length: Math.hypot(to.chainage - chainage, to.elevation - elevation), fittings };
  });
}
