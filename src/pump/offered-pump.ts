import type { PumpCurvePoint } from "./pump-curve-point.ts";

/** One curve of a pump as its table has it: at one speed, with one impeller. */
export interface OfferedCurve {
  /** r/s, where stated. */
  readonly speed?: number;
  /** Diameter of the impeller, m, where stated. */
  readonly diameter?: number;
  /** With water; three or more, flows strictly ascending. */
  readonly points: readonly PumpCurvePoint[];
}

/** How far a pump may be slowed, sped up and cut, where somebody states it. */
export interface PumpLimits {
  /** r/s */
  readonly leastSpeed?: number;
  readonly greatestSpeed?: number;
  /** m */
  readonly leastImpeller?: number;
  readonly greatestImpeller?: number;
}

/** A pump that may be chosen for a duty. */
export interface OfferedPump {
  readonly name: string;
  readonly curves: readonly OfferedCurve[];
  readonly limits: PumpLimits;
}
