import { errorOf, type Input } from "../basis/method.ts";
import type { Finding } from "../basis/result.ts";
import type { HeadCurve } from "../pump/head-curve.ts";
import type { RunningPump } from "../pump/running-pump.ts";

/** A pump of a station as it stands there: one, or several alike. */
export interface StationPump {
  /** What findings call it; blank where the station has one kind of pump. */
  readonly name: string;
  readonly pump: RunningPump;
  /** Level of its source over the common one, m: what it has less to lift. */
  readonly level: number;
  /** Head lost in the rows that are its own, m over its own flow; none where left out. */
  readonly ownLoss?: HeadCurve;
  readonly hasCheckValve: boolean;
  /** How many alike run, 1 or more. */
  readonly count: number;
  /** Of the pump, rpm, m³/s, m: by it the operating region is judged. */
  readonly specificSpeed?: number;
}

/** Pumps of a station, alike or in all. */
export const NUMBER_OF_PUMPS = {
  name: "number of pumps",
  quantity: "ratio",
  atLeast: 1,
  atMost: 100,
  isWhole: true,
} as const satisfies Input;

/** What is wrong with how many run, of one kind or of all: not-a-number, out-of-range, not-a-whole-number or nothing. */
export function unfitCount(pumps: readonly Pick<StationPump, "name" | "count">[]): Finding | undefined {
  for (const { name, count } of pumps) {
    const error = errorOf(NUMBER_OF_PUMPS, count);
    if (error !== undefined) return name === "" ? error : { ...error, of: name };
  }
  return errorOf(
    NUMBER_OF_PUMPS,
    pumps.reduce((sum, { count }) => sum + count, 0),
  );
}
