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
