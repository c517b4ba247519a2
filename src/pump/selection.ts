import { STANDARD_GRAVITY } from "../basis/constants.ts";
import type { Method } from "../basis/method.ts";
import { checkInputs } from "../basis/method.ts";
import { amount, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { defaultNpshMargin } from "../suction/greatest-suction-lift.ts";
import type { OfferedPump } from "./offered-pump.ts";
import { preferredRegion } from "./operating-region.ts";
import { bestPointOf, efficiencyAtFlow, npshRequiredAtFlow, shaftPowerAtFlow } from "./pump-reading.ts";
import type { ReadyPump } from "./ready-pump.ts";
import type { RunningPump } from "./running-pump.ts";
import type { SelectionDuty } from "./selection-duty.ts";
import type { LeftOutCode, Reason, ReasonAgainstCode, ReasonForCode } from "./selection-reason.ts";
import { nearnessOf, SCORE_RULE, type ScoreParts, scoreOf, trimPart } from "./selection-score.ts";
import { type Setting, settingsOf } from "./selection-setting.ts";
import { specificSpeed } from "./specific-speed.ts";

/** A pump that meets the duty, as it would run. What its curve does not give is left out. */
export interface RankedPump {
  /** 1 for the best. */
  readonly rank: number;
  readonly pump: OfferedPump;
  /** The curve it runs on, carried to its speed and trim. */
  readonly running: RunningPump;
  /** At the operating point: m³/s, m. The flow is the one asked for, or more. */
  readonly flow: number;
  readonly head: number;
  /** 0 to 1. */
  readonly efficiency?: number;
  /** Flow over best efficiency flow. */
  readonly bestFlowRatio?: number;
  /** m */
  readonly npshRequired?: number;
  /** NPSH available less required, m; known only where the duty knows its suction. */
  readonly npshMargin?: number;
  /** At the shaft, W. */
  readonly power?: number;
  /** r/s */
  readonly speed?: number;
  /** Of the impeller, m. */
  readonly diameter?: number;
  readonly parts: ScoreParts;
  /** 0 to 1. */
  readonly score: number;
  /** Keeps every rule: inside the preferred region, NPSH margin as wanted, starts by itself. */
  readonly keepsRules: boolean;
  readonly reasonsFor: readonly Reason<ReasonForCode>[];
  readonly reasonsAgainst: readonly Reason<ReasonAgainstCode>[];
}

export interface LeftOutPump {
  readonly pump: OfferedPump;
  readonly reason: Reason<LeftOutCode>;
}

export interface Selection {
  /** Best first. */
  readonly ranked: readonly RankedPump[];
  /** In the order given. */
  readonly leftOut: readonly LeftOutPump[];
}

export interface SelectionInput {
  readonly pumps: readonly ReadyPump[];
  readonly duty: SelectionDuty;
}

export const selectionMethod = {
  title: "Pumps that meet a duty, best first",
  cites: [
    SCORE_RULE,
    { source: "ansi-hi-9.6.3", at: "preferred operating region" },
    { source: "ansi-hi-9.6.1", at: "NPSH margin" },
  ],
  inputs: {
    flow: { name: "flow", symbol: "Q", quantity: "flow", above: 0 },
    head: { name: "total head", symbol: "H", quantity: "head", above: 0 },
    density: { name: "density", symbol: "ρ", quantity: "density", above: 0 },
  },
} as const satisfies Method<"flow" | "head" | "density">;

/** Below this share of best efficiency flow a pump is not offered for continuous duty (house choice). */
const LEAST_BEST_FLOW_RATIO = 0.1;
const LITTLE_FLOW = 0.3;
/** Within this of best efficiency flow a pump counts as near it. */
const NEAR_BEST = 0.1;
/** A flow no further from the one asked for is right at it. */
const RIGHT_AT_DUTY = 0.005;
/** Worth saying: efficiency within this of the pump's best, and speed or impeller this much in hand. */
const NEAR_BEST_EFFICIENCY = 0.02;
const IN_HAND = 0.02;
/** Scores that differ by less differ by rounding alone; the order of the table then decides. */
const SAME_SCORE = 1e-9;

/**
 * Holds pumps against a duty: each by its best curve, speed and trim within its limits, those that meet the duty best
 * first, and the others with why not.
 *
 * A pump meets the duty where its head at the flow asked for is at least the system's; it then runs where the two
 * curves cross, at that flow or more. Pumps that keep every rule (preferred region, NPSH margin, starting by itself)
 * come before those that break one; within each kind the score decides. It weighs efficiency on the duty, nearness to
 * best efficiency flow, NPSH margin and little trim (`SCORE_WEIGHTS`). A pump's place never hangs on pumps left out.
 *
 * Fails where flow, head or density are not above zero.
 */
export function selectPumps({ pumps, duty }: SelectionInput): Result<Selection> {
  const head = duty.system.headAt(duty.flow);
  const checked = checkInputs(selectionMethod, { flow: duty.flow, head, density: duty.density });
  if (!checked.ok) return checked;
  if (duty.flow > duty.system.mostFlow) return fail([systemTooShort(duty)]);
  const fitting: Omit<RankedPump, "rank">[] = [];
  const leftOut: LeftOutPump[] = [];
  for (const pump of pumps) {
    const held = heldAgainst(pump, duty, head);
    if ("reason" in held) leftOut.push(held);
    else fitting.push(held);
  }
  fitting.sort((one, other) => {
    if (one.keepsRules !== other.keepsRules) return one.keepsRules ? -1 : 1;
    return steps(other.score) - steps(one.score);
  });
  return succeed({ ranked: fitting.map((pump, i) => ({ rank: i + 1, ...pump })), leftOut });
}

function steps(score: number): number {
  return Math.round(score / SAME_SCORE);
}

function systemTooShort({ flow, system }: SelectionDuty): Finding {
  const limit = { quantity: "flow", value: system.mostFlow, side: "at most" } as const;
  const found = amount("flow", flow);
  return { code: "out-of-range", severity: "error", subject: "flow", found, limit };
}

function heldAgainst(pump: ReadyPump, duty: SelectionDuty, dutyHead: number): Omit<RankedPump, "rank"> | LeftOutPump {
  let best: Omit<RankedPump, "rank"> | undefined;
  let missed: Reason<LeftOutCode> | undefined;
  for (const curve of pump.curves) {
    const found = settingsOf(curve, duty, dutyHead);
    if (found.missed !== undefined) missed = nearerMiss(missed, found.missed);
    for (const setting of found.settings) {
      const judged = judge(pump.offered, setting, duty, dutyHead);
      if ("code" in judged) missed = nearerMiss(missed, judged);
      else if (best === undefined || isBetter(judged, best)) best = judged;
    }
  }
  return best ?? { pump: pump.offered, reason: missed ?? { code: "curve-not-usable" } };
}

function isBetter(one: Omit<RankedPump, "rank">, other: Omit<RankedPump, "rank">): boolean {
  if (one.keepsRules !== other.keepsRules) return one.keepsRules;
  return steps(one.score) > steps(other.score);
}

/** The reason that came nearest to meeting the duty, from the farthest; of equal ones the least miss. */
const NEARNESS: readonly LeftOutCode[] = [
  "curve-not-usable",
  "outside-its-limits",
  "curve-begins-after",
  "curve-ends-before",
  "head-too-low",
  "far-too-large",
  "point-beyond-curve",
  "far-below-best",
  "npsh-too-high",
];

function nearerMiss(one: Reason<LeftOutCode> | undefined, other: Reason<LeftOutCode>): Reason<LeftOutCode> {
  if (one === undefined) return other;
  const [first, second] = [NEARNESS.indexOf(one.code), NEARNESS.indexOf(other.code)];
  if (first !== second) return first > second ? one : other;
  const gap = ({ found, limit }: Reason): number =>
    found === undefined || limit === undefined ? 0 : Math.abs(found.value / limit.value - 1);
  return gap(other) < gap(one) ? other : one;
}

/** A setting as it runs, scored, with what speaks for and against it; a reason where it must not be offered. */
function judge(
  pump: OfferedPump,
  setting: Setting,
  duty: SelectionDuty,
  dutyHead: number,
): Omit<RankedPump, "rank"> | Reason<LeftOutCode> {
  const { pump: running, flow, head, curve } = setting;
  const { speed, diameter } = curve.offered;
  const best = bestPointOf(running);
  const bestFlowRatio = best.ok ? flow / best.value.flow : undefined;
  if (bestFlowRatio !== undefined && bestFlowRatio < LEAST_BEST_FLOW_RATIO) {
    const limit = amount("percent", LEAST_BEST_FLOW_RATIO);
    return { code: "far-below-best", found: amount("percent", bestFlowRatio), limit };
  }
  const npshRequired = valueOf(npshRequiredAtFlow(running, flow));
  const npshAvailable = duty.npshAvailable?.(flow);
  const npshMargin =
    npshAvailable === undefined || npshRequired === undefined ? undefined : npshAvailable - npshRequired;
  if (npshMargin !== undefined && npshRequired !== undefined && npshMargin < 0) {
    return {
      code: "npsh-too-high",
      found: amount("head", npshRequired),
      limit: amount("head", npshRequired + npshMargin),
    };
  }
  const wanted = duty.npshMargin ?? defaultNpshMargin(npshRequired ?? 0);
  const efficiency = best.ok ? valueOf(efficiencyAtFlow(running, flow)) : undefined;
  const power = best.ok ? valueOf(shaftPowerAtFlow(running, flow, duty.density)) : undefined;
  const useful = duty.density * STANDARD_GRAVITY * duty.flow * dutyHead;
  const parts: ScoreParts = {
    efficiency: power === undefined || power <= 0 ? 0 : useful / power,
    nearness: nearnessOf(bestFlowRatio),
    trim: trimPart(running.trimRatio),
    ...(duty.npshAvailable === undefined ? {} : { npshMargin: marginPart(npshMargin, wanted) }),
  };
  const seen: Seen = {
    setting,
    pump,
    duty,
    bestFlowRatio,
    bestEfficiency: best.ok ? best.value.efficiency : undefined,
    isPeakAtEnd: best.ok && best.value.isAtEnd,
    efficiency,
    npshRequired,
    npshMargin,
    wanted,
    region: preferredRegion(specificSpeedOf(setting)),
  };
  const breaches = rulesBroken(seen);
  return {
    pump,
    running,
    flow,
    head,
    ...(efficiency === undefined ? {} : { efficiency }),
    ...(bestFlowRatio === undefined ? {} : { bestFlowRatio }),
    ...(npshRequired === undefined ? {} : { npshRequired }),
    ...(npshMargin === undefined ? {} : { npshMargin }),
    ...(power === undefined ? {} : { power }),
    ...(speed === undefined ? {} : { speed: speed * running.speedRatio }),
    ...(diameter === undefined ? {} : { diameter: diameter * running.trimRatio }),
    parts,
    score: scoreOf(parts),
    keepsRules: breaches.length === 0,
    reasonsFor: speaksFor(seen),
    reasonsAgainst: [...breaches, ...speaksAgainst(seen)],
  };
}

function valueOf(read: Result<number>): number | undefined {
  return read.ok ? read.value : undefined;
}

function marginPart(margin: number | undefined, wanted: number): number {
  if (margin === undefined) return 0;
  return wanted > 0 ? Math.min(1, margin / (2 * wanted)) : 1;
}

/** n_s with n in rpm, m³/s and m, of the curve as given; nothing where its speed or best point is not known. */
function specificSpeedOf({ curve, pump }: Setting): number | undefined {
  const { bestEfficiency } = pump.curve;
  const { speed } = curve.offered;
  if (bestEfficiency === undefined || speed === undefined) return undefined;
  const { flow, head } = bestEfficiency;
  return valueOf(specificSpeed({ speed, flow, head, convention: "SI" }));
}

interface Seen {
  readonly setting: Setting;
  readonly pump: OfferedPump;
  readonly duty: SelectionDuty;
  readonly bestFlowRatio: number | undefined;
  readonly bestEfficiency: number | undefined;
  readonly isPeakAtEnd: boolean;
  readonly efficiency: number | undefined;
  readonly npshRequired: number | undefined;
  readonly npshMargin: number | undefined;
  readonly wanted: number;
  readonly region: { readonly least: number; readonly most: number };
}

function isInRegion({ bestFlowRatio, region }: Seen): boolean {
  return bestFlowRatio !== undefined && bestFlowRatio >= region.least && bestFlowRatio <= region.most;
}

/** Rules that a pump breaks; they put it after those that break none. */
function rulesBroken(seen: Seen): readonly Reason<ReasonAgainstCode>[] {
  const { bestFlowRatio, region, npshMargin, wanted, setting } = seen;
  const reasons: Reason<ReasonAgainstCode>[] = [];
  if (bestFlowRatio !== undefined && !isInRegion(seen)) {
    const facts = { least: amount("percent", region.least), most: amount("percent", region.most) };
    reasons.push({ code: "outside-region", found: amount("percent", bestFlowRatio), facts });
  }
  if (npshMargin !== undefined && npshMargin < wanted) {
    reasons.push({
      code: "npsh-margin-below-wanted",
      found: amount("head", npshMargin),
      limit: amount("head", wanted),
    });
  }
  if (setting.isUnstable) reasons.push({ code: "cannot-start" });
  return reasons;
}

function speaksAgainst(seen: Seen): readonly Reason<ReasonAgainstCode>[] {
  const { setting, duty, bestFlowRatio, isPeakAtEnd, efficiency, npshRequired } = seen;
  const { curve, pump } = setting;
  const { speed, diameter } = curve.offered;
  const reasons: Reason<ReasonAgainstCode>[] = [];
  if (bestFlowRatio !== undefined && bestFlowRatio < LITTLE_FLOW) {
    reasons.push({ code: "little-flow", found: amount("percent", bestFlowRatio) });
  }
  const excess = setting.flow / duty.flow - 1;
  if (excess > RIGHT_AT_DUTY) reasons.push({ code: "more-than-asked", found: amount("percent", excess) });
  if (speed !== undefined && pump.speedRatio !== 1) {
    const code = pump.speedRatio < 1 ? "speed-lowered" : "speed-above-curve";
    reasons.push({ code, found: amount("speed", speed * pump.speedRatio), limit: amount("speed", speed) });
  }
  if (diameter !== undefined && pump.trimRatio < 1) {
    reasons.push({
      code: "impeller-trimmed",
      found: amount("size", diameter * pump.trimRatio),
      limit: amount("size", diameter),
    });
  }
  if (efficiency === undefined) reasons.push({ code: "efficiency-not-given" });
  if (npshRequired === undefined) reasons.push({ code: "npshr-not-given" });
  if (isPeakAtEnd) reasons.push({ code: "peak-at-end-of-curve" });
  return reasons;
}

function speaksFor(seen: Seen): readonly Reason<ReasonForCode>[] {
  const { setting, duty, bestFlowRatio, bestEfficiency, efficiency, npshMargin, wanted } = seen;
  const { pump } = setting;
  const reasons: Reason<ReasonForCode>[] = [];
  if (setting.flow / duty.flow - 1 <= RIGHT_AT_DUTY) reasons.push({ code: "right-at-duty" });
  if (bestFlowRatio !== undefined && isInRegion(seen)) {
    const code = Math.abs(bestFlowRatio - 1) <= NEAR_BEST ? "near-best-efficiency" : "in-preferred-region";
    reasons.push({ code, found: amount("percent", bestFlowRatio) });
  }
  if (efficiency !== undefined && bestEfficiency !== undefined && efficiency >= bestEfficiency - NEAR_BEST_EFFICIENCY) {
    reasons.push({
      code: "efficient-here",
      found: amount("percent", efficiency),
      limit: amount("percent", bestEfficiency),
    });
  }
  if (npshMargin !== undefined && npshMargin >= wanted) {
    reasons.push({ code: "npsh-margin-kept", found: amount("head", npshMargin) });
  }
  return [...reasons, ...inHand(seen), ...(pump.trimRatio === 1 ? [{ code: "no-trim" } as const] : [])];
}

/** Speed and impeller that the pump has left for a duty that grows. */
function inHand({ setting, pump }: Seen): readonly Reason<ReasonForCode>[] {
  const { speed, diameter } = setting.curve.offered;
  const { speedRatio, trimRatio } = setting.pump;
  const reasons: Reason<ReasonForCode>[] = [];
  const speeds = pump.curves.flatMap((curve) => (curve.speed === undefined ? [] : [curve.speed]));
  const diameters = pump.curves.flatMap((curve) => (curve.diameter === undefined ? [] : [curve.diameter]));
  const topSpeed = pump.limits.greatestSpeed ?? Math.max(...speeds);
  const topDiameter = pump.limits.greatestImpeller ?? Math.max(...diameters);
  if (speed !== undefined && topSpeed > speed * speedRatio * (1 + IN_HAND)) {
    reasons.push({ code: "speed-in-hand", found: amount("speed", topSpeed) });
  }
  if (diameter !== undefined && topDiameter > diameter * trimRatio * (1 + IN_HAND)) {
    reasons.push({ code: "impeller-in-hand", found: amount("size", topDiameter) });
  }
  return reasons;
}
