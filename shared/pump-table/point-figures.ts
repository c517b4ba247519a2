/**
 * The points of a table, one after the other, in engine units. What a row does not give stands as 0, which counts as
 * not given. Plain lists of numbers, for a table may have a million rows.
 */
export interface PointFigures {
  /** Row of the table, 0-based. */
  readonly row: Int32Array;
  readonly flow: Float64Array;
  readonly head: Float64Array;
  /** As the table has it until the whole column is known; then 0 to 1. */
  readonly efficiency: Float64Array;
  readonly npshRequired: Float64Array;
  readonly power: Float64Array;
}

/** Room for so many points. */
export function pointFigures(most: number): PointFigures {
  return {
    row: new Int32Array(most),
    flow: new Float64Array(most),
    head: new Float64Array(most),
    efficiency: new Float64Array(most),
    npshRequired: new Float64Array(most),
    power: new Float64Array(most),
  };
}
