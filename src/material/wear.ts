import { amount } from "../basis/result.ts";
import type { Casting } from "../tables/materials-cast.ts";
import { type Judgement, judge } from "./judgement.ts";
import type { WettedDuty } from "./wetted-duty.ts";

/**
 * none, light: iron wears little. moderate: iron with hardened wear parts. severe: a hardened wet end.
 * undecided: between 5 and 20 % the hardness decides and is not stated. unstated: no solids are stated at all.
 */
export type Wear = "none" | "light" | "moderate" | "undecided" | "severe" | "unstated";

/** Mass fractions below which soft solids leave iron alone, and above which the wet end is hardened (common practice). */
export const FEW_SOLIDS = 0.05;
export const MANY_SOLIDS = 0.2;

/**
 * How hard the solids wear: soft ones under 5 % by weight lightly; hard ones from 5 %, or any above 20 %, severely.
 */
export function wearOf({ solids, particle }: WettedDuty): Wear {
  if (solids === null) return "unstated";
  if (solids === 0) return "none";
  if (solids > MANY_SOLIDS) return "severe";
  if (solids < FEW_SOLIDS) return particle !== null && !particle.isHard ? "light" : "moderate";
  if (particle === null) return "undecided";
  return particle.isHard ? "severe" : "moderate";
}

/** Least hardness a material can be had in, HB: white iron hardened. */
export function hardestLeast({ hardness }: Casting): number {
  return hardness.reduce((top, { least }) => Math.max(top, least ?? 0), 0);
}

const HARDENED = 400;
/** Vickers hardness of a metal per Brinell: 1.05 (rough). */
const VICKERS_PER_BRINELL = 1.05;
/** Abrasive over metal, in Vickers, above which wear is hard (common practice). */
const HARD_RATIO = 1.2;
/** Particles that break white iron, m. */
const BREAKING_SIZE = 0.075;

/** What the solids mean for a metal. */
export function wearJudgements(casting: Casting, duty: WettedDuty): readonly Judgement[] {
  const wear = wearOf(duty);
  const isHardened = hardestLeast(casting) > HARDENED;
  return [
    ...(isHardened ? hardenedWear(wear, duty) : softWear(wear, duty)),
    ...(wear === "none" || wear === "light" ? [] : relativeHardness(casting, duty)),
  ];
}

function solidsAmount({ solids }: WettedDuty): ReturnType<typeof amount> {
  return amount("percent", solids ?? 0);
}

function softWear(wear: Wear, duty: WettedDuty): readonly Judgement[] {
  const found = solidsAmount(duty);
  switch (wear) {
    case "none":
      return [judge("fine", { code: "wear-none" })];
    case "light":
      return [judge("fine", { code: "wear-light", found })];
    case "moderate":
      return [judge("limited", { code: duty.particle === null ? "wear-hardness-missing" : "wear-moderate", found })];
    case "undecided":
      return [judge("unknown", { code: "wear-undecided", found })];
    case "severe":
      return [judge("limited", { code: "wear-severe-soft-metal", found })];
    case "unstated":
      return [judge("limited", { code: "wear-unstated" })];
  }
}

function hardenedWear(wear: Wear, duty: WettedDuty): readonly Judgement[] {
  const found = solidsAmount(duty);
  const { particleSize } = duty;
  const breaks: readonly Judgement[] =
    particleSize !== null && particleSize > BREAKING_SIZE
      ? [
          judge("out", {
            code: "white-iron-breaks",
            found: amount("size", particleSize),
            limit: { quantity: "size", value: BREAKING_SIZE, side: "at most" },
          }),
        ]
      : [];
  switch (wear) {
    case "severe":
      return [...breaks, judge("fine", { code: "wear-severe-hardened", found })];
    case "undecided":
      return [...breaks, judge("limited", { code: "wear-undecided-hardened", found })];
    case "moderate":
      return [...breaks, judge("limited", { code: "wear-parts-hardened", found })];
    case "none":
    case "light":
      return [...breaks, judge("limited", { code: "wear-hardness-not-needed" })];
    case "unstated":
      return [...breaks, judge("limited", { code: "wear-unstated" })];
  }
}

/** Hard wear even so: the particles are more than 1.2 times as hard as the metal. */
function relativeHardness(casting: Casting, { particle }: WettedDuty): readonly Judgement[] {
  const vickers = particle?.vickers ?? null;
  if (particle === null || vickers === null) return [];
  const metal = hardestLeast(casting);
  const ratio = vickers / (VICKERS_PER_BRINELL * metal);
  if (ratio <= HARD_RATIO) return [];
  const facts = { particle: particle.name, ratio: Number(ratio.toPrecision(2)), metal };
  return [judge("fine", { code: "wear-relative-hardness", facts })];
}
