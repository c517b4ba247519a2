import { nearestNames } from "../basis/nearest.ts";
import { fail, type Result, succeed } from "../basis/result.ts";

/** What the suction draws in beside the liquid, as far as it decides how to prime. */
export type SolidsKind = "none" | "unspecified" | "grit" | "stringy";

export interface PrimingSolids {
  readonly kind: SolidsKind;
  /** Mass of solids per mass of what is pumped; null where only the kind is stated. */
  readonly massFraction: number | null;
}

const KINDS: Readonly<Record<string, SolidsKind>> = {
  none: "none",
  clean: "none",
  clear: "none",
  stringy: "stringy",
  rags: "stringy",
  sewage: "stringy",
  trash: "stringy",
  weed: "stringy",
  sand: "grit",
  grit: "grit",
  gravel: "grit",
  mud: "grit",
  solids: "unspecified",
};

export const SOLIDS_WORDS = Object.keys(KINDS);

/** A mass fraction of solids of no stated kind. */
export function solidsOf(massFraction: number): PrimingSolids {
  return { kind: massFraction === 0 ? "none" : "unspecified", massFraction };
}

/**
 * Reads a word: clean, rags, sewage, sand …
 * Fails: choice-unknown, with the nearest words.
 */
export function solidsNamed(text: string, subject: string): Result<PrimingSolids> {
  const given = text.trim();
  const word = given.toLowerCase();
  const kind = Object.hasOwn(KINDS, word) ? KINDS[word] : undefined;
  if (kind !== undefined) return succeed({ kind, massFraction: kind === "none" ? 0 : null });
  const near = nearestNames(given, SOLIDS_WORDS);
  const suggestions = ["a percent by weight", ...(near.length > 0 ? near : ["clean", "rags", "sand"])];
  return fail([{ code: "choice-unknown", kind: "error", subject, given, suggestions }]);
}
