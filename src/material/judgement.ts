import type { Citation } from "../basis/citation.ts";
import type { MaterialFindings } from "../basis/finding-code.ts";
import type { Draft, Finding } from "../basis/result.ts";
import { type Level, severest, severity } from "./level.ts";

export const RULES_OF_THUMB: Citation = {
  source: "practice",
  at: "pump materials by pH, chlorides, solids and temperature",
};

export interface Judgement {
  readonly level: Level;
  readonly finding: Finding;
}

/** Best first. */
export const MATERIAL_VERDICTS = ["suits", "suits with care", "not judged", "not suited", "left standard"] as const;
export type MaterialVerdict = (typeof MATERIAL_VERDICTS)[number];

/** A judgement at a level; its finding is a caution by the rules of thumb unless the draft cites another source. */
export function judge(level: Level, draft: Draft<keyof MaterialFindings>): Judgement {
  return { level, finding: { subject: "material", cites: RULES_OF_THUMB, ...draft, kind: "check" } };
}

/** House choice of a limit where the trade names none. */
export function chosen(at: string): Citation {
  return { source: "house", at };
}

/** The severest level among judgements; "fine" where there is none. */
export function worstOf(judgements: readonly Judgement[]): Level {
  return severest(judgements.map(({ level }) => level));
}

/** The verdict a level amounts to. */
export function verdictOf(level: Level): MaterialVerdict {
  return MATERIAL_VERDICTS[severity(level)] as MaterialVerdict;
}
