import { checkInputs, type Method } from "../basis/method.ts";
import { all, andThen, fail, type Result, succeed } from "../basis/result.ts";

export interface TimedFlowInput {
  /** m³ */
  readonly volume: number;
  /** Each time in which it filled, s. */
  readonly times: readonly number[];
  /** Equal outlets that run together. */
  readonly outlets: number;
}

export const timedFlowMethod = {
  cites: [{ source: "primefact-1410", at: "measuring flow: a bucket and a watch at some of the outlets" }],
  inputs: {
    volume: { name: "volume", symbol: "V", quantity: "volume", above: 0 },
    time: { name: "time", symbol: "t", quantity: "duration", above: 0 },
    outlets: { name: "number of outlets", quantity: "ratio", atLeast: 1, atMost: 100_000, isWhole: true },
  },
} as const satisfies Method<"volume" | "time" | "outlets">;

/**
 * Flow by a vessel filled in a time, m³/s: the mean of the flows of all times, times the outlets it was tried at one of.
 * Formula: Q = n × mean(V/tᵢ)
 * Fails: left-out, no time; out-of-range inputs.
 * Source: NSW Department of Primary Industries, Primefact 1410.
 */
export function timedFlow({ volume, times, outlets }: TimedFlowInput): Result<number> {
  if (times.length === 0) return fail([{ code: "left-out", kind: "error", subject: "times" }]);
  const flows = times.map((time) =>
    andThen(checkInputs(timedFlowMethod, { volume, time, outlets }), () => succeed(volume / time)),
  );
  return andThen(all(flows), (each) => succeed((outlets * each.reduce((sum, flow) => sum + flow, 0)) / each.length));
}
