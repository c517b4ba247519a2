import { nearestNames } from "../basis/nearest.ts";
import { fail, type Result, succeed } from "../basis/result.ts";
import { CONSTITUENTS, type Constituent } from "./wetted-duty.ts";

/** What a text says where the liquid holds nothing but salts and solids. */
export const NOTHING_ELSE = "nothing else";

/** Reads "caustic, ammonia" or "nothing else", in upper or lower case. Fails for a name not among `CONSTITUENTS`. */
export function constituentsNamed(text: string, subject: string): Result<readonly Constituent[]> {
  const named = text
    .toLowerCase()
    .split(/[,;]/)
    .map((part) => part.trim().replace(/\s+/g, " "))
    .filter((part) => part !== "");
  if (named.length === 1 && named[0] === NOTHING_ELSE) return succeed([]);
  const known = named.map((part) => CONSTITUENTS.find((one) => one === SPELLINGS[part] || one === part));
  const bad = named[known.indexOf(undefined)] ?? (named.length === 0 ? text.trim() : undefined);
  if (bad === undefined) return succeed([...new Set(known as Constituent[])]);
  const suggestions = nearestNames(bad, [NOTHING_ELSE, ...CONSTITUENTS]);
  return fail([{ code: "name-unknown", severity: "error", subject, given: bad, suggestions }]);
}

/** Other spellings and names in use. */
const SPELLINGS: Readonly<Record<string, Constituent>> = {
  "sulfuric acid": "sulphuric acid",
  "hydrogen sulfide": "hydrogen sulphide",
  h2s: "hydrogen sulphide",
  "caustic soda": "caustic",
  "sodium hydroxide": "caustic",
};
