import type { PumpCurvePoint } from "./pump-curve-point.ts";

/** Flows and heads of a curve's points, from one place of the lists to another, both inside it. */
export interface CurveOutline {
  readonly flow: ArrayLike<number>;
  readonly head: ArrayLike<number>;
  readonly from: number;
  readonly to: number;
}

/** One curve of a pump as its table has it: at one speed, with one impeller. */
export interface OfferedCurve {
  /** r/s, where stated. */
  readonly speed?: number;
  /** Diameter of the impeller, m, where stated. */
  readonly diameter?: number;
  /** With water; three or more, flows strictly ascending. */
  readonly points: readonly PumpCurvePoint[];
  /** The same flows and heads, where points are made only when asked for: a long table rules most curves out by these. */
  readonly outline?: CurveOutline;
}

/** How far a pump may be slowed, sped up and cut, and what its casing holds, where somebody states it. */
export interface PumpLimits {
  /** r/s */
  readonly leastSpeed?: number;
  readonly greatestSpeed?: number;
  /** m */
  readonly leastImpeller?: number;
  readonly greatestImpeller?: number;
  /** Gauge, Pa. */
  readonly greatestPressure?: number;
}

/** A pump that may be chosen for a duty. */
export interface OfferedPump {
  readonly name: string;
  readonly curves: readonly OfferedCurve[];
  readonly limits: PumpLimits;
  /** Name of the sheet or file its curves were read from. */
  readonly source?: string;
}
