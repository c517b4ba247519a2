import { STANDARD_GRAVITY } from "../basis/constants.ts";
import { amount, type Result } from "../basis/result.ts";
import { defaultNpshMargin, npshMargin as npshMarginOf } from "../suction/npsh-margin.ts";
import type { BestEfficiency } from "./best-efficiency.ts";
import type { OfferedPump } from "./offered-pump.ts";
import { type FlowRegion, preferredRegion } from "./operating-region.ts";
import { bestPointOf, efficiencyAtFlow, headOf, npshRequiredAtFlow, shaftPowerAtFlow } from "./pump-reading.ts";
import type { RunningPump } from "./running-pump.ts";
import type { SelectionDuty } from "./selection-duty.ts";
import { fartherMiss, type Miss } from "./selection-miss.ts";
import type { Reason, ReasonAgainstCode, ReasonForCode } from "./selection-reason.ts";
import {
  type Noted,
  rulesBroken,
  type Seen,
  settingSpeaksAgainst,
  settingSpeaksFor,
  speaksAgainst,
  speaksFor,
} from "./selection-remarks.ts";
import { nearnessOf, type ScoreParts, type ScoreWeights, scoreOf, trimPart } from "./selection-score.ts";
import type { CaseRun, Setting } from "./selection-setting.ts";
import { leastInAll, worstInAny } from "./selection-worst.ts";
import { specificSpeed } from "./specific-speed.ts";

/** A pump in one case, as it would run. What its curve does not give is left out. */
export interface CaseFigures {
  /** Name of the case, where the duty has several. */
  readonly name: string | undefined;
  /** The curve it runs on in the liquid pumped, carried to its speed and trim. */
  readonly running: RunningPump;
  /** At the operating point: m³/s, m. The flow is the one asked for, or more. */
  readonly flow: number;
  readonly head: number;
  /** 0 to 1. */
  readonly efficiency: number | undefined;
  /** Flow over best efficiency flow. */
  readonly bestFlowRatio: number | undefined;
  /** m */
  readonly npshRequired: number | undefined;
  readonly npshAvailable: number | undefined;
  /** NPSH available less required, m; known only where the duty knows its suction. */
  readonly npshMargin: number | undefined;
  /** At the shaft, W. */
  readonly power: number | undefined;
  /** r/s */
  readonly speed: number | undefined;
  /** Gauge, behind a shut valve, Pa. */
  readonly shutInPressure: number | undefined;
  readonly parts: ScoreParts;
  /** 0 to 1. */
  readonly score: number;
}

/** A pump that meets every case; its own figures are those of the first. */
export interface JudgedPump extends CaseFigures {
  readonly pump: OfferedPump;
  /** At its greatest speed of all cases, with water, as its maker draws it. */
  readonly onWater: RunningPump;
  /** Of the impeller, m. */
  readonly diameter?: number;
  /** In the order of the cases. */
  readonly cases: readonly CaseFigures[];
  /** The least of its scores, 0 to 1; it decides. */
  readonly score: number;
  /** The case of that score, where there are several. */
  readonly decidedIn?: string;
  /** Keeps every rule in every case: inside the preferred region, NPSH margin as wanted, starts by itself. */
  readonly keepsRules: boolean;
  readonly reasonsFor: readonly Reason<ReasonForCode>[];
  readonly reasonsAgainst: readonly Reason<ReasonAgainstCode>[];
}

/** What pumps are judged by beside their cases. */
export interface Judging {
  readonly weights: ScoreWeights;
  /** Stated for all of them, gauge, Pa. */
  readonly greatestPressure?: number;
}

/** A setting held against its cases, before its reasons are written. */
export interface HeldSetting {
  readonly setting: Setting;
  readonly cases: readonly HeldCase[];
  readonly score: number;
  readonly keepsRules: boolean;
}

interface HeldCase {
  readonly figures: CaseFigures;
  readonly seen: Seen;
  readonly breaches: readonly Noted<ReasonAgainstCode>[];
}

/** Below this share of best efficiency flow a pump is not offered for continuous duty (house choice). */
const LEAST_BEST_FLOW_RATIO = 0.1;

/** A setting scored in every case; a reason where it must not be offered for one of them. */
export function held(pump: OfferedPump, setting: Setting, judging: Judging): HeldSetting | Miss {
  const region = preferredRegion(specificSpeedOf(setting));
  const cases: HeldCase[] = [];
  let missed: Miss | undefined;
  let [score, keepsRules] = [Number.POSITIVE_INFINITY, true];
  let known: { readonly running: RunningPump; readonly best: BestEfficiency | undefined } | undefined;
  for (const run of setting.runs) {
    if (known?.running !== run.pump) known = { running: run.pump, best: orNothing(bestPointOf(run.pump)) };
    const one = heldCase(pump, setting, run, known.best, region, judging);
    if ("code" in one) {
      missed = fartherMiss(missed, one, run.duty);
      continue;
    }
    cases.push(one);
    score = Math.min(score, one.figures.score);
    keepsRules &&= one.breaches.length === 0;
  }
  return missed ?? { setting, cases, score, keepsRules };
}

