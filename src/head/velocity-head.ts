import { STANDARD_GRAVITY } from "../basis/constants.ts";
import { meanVelocity } from "../pipework/pipe-velocity.ts";

/** Velocity head V²/(2g) of a flow in a round bore [m]. */
export function velocityHead(flow: number, bore: number): number {
  return meanVelocity(flow, bore) ** 2 / (2 * STANDARD_GRAVITY);
}
