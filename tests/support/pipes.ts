import { succeed } from "../../src/basis/result.ts";
import type { LiquidState } from "../../src/liquid/liquid.ts";
import type { CountedFitting } from "../../src/pipework/fitting.ts";
import type { LineSegment } from "../../src/pipework/line.ts";
import type { Pipe } from "../../src/pipework/pipe.ts";

/** Water at 20 °C, IAPWS-IF97 and R12-08 rounded (reference tables). */
export const COLD_WATER: LiquidState = { density: 998.2, dynamicViscosity: 1.002e-3, vapourPressure: 2339 };

const cites = { source: "practice", at: "made up for a test" } as const;

export function pipeOf(bore: number, roughness = 0, more: Partial<Pipe> = {}): Pipe {
  return { name: `ID ${bore} m`, family: "measured", bore, roughness, roughnessCites: cites, cites, ...more };
}

/** A fitting of a plain coefficient. */
export function fittingOf(coefficient: number, isExit = false): CountedFitting {
  const name = isExit ? "exit" : `K ${coefficient}`;
  return { count: 1, fitting: { name, isExit, cites, lossCoefficient: () => succeed(coefficient) } };
}

export function segmentOf(pipe: Pipe, length: number, ...fittings: readonly CountedFitting[]): LineSegment {
  return { pipe, length, fittings };
}
