import { amount, type Finding } from "../basis/result.ts";
import type { Line } from "./line.ts";

/** Two levels of a line farther apart than the pipe between them is long. */
export interface Climb {
  /** Row whose end has the second level. */
  readonly row: number;
  /** m, up or down. */
  readonly height: number;
  /** Of the rows between the two levels, m. */
  readonly length: number;
}

/** Lengths and levels are typed to so much, m. */
const ROUNDING = 1e-9;

/**
 * Where a line would have to climb or fall more than it is long, between one level given and the next. `start` is the
 * level of its beginning, where that is known.
 */
export function climbsTooFar(line: Line, start?: number): readonly Climb[] {
  const climbs: Climb[] = [];
  let last = start;
  let length = 0;
  for (const [row, run] of line.entries()) {
    length += run.length;
    if (run.endLevel === undefined) continue;
    const height = last === undefined ? 0 : Math.abs(run.endLevel - last);
    if (height > length * (1 + ROUNDING) + ROUNDING) climbs.push({ row, height, length });
    last = run.endLevel;
    length = 0;
  }
  return climbs;
}

/** The refusal of such a climb. */
export function climbsBeyondLength(subject: string, { height, length }: Climb): Finding {
  return {
    code: "line-climbs-beyond-length",
    kind: "error",
    subject,
    found: amount("head", height),
    limit: { quantity: "length", value: length, side: "at most" },
  };
}
