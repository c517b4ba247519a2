import { amount } from "../basis/result.ts";
import { greatestOf, leastOf } from "../numeric/extremes.ts";
import type { OfferedPump } from "./offered-pump.ts";
import { type FlowRegion, isInRegion } from "./operating-region.ts";
import type { Reason, ReasonAgainstCode, ReasonForCode } from "./selection-reason.ts";
import type { CaseRun, Setting } from "./selection-setting.ts";

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

/** What is known of a pump in one case when its reasons are written. */
export interface Seen {
  readonly run: CaseRun;
  readonly bestFlowRatio: number | undefined;
  readonly bestEfficiency: number | undefined;
  readonly efficiency: number | undefined;
  readonly npshRequired: number | undefined;
  readonly npshMargin: number | undefined;
  readonly wanted: number;
  readonly region: FlowRegion;
  /** A limit of pressure is stated, and the curve does not say what stands behind a shut valve. */
  readonly lacksShutoff: boolean;
}

/** A reason with how bad it is among those of its kind in other cases. */
export interface Noted<C extends ReasonAgainstCode | ReasonForCode> {
  readonly reason: Reason<C>;
  /** What it is worst of, where that is not its code. */
  readonly of?: string;
  readonly badness?: number;
}

/** Rules that a pump breaks in a case; they put it after those that break none. */
export function rulesBroken(seen: Seen): readonly Noted<ReasonAgainstCode>[] {
  const { bestFlowRatio, region, npshMargin, wanted, run, efficiency, npshRequired, lacksShutoff } = seen;
  const { duty, isUnstable } = run;
  const noted: Noted<ReasonAgainstCode>[] = [];
  if (bestFlowRatio !== undefined && !isInRegion(bestFlowRatio, region)) {
    const facts = { least: amount("percent", region.least), most: amount("percent", region.most) };
    const isHigh = bestFlowRatio > region.most;
    noted.push({
      reason: { code: "outside-region", found: amount("percent", bestFlowRatio), facts },
      of: isHigh ? "above the region" : "below the region",
      badness: isHigh ? bestFlowRatio : -bestFlowRatio,
    });
  }
  if (npshMargin !== undefined && npshMargin < wanted) {
    const [found, limit] = [amount("head", npshMargin), amount("head", wanted)];
    noted.push({ reason: { code: "npsh-margin-below-wanted", found, limit }, badness: wanted - npshMargin });
  }
  // What the table does not give cannot be held against a rule, so it counts as broken.
  if (efficiency === undefined) noted.push({ reason: { code: "efficiency-not-given" } });
  if (npshRequired === undefined && duty.npshAvailable !== undefined) {
    noted.push({ reason: { code: "npshr-not-given" } });
  }
  if (lacksShutoff) noted.push({ reason: { code: "shutoff-not-given" } });
  if (isUnstable) noted.push({ reason: { code: "cannot-start" } });
  const excess = excessOf(run);
  if (excess > MOST_USUAL_EXCESS) {
    const [found, limit] = [amount("percent", excess), amount("percent", MOST_USUAL_EXCESS)];
    noted.push({ reason: { code: "much-more-than-asked", found, limit }, badness: excess });
  }
  return noted;
}

/** Flow over that asked for; nothing at the end of a range, where a pump may give more. */
function excessOf({ flow, duty }: CaseRun): number {
  return duty.isRangeEnd ? 0 : flow / duty.flow - 1;
}

/** What speaks against a pump in a case and breaks no rule. */
export function speaksAgainst({ run, bestFlowRatio, npshRequired }: Seen): readonly Noted<ReasonAgainstCode>[] {
  const noted: Noted<ReasonAgainstCode>[] = [];
  if (bestFlowRatio !== undefined && bestFlowRatio < LITTLE_FLOW) {
    noted.push({
      reason: { code: "little-flow", found: amount("percent", bestFlowRatio) },
      badness: -bestFlowRatio,
    });
  }
  const excess = excessOf(run);
  if (excess > RIGHT_AT_DUTY && excess <= MOST_USUAL_EXCESS) {
    noted.push({ reason: { code: "more-than-asked", found: amount("percent", excess) }, badness: excess });
  }
  if (npshRequired === undefined && run.duty.npshAvailable === undefined) {
    noted.push({ reason: { code: "npshr-not-given" } });
  }
  return noted;
}

