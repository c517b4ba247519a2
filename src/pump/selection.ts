import { checkInputs, type Method, outOfRange } from "../basis/method.ts";
import { type Finding, fail, type Result, succeed } from "../basis/result.ts";
import type { OfferedPump } from "./offered-pump.ts";
import type { ReadyPump } from "./ready-pump.ts";
import type { SelectionDuty } from "./selection-duty.ts";
import { type HeldSetting, held, type JudgedPump, type Judging, judged } from "./selection-judge.ts";
import { type Miss, nearerMiss } from "./selection-miss.ts";
import { PART_NAMES, SCORE_PARTS, SCORE_RULE, SCORE_WEIGHTS, type ScoreWeights } from "./selection-score.ts";
import { type AskedDuty, type SpeedControl, settingsOf } from "./selection-setting.ts";

export interface RankedPump extends JudgedPump {
  /** 1 for the best. */
  readonly rank: number;
}

export interface LeftOutPump {
  readonly pump: OfferedPump;
  readonly reason: Miss;
}

export interface Selection {
  /** Best first. */
  readonly ranked: readonly RankedPump[];
  /** In the order given. */
  readonly leftOut: readonly LeftOutPump[];
}

export interface SelectionInput {
  readonly pumps: readonly ReadyPump[];
  /** The duty as stated, and its other cases after it: a pump has to meet every one, with one speed and trim. */
  readonly duties: readonly [SelectionDuty, ...SelectionDuty[]];
  /** "variable": each case at the speed that gives its flow; "fixed" where left out. */
  readonly speedControl?: SpeedControl;
  /** `SCORE_WEIGHTS` where left out. */
  readonly weights?: ScoreWeights;
  /** The greatest pressure that anything behind the pumps holds, gauge, Pa. */
  readonly greatestPressure?: number;
}

export const selectionMethod = {
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

/** Scores that differ by less differ by rounding alone; the order of the table then decides. */
const SAME_SCORE = 1e-9;

/**
 * Holds pumps against a duty in all its cases: each pump by its best curve, speed and trim within its limits, best first,
 * the others with why not. A pump meets a case where its head at the flow is at least the system's; it runs where the
 * curves cross; it is ranked where it meets every case, its greatest pressure is within its casing's and the one stated,
 * and its NPSH required is there. Pumps that keep every rule in every case (preferred region, NPSH margin, excess of flow,
 * starting alone) come first, then the least of its scores decides (`SCORE_WEIGHTS`); no place hangs on pumps left out or
 * on the order of the cases.
 * Fails: flow, head or density not above zero; a flow beyond the system curve; a weight below zero, or none above; a greatest
 * pressure below that of the air.
 * Source: house choice of score; ANSI/HI 9.6.3; ANSI/HI 9.6.1.
 */
export function selectPumps(input: SelectionInput): Result<Selection> {
  const { pumps, duties, speedControl = "fixed", weights = SCORE_WEIGHTS, greatestPressure } = input;
  const findings = [...duties.flatMap(dutyFindings), ...weightFindings(weights)];
  if (greatestPressure !== undefined && !(greatestPressure >= 0)) {
    findings.push(outOfRange("maximum pressure", "gaugePressure", greatestPressure, "at least", 0));
  }
  if (findings.length > 0) return fail(findings);
  const asked = duties.map((duty): AskedDuty => ({ ...duty, head: duty.system.headAt(duty.flow) }));
  const judging: Judging = { weights, ...(greatestPressure !== undefined && { greatestPressure }) };
  const fitting: JudgedPump[] = [];
  const leftOut: LeftOutPump[] = [];
  for (const pump of pumps) {
    const best = bestSetting(pump, asked, speedControl, judging);
    if ("code" in best) leftOut.push({ pump: pump.offered, reason: best });
    else fitting.push(judged(pump.offered, best));
  }
  fitting.sort((one, other) => {
    if (one.keepsRules !== other.keepsRules) return one.keepsRules ? -1 : 1;
    return steps(other.score) - steps(one.score);
  });
  return succeed({ ranked: fitting.map((pump, i) => ({ rank: i + 1, ...pump })), leftOut });
}

function dutyFindings({ name, flow, density, system }: SelectionDuty): readonly Finding[] {
  const checked = checkInputs(selectionMethod, { flow, head: system.headAt(flow), density });
  const { mostFlow } = system;
  const found =
    checked.ok && flow > mostFlow ? [outOfRange("flow", "flow", flow, "at most", mostFlow)] : checked.findings;
  return name === undefined ? found : found.map((finding) => ({ ...finding, subject: `${finding.subject} (${name})` }));
}

function weightFindings(weights: ScoreWeights): readonly Finding[] {
  const below = SCORE_PARTS.filter((key) => !(weights[key] >= 0 && Number.isFinite(weights[key])));
  const sum = SCORE_PARTS.reduce((total, key) => total + weights[key], 0);
  if (below.length === 0 && sum <= 0) return [outOfRange("weights", "ratio", sum, "above", 0)];
  return below.map((key) => outOfRange(`weight of ${PART_NAMES[key]}`, "ratio", weights[key], "at least", 0));
}

function steps(score: number): number {
  return Math.round(score / SAME_SCORE);
}

function bestSetting(
  pump: ReadyPump,
  duties: readonly AskedDuty[],
  speedControl: SpeedControl,
  judging: Judging,
): HeldSetting | Miss {
  let best: HeldSetting | undefined;
  let missed: Miss | undefined;
  for (const curve of pump.curves) {
    const found = settingsOf(curve, duties, speedControl);
    if (found.missed !== undefined) missed = nearerMiss(missed, found.missed);
    for (const setting of found.settings) {
      const one = held(pump.offered, setting, judging);
      if ("code" in one) missed = nearerMiss(missed, one);
      else if (best === undefined || isBetter(one, best)) best = one;
    }
  }
  return best ?? missed ?? { code: "curve-not-usable" };
}

function isBetter(one: HeldSetting, other: HeldSetting): boolean {
  if (one.keepsRules !== other.keepsRules) return one.keepsRules;
  return steps(one.score) > steps(other.score);
}
