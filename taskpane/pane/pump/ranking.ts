import { decodeDuty } from "../../../shared/duty/decode.ts";
import type { Duty } from "../../../shared/duty/duty.ts";
import type { DutyText } from "../../../shared/duty/duty-text.ts";
import { rankingCases } from "../../../shared/duty/ranking-cases.ts";
import { isSlurry } from "../../../shared/duty/slurry.ts";
import { andThen, type Result } from "../../../src/basis/result.ts";
import type { ReadyPump } from "../../../src/pump/ready-pump.ts";
import type { Selection } from "../../../src/pump/selection.ts";
import type { SelectionDuty } from "../../../src/pump/selection-duty.ts";
import { SCORE_WEIGHTS, type ScoreWeights } from "../../../src/pump/selection-score.ts";
import { rankedForStation, stationAsked } from "../../../src/station/station-ranking.ts";
import type { Candidates } from "./candidates.ts";

/** What the duty asks of each pump, and how the pumps at hand answer. */
export interface Ranking {
  readonly duty: Duty;
  /** The duty as stated; nothing where it cannot be worked out: `selection` then says why. */
  readonly asked: SelectionDuty | undefined;
  /** Names of the cases beside it. */
  readonly otherCases: readonly string[];
  /** Of a slurry: the share of its head on water a pump keeps; `asked` is then on water. */
  readonly headRatio?: number;
  readonly selection: Result<Selection>;
}

interface Last {
  readonly candidates: Candidates;
  readonly typed: DutyText;
  readonly ranking: Ranking | undefined;
}

let last: Last | undefined;

/**
 * The candidates held against the duty as typed in all its cases, whatever pump stands in it; nothing until the duty is
 * complete. Worked out anew only when a figure of the duty or the candidates change, not while a chosen pump is edited.
 */
export function rankingOf(typed: DutyText, candidates: Candidates): Ranking | undefined {
  if (last?.candidates === candidates && isSameDuty(last.typed, typed)) return last.ranking;
  const ranking = rankedPumps(typed, candidates.pumps);
  last = { candidates, typed, ranking };
  return ranking;
}

/** Texts are never changed in place, so that equal parts of two duties are the same objects. */
function isSameDuty(one: DutyText, other: DutyText): boolean {
  return (["unitSet", "fields", "suctionLine", "dischargeLine", "cases"] as const).every(
    (key) => one[key] === other[key],
  );
}

/**
 * As `rankingOf`, worked out each time. The station ranked for is of equal pumps: what stands beside the chosen one is
 * another pump's, and left out.
 */
export function rankedPumps(typed: DutyText, pumps: readonly ReadyPump[]): Ranking | undefined {
  const { pump: _, otherPumps: __, ...withoutPumps } = typed;
  const { duty, isComplete } = decodeDuty(withoutPumps);
  if (!isComplete) return undefined;
  const station = andThen(rankingCases(duty), stationAsked);
  if (!station.ok) return { duty, asked: undefined, otherCases: [], selection: station };
  const [{ duty: asked, headRatio }, ...others] = station.value.cases;
  const { speedControl, pressureAllowed } = duty;
  const selection = rankedForStation(station.value, {
    pumps,
    weights: weightsOf(duty),
    ...(speedControl !== undefined && { speedControl }),
    ...(pressureAllowed !== undefined && { greatestPressure: pressureAllowed }),
  });
  const otherCases = others.map((one) => one.duty.name ?? "");
  return { duty, asked, otherCases, selection, ...(isSlurry(duty) && { headRatio }) };
}

function weightsOf({ weightEfficiency, weightNearness, weightNpshMargin, weightTrim }: Duty): ScoreWeights {
  return {
    efficiency: weightEfficiency ?? SCORE_WEIGHTS.efficiency,
    nearness: weightNearness ?? SCORE_WEIGHTS.nearness,
    npshMargin: weightNpshMargin ?? SCORE_WEIGHTS.npshMargin,
    trim: weightTrim ?? SCORE_WEIGHTS.trim,
  };
}