/** What speaks for a pump in a case. */
export function speaksFor(seen: Seen): readonly Noted<ReasonForCode>[] {
  const { run, bestFlowRatio, bestEfficiency, efficiency, npshMargin, wanted, region } = seen;
  const noted: Noted<ReasonForCode>[] = [];
  if (excessOf(run) <= RIGHT_AT_DUTY) noted.push({ reason: { code: "right-at-duty" } });
  if (bestFlowRatio !== undefined && isInRegion(bestFlowRatio, region)) {
    const code = Math.abs(bestFlowRatio - 1) <= NEAR_BEST ? "near-best-efficiency" : "in-preferred-region";
    noted.push({
      reason: { code, found: amount("percent", bestFlowRatio) },
      of: "region",
      badness: Math.abs(bestFlowRatio - 1),
    });
  }
  if (efficiency !== undefined && bestEfficiency !== undefined && efficiency >= bestEfficiency - NEAR_BEST_EFFICIENCY) {
    noted.push({
      reason: {
        code: "efficient-here",
        found: amount("percent", efficiency),
        limit: amount("percent", bestEfficiency),
      },
      badness: bestEfficiency - efficiency,
    });
  }
  if (npshMargin !== undefined && npshMargin >= wanted) {
    noted.push({
      reason: { code: "npsh-margin-kept", found: amount("head", npshMargin) },
      badness: wanted - npshMargin,
    });
  }
  return noted;
}

/** What speaks against the speed, the trim and the curve themselves, in whatever case. */
export function settingSpeaksAgainst(setting: Setting, isPeakAtEnd: boolean): readonly Reason<ReasonAgainstCode>[] {
  const { curve, isAtOwnSpeeds } = setting;
  const { speed, diameter } = curve.offered;
  const ratios = speedRatios(setting);
  const [{ pump }] = setting.runs as readonly [CaseRun, ...CaseRun[]];
  const reasons: Reason<ReasonAgainstCode>[] = [];
  const fastest = greatestOf(ratios);
  if (speed !== undefined && fastest !== 1 && (fastest > 1 || !isAtOwnSpeeds)) {
    const code = fastest < 1 ? "speed-lowered" : "speed-above-curve";
    reasons.push({ code, found: amount("speed", speed * fastest), limit: amount("speed", speed) });
  }
  if (diameter !== undefined && pump.trimRatio < 1) {
    reasons.push({
      code: "impeller-trimmed",
      found: amount("size", diameter * pump.trimRatio),
      limit: amount("size", diameter),
    });
  }
  const { findings } = curve.drawn();
  if (findings.length > 0) reasons.push({ code: "curve-doubted", findings });
  if (isPeakAtEnd) reasons.push({ code: "peak-at-end-of-curve" });
  return reasons;
}

/** What speaks for the speed and the trim: that a drive fits each case, and what is left for a duty that grows. */
export function settingSpeaksFor(setting: Setting, pump: OfferedPump): readonly Reason<ReasonForCode>[] {
  const { speed, diameter } = setting.curve.offered;
  const [{ pump: running }] = setting.runs as readonly [CaseRun, ...CaseRun[]];
  const reasons: Reason<ReasonForCode>[] = [];
  const speeds = pump.curves.flatMap((curve) => (curve.speed === undefined ? [] : [curve.speed]));
  const diameters = pump.curves.flatMap((curve) => (curve.diameter === undefined ? [] : [curve.diameter]));
  const topSpeed = pump.limits.greatestSpeed ?? greatestOf(speeds);
  const topDiameter = pump.limits.greatestImpeller ?? greatestOf(diameters);
  const ratios = speedRatios(setting);
  const fastest = greatestOf(ratios);
  if (setting.isAtOwnSpeeds) {
    const of = speed === undefined ? "percent" : "speed";
    const facts = {
      least: amount(of, leastOf(ratios) * (speed ?? 1)),
      most: amount(of, fastest * (speed ?? 1)),
    };
    reasons.push({ code: "speed-for-each-case", facts });
  }
  if (speed !== undefined && topSpeed > speed * fastest * (1 + IN_HAND)) {
    reasons.push({ code: "speed-in-hand", found: amount("speed", topSpeed) });
  }
  if (diameter !== undefined && topDiameter > diameter * running.trimRatio * (1 + IN_HAND)) {
    reasons.push({ code: "impeller-in-hand", found: amount("size", topDiameter) });
  }
  if (running.trimRatio === 1) reasons.push({ code: "no-trim" });
  return reasons;
}

function speedRatios({ runs }: Setting): readonly number[] {
  return runs.map(({ pump }) => pump.speedRatio);
}
