import { STANDARD_GRAVITY } from "../basis/constants.ts";
import { andThen, type Result, succeed } from "../basis/result.ts";
import type { LiquidState } from "../liquid/liquid.ts";
import { brent } from "../numeric/brent.ts";
import type { Pipe } from "../pipework/pipe.ts";
import { pipeFriction } from "../pipework/pipe-friction.ts";

/**
 * Flow that a full pipe carries by its own slope under the pressure of the air, m³/s: less than this can run part full.
 * Formula: f V²/(2 g D) = sin θ
 * Fails: as `pipeFriction`.
 * Source: Darcy–Weisbach equation.
 */
export function gravityFlow(pipe: Pipe, sine: number, liquid: LiquidState): Result<number> {
  if (sine <= 0) return succeed(0);
  const gradient = (flow: number): number => {
    const friction = pipeFriction({ flow, pipe, length: 1, liquid });
    return friction.ok ? friction.value.head : Number.NaN;
  };
  const area = (Math.PI / 4) * pipe.bore ** 2;
  // A friction factor of 0.001 is below any there is.
  const most = area * Math.sqrt((2 * STANDARD_GRAVITY * pipe.bore * sine) / 0.001);
  return andThen(pipeFriction({ flow: most, pipe, length: 1, liquid }), () =>
    succeed(brent((flow) => gradient(flow) - sine, 0, most) ?? most),
  );
}
