import type { Result } from "../basis/result.ts";
import { succeed } from "../basis/result.ts";
import { pressureMaterialNamed } from "../pressure/pressure-material.ts";
import { CASTINGS, type Casting } from "../tables/materials-cast.ts";
import { castingNamed } from "./casting-name.ts";

/** A metal of a pump as the rules know it: one of the castings, or 304 beside 316, or none of them. */
export interface WettedMetal {
  readonly name: string;
  readonly casting: Casting | null;
  /** Stainless without molybdenum: as 316, with a fifth of its chloride. */
  readonly is304: boolean;
}

/** Names of the pressure materials, and the casting each is judged as; the first that fits counts. */
const AS_CASTING: readonly (readonly [RegExp, string])[] = [
  [/ductile|a395|a536|gjs/i, "DI"],
  [/grey|a126|a48|gjl/i, "GI"],
  [/white iron|a532/i, "HCWI"],
  [/316|cf8m|cf3m/i, "316C"],
  [/cd4mcun|duplex|1\.4462/i, "1B"],
  [/cd4mcu/i, "1A"],
  [/nickel-alumin/i, "NAB"],
  [/carbon steel|wc[bc]|lcc|a105|p\d+gh/i, "WCB"],
  [/ca6nm/i, "CA6NM"],
];
const STAINLESS_304 = /304|cf8$|cf3$|321/i;

const castingOf = (id: string): Casting => CASTINGS.find((casting) => casting.id === id) as Casting;

/**
 * The metal a casing or impeller is stated in: any name of a casting or of a rated material.
 * Fails: `name-unknown`, with the nearest names of rated materials.
 */
export function wettedMetalNamed(text: string, subject: string): Result<WettedMetal> {
  const asCast = castingNamed(text, subject);
  if (asCast.ok) return succeed({ name: text.trim(), casting: asCast.value, is304: false }, asCast.findings);
  const rated = pressureMaterialNamed(text, subject);
  if (!rated.ok) return rated;
  const { name } = rated.value;
  const id = AS_CASTING.find(([pattern]) => pattern.test(name))?.[1];
  const is304 = id === undefined && STAINLESS_304.test(name);
  const casting = id === undefined ? (is304 ? castingOf("316C") : null) : castingOf(id);
  return succeed({ name: text.trim(), casting, is304 });
}
