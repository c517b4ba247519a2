import type { Result } from "../basis/result.ts";
import { greatestOf } from "../numeric/extremes.ts";
import type { HeadCurve } from "../pump/head-curve.ts";
import type { HeaderPoint, NetPump } from "./header.ts";

/** Where a station comes to rest when its pumps start one after the other. */
export interface Started {
  /** How many of each kind run. */
  readonly open: readonly number[];
  /** Kinds that open and cannot keep a share. */
  readonly hunting: ReadonlySet<number>;
}

type Solve = (open: readonly number[]) => Result<HeaderPoint>;

/** Relative; what is equal but for rounding is equal. */
const EQUAL = 1e-9;

/**
 * Starts pumps in this order of kinds. Each opens its check valve only where its shutoff grade is above the header that
 * those running hold; one pushed back over its hump drops out and must pass the same test again.
 * Source: common practice: pumps are added only where their shutoff head is above that of the pumps running.
 */
export function startedIn(
  order: readonly number[],
  pumps: readonly NetPump[],
  system: HeadCurve,
  solve: Solve,
): Started {
  const open = pumps.map(() => 0);
  const opensBeside = (kind: number): boolean => {
    const shutoff = shutoffOf(pumps, kind);
    if (open.every((count) => count === 0)) return shutoff >= system.headAt(system.leastFlow) * (1 - EQUAL);
    const state = solve(open);
    // Off the end of a curve the header is below the grade of that end, by nobody knows how much.
    const grade = state.ok
      ? state.value.grade
      : greatestOf(pumps.flatMap(({ net }, i) => ((open[i] as number) > 0 ? [net.endGrade] : [])));
    return shutoff > grade - EQUAL * Math.abs(grade);
  };
  const hunting = new Set<number>();
  let waiting = order;
  for (let before = Number.POSITIVE_INFINITY; waiting.length > 0 && waiting.length < before; ) {
    before = waiting.length;
    const left: number[] = [];
    for (const kind of waiting) {
      if (!opensBeside(kind)) {
        left.push(kind);
        continue;
      }
      open[kind] = (open[kind] as number) + 1;
      const state = solve(open);
      const isBeyond = !state.ok && !state.findings.some(({ code }) => code === "system-out-of-reach");
      if (isBeyond) continue;
      if (!state.ok || !state.value.isSteady) {
        open[kind] = (open[kind] as number) - 1;
        hunting.add(kind);
        left.push(kind);
        continue;
      }
      for (const [other, flow] of state.value.flows.entries()) {
        if (flow > 0 || open[other] === 0 || !(pumps[other] as NetPump).of.hasCheckValve) continue;
        left.push(...Array.from({ length: open[other] as number }, () => other));
        open[other] = 0;
      }
    }
    waiting = left;
  }
  return {
    open,
    hunting: new Set([...hunting].filter((kind) => (open[kind] as number) < (pumps[kind] as NetPump).of.count)),
  };
}

/** Up to so many pumps every order is tried. */
const FEW = 4;

/** The orders of starting worth a look, that given first: all of few pumps, else strongest shutoff last and first. */
export function startOrders(pumps: readonly NetPump[]): readonly (readonly number[])[] {
  const given = pumps.flatMap(({ of }, i) => Array.from({ length: of.count }, () => i));
  if (given.length <= FEW) return [given, ...ordersOf(given)];
  const byShutoff = [...given].sort((a, b) => shutoffOf(pumps, a) - shutoffOf(pumps, b));
  return [given, byShutoff, byShutoff.toReversed()];
}

function shutoffOf(pumps: readonly NetPump[], kind: number): number {
  const { net } = pumps[kind] as NetPump;
  return net.headAt(net.leastFlow);
}

/** Every order of these kinds, alike ones not told apart. */
function ordersOf(kinds: readonly number[]): readonly (readonly number[])[] {
  if (kinds.length <= 1) return [kinds];
  return [...new Set(kinds)].flatMap((first) => {
    const rest = kinds.toSpliced(kinds.indexOf(first), 1);
    return ordersOf(rest).map((order) => [first, ...order]);
  });
}
