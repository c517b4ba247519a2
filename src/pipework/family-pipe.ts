import { type Result, succeed } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";
import { SURFACES } from "../tables/roughness.ts";
import { readRoughness, type StatedRoughness, surfaceRemarks } from "./measured-pipe.ts";
import type { Pipe } from "./pipe.ts";
import { PIPE_FAMILIES } from "./pipe-families.ts";
import type { PipeFamily, PipeSize, SizeSystem } from "./pipe-family.ts";
import { readWords, type WrittenSize } from "./pipe-words.ts";

export interface FoundFamily {
  readonly family: PipeFamily;
  /** Word for another surface than the family's own, or for a grade. */
  readonly condition?: string;
}

/** The family whose words a text is made of, with at most one condition; nothing where there is none. */
export function familyIn(text: string, families: readonly PipeFamily[] = PIPE_FAMILIES): FoundFamily | undefined {
  const words = readWords(text);
  if (words === undefined || words.length === 0) return undefined;
  for (const family of families) {
    if (!family.words.every((word) => words.includes(word))) continue;
    const others = [...new Set(words.filter((word) => !family.words.includes(word)))];
    const conditions = others.filter((word) => word in family.conditions);
    if (conditions.length > 1) continue;
    if (!others.every((word) => word in family.conditions || family.mayAlsoSay.includes(word))) continue;
    const [condition] = conditions;
    return condition === undefined ? { family } : { family, condition };
  }
  return undefined;
}

/** The pipes of a size that a ratio alone may mean, "DR11" of a size: of every material that is made so, DIPS aside. */
export function ofAnyMaterial(
  text: string,
  written: WrittenSize,
): readonly { readonly family: PipeFamily; readonly size: PipeSize }[] {
  const words = readWords(text)?.filter((word) => word !== "pipe") ?? [];
  const [ratio] = words;
  if (words.length !== 1 || ratio === undefined || !/^s?dr/.test(ratio)) return [];
  return PIPE_FAMILIES.filter((family) => family.words.includes(ratio) && !family.words.includes("dips")).flatMap(
    (family) => {
      const size = family.sizes.find((candidate) => isSize(candidate, written));
      return size === undefined ? [] : [{ family, size }];
    },
  );
}

/** What settles a pipe: family, condition, size, and the system its name is written in. */
export interface PipeFacts extends FoundFamily {
  readonly size: PipeSize;
  readonly sizes: SizeSystem;
}

/**
 * A pipe of a family, with the roughness its text may state: "0.15 mm" or nothing.
 * Fails: as `readRoughness`.
 * Warns: surface-uncertain, hose-corrugated.
 */
export function finishedPipe(facts: PipeFacts, rough: string | undefined): Result<Pipe> {
  if (rough === undefined) {
    const { family, condition } = facts;
    return succeed(pipeOf(facts), surfaceRemarks(conditionOf(family, condition)?.surface ?? family.surface));
  }
  const bare = pipeOf(facts);
  const stated = readRoughness(rough, bare.bore);
  if (!stated.ok) return stated;
  // A stated roughness overrules the surface, not the corrugations.
  const remarks = bare.frictionMultiplier === undefined ? [] : surfaceRemarks(facts.family.surface);
  return succeed(pipeOf(facts, stated.value), remarks);
}

/** The pipe itself, named in full; dimensions in m. */
export function pipeOf(facts: PipeFacts, stated?: StatedRoughness): Pipe {
  const { family, size, condition } = facts;
  const state = conditionOf(family, condition);
  const lining = (size.lining ?? 0) * (state?.linings ?? 1);
  const surface = SURFACES[state?.surface ?? family.surface];
  const { frictionMultiplier, collapsible } = family;
  const { outsideDiameter, wall } = size;
  return {
    name: stated === undefined ? nameOf(facts) : `${nameOf(facts)} ${stated.words}`,
    family: family.family,
    bore: size.bore + 2 * ((size.lining ?? 0) - lining),
    roughness: stated?.roughness ?? surface.design * unitOf("mm").factor,
    roughnessCites: stated?.cites ?? surface.cites,
    cites: family.standard,
    make: { ...family.make, ...size.make, ...state?.make },
    ...(outsideDiameter === undefined ? {} : { outsideDiameter }),
    ...(wall === undefined ? {} : { wall }),
    ...(lining === 0 ? {} : { lining }),
    ...(size.nominalInches === undefined ? {} : { nominalInches: size.nominalInches }),
    ...(frictionMultiplier === undefined ? {} : { frictionMultiplier }),
    ...(collapsible === undefined ? {} : { collapsible }),
  };
}

function conditionOf(family: PipeFamily, condition: string | undefined) {
  return condition === undefined ? undefined : family.conditions[condition];
}

/** "DN150 sch40 galvanised". */
export function nameOf({ family, size, sizes, condition }: PipeFacts): string {
  const written = sizes === "metric" ? (size.dnSize ?? size.size) : size.size;
  return [written, family.family, size.variant, condition].filter((part) => part !== undefined).join(" ");
}

/** The sizes of a family that a system lists. */
export function sizesIn(family: PipeFamily, sizes: SizeSystem): readonly PipeSize[] {
  return family.sizes.filter(({ onlyIn }) => onlyIn === undefined || onlyIn === sizes);
}

/** Whether a size is the one written. Sizes that come in several walls are no match: the wall must be named. */
export function isSize(candidate: PipeSize, { by, size }: WrittenSize): boolean {
  if (candidate.variant !== undefined) return false;
  if (by === "inches") return candidate.onlyIn !== "metric" && candidate.nominalInches === size;
  if (candidate.size === `${size}mm`) return true;
  return by === "DN" && (candidate.dnSize ?? candidate.size) === `DN${size}`;
}
