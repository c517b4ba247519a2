import { nearestNames } from "../basis/nearest.ts";
import { fail, type Result, succeed } from "../basis/result.ts";

/** What the suction draws in beside the liquid, as far as it decides how to prime. */
export type SolidsKind = "none" | "unspecified" | "grit" | "stringy";

export interface PrimingSolids {
  readonly kind: SolidsKind;
  /** Mass of solids per mass of what is pumped; null where only the kind is stated. */
  readonly massFraction: number | null;
}

/** Words of the trade, and what they mean for priming. */
const KINDS: Readonly<Record<string, SolidsKind>> = {
  none: "none",
  clean: "none",
  clear: "none",
  stringy: "stringy",
  rags: "stringy",
  rag: "stringy",
  wipes: "stringy",
  leaves: "stringy",
  sewage: "stringy",
  wastewater: "stringy",
  septage: "stringy",
  trash: "stringy",
  debris: "stringy",
  weed: "stringy",
  fibres: "stringy",
  fibers: "stringy",
  hair: "stringy",
  manure: "stringy",
  sand: "grit",
  grit: "grit",
  gravel: "grit",
  stones: "grit",
  mud: "grit",
  silt: "grit",
  clay: "grit",
  sludge: "unspecified",
  solids: "unspecified",
};

/** Words that say nothing of the kind: "raw sewage with some rags". */
const FILLERS = new Set("raw with and some in of fresh septic municipal dirty fine coarse the a or water".split(" "));

/** What is hardest on a priming device first. */
const BY_TROUBLE: readonly SolidsKind[] = ["stringy", "grit", "unspecified", "none"];

export const SOLIDS_WORDS = Object.keys(KINDS);

/** A mass fraction of solids of no stated kind. */
export function solidsOf(massFraction: number): PrimingSolids {
  return { kind: massFraction === 0 ? "none" : "unspecified", massFraction };
}

/**
 * Reads words of the trade: clean, raw sewage, sewage with rags, sand and leaves …; the most troublesome counts.
 * Fails: choice-unknown, with the nearest words.
 */
export function solidsNamed(text: string, subject: string): Result<PrimingSolids> {
  const given = text.trim();
  const words = given
    .toLowerCase()
    .split(/[^a-z]+/)
    .filter((word) => word !== "" && !FILLERS.has(word));
  const kinds = words.map((word) => (Object.hasOwn(KINDS, word) ? KINDS[word] : undefined));
  const kind = kinds.includes(undefined) ? undefined : BY_TROUBLE.find((one) => kinds.includes(one));
  if (kind !== undefined) return succeed({ kind, massFraction: kind === "none" ? 0 : null });
  const near = nearestNames(given, SOLIDS_WORDS);
  const suggestions = ["a percent by weight", ...(near.length > 0 ? near : ["clean", "rags", "sand"])];
  return fail([{ code: "choice-unknown", kind: "error", subject, given, suggestions }]);
}
