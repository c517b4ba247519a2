import { amount, andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { brent } from "../numeric/brent.ts";
import { gaussLegendre } from "../numeric/gauss-legendre.ts";
import { pchip, valueAt } from "../numeric/pchip.ts";
import type { HeadCurve } from "../pump/head-curve.ts";
import { headsToReach, type RoutedSystem } from "./filling.ts";
import { reachesOf } from "./route.ts";

export interface FillTimeInput extends RoutedSystem {
  /** Head against flow of all pumps that run. */
  readonly pumps: HeadCurve;
}

export interface FillTime {
  /** Volume of the line, m³, all runs. */
  readonly volume: number;
  /** Chainage of the vertex that asks for most head, m. */
  readonly summit: number;
  /** Least flow while it fills, with the front at that vertex, m³/s, and the head there, m. */
  readonly flow: number;
  readonly head: number;
  /** Until the liquid is at that vertex, s. */
  readonly toSummit: number;
  /** Until it is at the outlet, s: at the latest, as a falling leg runs ahead of its filling. */
  readonly toOutlet: number;
  /** Whether the pumps would run off their curve at first and have to be throttled to its end. */
  readonly isThrottled: boolean;
}

export const fillTimeMethod = {
  cites: [
    { source: "mass-balance", at: "volume of the line over the flow while it fills" },
    { source: "house", at: "pumps that would run off their curve while the line fills are throttled to its end" },
  ],
} as const;

/** Flows at which the line's losses are worked out; between them they are interpolated over the square of the flow. */
const FLOWS = 17;

/**
 * Time in which pumps fill a line, s: at each place the flow at which they give the head of the highest place passed so
 * far with the losses to there, integrated reach by reach; a falling leg counts whole.
 * Formula: t = ∫ n A dx/Q(x),  H(Q) = greatest of z(y) − z_s + losses to y, y up to x
 * Fails: line-does-not-fill, as the pumps do not reach a summit; as `headsToReach`.
 * Warns: throttle-while-filling (check); as `headsToReach`, at the end of the pumps' curve.
 * Source: conservation of volume; Gauss–Legendre quadrature of eight points on each reach.
 */
export function fillTime({ pumps, ...system }: FillTimeInput): Result<FillTime> {
  const most = pumps.mostFlow;
  const flows = Array.from({ length: FLOWS }, (_, i) => (most * i) / (FLOWS - 1));
  const rows: (readonly number[])[] = [];
  let findings: readonly Finding[] = [];
  for (const flow of flows) {
    const heads = headsToReach({ ...system, flow });
    if (!heads.ok) return heads;
    rows.push(heads.value);
    findings = heads.findings;
  }
  const squares = flows.map((flow) => flow * flow);
  const curves = system.route.vertices.map((_, i) =>
    pchip(
      squares,
      rows.map((row) => row[i] as number),
    ),
  );
  const neededAt = (i: number, flow: number): number => valueAt(curves[i] as (typeof curves)[number], flow * flow);
  const top = flowOfGreatestHead(pumps);
  const run: Running = { pumps, top, most };

  let time = 0;
  let volume = 0;
  let toSummit = 0;
  let summit = 0;
  let isThrottled = false;
  let least = flowFor(run, (flow) => neededAt(0, flow));
  if (least === undefined) return fail([doesNotFill(run, neededAt(0, top))]);
  const levels = system.route.vertices.map(({ elevation }) => elevation);
  // Vertices passed that are higher than all after them: with more lost on the way, a later one as high asks for more.
  const high: number[] = [];
  for (const [i, { pipe, length, runs = 1 }] of reachesOf(system.route).entries()) {
    const section = runs * (Math.PI / 4) * pipe.bore ** 2;
    volume += section * length;
    while (high.length > 0 && (levels[high.at(-1) as number] as number) <= (levels[i] as number)) high.pop();
    high.push(i);
    const passed = (flow: number): number =>
      high.reduce((most, k) => Math.max(most, neededAt(k, flow)), Number.NEGATIVE_INFINITY);
    const along = (share: number, flow: number): number =>
      neededAt(i, flow) + (neededAt(i + 1, flow) - neededAt(i, flow)) * share;
    const needed = (share: number, flow: number): number => Math.max(passed(flow), along(share, flow));
    const atEnd = flowFor(run, (flow) => needed(1, flow));
    if (atEnd === undefined) return fail([doesNotFill(run, needed(1, top))]);
    if (Math.max(along(0, atEnd), along(1, atEnd)) <= passed(atEnd)) {
      // The front is below a place it has passed: that one sets the flow.
      time += (section * length) / atEnd;
      isThrottled ||= atEnd === most;
      continue;
    }
    const slowness = (share: number): number => {
      const flow = flowFor(run, (at) => needed(share, at)) as number;
      if (flow === most) isThrottled = true;
      return 1 / flow;
    };
    const breaks = kinks(
      (share) => along(share, most) - pumps.headAt(most),
      (share) => along(share, atEnd) - passed(atEnd),
    );
    for (const [k, to] of breaks.slice(1).entries())
      time += section * length * gaussLegendre(slowness, breaks[k] as number, to);
    if (atEnd < least) {
      least = atEnd;
      summit = i + 1;
      toSummit = time;
    }
  }
  if (isThrottled && pumps.headAt(most) > 0) {
    findings = [
      ...findings,
      { code: "throttle-while-filling", kind: "check", subject: "pump", found: amount("flow", most) },
    ];
  }
  const { chainage } = system.route.vertices[summit] as { readonly chainage: number };
  return andThen(succeed(null, findings), () =>
    succeed({
      volume,
      summit: chainage,
      flow: least as number,
      head: pumps.headAt(least as number),
      toSummit,
      toOutlet: time,
      isThrottled,
    }),
  );
}

interface Running {
  readonly pumps: HeadCurve;
  /** Flow of the greatest head, and the last of the curve, m³/s. */
  readonly top: number;
  readonly most: number;
}

/** The flow on the falling part of the curve at which the pumps give a head that rises with flow; the last where they give more. */
function flowFor({ pumps, top, most }: Running, needed: (flow: number) => number): number | undefined {
  const surplus = (flow: number): number => pumps.headAt(flow) - needed(flow);
  if (surplus(most) >= 0) return most;
  return surplus(top) <= 0 ? undefined : brent(surplus, top, most);
}

function flowOfGreatestHead({ knots, headAt }: HeadCurve): number {
  return knots.reduce((best, flow) => (headAt(flow) > headAt(best) ? flow : best), knots[0] as number);
}

/** 0, 1 and where either of two straight functions of the share changes sign between. */
function kinks(...functions: readonly ((share: number) => number)[]): readonly number[] {
  const inner = functions.flatMap((of) => {
    const [from, to] = [of(0), of(1)];
    const at = from / (from - to);
    return at > 0 && at < 1 ? [at] : [];
  });
  return [0, ...inner.sort((a, b) => a - b), 1];
}

function doesNotFill({ pumps, top }: Running, needed: number): Finding {
  const found = amount("head", needed - pumps.headAt(top));
  return { code: "line-does-not-fill", kind: "error", subject: "pump", found };
}
