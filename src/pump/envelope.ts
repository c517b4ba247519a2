import type { Citation } from "../basis/citation.ts";
import { SPECIFIC_GRAVITY_REFERENCE } from "../basis/constants.ts";
import { checkInputs, type Method, outOfRange } from "../basis/method.ts";
import { amount, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { greatestOf, leastOf } from "../numeric/extremes.ts";
import { leastBetween } from "../numeric/golden-section.ts";
import { operatingPoint } from "../station/operating-point.ts";
import type { Arrangement, HeadCurve } from "./head-curve.ts";
import { isInRegion, leastFlows, preferredRegion } from "./operating-region.ts";
import { npshRequiredAtFlow, shaftPowerAtFlow } from "./pump-reading.ts";
import type { RunningPump } from "./running-pump.ts";

export type StaticHeadState = "least" | "normal" | "greatest";
/** full: new, and the fall beyond a summit of the line takes part. */
export type PipeState = "new" | "full" | "aged";
export type CurveState = "low" | "as drawn" | "high";

/** Which ends of the ranges meet in a corner of the region. */
export interface CornerState {
  readonly staticHead: StaticHeadState;
  readonly pipe: PipeState;
  readonly curve: CurveState;
}

export interface DutyRegionInput {
  readonly pump: RunningPump;
  /** How many equal pumps run; 1 or more. */
  readonly pumps: number;
  readonly arrangement: Arrangement;
  /** m. An end left out is the normal one. */
  readonly staticHeads: { readonly least?: number; readonly normal: number; readonly greatest?: number };
  /** The system at the normal static head, from zero flow to beyond the end of the pumps' curve. */
  readonly newPipe: HeadCurve;
  readonly agedPipe?: HeadCurve;
  /** The line running full, where it might and is not counted on to. */
  readonly fullPipe?: HeadCurve;
  /** Head the bought pump may have over that of its curve: 0.95 and 1.05 for ±5 %. */
  readonly headBand: { readonly least: number; readonly most: number };
  /** Of the liquid pumped, kg/m³. */
  readonly density: number;
  /** NPSH available at a flow of all pumps together, with the source and the pipe as they are then, m. */
  readonly npshAvailable?: (flow: number, state: Pick<CornerState, "staticHead" | "pipe">) => Result<number>;
  /** NPSH to keep in hand over NPSHR, m. */
  readonly npshMargin?: number;
  /** rpm, m³/s, m; the wider preferred region is taken without it. */
  readonly specificSpeed?: number;
}

/** Where the pumps run in one corner. What the curve does not give there is null. */
export interface RegionCorner extends CornerState {
  /** Of all pumps together: m³/s, m, and W with the liquid pumped. */
  readonly flow: number;
  readonly head: number;
  readonly shaftPower: number | null;
  /** Of each pump. */
  readonly efficiency: number | null;
  readonly npshRequired: number | null;
  /** NPSH available less required, m. */
  readonly npshMargin: number | null;
  readonly bestFlowRatio: number | null;
  /**
   * preferred: in the preferred operating region. allowable: outside it, on the curve and at the doubted flow of
   * `leastFlows` or more; the maker's own limits govern. below minimum: less than that.
   */
  readonly place: "preferred" | "allowable" | "below minimum" | null;
}

/** Everything the pumps may do between the ends of their ranges. */
export interface DutyRegion {
  readonly normal: RegionCorner;
  /** The corners that have an operating point, the normal one first. */
  readonly corners: readonly RegionCorner[];
  /** Those that have none, and which end of the curve they are past. */
  readonly missing: readonly (CornerState & { readonly past: "last flow" | "first flow" })[];
  /** m³/s. The end of the curve where a corner is past it: nothing is known further. */
  readonly leastFlow: number;
  readonly greatestFlow: number;
  /** Least NPSH available less required anywhere in the region, m, and the flow of all pumps it stands at. */
  readonly leastNpshMargin: { readonly margin: number; readonly flow: number } | null;
  /** Greatest anywhere in the region, with the curve at its highest; and anywhere on the curve as drawn. W. */
  readonly greatestPower: number | null;
  readonly greatestPowerOnCurve: number | null;
}

export const dutyRegionMethod = {
  cites: [
    { source: "iso-9906", at: "table 8, tolerance factors of head", unverified: true },
    { source: "ansi-hi-9.6.3", at: "preferred operating region" },
  ],
  inputs: {
    least: { name: "minimum static head", quantity: "head" },
    normal: { name: "static head", quantity: "head" },
    greatest: { name: "maximum static head", quantity: "head" },
    low: { name: "minimum head over the curve's", quantity: "ratio", above: 0, atMost: 1 },
    high: { name: "maximum head over the curve's", quantity: "ratio", atLeast: 1 },
    density: { name: "density", symbol: "ρ", quantity: "density", above: 0 },
  },
} as const satisfies Method<"least" | "normal" | "greatest" | "low" | "high" | "density">;

const MARGIN_RULE: Citation = { source: "ansi-hi-9.6.1", at: "NPSH margin" };
const REGION_RULE = dutyRegionMethod.cites[1];

/**
 * Region in which equal pumps run while static head, pipe and their own curve lie anywhere in their ranges; m³/s, m, W.
 * Flow moves one way with each, so corners of all ends bound it; one past the curve sets it to the curve's end. NPSH
 * and power are looked at between corners too. Tolerances of flow and head are not added: a pump is accepted by either.
 * Fails: out-of-range inputs; ends out of order; as `operatingPoint`.
 * Warns: region-npsh-short, region-corner-outside-preferred, region-corner-not-reached or -beyond-curve,
 * region-npsh-margin-small.
 * Source: ISO 9906, table 8 (from memory); ANSI/HI 9.6.3; ANSI/HI 9.6.1.
 */
export function dutyRegion(input: DutyRegionInput): Result<DutyRegion> {
  const { pump, pumps, arrangement, staticHeads, headBand, density } = input;
  const { normal: normalHead, least = normalHead, greatest = normalHead } = staticHeads;
  const checked = checkInputs(dutyRegionMethod, {
    least,
    normal: normalHead,
    greatest,
    low: headBand.least,
    high: headBand.most,
    density,
  });
  if (!checked.ok) return checked;
  const disordered = orderErrors(least, normalHead, greatest);
  if (disordered.length > 0) return fail(disordered);

  const normal = cornerOf(input, NORMAL);
  if (!normal.ok) return normal;
  const corners = [normal.value];
  const missing: (CornerState & { past: "last flow" | "first flow" })[] = [];
  const findings: Finding[] = [];
  for (const state of statesOf(input)) {
    const corner = cornerOf(input, state);
    if (corner.ok) corners.push(corner.value);
    else {
      const past = pastEnd(corner.findings);
      if (past === undefined) return fail(corner.findings);
      missing.push({ ...state, past });
      findings.push(notOnCurve(state, past, pump, flowFactor(pumps, arrangement)));
    }
  }
  const flows = corners.map(({ flow }) => flow);
  const together = flowFactor(pumps, arrangement);
  const runsShort = missing.some(({ past }) => past === "first flow");
  const runsOff = missing.some(({ past }) => past === "last flow");
  const leastFlow = runsShort ? pump.leastFlow * together : leastOf(flows);
  const greatestFlow = runsOff ? pump.mostFlow * together : greatestOf(flows);
  const leastNpshMargin = leastMargin(input, corners, missing);
  const high = withHead(pump, headBand.most);
  const firstPower = firstPowerFlow(pump) * together;
  const powerOf =
    (at: RunningPump) =>
    (flow: number): number | undefined => {
      const read = shaftPowerAtFlow(at, flow / together, density);
      return read.ok ? read.value * pumps : undefined;
    };
  const region: DutyRegion = {
    normal: normal.value,
    corners,
    missing,
    leastFlow,
    greatestFlow,
    leastNpshMargin,
    greatestPower: greatestPowerIn(powerOf(high), corners, Math.max(leastFlow, firstPower), greatestFlow),
    greatestPowerOnCurve: greatestAlong(powerOf(pump), firstPower, pump.mostFlow * together)?.value ?? null,
  };
  findings.push(...marginFindings(input, leastNpshMargin), ...placeFindings(input, corners));
  return succeed(region, findings);
}

const NORMAL: CornerState = { staticHead: "normal", pipe: "new", curve: "as drawn" };

/** Every corner but the normal one; a range without width has one end. */
function statesOf({ staticHeads, agedPipe, fullPipe, headBand }: DutyRegionInput): readonly CornerState[] {
  const { normal, least = normal, greatest = normal } = staticHeads;
  const heads: StaticHeadState[] = [
    ...(least < normal ? (["least"] as const) : []),
    "normal",
    ...(greatest > normal ? (["greatest"] as const) : []),
  ];
  const pipes: PipeState[] = [
    ...(fullPipe === undefined ? [] : (["full"] as const)),
    "new",
    ...(agedPipe === undefined ? [] : (["aged"] as const)),
  ];
  const curves: CurveState[] = [
    ...(headBand.least < 1 ? (["low"] as const) : []),
    "as drawn",
    ...(headBand.most > 1 ? (["high"] as const) : []),
  ];
  return heads
    .flatMap((staticHead) => pipes.flatMap((pipe) => curves.map((curve) => ({ staticHead, pipe, curve }))))
    .filter(({ staticHead, pipe, curve }) => staticHead !== "normal" || pipe !== "new" || curve !== "as drawn");
}

function cornerOf(input: DutyRegionInput, state: CornerState): Result<RegionCorner> {
  const { pumps, arrangement, density, specificSpeed } = input;
  const pump = pumpIn(input, state.curve);
  const specificGravity = density / SPECIFIC_GRAVITY_REFERENCE;
  const point = operatingPoint({ pump, system: systemIn(input, state), pumps, arrangement, specificGravity });
  if (!point.ok) return point;
  const { flow, head, efficiency, npshRequired, bestFlowRatio, shaftPower } = point.value;
  return succeed(
    {
      ...state,
      flow,
      head,
      efficiency,
      shaftPower,
      npshRequired,
      npshMargin: marginAt(input, flow, state) ?? null,
      bestFlowRatio,
      place: bestFlowRatio === null ? null : placeOf(bestFlowRatio, specificSpeed),
    },
    point.findings,
  );
}

function pumpIn({ pump, headBand }: DutyRegionInput, curve: CurveState): RunningPump {
  if (curve === "as drawn") return pump;
  return withHead(pump, curve === "low" ? headBand.least : headBand.most);
}

/** The same pump giving so many times its head, and so taking so many times its power, at each flow. */
function withHead(pump: RunningPump, factor: number): RunningPump {
  return { ...pump, headFactor: pump.headFactor * factor };
}

function systemIn(input: DutyRegionInput, { staticHead, pipe }: CornerState): HeadCurve {
  const { staticHeads, newPipe, agedPipe = newPipe, fullPipe = newPipe } = input;
  const curve = { new: newPipe, full: fullPipe, aged: agedPipe }[pipe];
  const rise = (staticHeads[staticHead] ?? staticHeads.normal) - staticHeads.normal;
  return rise === 0 ? curve : { ...curve, headAt: (flow) => curve.headAt(flow) + rise };
}

function flowFactor(pumps: number, arrangement: Arrangement): number {
  return arrangement === "parallel" ? pumps : 1;
}

/** NPSH available less required at a flow of all pumps together; nothing where either is not known. */
function marginAt(
  input: DutyRegionInput,
  flow: number,
  state: Pick<CornerState, "staticHead" | "pipe">,
): number | undefined {
  const { pump, pumps, arrangement, npshAvailable } = input;
  if (npshAvailable === undefined) return undefined;
  const required = npshRequiredAtFlow(pump, flow / flowFactor(pumps, arrangement));
  if (!required.ok) return undefined;
  const available = npshAvailable(flow, state);
  return available.ok ? available.value - required.value : undefined;
}

function placeOf(flowRatio: number, specificSpeed: number | undefined): NonNullable<RegionCorner["place"]> {
  if (isInRegion(flowRatio, preferredRegion(specificSpeed))) return "preferred";
  return flowRatio < leastFlows(specificSpeed).doubted ? "below minimum" : "allowable";
}

function pastEnd(findings: readonly Finding[]): "last flow" | "first flow" | undefined {
  const codes = findings.map(({ code }) => code);
  if (codes.includes("operating-point-beyond-curve")) return "last flow";
  return codes.includes("system-out-of-reach") || codes.includes("operating-point-below-curve")
    ? "first flow"
    : undefined;
}

/** Least margin over the flows that each static head and pipe bring, with the source and the suction as they are then. */
function leastMargin(
  input: DutyRegionInput,
  corners: readonly RegionCorner[],
  missing: DutyRegion["missing"],
): DutyRegion["leastNpshMargin"] {
  const { pump, pumps, arrangement } = input;
  const together = flowFactor(pumps, arrangement);
  let least: DutyRegion["leastNpshMargin"] = null;
  const heads = ["least", "normal", "greatest"] as const;
  const states = heads.flatMap((staticHead) => (["new", "aged"] as const).map((pipe) => ({ staticHead, pipe })));
  for (const state of states) {
    // On its way to old age the line runs at any flow between.
    const isIn = (corner: CornerState): boolean =>
      corner.staticHead === state.staticHead && (state.pipe === "new" || corner.pipe === "aged");
    const ends = [
      ...corners.filter(isIn).map(({ flow }) => flow),
      ...missing.filter(isIn).map(({ past }) => (past === "last flow" ? pump.mostFlow : pump.leastFlow) * together),
    ];
    if (ends.length === 0) continue;
    const worst = greatestAlong(
      (flow) => {
        const margin = marginAt(input, flow, state);
        return margin === undefined ? undefined : -margin;
      },
      leastOf(ends),
      greatestOf(ends),
    );
    if (worst !== undefined && (least === null || -worst.value < least.margin)) {
      least = { margin: -worst.value, flow: worst.at };
    }
  }
  return least;
}

/** Places looked at between two flows before the greatest is closed in on. */
const STEPS = 64;
/** Share of such a step: a greatest value nearer than that to an end is taken to be the end's own. */
const AT_END = 1e-3;

/** The greatest of a reading between two flows, both included, over the flows where it can be read. */
function greatestAlong(
  read: (flow: number) => number | undefined,
  from: number,
  to: number,
): { readonly at: number; readonly value: number } | undefined {
  const step = (to - from) / STEPS;
  let best: { at: number; value: number } | undefined;
  const consider = (at: number): void => {
    const value = read(at);
    if (value !== undefined && (best === undefined || value > best.value)) best = { at, value };
  };
  for (let i = 0; i < STEPS; i += 1) consider(from + i * step);
  consider(to);
  if (best === undefined || step === 0) return best;
  const { at } = best;
  const inside = at === from ? from + AT_END * step : at === to ? to - AT_END * step : undefined;
  if (inside !== undefined && (read(inside) ?? -Infinity) <= best.value) return best;
  const beside: readonly [number, number] = [Math.max(from, at - step), Math.min(to, at + step)];
  if (beside.every((flow) => read(flow) !== undefined)) {
    consider(leastBetween((flow) => -(read(flow) ?? 0), ...beside));
  }
  return best;
}

/** The greatest of the corners and of the flows between them whose power rests on a figure. */
function greatestPowerIn(
  power: (flow: number) => number | undefined,
  corners: readonly RegionCorner[],
  from: number,
  to: number,
): number | null {
  const between = from <= to ? greatestAlong(power, from, to) : undefined;
  const all = [...corners.map(({ shaftPower }) => shaftPower), between?.value ?? null].filter((one) => one !== null);
  return all.length === 0 ? null : greatestOf(all);
}

/** The first flow whose power rests on a figure, not on the line of efficiency to zero. */
function firstPowerFlow({ curve, leastFlow, flowFactor: factor }: RunningPump): number {
  if (curve.power !== undefined || curve.efficiency === undefined) return leastFlow;
  const { x, y } = curve.efficiency;
  const first = y.findIndex((efficiency) => efficiency > 0);
  return Math.max(leastFlow, (x[Math.max(0, first)] as number) * factor);
}

function orderErrors(least: number, normal: number, greatest: number): readonly Finding[] {
  const errors: Finding[] = [];
  if (least > normal) errors.push(outOfRange("minimum static head", "head", least, "at most", normal));
  if (greatest < normal) errors.push(outOfRange("maximum static head", "head", greatest, "at least", normal));
  return errors;
}

function notOnCurve(
  state: CornerState,
  past: "last flow" | "first flow",
  pump: RunningPump,
  together: number,
): Finding {
  const facts = { where: cornerWords(state) };
  if (past === "first flow") {
    return { code: "region-corner-not-reached", kind: "check", subject: "operating range", facts };
  }
  const limit = { quantity: "flow", value: pump.mostFlow * together, side: "at most" } as const;
  return { code: "region-corner-beyond-curve", kind: "check", subject: "operating range", facts, limit };
}

/** "minimum static head, new pipe, curve as drawn" */
export function cornerWords({ staticHead, pipe, curve }: CornerState): string {
  const curveWords = { low: "curve at its lowest", "as drawn": "curve as drawn", high: "curve at its highest" }[curve];
  const pipeWords = { new: "new pipe", full: "line running full", aged: "aged pipe" }[pipe];
  const headWords = { least: "minimum", normal: "normal", greatest: "maximum" }[staticHead];
  return `${headWords} static head, ${pipeWords}, ${curveWords}`;
}

function marginFindings({ npshMargin }: DutyRegionInput, least: DutyRegion["leastNpshMargin"]): readonly Finding[] {
  if (least === null) return [];
  const facts = { flow: amount("flow", least.flow) };
  const subject = "NPSH margin";
  if (least.margin < 0) {
    const found = amount("head", -least.margin);
    return [{ code: "region-npsh-short", kind: "limit", subject, found, facts, cites: MARGIN_RULE }];
  }
  if (npshMargin === undefined || least.margin >= npshMargin) return [];
  const found = amount("head", least.margin);
  const limit = { quantity: "head", value: npshMargin, side: "at least" } as const;
  return [{ code: "region-npsh-margin-small", kind: "check", subject, found, limit, facts }];
}

/** The corners furthest to either side of the preferred region, one each. */
function placeFindings({ specificSpeed }: DutyRegionInput, corners: readonly RegionCorner[]): readonly Finding[] {
  const judged = corners.filter(({ bestFlowRatio }) => bestFlowRatio !== null);
  const ratioOf = ({ bestFlowRatio }: RegionCorner): number => bestFlowRatio as number;
  const region = preferredRegion(specificSpeed);
  const { least, most } = region;
  const lowest = judged.toSorted((a, b) => ratioOf(a) - ratioOf(b))[0];
  const highest = judged.toSorted((a, b) => ratioOf(b) - ratioOf(a))[0];
  const outside = [...new Set([lowest, highest])].filter(
    (corner) => corner !== undefined && !isInRegion(ratioOf(corner), region),
  ) as readonly RegionCorner[];
  return outside.map((corner) => ({
    code: "region-corner-outside-preferred",
    kind: "check",
    subject: "operating range",
    found: amount("percent", ratioOf(corner)),
    facts: { where: cornerWords(corner), least: amount("percent", least), most: amount("percent", most) },
    cites: REGION_RULE,
  }));
}
