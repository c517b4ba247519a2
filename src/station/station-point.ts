import type { Citation } from "../basis/citation.ts";
import { amount, andThen, type Finding, fail, type Result, type Success, succeed } from "../basis/result.ts";
import { greatestOf, leastOf } from "../numeric/extremes.ts";
import { curveCrossing } from "../pump/curve-crossing.ts";
import type { HeadCurve } from "../pump/head-curve.ts";
import { headOf } from "../pump/pump-reading.ts";
import { type HeaderInput, type HeaderPoint, headerPoint, type NetPump, ofPump } from "./header.ts";
import { reverseResistance } from "./idle-flow.ts";
import { netCurve } from "./net-curve.ts";
import { type Started, startedIn, startOrders } from "./start-order.ts";
import type { StationPump } from "./station-pump.ts";

export interface StationInput {
  /** In the order in which they start, or in the order of flow in series. */
  readonly pumps: readonly StationPump[];
  /** Of the common rows: head over the common source level, m over the flow of all, m³/s. */
  readonly system: HeadCurve;
  /** Side by side, pumps that stand still without a check valve and let liquid back by `flowBack`. */
  readonly leaking?: readonly StationPump[];
}

/** What one kind of pump does in a station. */
export interface PumpState {
  readonly name: string;
  readonly count: number;
  /** How many of them pump. */
  readonly running: number;
  /** Of each that pumps, m³/s; below 0 where liquid flows back through it. */
  readonly flow: number;
  /** Of each, m; that at its first flow where it does not pump. */
  readonly head: number;
  readonly does: "runs" | "held shut" | "hunts" | "flows back";
  /** Its shutoff grade below the header where its check valve is shut, m. */
  readonly short: number | null;
}

export interface StationPoint {
  /** Of all pumps together, m³/s. */
  readonly flow: number;
  /** Head the system asks for there, over the common source level, m. */
  readonly head: number;
  /** In the order given. */
  readonly pumps: readonly PumpState[];
}

export const stationMethod = {
  cites: [
    { source: "white-fluid-mechanics", at: "ch. 11, pumps combined in parallel; pumps combined in series" },
    { source: "pump-handbook", at: "parallel and series operation; curves less branch losses" },
    { source: "brent-1973", at: "root of a function in a bracket" },
  ],
} as const;

const PARALLEL: Citation = { source: "pump-handbook", at: "parallel operation" };
const DROOPING: Citation = { source: "pump-handbook", at: "parallel operation of pumps with drooping curves" };
const STARTING: Citation = {
  source: "practice",
  at: "pumps are added only where their shutoff head is above the head of those running",
};
const HUNTING: Citation = {
  source: "house",
  at: "held shut by no more than 3 % of its shutoff head counts as hunting",
};
const BACKWARDS: Citation = {
  source: "house",
  at: "flow back through a pump by its rated head over the square of its rated flow; 0.6 to 1.2 times rated flow from memory",
};

/** Of its shutoff head: held shut by less, a pump comes in and drops out with any change of level (house choice). */
const HUNTS_WITHIN = 0.03;
/** Relative; two states of less difference are one. */
const ALIKE = 1e-6;
const EQUAL = 1e-9;

/**
 * Pumps side by side, alike or not, each less its own rows on one header, as they come to rest when they start one after
 * the other in the order given; m³/s and m. Each has a head of its own there.
 * Fails: left-out; as `headerPoint`.
 * Warns: limits pump-held-closed, pump-near-shut (by up to 3 % of its head), pump-cannot-share, station-not-reached,
 * station-order-matters, pump-flows-back; reverse-flow-unknown; as `headerPoint`.
 * Source: White, Fluid Mechanics, ch. 11; Karassik and others, Pump Handbook; starting order common practice.
 */
