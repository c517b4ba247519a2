import { remembered } from "../basis/remembered.ts";
import { andThen, type Result, succeed } from "../basis/result.ts";
import type { LiquidState } from "../liquid/liquid.ts";
import type { Line } from "../pipework/line.ts";
import { lossInAll } from "../pipework/line-loss.ts";

/** Head lost in a line by friction and fittings [m of the liquid]. Fails and warns as `lineLoss`. */
export const headLost: (line: Line, flow: number, liquid: LiquidState) => Result<number> = remembered(
  (line, flow: number, liquid: LiquidState) =>
    andThen(lossInAll({ flow, line, liquid }), ({ total }) => succeed(total)),
);
