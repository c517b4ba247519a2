import { checkInputs, type Method, outOfRange } from "../basis/method.ts";
import { andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { type SumpPlan, volumeBetween } from "./sump-plan.ts";

export interface SumpLevels {
  readonly sump: SumpPlan;
  /** m */
  readonly startLevel: number;
  /** m, below the start. */
  readonly endLevel: number;
}

export const sumpLevelsMethod = {
  cites: [
    { source: "mass-balance", at: "what leaves a sump and does not come in lowers its level: A dz/dt = Q_in − Q" },
  ],
  inputs: {
    startLevel: { name: "start level", quantity: "elevation", atLeast: -10_000, atMost: 10_000 },
    endLevel: { name: "end level", quantity: "elevation", atLeast: -10_000, atMost: 10_000 },
  },
} as const satisfies Method<"startLevel" | "endLevel">;

/**
 * Volume a sump gives between two levels, m³.
 * Fails: an end level not below the start; levels the sump is not known at (out-of-range).
 */
export function sumpVolume({ sump, startLevel, endLevel }: SumpLevels): Result<number> {
  return andThen(checkInputs(sumpLevelsMethod, { startLevel, endLevel }), () => {
    const errors: Finding[] = [];
    if (!(endLevel < startLevel)) errors.push(outOfRange("end level", "elevation", endLevel, "below", startLevel));
    if (startLevel > sump.most) errors.push(outOfRange("start level", "elevation", startLevel, "at most", sump.most));
    if (endLevel < sump.least) errors.push(outOfRange("end level", "elevation", endLevel, "at least", sump.least));
    return errors.length > 0 ? fail(errors) : succeed(volumeBetween(sump, endLevel, startLevel));
  });
}

export interface DropTestInput extends SumpLevels {
  /** s */
  readonly time: number;
  /** Into the sump meanwhile, m³/s; none where it was stopped, and taken so where left out. */
  readonly inflow: number | null;
}

export const dropTestMethod = {
  cites: sumpLevelsMethod.cites,
  inputs: {
    time: { name: "time", symbol: "t", quantity: "duration", above: 0 },
    inflow: { name: "inflow", symbol: "Q_in", quantity: "flow", atLeast: 0 },
  },
} as const satisfies Method<"time" | "inflow">;

/**
 * Flow of the pumps by the fall of a level in a time, m³/s.
 * Formula: Q = V/t + Q_in
 * Fails: as `sumpVolume`; a time not above 0, an inflow below 0.
 * Warns: inflow-taken-as-stopped (assumed) where none is stated.
 */
export function dropTestFlow({ time, inflow, ...levels }: DropTestInput): Result<number> {
  return andThen(checkInputs(dropTestMethod, { time, inflow: inflow ?? 0 }), () =>
    andThen(sumpVolume(levels), (volume) =>
      succeed(
        volume / time + (inflow ?? 0),
        inflow === null ? [{ code: "inflow-taken-as-stopped", kind: "assumed", subject: "inflow" }] : [],
      ),
    ),
  );
}