function heldCase(
  { limits }: OfferedPump,
  setting: Setting,
  run: CaseRun,
  best: BestEfficiency | undefined,
  region: FlowRegion,
  { weights, greatestPressure }: Judging,
): HeldCase | Miss {
  const { pump: running, flow, head, duty } = run;
  const bestFlowRatio = best && flow / best.flow;
  if (bestFlowRatio !== undefined && bestFlowRatio < LEAST_BEST_FLOW_RATIO) {
    const limit = amount("percent", LEAST_BEST_FLOW_RATIO);
    return { code: "far-below-best", found: amount("percent", bestFlowRatio), limit };
  }
  const limit = Math.min(
    limits.greatestPressure ?? Number.POSITIVE_INFINITY,
    greatestPressure ?? Number.POSITIVE_INFINITY,
  );
  const shutInPressure = pressureShutIn(run);
  if (shutInPressure !== undefined && shutInPressure > limit) {
    return {
      code: "pressure-too-high",
      found: amount("gaugePressure", shutInPressure),
      limit: amount("gaugePressure", limit),
    };
  }
  const unfilled = shortOfFilling(setting, run);
  if (unfilled !== undefined) return unfilled;
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
  const efficiency = best && orNothing(efficiencyAtFlow(running, flow));
  const power = best && orNothing(shaftPowerAtFlow(running, flow, duty.density));
  const useful = duty.density * STANDARD_GRAVITY * duty.flow * duty.head;
  const parts: ScoreParts = {
    efficiency: power === undefined || power <= 0 ? 0 : useful / power,
    nearness: nearnessOf(bestFlowRatio),
    trim: trimPart(running.trimRatio),
    npshMargin: npshAvailable === undefined ? undefined : marginPart(npshMargin, wanted),
  };
  const seen: Seen = {
    run,
    bestFlowRatio,
    bestEfficiency: best?.efficiency,
    efficiency,
    npshRequired,
    npshMargin,
    wanted,
    region,
    lacksShutoff: Number.isFinite(limit) && duty.shutIn !== undefined && shutInPressure === undefined,
  };
  const { speed } = setting.curve.offered;
  const figures: CaseFigures = {
    name: duty.name,
    running,
    flow,
    head,
    efficiency,
    bestFlowRatio,
    npshRequired,
    npshAvailable,
    npshMargin,
    power,
    speed: speed && speed * running.speedRatio,
    shutInPressure,
    parts,
    score: scoreOf(parts, weights),
  };
  return { figures, seen, breaches: rulesBroken(seen) };
}

/** By the greatest head on the curve, which is known only from zero flow on. */
function pressureShutIn({ pump, duty }: CaseRun): number | undefined {
  const { shutIn } = duty;
  if (shutIn === undefined || pump.leastFlow > 0) return undefined;
  return shutIn.suctionPressure + shutIn.perMetre * pump.headFactor * greatest(pump.curve.head.y);
}

/** Heads nearer than this to each other are one, m. */
const SAME_HEAD = 1e-6;

/** Why it cannot fill the line: at the speed of its setting, or at its highest where each case has a speed of its own. */
function shortOfFilling({ curve, isAtOwnSpeeds }: Setting, { pump, duty: { fill } }: CaseRun): Miss | undefined {
  if (fill === undefined) return undefined;
  const ratio = isAtOwnSpeeds ? Math.max(1, curve.mostSpeedRatio / pump.speedRatio) : 1;
  const flow = Math.min(Math.max(fill.flow / ratio, pump.leastFlow), pump.mostFlow);
  const head = ratio ** 2 * headOf(pump, flow);
  if (head >= fill.head - SAME_HEAD) return undefined;
  const facts = { short: amount("head", fill.head - head) };
  return { code: "does-not-fill", found: amount("head", head), limit: amount("head", fill.head), facts };
}

function greatest(heads: readonly number[]): number {
  let most = 0;
  for (const head of heads) if (head > most) most = head;
  return most;
}

/** The pump of a setting with what speaks for and against it. */
export function judged(pump: OfferedPump, { setting, cases, score, keepsRules }: HeldSetting): JudgedPump {
  const [{ figures: first, seen }] = cases as readonly [HeldCase, ...HeldCase[]];
  const { offered } = setting.curve;
  const isOne = cases.length === 1;
  const noted = <C extends ReasonForCode | ReasonAgainstCode>(of: (one: HeldCase) => readonly Noted<C>[]) =>
    cases.map((one) => ({ name: isOne ? undefined : one.figures.name, noted: of(one) }));
  const isPeakAtEnd = seen.run.pump.curve.bestEfficiency?.isAtEnd === true;
  const decidedIn = isOne ? undefined : cases.find(({ figures }) => figures.score === score)?.figures.name;
  return {
    ...first,
    pump,
    onWater: onWater(setting),
    ...(offered.diameter !== undefined && { diameter: offered.diameter * first.running.trimRatio }),
    cases: cases.map(({ figures }) => figures),
    score,
    ...(decidedIn !== undefined && { decidedIn }),
    keepsRules,
    reasonsFor: [...leastInAll(noted((one) => speaksFor(one.seen))), ...settingSpeaksFor(setting, pump)],
    reasonsAgainst: [
      ...worstInAny(noted(({ breaches }) => breaches)),
      ...worstInAny(noted((one) => speaksAgainst(one.seen))),
      ...settingSpeaksAgainst(setting, isPeakAtEnd),
    ],
  };
}

/** A pump keeps its ratios from one liquid to another. */
function onWater({ runs, curve }: Setting): RunningPump {
  const { pump } = runs.reduce((fastest, run) => (run.pump.speedRatio > fastest.pump.speedRatio ? run : fastest));
  const drawn = curve.drawn();
  if (!drawn.ok || drawn.value === pump.curve) return pump;
  const { leastFlow, mostFlow } = drawn.value;
  const { flowFactor } = pump;
  return { ...pump, curve: drawn.value, leastFlow: leastFlow * flowFactor, mostFlow: mostFlow * flowFactor };
}

function orNothing<T>(read: Result<T>): T | undefined {
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
