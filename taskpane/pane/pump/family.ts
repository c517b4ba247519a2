import type { Duty, DutyPump } from "../../../shared/duty/duty.ts";
import type { DrawnPoint } from "../../../shared/package/pump-on-duty.ts";
import { amountText } from "../../../shared/text/words.ts";
import type { UnitSetName } from "../../../src/basis/quantities.ts";
import { amount } from "../../../src/basis/result.ts";
import { type Arrangement, equalPumps } from "../../../src/pump/head-curve.ts";
import type { PumpCurve } from "../../../src/pump/pump-curve.ts";
import type { ReadyCurve, ReadyPump } from "../../../src/pump/ready-pump.ts";
import { asGiven, type RunningPump, runningPump } from "../../../src/pump/running-pump.ts";

/** A head curve of the chosen pump at another impeller or speed, of all pumps together in engine units. */
export interface FamilyCurve {
  readonly label: string;
  readonly points: readonly DrawnPoint[];
}

const POINTS = 25;
/** Impellers or speeds that differ by less are drawn once. */
const SAME = 1e-3;

/**
 * The curves the chosen pump lies between, as far as the table it came from tells: greatest and least impeller at its
 * speed; for an impeller of one size greatest and least speed. Without a table, the curve as it was drawn.
 */
export function familyOf(
  { pumpsRunning = 1, arrangement = "parallel" }: Duty,
  pump: DutyPump,
  candidate: ReadyPump | undefined,
  units: UnitSetName,
): readonly FamilyCurve[] {
  const members = candidate === undefined ? [] : membersOf(candidate, pump, units);
  const asDrawn = { label: "As its curve was drawn", running: asGiven(pump.curve) };
  const isMoved = pump.speedRatio !== 1 || pump.trimRatio !== 1;
  const drawn = members.length > 0 || !isMoved ? members : [asDrawn];
  return drawn.map(({ label, running }) => ({ label, points: headPoints(running, pumpsRunning, arrangement) }));
}

/** Head of equal pumps at even steps of their flow. */
export function headPoints(running: RunningPump, count: number, arrangement: Arrangement): readonly DrawnPoint[] {
  const { leastFlow, mostFlow, headAt } = equalPumps(running, count, arrangement);
  return Array.from({ length: POINTS }, (_, i) => {
    const flow = leastFlow + ((mostFlow - leastFlow) * i) / (POINTS - 1);
    return { flow, value: headAt(flow) };
  });
}

interface Member {
  readonly label: string;
  readonly running: RunningPump;
}

function membersOf({ curves }: ReadyPump, pump: DutyPump, units: UnitSetName): readonly Member[] {
  const [large, small] = ends(curves, ({ offered }) => offered.diameter);
  if (large !== undefined && small !== undefined) {
    const greatest = (large.offered.diameter as number) * large.mostTrimRatio;
    const least = (small.offered.diameter as number) * small.leastTrimRatio;
    if (least < greatest * (1 - SAME)) {
      const speed = pump.speed === undefined ? undefined : pump.speed * pump.speedRatio;
      const at = (curve: ReadyCurve, trimRatio: number): RunningPump | undefined =>
        runningAt(
          curve,
          speed === undefined || curve.offered.speed === undefined ? 1 : speed / curve.offered.speed,
          trimRatio,
        );
      const size = (diameter: number): string => amountText(amount("size", diameter), units);
      return present([
        [`Maximum impeller, ${size(greatest)}`, at(large, large.mostTrimRatio)],
        [`Minimum impeller, ${size(least)}`, at(small, small.leastTrimRatio)],
      ]);
    }
  }
  const [fast, slow] = ends(curves, ({ offered }) => offered.speed);
  if (fast === undefined || slow === undefined) return [];
  const greatest = (fast.offered.speed as number) * fast.mostSpeedRatio;
  const least = (slow.offered.speed as number) * slow.leastSpeedRatio;
  if (least > greatest * (1 - SAME)) return [];
  const speed = (value: number): string => amountText(amount("speed", value), units);
  return present([
    [`Maximum speed, ${speed(greatest)}`, runningAt(fast, fast.mostSpeedRatio, 1)],
    [`Minimum speed, ${speed(least)}`, runningAt(slow, slow.leastSpeedRatio, 1)],
  ]);
}

function present(members: readonly (readonly [string, RunningPump | undefined])[]): readonly Member[] {
  return members.flatMap(([label, running]) => (running === undefined ? [] : [{ label, running }]));
}

/** The curves of the greatest and the least figure; nothing where none has one. */
function ends(
  curves: readonly ReadyCurve[],
  figure: (curve: ReadyCurve) => number | undefined,
): readonly [ReadyCurve | undefined, ReadyCurve | undefined] {
  const known = curves.filter((curve) => figure(curve) !== undefined);
  const sorted = known.toSorted((a, b) => (figure(b) as number) - (figure(a) as number));
  return [sorted[0], sorted.at(-1)];
}

function runningAt(curve: ReadyCurve, speedRatio: number, trimRatio: number): RunningPump | undefined {
  const drawn = curve.drawn();
  return drawn.ok ? movedTo(drawn.value, speedRatio, trimRatio) : undefined;
}

function movedTo(curve: PumpCurve, speedRatio: number, trimRatio: number): RunningPump | undefined {
  const moved = runningPump({ curve, speedRatio, trimRatio });
  return moved.ok ? moved.value : undefined;
}
