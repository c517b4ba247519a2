import type { Method } from "../basis/method.ts";

/** One point of a pump curve as measured or printed, for water. */
export interface PumpCurvePoint {
  /** m³/s */
  readonly flow: number;
  /** m of the pumped liquid. */
  readonly head: number;
  /** 0 to 1. */
  readonly efficiency?: number;
  /** m */
  readonly npshRequired?: number;
  /** Shaft power with water (specific gravity 1), W. */
  readonly power?: number;
}

export const pumpCurveMethod = {
  cites: [
    { source: "fritsch-butland-1984", at: "monotone piecewise cubic interpolant" },
    { source: "iso-17769-1", at: "pump efficiency; net positive suction head required" },
  ],
  inputs: {
    flow: { name: "flow", symbol: "Q", quantity: "flow", atLeast: 0, atMost: 1000 },
    head: { name: "head", symbol: "H", quantity: "head", atLeast: 0, atMost: 10_000 },
    efficiency: { name: "efficiency", symbol: "η", quantity: "ratio", atLeast: 0, atMost: 1 },
    npshRequired: { name: "NPSHR", symbol: "NPSH3", quantity: "head", atLeast: 0, atMost: 1000 },
    power: { name: "power", symbol: "P", quantity: "power", atLeast: 0, atMost: 1e9 },
  },
} as const satisfies Method<keyof PumpCurvePoint>;
