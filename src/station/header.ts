import { amount, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { brent } from "../numeric/brent.ts";
import { greatestOf } from "../numeric/extremes.ts";
import { curveCrossing } from "../pump/curve-crossing.ts";
import type { HeadCurve } from "../pump/head-curve.ts";
import { flowBack } from "./idle-flow.ts";
import type { NetCurve } from "./net-curve.ts";
import type { StationPump } from "./station-pump.ts";

export interface NetPump {
  readonly of: StationPump;
  readonly net: NetCurve;
}

export interface HeaderInput {
  readonly pumps: readonly NetPump[];
  /** How many of each kind run. */
  readonly open: readonly number[];
  /** How many of each kind stand still without a check valve, and let liquid back. */
  readonly leaking?: readonly number[];
  /** From the common header on: grade it asks for over the common source level, m over m³/s. */
  readonly system: HeadCurve;
}

export interface HeaderPoint {
  /** Grade at the header over the common source level, m. */
  readonly grade: number;
  /** Of all pumps together, what flows back taken off, m³/s. */
  readonly total: number;
  /** Of each open pump by kind; below 0 where it flows back. */
  readonly flows: readonly number[];
  /** Back through each idle pump by kind. */
  readonly back: readonly number[];
  /** Whether every pump has a share it keeps: none jumps between nothing and the flow of its greatest head. */
  readonly isSteady: boolean;
}

/** Relative; what is equal but for rounding is equal. */
const EQUAL = 1e-9;
/** Of the head: left over where a drooping pump jumps in and out. */
const STEADY = 1e-6;

/**
 * Common header of pumps side by side, each on the falling part of its net curve, nothing where the grade is above its
 * greatest and a check valve is fitted: G = z + p/ρg + h(Σ Q(G)), one root, by Brent. One pump by itself is crossed with
 * the system as a curve of its own, its rising part included.
 * Where idle pumps let back all that the others give, nothing goes on and no head is asked for.
 * Fails: operating-point-beyond-curve, of the pump whose curve ends at the greatest grade; system-curve-too-short;
 * system-out-of-reach; operating-point-below-curve; as `curveCrossing`.
 * Source: White, Fluid Mechanics, ch. 11, pumps combined in parallel; Brent 1973.
 */
export function headerPoint(input: HeaderInput): Result<HeaderPoint> {
  const { pumps, open, leaking, system } = input;
  const isLeaking = leaking?.some((count) => count > 0) ?? false;
  const alone = open.reduce((sum, count) => sum + count, 0) === 1 && !isLeaking ? open.indexOf(1) : -1;
  return alone >= 0 ? aloneAt(pumps, alone, system) : sharedAt(input);
}

function aloneAt(pumps: readonly NetPump[], alone: number, system: HeadCurve): Result<HeaderPoint> {
  const { net, of } = pumps[alone] as NetPump;
  const crossing = curveCrossing({ pump: net, system });
  if (!crossing.ok) return fail(crossing.findings.map((finding) => ofPump(finding, of)));
  const { flow, head } = crossing.value;
  const flows = pumps.map((_, i) => (i === alone ? flow : 0));
  const value = { grade: head, total: flow, flows, back: pumps.map(() => 0), isSteady: true };
  return succeed(
    value,
    crossing.findings.map((finding) => ofPump(finding, of)),
  );
}

/** Says whose finding it is, where the station has pumps by name. */
export function ofPump(finding: Finding, { name }: Pick<StationPump, "name">): Finding {
  return name === "" ? finding : { ...finding, of: name };
}

/** What one pump gives to the header at a grade, m³/s: below 0 where it lets liquid back for want of a check valve. */
export function flowAtHeader({ of, net }: NetPump, grade: number): number {
  return grade > net.topGrade && !of.hasCheckValve ? -flowBack(of, grade - net.topGrade) : net.flowAt(grade);
}

function sharedAt({ pumps, open, leaking, system }: HeaderInput): Result<HeaderPoint> {
  const running = pumps.filter((_, i) => (open[i] as number) > 0);
  if (running.length === 0)
    return fail([{ code: "left-out", kind: "error", subject: "pumps", suggestions: ["one pump or more"] }]);
  const backOf = (i: number, grade: number): number => {
    const count = leaking?.[i] ?? 0;
    const { of } = pumps[i] as NetPump;
    return count === 0 ? 0 : flowBack(of, grade - of.level);
  };
  const total = (grade: number): number => {
    let sum = 0;
    for (let i = 0; i < pumps.length; i += 1) {
      const count = open[i] as number;
      if (count > 0) sum += count * flowAtHeader(pumps[i] as NetPump, grade);
      if (leaking !== undefined) sum -= (leaking[i] as number) * backOf(i, grade);
    }
    return sum;
  };
  const surplus = (grade: number): number => grade - system.headAt(Math.max(system.leastFlow, total(grade)));

  const first = running.reduce((best, one) => (one.net.endGrade > best.net.endGrade ? one : best));
  const high = greatestOf(running.map(({ net }) => net.topGrade));
  const isCut = total(first.net.endGrade) > system.mostFlow;
  const low = isCut
    ? (brent((grade) => total(grade) - system.mostFlow, first.net.endGrade, high) ?? high)
    : first.net.endGrade;
  const over = surplus(low);
  if (over > EQUAL * Math.max(1, Math.abs(low))) return fail([isCut ? tooShort(system, over) : runsOff(first, over)]);
  const short = -surplus(high);
  if (short > EQUAL * Math.max(1, Math.abs(high))) {
    const facts = { flow: amount("flow", Math.max(0, total(high))) };
    const found = amount("head", short);
    return fail([{ code: "system-out-of-reach", kind: "error", subject: "operating point", found, facts }]);
  }
  const grade = brent(surplus, low, high) ?? (over >= 0 ? low : high);
  const flow = total(grade);
  const backAll = flow < 0 && leaking !== undefined ? brent(total, low, high) : undefined;
  if (backAll !== undefined) return succeed(pointAt(backAll, 0));
  if (flow < system.leastFlow * (1 - EQUAL)) return fail([belowFirst(system.leastFlow, Math.abs(surplus(grade)))]);
  const unread = running.find(({ net }) => net.topFlow === net.leastFlow && net.leastFlow > 0 && grade > net.topGrade);
  if (unread !== undefined) {
    return fail([ofPump(belowFirst(unread.net.leastFlow, grade - unread.net.topGrade), unread.of)]);
  }
  return succeed(pointAt(grade, flow, Math.abs(surplus(grade)) <= STEADY * Math.max(1, Math.abs(grade))));

  function pointAt(at: number, sum: number, isSteady = true): HeaderPoint {
    const flows = pumps.map((one, i) => ((open[i] as number) > 0 ? flowAtHeader(one, at) : 0));
    return { grade: at, total: sum, flows, back: pumps.map((_, i) => backOf(i, at)), isSteady };
  }
}

function runsOff({ of, net }: NetPump, surplus: number): Finding {
  const code = net.isCutShort ? "system-curve-too-short" : "operating-point-beyond-curve";
  const subject = net.isCutShort ? "losses of its own rows" : "operating point";
  const limit = { quantity: "flow", value: net.mostFlow, side: "at most" } as const;
  return ofPump({ code, kind: "error", subject, found: amount("head", surplus), limit }, of);
}

function tooShort({ mostFlow }: HeadCurve, surplus: number): Finding {
  const limit = { quantity: "flow", value: mostFlow, side: "at most" } as const;
  const subject = "operating point";
  return { code: "system-curve-too-short", kind: "error", subject, found: amount("head", surplus), limit };
}

function belowFirst(least: number, short: number): Finding {
  const limit = { quantity: "flow", value: least, side: "at least" } as const;
  const subject = "operating point";
  return { code: "operating-point-below-curve", kind: "error", subject, found: amount("head", short), limit };
}
