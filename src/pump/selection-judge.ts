import { STANDARD_GRAVITY } from "../basis/constants.ts";
import { amount, type Result } from "../basis/result.ts";
import { defaultNpshMargin, npshMargin as npshMarginOf } from "../suction/npsh-margin.ts";
import type { OfferedPump } from "./offered-pump.ts";
import { preferredRegion } from "./operating-region.ts";
import { bestPointOf, efficiencyAtFlow, npshRequiredAtFlow, shaftPowerAtFlow } from "./pump-reading.ts";
import type { RunningPump } from "./running-pump.ts";
import type { SelectionDuty } from "./selection-duty.ts";
import type { LeftOutCode, Reason, ReasonAgainstCode, ReasonForCode } from "./selection-reason.ts";
import { rulesBroken, type Seen, speaksAgainst, speaksFor } from "./selection-remarks.ts";
import { nearnessOf, type ScoreParts, scoreOf, trimPart } from "./selection-score.ts";
import type { Setting } from "./selection-setting.ts";
import { specificSpeed } from "./specific-speed.ts";

/** A pump that meets the duty, as it would run. What its curve does not give is left out. */
export interface JudgedPump {
  readonly pump: OfferedPump;
  /** The curve it runs on in the liquid pumped, carried to its speed and trim. */
  readonly running: RunningPump;
  /** The same with water, as its maker draws it. */
  readonly onWater: RunningPump;
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

/** Below this share of best efficiency flow a pump is not offered for continuous duty (house choice). */
const LEAST_BEST_FLOW_RATIO = 0.1;

/** A setting as it runs, scored, with what speaks for and against it; a reason where it must not be offered. */
export function judge(
  pump: OfferedPump,
  setting: Setting,
  duty: SelectionDuty,
  dutyHead: number,
): JudgedPump | Reason<LeftOutCode> {
  const { pump: running, flow, head, curve } = setting;
  const { speed, diameter } = curve.offered;
  const best = bestPointOf(running);
  const bestFlowRatio = best.ok ? flow / best.value.flow : undefined;
  if (bestFlowRatio !== undefined && bestFlowRatio < LEAST_BEST_FLOW_RATIO) {
    const limit = amount("percent", LEAST_BEST_FLOW_RATIO);
    return { code: "far-below-best", found: amount("percent", bestFlowRatio), limit };
  }
  const npshRequired = orNothing(npshRequiredAtFlow(running, flow));
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
  const wanted = duty.npshMargin ?? marginOf(npshRequired ?? 0, duty);
  const efficiency = best.ok ? orNothing(efficiencyAtFlow(running, flow)) : undefined;
  const power = best.ok ? orNothing(shaftPowerAtFlow(running, flow, duty.density)) : undefined;
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
    onWater: onWater(setting),
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

/** A pump keeps its ratios from one liquid to another. */
function onWater({ pump, curve }: Setting): RunningPump {
  const drawn = curve.drawn();
  if (!drawn.ok || drawn.value === pump.curve) return pump;
  const { leastFlow, mostFlow } = drawn.value;
  const { flowFactor } = pump;
  return { ...pump, curve: drawn.value, leastFlow: leastFlow * flowFactor, mostFlow: mostFlow * flowFactor };
}

function orNothing(read: Result<number>): number | undefined {
  return read.ok ? read.value : undefined;
}

function marginOf(npshRequired: number, { service }: SelectionDuty): number {
  const margin = npshMarginOf({ npshRequired, ...(service !== undefined && { service }) });
  return margin.ok ? margin.value : defaultNpshMargin(npshRequired);
}

function marginPart(margin: number | undefined, wanted: number): number {
  if (margin === undefined) return 0;
  return wanted > 0 ? Math.min(1, margin / (2 * wanted)) : 1;
}

/** n_s with n in rpm, m³/s and m, of the curve as given; nothing where its speed or best point is not known. */
function specificSpeedOf({ curve }: Setting): number | undefined {
  const drawn = curve.drawn();
  const { speed } = curve.offered;
  if (!drawn.ok || drawn.value.bestEfficiency === undefined || speed === undefined) return undefined;
  const { flow, head } = drawn.value.bestEfficiency;
  return orNothing(specificSpeed({ speed, flow, head, convention: "SI" }));
}
