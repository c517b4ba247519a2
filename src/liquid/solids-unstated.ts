import { type Failure, fail } from "../basis/result.ts";

/** Thick with fine or fibrous solids: they may not flow until pushed, and lose more than their viscosity at rest tells. */
const YIELDING =
  /\b(?:sludge|septage|manure|digestate|(?:drilling |drill )?mud|bentonite|grout|concrete|mortar|cement slurry|(?:lime|milk of lime|magnesia) ?(?:slurry)?|paper stock|pulp|was|ras|thickened tailings|paste)\b/;

/** Grains in water: what they do hangs on how much and how coarse they are. */
const SETTLING =
  /\b(?:slurry|tailings|sand and water|water and sand|gravel|grit|dredge(?:d|r)? ?(?:spoil|material)?|spoil|silt|ash)\b/;

/** What is stated where they are: solids behind the water, or figures measured. */
const SLURRY = "water with solids 25 %, SG 2.65, d50 0.4 mm";
const MEASURED = "SG 1.02, 40 cP";

/**
 * The refusal of a liquid whose name says that it is thick or carries solids, and not how much of them: none is taken as water.
 * Nothing for another text.
 * Fails: liquid-yields, a sludge; liquid-incomplete, a slurry.
 */
export function solidsUnstated(wanted: string, given: string, subject: string): Failure | undefined {
  if (YIELDING.test(wanted)) {
    return fail([{ code: "liquid-yields", kind: "error", subject, given: given.trim(), suggestions: [MEASURED] }]);
  }
  if (!SETTLING.test(wanted)) return undefined;
  const facts = { what: "solids" };
  return fail([
    { code: "liquid-incomplete", kind: "error", subject, given: given.trim(), suggestions: [SLURRY], facts },
  ]);
}
