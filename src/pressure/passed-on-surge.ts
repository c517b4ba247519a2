import { greatestOf } from "../numeric/extremes.ts";
/** A run as a wave sees it at its end: its whole area, m², its wave speed, m/s, and the surge that starts in it, Pa. */
export interface WaveRun {
  readonly area: number;
  readonly waveSpeed: number;
  readonly pressureChange: number;
}

/**
 * Surge in each run of a line, Pa: its own, or what a neighbour passes on to it, where that is more. From a wide or soft
 * run into a narrow stiff one more than the whole passes on.
 * Formula: share = 2 (A1/a1)/(A1/a1 + A2/a2)
 * Source: Wylie and Streeter, waves at a change of pipe (from memory).
 */
export function withPassedOn(runs: readonly WaveRun[]): readonly number[] {
  const stiffness = ({ area, waveSpeed }: WaveRun): number => area / waveSpeed;
  return runs.map((run, i) => {
    const passedOn = [runs[i - 1], runs[i + 1]].map((from) =>
      from === undefined ? 0 : (from.pressureChange * 2 * stiffness(from)) / (stiffness(from) + stiffness(run)),
    );
    return Math.max(run.pressureChange, greatestOf(passedOn));
  });
}
