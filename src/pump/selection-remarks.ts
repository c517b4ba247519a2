import { amount } from "../basis/result.ts";
import type { OfferedPump } from "./offered-pump.ts";
import { type FlowRegion, isInRegion } from "./operating-region.ts";
import type { SelectionDuty } from "./selection-duty.ts";
import type { Reason, ReasonAgainstCode, ReasonForCode } from "./selection-reason.ts";
import type { Setting } from "./selection-setting.ts";

/** Below this share of best efficiency flow the least continuous flow comes into question (common practice). */
const LITTLE_FLOW = 0.3;
/** Within this of best efficiency flow a pump counts as near it. */
const NEAR_BEST = 0.1;
/** A flow no further from the one asked for is right at it. */
const RIGHT_AT_DUTY = 0.005;
/** More than this over the flow asked for breaks a rule (house choice): somebody must throttle it away. */
const MOST_USUAL_EXCESS = 0.2;
/** Worth saying: efficiency within this of the pump's best, and speed or impeller this much in hand. */
const NEAR_BEST_EFFICIENCY = 0.02;
const IN_HAND = 0.02;

/** What is known of a setting when its reasons are written. */
export interface Seen {
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
  readonly region: FlowRegion;
}

/** Rules that a pump breaks; they put it after those that break none. */
export function rulesBroken(seen: Seen): readonly Reason<ReasonAgainstCode>[] {
  const { bestFlowRatio, region, npshMargin, wanted, setting, duty, efficiency, npshRequired } = seen;
  const reasons: Reason<ReasonAgainstCode>[] = [];
  if (bestFlowRatio !== undefined && !isInRegion(bestFlowRatio, region)) {
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
  // What the table does not give cannot be held against a rule, so it counts as broken.
  if (efficiency === undefined) reasons.push({ code: "efficiency-not-given" });
  if (npshRequired === undefined && duty.npshAvailable !== undefined) reasons.push({ code: "npshr-not-given" });
  if (setting.isUnstable) reasons.push({ code: "cannot-start" });
  const excess = setting.flow / duty.flow - 1;
  if (excess > MOST_USUAL_EXCESS) {
    reasons.push({
      code: "much-more-than-asked",
      found: amount("percent", excess),
      limit: amount("percent", MOST_USUAL_EXCESS),
    });
  }
  return reasons;
}

/** What speaks against a pump and breaks no rule. */
export function speaksAgainst(seen: Seen): readonly Reason<ReasonAgainstCode>[] {
  const { setting, duty, bestFlowRatio, isPeakAtEnd, npshRequired } = seen;
  const { curve, pump } = setting;
  const { speed, diameter } = curve.offered;
  const reasons: Reason<ReasonAgainstCode>[] = [];
  if (bestFlowRatio !== undefined && bestFlowRatio < LITTLE_FLOW) {
    reasons.push({ code: "little-flow", found: amount("percent", bestFlowRatio) });
  }
  const excess = setting.flow / duty.flow - 1;
  if (excess > RIGHT_AT_DUTY && excess <= MOST_USUAL_EXCESS)
    reasons.push({ code: "more-than-asked", found: amount("percent", excess) });
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
  if (npshRequired === undefined && duty.npshAvailable === undefined) reasons.push({ code: "npshr-not-given" });
  const { findings } = curve.drawn();
  if (findings.length > 0) reasons.push({ code: "curve-doubted", findings });
  if (isPeakAtEnd) reasons.push({ code: "peak-at-end-of-curve" });
  return reasons;
}

/** What speaks for a pump. */
export function speaksFor(seen: Seen): readonly Reason<ReasonForCode>[] {
  const { setting, duty, bestFlowRatio, bestEfficiency, efficiency, npshMargin, wanted, region } = seen;
  const { pump } = setting;
  const reasons: Reason<ReasonForCode>[] = [];
  if (setting.flow / duty.flow - 1 <= RIGHT_AT_DUTY) reasons.push({ code: "right-at-duty" });
  if (bestFlowRatio !== undefined && isInRegion(bestFlowRatio, region)) {
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
