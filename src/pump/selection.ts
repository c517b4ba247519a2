import { checkInputs, type Method, outOfRange } from "../basis/method.ts";
import { fail, type Result, succeed } from "../basis/result.ts";
import type { OfferedPump } from "./offered-pump.ts";
import type { ReadyPump } from "./ready-pump.ts";
import type { SelectionDuty } from "./selection-duty.ts";
import { type JudgedPump, judge } from "./selection-judge.ts";
import type { LeftOutCode, Reason } from "./selection-reason.ts";
import { SCORE_RULE } from "./selection-score.ts";
import { settingsOf } from "./selection-setting.ts";

export interface RankedPump extends JudgedPump {
  /** 1 for the best. */
  readonly rank: number;
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
 * Holds pumps against a duty: each by its best curve, speed and trim within its limits, best first, the others with why
 * not. A pump meets the duty where its head at the flow is at least the system's; it runs where the curves cross. Pumps
 * that keep every rule (preferred region, NPSH margin, excess of flow, starting alone) come first, then the score
 * decides (`SCORE_WEIGHTS`); no place hangs on pumps left out.
 * Fails: flow, head or density not above zero; a flow beyond the system curve.
 * Source: house choice of score; ANSI/HI 9.6.3; ANSI/HI 9.6.1.
 */
export function selectPumps({ pumps, duty }: SelectionInput): Result<Selection> {
  const head = duty.system.headAt(duty.flow);
  const checked = checkInputs(selectionMethod, { flow: duty.flow, head, density: duty.density });
  if (!checked.ok) return checked;
  const { mostFlow } = duty.system;
  if (duty.flow > mostFlow) return fail([outOfRange("flow", "flow", duty.flow, "at most", mostFlow)]);
  const fitting: JudgedPump[] = [];
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

function heldAgainst(pump: ReadyPump, duty: SelectionDuty, dutyHead: number): JudgedPump | LeftOutPump {
  let best: JudgedPump | undefined;
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

function isBetter(one: JudgedPump, other: JudgedPump): boolean {
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
