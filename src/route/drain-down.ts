import type { Citation } from "../basis/citation.ts";
import type { Method } from "../basis/method.ts";
import { remembered } from "../basis/remembered.ts";
import { amount, andThen, type Finding, type Result, succeed } from "../basis/result.ts";
import { greatestOf } from "../numeric/extremes.ts";
import { checkedRoute, type Route, reachesOf } from "./route.ts";

/** What a line holds, and what leaves it after the pumps stop and air gets in at its summits. */
export interface DrainDown {
  /** m³: of all runs. */
  readonly whole: number;
  /** m³ that runs out of the outlet, from beyond the last of the highest vertices. */
  readonly runsOut: number;
  /** m³ that runs back to the source where no check valve holds it. */
  readonly runsBack: number;
  /** The last of the highest vertices. */
  readonly highest: number;
  /** m: level to which each vertex stands with the check valve shut: of the highest between it and the outlet. */
  readonly standing: readonly number[];
}

export const drainDownMethod = {
  cites: [{ source: "mass-balance", at: "volume of the line, by its levels" }],
  inputs: { sourceLevel: { name: "source level", symbol: "z_s", quantity: "elevation" } },
} as const satisfies Method<"sourceLevel">;

/**
 * Volumes that stay in a line and leave it after a stop, m³, air let in at the summits; liquid in low places stays.
 * Formula: Σ n A L of the parts that lie above everything between them and their end
 * Fails: route-too-short, chainage-not-increasing.
 * Warns: siphons-on (limit), where the outlet lies below the source.
 * Source: the levels alone.
 */
export const drainDown: (route: Route, sourceLevel: number) => Result<DrainDown> = remembered(drainedAfterStop);

function drainedAfterStop(route: Route, sourceLevel: number): Result<DrainDown> {
  return andThen(checkedRoute(route), ({ vertices }) => {
    const levels = vertices.map(({ elevation }) => elevation);
    const volumes = reachesOf(route).map(
      ({ pipe, length, runs = 1 }) => runs * (Math.PI / 4) * pipe.bore ** 2 * length,
    );
    const highest = levels.reduce((best, level, i) => (level >= (levels[best] as number) ? i : best), 0);
    const standing = levels.map((_, i) => greatestOf(levels.slice(i)));
    const sum = (parts: readonly number[], of: readonly number[]): number =>
      parts.reduce((total, part, i) => total + part * (of[i] as number), 0);
    const back = drained(levels.slice(0, highest + 1).reverse(), sourceLevel);
    const found = {
      whole: volumes.reduce((total, volume) => total + volume, 0),
      runsOut: sum(drained(levels.slice(highest), Number.NEGATIVE_INFINITY), volumes.slice(highest)),
      runsBack: sum(back, volumes.slice(0, highest).reverse()),
      highest,
      standing,
    };
    return succeed(found, siphonsOn(levels.at(-1) as number, sourceLevel));
  });
}

function siphonsOn(outlet: number, sourceLevel: number): readonly Finding[] {
  if (outlet >= sourceLevel) return [];
  const found = amount("head", sourceLevel - outlet);
  return [{ code: "siphons-on", kind: "limit", subject: "line", found, cites: AFTER_STOPPING }];
}

const AFTER_STOPPING: Citation = { source: "practice", at: "a line that siphons on after a stop is a flood" };

/** What share of each reach between these levels runs out at the last of them, over a sill. */
function drained(levels: readonly number[], sill: number): readonly number[] {
  const shares: number[] = [];
  let over = Math.max(sill, levels.at(-1) as number);
  for (let i = levels.length - 2; i >= 0; i -= 1) {
    const [from, to] = [levels[i] as number, levels[i + 1] as number];
    const fall = from - to;
    // A level reach runs empty with the one it runs into.
    const ownShare = fall === 0 ? Math.ceil(shares[0] ?? 0) : (from - Math.max(over, to)) / fall;
    shares.unshift(from < to ? 0 : Math.max(0, ownShare));
    over = Math.max(over, from);
  }
  return shares;
}
