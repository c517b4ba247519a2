import { covers, pchip, valueAt } from "../../../../src/numeric/pchip.ts";

type Pair = readonly [place: number, value: number];

/** Reads a curve as it is drawn through its points: smooth, never beyond the two it stands between. */
export function smoothly(pairs: readonly Pair[]): (place: number) => number | undefined {
  const rising = pairs.filter(([place], i) => i === 0 || place > (pairs[i - 1] as Pair)[0]);
  if (rising.length < 2) return () => undefined;
  const curve = pchip(
    rising.map(([place]) => place),
    rising.map(([, value]) => value),
  );
  return (place) => (covers(curve, place) ? valueAt(curve, place) : undefined);
}

/** Reads a line that runs straight from point to point, as a pipe is laid. */
export function straight(pairs: readonly Pair[]): (place: number) => number | undefined {
  return (place) => {
    const after = pairs.findIndex(([at]) => at >= place);
    const next = pairs[after];
    if (next === undefined) return undefined;
    const before = pairs[after - 1];
    if (before === undefined || next[0] === before[0]) return next[0] === place ? next[1] : undefined;
    return before[1] + ((next[1] - before[1]) * (place - before[0])) / (next[0] - before[0]);
  };
}
