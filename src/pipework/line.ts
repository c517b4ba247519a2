import type { CountedFitting } from "./fitting.ts";
import type { Pipe } from "./pipe.ts";

/** One run of equal pipe with the fittings that belong to its bore. */
export interface LineSegment {
  readonly pipe: Pipe;
  /** Developed length, m. */
  readonly length: number;
  readonly fittings: readonly CountedFitting[];
}

/** A suction or discharge line, in the direction of flow. */
export type Line = readonly LineSegment[];
