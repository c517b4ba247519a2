import { brent } from "./brent.ts";
import { leastBetween } from "./golden-section.ts";

/** Where a function meets zero, and which way it goes there as x grows. */
export interface Crossing {
  readonly at: number;
  readonly direction: "rising" | "falling" | "touching";
}

/** Where a function turns back short of zero. */
export interface NearMiss {
  readonly at: number;
  readonly value: number;
}

export interface Crossings {
  readonly crossings: readonly Crossing[];
  readonly nearMisses: readonly NearMiss[];
}

/**
 * Every place where a continuous function meets zero on a grid of ascending places: sign changes and exact zeros of
 * the grid, and pairs of roots that lie between two places of it, found at the turning points. Roots are refined by
 * Brent to double precision. A function that turns twice between two places of the grid can still hide a pair.
 */
export function crossingsOf(f: (x: number) => number, grid: readonly number[]): Crossings {
  const values = grid.map((x) => f(x));
  const crossings: Crossing[] = [];
  const nearMisses: NearMiss[] = [];
  for (let i = 0; i < grid.length; i += 1) {
    const x = grid[i] as number;
    const value = values[i] as number;
    const before = values[i - 1];
    if (value === 0) {
      if (before !== 0) crossings.push({ at: x, direction: directionThrough(values, i) });
    } else if (before !== undefined && Math.sign(before) === -Math.sign(value)) {
      const root = brent(f, grid[i - 1] as number, x);
      if (root !== undefined) crossings.push({ at: root, direction: value > 0 ? "rising" : "falling" });
    }
    const after = values[i + 1];
    if (before === undefined || after === undefined || !turnsAt(before, value, after)) continue;
    const sign = Math.sign(value);
    const from = grid[i - 1] as number;
    const to = grid[i + 1] as number;
    const turn = leastBetween((place) => sign * f(place), from, to);
    const atTurn = f(turn);
    if (Math.sign(atTurn) === sign) {
      nearMisses.push({ at: turn, value: atTurn });
      continue;
    }
    if (atTurn === 0) {
      crossings.push({ at: turn, direction: "touching" });
      continue;
    }
    const first = brent(f, from, turn);
    const second = brent(f, turn, to);
    if (first !== undefined) crossings.push({ at: first, direction: sign > 0 ? "falling" : "rising" });
    if (second !== undefined) crossings.push({ at: second, direction: sign > 0 ? "rising" : "falling" });
  }
  return { crossings: crossings.sort((one, other) => one.at - other.at), nearMisses };
}

/** Whether the middle one of three values of one sign is the nearest to zero. */
function turnsAt(before: number, value: number, after: number): boolean {
  const sign = Math.sign(value);
  if (sign === 0 || Math.sign(before) !== sign || Math.sign(after) !== sign) return false;
  return Math.abs(value) < Math.abs(before) && Math.abs(value) <= Math.abs(after);
}

/** Which way the function goes through a zero of the grid, by the nearest values that are not zero. */
function directionThrough(values: readonly number[], zero: number): Crossing["direction"] {
  let left = zero - 1;
  while (values[left] === 0) left -= 1;
  let right = zero + 1;
  while (values[right] === 0) right += 1;
  const before = Math.sign(values[left] ?? -(values[right] ?? 0));
  const after = Math.sign(values[right] ?? -before);
  if (before < 0 && after > 0) return "rising";
  return before > 0 && after < 0 ? "falling" : "touching";
}
