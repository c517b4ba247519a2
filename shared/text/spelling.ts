import type { UnitSetName } from "../../src/basis/quantities.ts";
import { inAmerican } from "../../src/basis/spelling.ts";

/** A text of ours as a reader of the unit set spells it: American in US, else British, as it is written here. */
export function spelt(text: string, units: UnitSetName): string {
  return units === "US" ? inAmerican(text) : text;
}

/** The same, where it repeats texts of others: those stay as they were typed. */
export function speltAround(text: string, theirs: () => readonly string[], units: UnitSetName): string {
  const all = spelt(text, units);
  if (all === text) return text;
  const kept = theirs().filter((one) => one !== "" && spelt(one, units) !== one);
  return kept.length === 0 ? all : speltOutside(text, kept, units);
}

function speltOutside(text: string, [one, ...others]: readonly string[], units: UnitSetName): string {
  if (one === undefined) return spelt(text, units);
  return text
    .split(one)
    .map((part) => speltOutside(part, others, units))
    .join(one);
}
