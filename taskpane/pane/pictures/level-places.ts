import { greatestOf, leastOf } from "../../../src/numeric/extremes.ts";
import { runningSums } from "./running-sums.ts";

/** Where levels are drawn. */
export interface LevelPlaces {
  /** y of each level in the order given, px down from the top. */
  readonly places: readonly number[];
  /** False where close levels were drawn further apart than they are. */
  readonly toScale: boolean;
}

/** Levels closer than this part of their whole range count as one. */
const SAME = 1e-6;

/**
 * Places levels on a height in px, highest on top. They are to scale where that can be read; otherwise levels that
 * differ are kept at least `leastGap` apart, so that 3 m of lift still shows beside 200 m of static head.
 */
export function levelPlaces(levels: readonly number[], height: number, leastGap: number): LevelPlaces {
  const highest = greatestOf(levels);
  const range = highest - leastOf(levels);
  if (!(range > 0)) return { places: levels.map(() => height / 2), toScale: true };
  const steps = [...levels].sort((a, b) => b - a).filter((level, i, all) => i === 0 || apart(all[i - 1], level, range));
  const gaps = steps.slice(1).map((level, i) => (((steps[i] as number) - level) / range) * height);
  const toScale = gaps.every((gap) => gap >= leastGap);
  const drawn = toScale ? gaps : widened(gaps, height, leastGap);
  const tops = runningSums(drawn);
  const places = levels.map((level) => {
    const index = steps.findIndex((step) => !apart(step, level, range));
    return tops[index] as number;
  });
  return { places, toScale };
}

function apart(a: number | undefined, b: number, range: number): boolean {
  return a === undefined || Math.abs(a - b) > SAME * range;
}

/** Small gaps raised to the least, the others shrunk in proportion, the sum kept. */
function widened(gaps: readonly number[], height: number, leastGap: number): readonly number[] {
  const small = gaps.filter((gap) => gap < leastGap);
  const rest = gaps.filter((gap) => gap >= leastGap).reduce((sum, gap) => sum + gap, 0);
  const left = height - small.length * leastGap;
  return gaps.map((gap) => (gap < leastGap ? leastGap : (gap / rest) * left));
}
