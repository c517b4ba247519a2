import type { Citation } from "../basis/citation.ts";
import type { MaterialFindings } from "../basis/finding-code.ts";
import type { Draft, Finding } from "../basis/result.ts";
import { RULES_OF_THUMB } from "./wetted-duty.ts";

/** What a rule says of a material in a duty, mildest first. */
export const LEVELS = ["fine", "limited", "unknown", "out"] as const;
export type Level = (typeof LEVELS)[number];

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
  return judgements.reduce<Level>(
    (worst, { level }) => (LEVELS.indexOf(level) > LEVELS.indexOf(worst) ? level : worst),
    "fine",
  );
}

/** The verdict a level amounts to. */
export function verdictOf(level: Level): MaterialVerdict {
  return MATERIAL_VERDICTS[LEVELS.indexOf(level)] as MaterialVerdict;
}
