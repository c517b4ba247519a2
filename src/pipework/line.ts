import type { CountedFitting } from "./fitting.ts";
import type { Pipe } from "./pipe.ts";

/** One run of equal pipe with the fittings that belong to its bore. */
export interface LineSegment {
  readonly pipe: Pipe;
  /** Developed length, m. */
  readonly length: number;
  readonly fittings: readonly CountedFitting[];
  /** Share of the line's flow that one run of it carries, above 0 to 1; all of it where left out. */
  readonly share?: number;
  /** How many equal runs stand side by side here; 1 where left out. */
  readonly runs?: number;
  /** Level of its end in the direction of flow, m over the datum of the levels. */
  readonly endLevel?: number;
}

/** A suction or discharge line, in the direction of flow: one path, each of its rows passed once. */
export type Line = readonly LineSegment[];

/** What one run of a segment carries of the flow of its line, m³/s. */
export function flowIn({ share }: Pick<LineSegment, "share">, flow: number): number {
  return share === undefined ? flow : share * flow;
}
