import { amount, fail, type Result, succeed } from "../basis/result.ts";
import { runsOfOnePump } from "../pipework/flow-share.ts";
import type { Line } from "../pipework/line.ts";

/** A straight run of a suction line as the water front meets it. */
export interface PrimingRun {
  /** Inside area of the bore, m²; of runs side by side of all that rise together. */
  readonly area: number;
  /** m along the pipe */
  readonly length: number;
  /** m upwards from the start of the run to its end */
  readonly rise: number;
}

/**
 * A suction line whose rises are not known, as runs: straight up from the liquid until the lift is gained, then level.
 * Of all profiles that rise or stay level it holds the most air at every level of the front, so it takes the longest.
 * All of the line counts as full of air, the part under water too. Of runs side by side those that serve one of so many
 * pumps rise together; one of them where the number of pumps is null.
 * Fails: line-shorter-than-lift.
 * Source: house choice.
 */
export function verticalFirst(line: Line, lift: number, pumps: number | null): Result<readonly PrimingRun[]> {
  const total = line.reduce((sum, { length }) => sum + length, 0);
  if (total < lift) {
    return fail([
      {
        code: "line-shorter-than-lift",
        kind: "error",
        subject: "suction line",
        found: amount("length", total),
        limit: { quantity: "head", value: lift, side: "at least" },
      },
    ]);
  }
  const runs: PrimingRun[] = [];
  let left = lift;
  for (const { pipe, length, runs: beside = 1 } of line) {
    const area = (pumps === null ? 1 : runsOfOnePump(beside, pumps)) * (Math.PI / 4) * pipe.bore ** 2;
    const rise = Math.min(left, length);
    left -= rise;
    if (rise > 0) runs.push({ area, length: rise, rise });
    if (length > rise) runs.push({ area, length: length - rise, rise: 0 });
  }
  return succeed(runs);
}