export function stationPoint({ pumps, system, leaking = [] }: StationInput): Result<StationPoint> {
  if (pumps.length === 0) return fail([noPumps()]);
  const nets = pumps.map((of): NetPump => ({ of, net: netCurve(of) }));
  const all = pumps.map(({ count }) => count);
  const seen = new Map<string, Result<HeaderPoint>>();
  const solve = (open: readonly number[]): Result<HeaderPoint> => {
    const key = open.join(" ");
    const found = seen.get(key) ?? headerPoint(leaking.length === 0 ? { pumps: nets, open, system } : besideIdle(open));
    seen.set(key, found);
    return found;
  };
  const idle = leaking.map((of): NetPump => ({ of, net: netCurve(of) }));
  const besideIdle = (open: readonly number[]): HeaderInput => ({
    pumps: [...nets, ...idle],
    open: [...open, ...idle.map(() => 0)],
    leaking: [...nets.map(() => 0), ...leaking.map(({ count }) => count)],
    system,
  });
  const isAlone = all.reduce((sum, count) => sum + count, 0) === 1;
  // On curves that fall from their first flow on there is one state, whatever the order.
  if (isAlone || nets.every(({ net }) => net.topFlow === net.leastFlow)) {
    return andThen(solve(all), (point) => restingAt(point, { open: all, hunting: new Set() }, nets));
  }
  const outcomes = startOrders(nets).map((order) => startedIn(order, nets, system, solve));
  const [started] = outcomes as [Started];
  // Where not one of them opens by itself, what the first does is said, whether it comes in or what it lacks.
  const open = started.open.some((count) => count > 0) ? started.open : all.map((_, i) => (i === 0 ? 1 : 0));
  return andThen(solve(open), (point) => {
    const { value, findings } = restingAt(point, { ...started, open }, nets);
    return succeed(value, [...findings, ...unreached(solve(all), point, nets), ...byOrder(outcomes, solve)]);
  });
}

function noPumps(): Finding {
  return { code: "left-out", kind: "error", subject: "pumps", suggestions: ["one pump or more"] };
}

function restingAt(point: HeaderPoint, { open, hunting }: Started, nets: readonly NetPump[]): Success<StationPoint> {
  const states = nets.map((one, i) => stateOf(one, point, { i, opened: open[i] as number, hunts: hunting.has(i) }));
  const findings = states.flatMap((state, i) => remarksOn(state, point, nets[i] as NetPump));
  return succeed({ flow: point.total, head: point.grade, pumps: states }, findings);
}

function stateOf(
  { of, net }: NetPump,
  { grade, flows }: HeaderPoint,
  { i, opened, hunts }: { readonly i: number; readonly opened: number; readonly hunts: boolean },
): PumpState {
  const { name, count, pump } = of;
  const flow = flows[i] as number;
  const running = flow === 0 && grade > net.topGrade ? 0 : opened;
  const below = grade - net.headAt(net.leastFlow);
  const shutoff = headOf(pump, net.leastFlow);
  const short = running < count && below > 0 ? below : null;
  const isNear = short === null || short <= HUNTS_WITHIN * shutoff * (1 + EQUAL);
  const idle = hunts || isNear ? "hunts" : "held shut";
  return {
    name,
    count,
    running,
    flow,
    head: flow > 0 ? headOf(pump, flow) : shutoff,
    does: flow < 0 ? "flows back" : running === count ? "runs" : idle,
    short,
  };
}

function remarksOn(state: PumpState, { grade }: HeaderPoint, { of, net }: NetPump): readonly Finding[] {
  const subject = "pump";
  if (state.does === "flows back") {
    const found = amount("flow", -state.flow);
    return [ofPump({ code: "pump-flows-back", kind: "limit", subject, found, cites: BACKWARDS }, of)];
  }
  if (state.running === state.count) return [];
  const findings: Finding[] = [];
  const limit = { quantity: "head", value: grade, side: "at least" } as const;
  if (state.short === null) {
    const found = amount("head", net.topGrade);
    findings.push({ code: "pump-cannot-share", kind: "limit", subject, found, limit, cites: DROOPING });
  } else {
    const found = amount("head", state.short);
    const code = state.does === "hunts" ? "pump-near-shut" : "pump-held-closed";
    findings.push({
      code,
      kind: "limit",
      subject,
      found,
      limit,
      cites: code === "pump-near-shut" ? HUNTING : PARALLEL,
    });
  }
  if (!of.hasCheckValve && reverseResistance(of.pump) === undefined) {
    findings.push({ code: "reverse-flow-unknown", kind: "check", subject });
  }
  return findings.map((finding) => ofPump(finding, of));
}

