import type { Citation } from "../basis/citation.ts";
import { STANDARD_GRAVITY } from "../basis/constants.ts";
import { flowIn } from "../pipework/line.ts";
import { meanVelocity } from "../pipework/pipe-velocity.ts";
import type { Route, RouteVertex } from "./route.ts";

/** Froude numbers below which a falling leg runs part full whatever its slope. */
export const SURELY_PART_FULL = 0.3;

export const CLEARING: Citation = {
  source: "sanks-pumping-station",
  at: "clearing velocity of air in a falling pipe, after Wisner, Mohsen and Kouwen 1975",
  unverified: true,
};
export const CLEARING_OF_POCKETS: Citation = {
  source: "escarameia-2005",
  at: "critical velocity to move air pockets of more than 0.3 pipe volumes",
  unverified: true,
};

/**
 * The Froude number V/√(gD) above which flow sweeps the air out of a pipe that falls, by the sine of its slope.
 * Formula: the greater of 0.825 + 0.25 √sin θ and 0.56 √sin θ + 0.61
 * Source: Sanks, after Wisner, Mohsen and Kouwen; Escarameia (form looked up, 0.61 from memory); the greater, a house choice.
 */
export function clearingFroude(sine: number): number {
  const root = Math.sqrt(sine);
  return Math.max(0.825 + 0.25 * root, 0.56 * root + 0.61);
}

/** A reach that falls in the direction of flow. */
export interface FallingLeg {
  /** The vertex at which it starts. */
  readonly from: number;
  /** Fall over length of pipe. */
  readonly sine: number;
  /** V/√(gD) */
  readonly froude: number;
  readonly clearing: number;
}

/** Every reach of a route that falls, at a flow. */
export function fallingLegs(flow: number, { vertices }: Route): readonly FallingLeg[] {
  return vertices.slice(1).flatMap((to, from) => {
    const at = vertices[from] as RouteVertex;
    const fall = at.elevation - to.elevation;
    if (fall <= 0) return [];
    const sine = fall / Math.hypot(to.chainage - at.chainage, fall);
    const { bore } = at.pipe;
    const froude = meanVelocity(flowIn(at, flow), bore) / Math.sqrt(STANDARD_GRAVITY * bore);
    return [{ from, sine, froude, clearing: clearingFroude(sine) }];
  });
}
