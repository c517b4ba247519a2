import { amount, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { type Crossings, crossingsOf } from "../numeric/crossings.ts";
import { leastBetween } from "../numeric/golden-section.ts";
import { withPlacesBetween } from "../numeric/places-between.ts";
import type { HeadCurve } from "./head-curve.ts";

/** Where pump and system give the same head. */
export interface CurveCrossing {
  /** m³/s */
  readonly flow: number;
  /** m */
  readonly head: number;
}

export interface CurveCrossingInput {
  readonly pump: HeadCurve;
  readonly system: HeadCurve;
}

/** Equal steps between two neighbouring knots at which the curves are compared. */
const STEPS = 32;
/** Curves that come this near without crossing, over the system's head, are called nearly touching. */
const NEAR = 0.005;

/**
 * Stable crossing of greatest flow of a pump curve and a system curve, m³/s and m, over the flows both are given for:
 * 32 steps between the knots of both, each crossing by Brent, stable where the system gains on the pump with flow.
 * Fails: curves-do-not-overlap; system-out-of-reach; operating-point-below-curve or -beyond-curve;
 * system-curve-too-short.
 * Warns: does-not-start-alone; several-operating-points. Caution: curves-nearly-touch, within 0.5 % of the head.
 * Source: Brent 1973; Karassik and others, Pump Handbook, unstable head curves.
 */
export function curveCrossing({ pump, system }: CurveCrossingInput): Result<CurveCrossing> {
  const least = Math.max(pump.leastFlow, system.leastFlow);
  const most = Math.min(pump.mostFlow, system.mostFlow);
  if (!(least < most)) return fail([noOverlap(pump, system)]);
  const knots = [...pump.knots, ...system.knots].filter((flow) => flow > least && flow < most);
  const places = [...new Set([least, ...knots, most])].sort((a, b) => a - b);
  const surplus = (flow: number): number => pump.headAt(flow) - system.headAt(flow);
  const found = crossingsOf(surplus, comparedAt(places, pump, system));
  return classified(found, { pump, system, least, most });
}

/**
 * Where the curves are compared. From one knot to the next the pump may fall and the system rise throughout: what is left
 * between them then falls, and hides nothing where it keeps its sign. Such a piece needs no steps, if those beside it are
 * of the kind.
 */
function comparedAt(places: readonly number[], pump: HeadCurve, system: HeadCurve): readonly number[] {
  if (!pump.goesOneWay || !system.goesOneWay) return withPlacesBetween(places, STEPS);
  const heads = places.map((flow) => ({ given: pump.headAt(flow), asked: system.headAt(flow) }));
  const left = heads.map(({ given, asked }) => given - asked);
  const falls = heads.slice(1).map(({ given, asked }, i) => {
    const before = heads[i] as (typeof heads)[number];
    return given <= before.given && asked >= before.asked && (left[i + 1] as number) < (left[i] as number);
  });
  const isPlain = (i: number): boolean =>
    falls[i] === true &&
    falls[i - 1] !== false &&
    falls[i + 1] !== false &&
    (left[i] as number) * (left[i + 1] as number) > 0;
  const all: number[] = [];
  for (let i = 0; i < places.length - 1; i += 1) {
    const ends = [places[i] as number, places[i + 1] as number];
    all.push(...(isPlain(i) ? ends : withPlacesBetween(ends, STEPS)).slice(0, -1));
  }
  all.push(places.at(-1) as number);
  return all;
}

interface Bounds extends CurveCrossingInput {
  readonly least: number;
  readonly most: number;
}

function classified({ crossings, nearMisses }: Crossings, bounds: Bounds): Result<CurveCrossing> {
  const { pump, system, least, most } = bounds;
  const atLeast = pump.headAt(least) - system.headAt(least);
  const atMost = pump.headAt(most) - system.headAt(most);
  if (atMost > 0) return fail([runsOff(bounds, atMost)]);
  const stable = crossings.findLast(({ direction }) => direction === "falling");
  const chosen = stable ?? crossings.findLast(({ direction }) => direction === "touching");
  if (chosen === undefined) return fail([outOfReach(bounds, atLeast, atMost, nearMisses)]);

  const { at: flow } = chosen;
  const others = crossings.filter(({ at }) => at !== flow);
  const findings: Finding[] = [...manyCrossings(bounds, flow, others, atLeast)];
  for (const { at, value } of [...nearMisses, ...touches(crossings, bounds)]) {
    const head = system.headAt(at);
    if (Math.abs(value) >= NEAR * Math.abs(head)) continue;
    const facts = { flow: amount("flow", at) };
    const apart = amount("head", Math.abs(value));
    findings.push({ code: "curves-nearly-touch", kind: "check", subject: "system curve", found: apart, facts });
  }
  return succeed({ flow, head: pump.headAt(flow) }, findings);
}

/** Where the pump rises above the system and falls below it again: the top between, and where it but touches. */
function touches(crossings: Crossings["crossings"], { pump, system }: Bounds): Crossings["nearMisses"] {
  return crossings.flatMap(({ at, direction }, i) => {
    if (direction === "touching") return [{ at, value: 0 }];
    const next = crossings[i + 1];
    if (direction !== "rising" || next?.direction !== "falling") return [];
    const shortfall = (flow: number): number => system.headAt(flow) - pump.headAt(flow);
    const top = leastBetween(shortfall, at, next.at);
    return [{ at: top, value: -shortfall(top) }];
  });
}

function manyCrossings(
  { pump, system, least }: Bounds,
  flow: number,
  others: Crossings["crossings"],
  atLeast: number,
): readonly Finding[] {
  const [first] = others;
  if (first === undefined) return [];
  const cites = { source: "pump-handbook", at: "unstable head curves" } as const;
  if (others.length === 1 && first.at < flow && atLeast < 0 && least === 0) {
    const found = amount("head", pump.headAt(0));
    const limit = { quantity: "head", value: system.headAt(0), side: "above" } as const;
    const facts = { lower: amount("flow", first.at), upper: amount("flow", flow) };
    return [{ code: "does-not-start-alone", kind: "limit", subject: "pump", found, limit, facts, cites }];
  }
  const all = [...others.map(({ at }) => at), flow].sort((a, b) => a - b);
  const facts = { flows: all.map((at) => amount("flow", at)) };
  return [{ code: "several-operating-points", kind: "limit", subject: "pump", facts, cites }];
}

function runsOff({ pump, most }: Bounds, surplus: number): Finding {
  const code = most === pump.mostFlow ? "operating-point-beyond-curve" : "system-curve-too-short";
  const limit = { quantity: "flow", value: most, side: "at most" } as const;
  return { code, kind: "error", subject: "operating point", found: amount("head", surplus), limit };
}

/** Falling below the system from the first flow on: unreachable, or met before the curves begin. */
function outOfReach(
  { least, most }: Bounds,
  atLeast: number,
  atMost: number,
  nearMisses: Crossings["nearMisses"],
): Finding {
  let nearest = atLeast >= atMost ? { at: least, value: atLeast } : { at: most, value: atMost };
  for (const miss of nearMisses) if (miss.value > nearest.value) nearest = miss;
  const found = amount("head", -nearest.value);
  const subject = "operating point";
  if (least > 0 && nearest.at === least) {
    const limit = { quantity: "flow", value: least, side: "at least" } as const;
    return { code: "operating-point-below-curve", kind: "error", subject, found, limit };
  }
  const facts = { flow: amount("flow", nearest.at) };
  return { code: "system-out-of-reach", kind: "error", subject, found, facts };
}

function noOverlap(pump: HeadCurve, system: HeadCurve): Finding {
  return {
    code: "curves-do-not-overlap",
    kind: "error",
    subject: "system curve",
    facts: {
      pumpLeast: amount("flow", pump.leastFlow),
      pumpMost: amount("flow", pump.mostFlow),
      systemLeast: amount("flow", system.leastFlow),
      systemMost: amount("flow", system.mostFlow),
    },
  };
}