/** Where all could run on the falling part of their curves, and starting one after the other leads elsewhere. */
function unreached(all: Result<HeaderPoint>, reached: HeaderPoint, nets: readonly NetPump[]): readonly Finding[] {
  if (!all.ok || !all.value.isSteady || all.value.flows.some((flow) => flow <= 0)) return [];
  const { total, grade } = all.value;
  const onFalling = nets.every(({ net }, i) => (all.value.flows[i] as number) >= net.topFlow * (1 - EQUAL));
  if (!onFalling || Math.abs(total - reached.total) <= ALIKE * total) return [];
  const facts = { flow: amount("flow", total), head: amount("head", grade) };
  return [{ code: "station-not-reached", kind: "limit", subject: "pumps", facts, cites: STARTING }];
}

/** Where another order of starting leads to another flow. */
function byOrder(
  outcomes: readonly Started[],
  solve: (open: readonly number[]) => Result<HeaderPoint>,
): readonly Finding[] {
  const flows = outcomes.flatMap(({ open }) => {
    const state = solve(open);
    return state.ok ? [state.value.total] : [];
  });
  const [least, most] = [leastOf(flows), greatestOf(flows)];
  if (flows.length < 2 || most - least <= ALIKE * most) return [];
  const facts = { least: amount("flow", least), most: amount("flow", most) };
  return [{ code: "station-order-matters", kind: "limit", subject: "pumps", facts, cites: STARTING }];
}

/**
 * Pumps one behind the other, alike or not: heads add at one flow, over the flows that all their curves cover; m³/s, m.
 * Fails: left-out; as `curveCrossing`, naming the pump whose curve ends first.
 * Warns: caution series-casing-pressure; as `curveCrossing`.
 * Source: White, Fluid Mechanics, ch. 11; Karassik and others, Pump Handbook, series operation.
 */
export function seriesPoint({ pumps, system }: StationInput): Result<StationPoint> {
  if (pumps.length === 0) return fail([noPumps()]);
  const nets = pumps.map((of): NetPump => ({ of, net: netCurve({ ...of, level: 0 }) }));
  const shortest = nets.reduce((best, one) => (one.net.mostFlow < best.net.mostFlow ? one : best));
  const group: HeadCurve = {
    leastFlow: greatestOf(nets.map(({ net }) => net.leastFlow)),
    mostFlow: shortest.net.mostFlow,
    headAt: (flow) => nets.reduce((sum, { of, net }) => sum + of.count * net.headAt(flow), 0),
    knots: nets.flatMap(({ net }) => net.knots),
  };
  const crossing = curveCrossing({ pump: group, system });
  if (!crossing.ok) {
    const isBeyond = ({ code }: Finding): boolean => code === "operating-point-beyond-curve";
    return fail(crossing.findings.map((finding) => (isBeyond(finding) ? ofPump(finding, shortest.of) : finding)));
  }
  const { flow, head } = crossing.value;
  const states = pumps.map(({ name, count, pump }): PumpState => {
    return { name, count, running: count, flow, head: headOf(pump, flow), does: "runs", short: null };
  });
  const isSeveral = pumps.reduce((sum, { count }) => sum + count, 0) > 1;
  const pressure: readonly Finding[] = [{ code: "series-casing-pressure", kind: "check", subject: "pumps" }];
  return succeed({ flow, head, pumps: states }, [...crossing.findings, ...(isSeveral ? pressure : [])]);
}
