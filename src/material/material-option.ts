import type { Finding } from "../basis/result.ts";
import { judge, type MaterialVerdict, verdictOf } from "./judgement.ts";
import type { Level } from "./level.ts";
import type { Standing } from "./standing.ts";

/** One line of the answer: a material, what it may serve for in this duty, and why. */
export interface MaterialOption {
  readonly material: string;
  readonly verdict: MaterialVerdict;
  readonly parts: string;
  readonly reasons: readonly Finding[];
  readonly cautions: readonly Finding[];
}

/** The level that is shown: what is ruled out by some of what the duty may mean is not judged until it is stated. */
export function shownLevel({ worst, best }: Standing): Level {
  return worst === "out" && best !== "out" ? "unknown" : worst;
}

/** A standing in words: the reasons that decide, first of them what to state. */
export function optionOf(material: string, stands: Standing, parts: string): MaterialOption {
  const { judgements, worst, best, decides } = stands;
  const level = shownLevel(stands);
  const of = (...levels: readonly Level[]): readonly Finding[] =>
    judgements.filter((one) => levels.includes(one.level)).map(({ finding }) => finding);
  if (level === "out") return { material, verdict: "not suited", parts: "", reasons: of("out"), cautions: [] };
  const state =
    level === "unknown" && worst !== best
      ? [judge("unknown", { code: "not-judged-state", facts: { decides: decides.join(", ") } }).finding]
      : [];
  return {
    material,
    verdict: verdictOf(level),
    parts: level === "unknown" ? "" : parts,
    reasons: [...state, ...of("out", "unknown"), ...(level === "unknown" ? [] : of("fine"))],
    cautions: of("limited"),
  };
}
