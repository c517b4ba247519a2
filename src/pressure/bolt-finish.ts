import { nearestNames } from "../basis/nearest.ts";
import { fail, type Result, succeed } from "../basis/result.ts";
import { inBritish } from "../basis/spelling.ts";
import { type BoltFinish, NUT_FACTOR_UNSTATED, NUT_FACTORS, type NutFactor } from "../tables/nut-factors.ts";

export const BOLT_FINISHES = Object.keys(NUT_FACTORS) as readonly BoltFinish[];

const ALSO: readonly (readonly [RegExp, BoltFinish])[] = [
  [/^(?:as received|plain|black|plain steel)$/, "plain steel, as received"],
  [/^oil(?:ed)?$|^lubricated$/, "plain steel, oiled"],
  [/^(?:dry|rusty|reused)$/, "plain steel, dry or rusty"],
  [/^(?:zinc|zinc plated|electroplated|electro-?galvanised)$/, "zinc plated, dry"],
  [/^(?:hot[- ]dip )?galvanised$|^hdg$/, "hot-dip galvanised, dry"],
  [/^(?:moly|mos2|molybdenum disulphide|moly paste)$/, "molybdenum disulphide paste"],
  [/^ptfe$|^fluoropolymer(?: coated)?$/, "PTFE coated"],
  [/^anti-?seize$|^(?:nickel|copper) anti-?seize$/, "nickel or copper anti-seize"],
  [/^stainless$/, "stainless, dry"],
];

/**
 * The finish and lubricant of bolts a text names: "hot-dip galvanised, dry", "galvanised", "moly paste".
 * Fails: `choice-unknown` with the nearest names.
 */
export function boltFinishNamed(text: string, subject = "bolt finish"): Result<BoltFinish> {
  const words = inBritish(text.slice(0, 100).trim().toLowerCase()).replace(/\s+/g, " ");
  const found =
    BOLT_FINISHES.find((name) => name.toLowerCase() === words) ?? ALSO.find(([spelling]) => spelling.test(words))?.[1];
  if (found !== undefined) return succeed(found);
  const near = nearestNames(words, BOLT_FINISHES);
  const suggestions = (near.length > 0 ? near : BOLT_FINISHES).map((name) => `"${name}"`);
  return fail([{ code: "choice-unknown", kind: "error", subject, given: text.trim(), suggestions }]);
}

/** What the nut factor may be: as stated, by the finish, or anything usual where neither is. */
export function nutFactorOf(stated: number | null, finish: BoltFinish | null): NutFactor {
  if (stated !== null) return { low: stated, typical: stated, high: stated };
  return finish === null ? NUT_FACTOR_UNSTATED : NUT_FACTORS[finish];
}
