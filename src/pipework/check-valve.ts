import type { LineSegment } from "./line.ts";

/** A check valve by its name in a list of fittings; a foot valve stands before the pump. */
const CHECK_VALVE = /\bcheck\b|non-return/i;

/** Whether a check valve stands in a run. */
export function holdsCheckValve({ fittings }: Pick<LineSegment, "fittings">): boolean {
  return fittings.some(({ fitting }) => CHECK_VALVE.test(fitting.name));
}
