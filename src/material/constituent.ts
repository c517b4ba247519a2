import { nearestNames } from "../basis/nearest.ts";
import { fail, type Result, succeed } from "../basis/result.ts";
import { CONSTITUENTS, type Constituent } from "./wetted-duty.ts";

/** What a text says where the liquid holds nothing but salts and solids. */
export const NOTHING_ELSE = "nothing else";

/** Other spellings, formulas and names in use. */
const SPELLINGS: Readonly<Record<string, Constituent>> = {
  "sulfuric acid": "sulphuric acid",
  h2so4: "sulphuric acid",
  hcl: "hydrochloric acid",
  hno3: "nitric acid",
  hf: "hydrofluoric acid",
  "caustic soda": "caustic",
  "sodium hydroxide": "caustic",
  naoh: "caustic",
  nh3: "ammonia",
  "hydrogen sulfide": "hydrogen sulphide",
  h2s: "hydrogen sulphide",
  diesel: "oil",
  fuel: "oil",
};

const byName = new Map<string, Constituent>([
  ...Object.entries(SPELLINGS),
  ...CONSTITUENTS.map((one) => [one, one] as const),
]);

/**
 * Reads "caustic, ammonia" or "nothing else", in either case; commas, semicolons or "and" between.
 * Fails: `name-unknown` outside `CONSTITUENTS`; `make-up-contradicts` where "nothing else" stands beside something.
 */
export function constituentsNamed(text: string, subject: string): Result<readonly Constituent[]> {
  const named = text
    .toLowerCase()
    .split(/[,;]|\band\b/)
    .map((part) => part.trim().replace(/\s+/g, " "))
    .filter((part) => part !== "");
  if (named.includes(NOTHING_ELSE)) {
    if (named.every((part) => part === NOTHING_ELSE)) return succeed([]);
    return fail([{ code: "make-up-contradicts", kind: "error", subject, given: text.trim() }]);
  }
  const unknown = named.length === 0 ? text.trim() : named.find((part) => !byName.has(part));
  if (unknown === undefined) return succeed([...new Set(named.flatMap((part) => byName.get(part) ?? []))]);
  const near = nearestNames(unknown.slice(0, 60), [NOTHING_ELSE, ...CONSTITUENTS]);
  const suggestions = near.length > 0 ? near : [NOTHING_ELSE, ...CONSTITUENTS];
  return fail([{ code: "name-unknown", kind: "error", subject, given: unknown, suggestions }]);
}
