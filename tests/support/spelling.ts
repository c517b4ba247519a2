import type { UnitSetName } from "../../src/basis/quantities.ts";
import { SPELLINGS } from "../../src/basis/spelling.ts";

/** Words that a British text may hold too: to license is a verb there. */
const BOTH = new Set(["license", "licenses", "burned", "meter", "meters"]);

/** Words of texts that the unit set spells otherwise, but those that what was given holds. */
export function foreignWords(texts: readonly string[], given: unknown, units: UnitSetName): readonly string[] {
  const foreign = new Set(SPELLINGS.map(([british, american]) => (units === "US" ? british : american)));
  const theirs = new Set(wordsOf(JSON.stringify(given)));
  return texts
    .flatMap(wordsOf)
    .filter((word) => foreign.has(word) && !theirs.has(word) && (units === "US" || !BOTH.has(word)));
}

function wordsOf(text: string): readonly string[] {
  return text.toLowerCase().match(/\p{L}+/gu) ?? [];
}
