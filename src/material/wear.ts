import { isAtMost } from "../basis/at-most.ts";
import { amount } from "../basis/result.ts";
import type { Casting } from "../tables/materials-cast.ts";
import { type Judgement, judge } from "./judgement.ts";
import type { Level } from "./level.ts";
import type { Particle } from "./particle.ts";
import type { WettedDuty } from "./wetted-duty.ts";

/**
 * none, light: iron wears little. moderate: iron with hardened wear parts. severe: a hardened wet end; also between 5 and
 * 20 % where the hardness is not stated, for it may be quartz. unstated: no solids are stated at all.
 */
export type Wear = "none" | "light" | "moderate" | "severe" | "unstated";

/** Mass fractions below which soft solids leave iron alone, and above which the wet end is hardened (common practice). */
export const FEW_SOLIDS = 0.05;
export const MANY_SOLIDS = 0.2;
/** Below this, some 1000 mg/L, wear counts one level less. */
const TRACES = 0.001;
/** What may be in it where nothing is said: 40 % of quartz (house choice). */
const UNSTATED_SOLIDS = 0.4;
const QUARTZ = 1100;

/** How hard the solids wear: soft ones under 5 % by weight lightly; hard ones from 5 %, or any above 20 %, severely. */
export function wearOf({ solids, particle }: WettedDuty): Wear {
  if (solids === null) return "unstated";
  if (solids === 0) return "none";
  if (solids > MANY_SOLIDS) return "severe";
  const isHard = particle === null || particle.isHard;
  if (solids < FEW_SOLIDS) return isHard ? "moderate" : "light";
  return isHard ? "severe" : "moderate";
}

/** Least hardness a material can be had in, HB: white iron hardened. */
export function hardestLeast({ hardness }: Casting): number {
  return hardness.reduce((top, { least }) => Math.max(top, least ?? 0), 0);
}

/** Vickers hardness of a metal per Brinell: 1.05 (rough, to some 450 HB). */
const VICKERS_PER_BRINELL = 1.05;

/** Brinell hardness that the particles meet: middling castings, common practice. */
const FACED_HARDNESS: Readonly<Record<string, number>> = {
  DI: 170,
  DI395: 165,
  GI: 190,
  "316C": 150,
  "1B": 240,
  "1A": 245,
  NAB: 159,
  WCB: 160,
  CA6NM: 260,
};
/** White iron meets them with its carbides, 1200 to 1800 HV (from memory), not with its matrix. */
const CARBIDES = 1400;

export const WHITE_IRON = "HCWI";

/** Vickers hardness that a casting meets particles with. */
export function facedHardness({ id }: Pick<Casting, "id">): number {
  return id === WHITE_IRON ? CARBIDES : VICKERS_PER_BRINELL * (FACED_HARDNESS[id] as number);
}

export type WearClass = "light" | "moderate" | "severe";

/** Wear by the hardness of the particle over that of the metal: light to 0.8, severe above 1.2 (common practice). */
export function wearClass(ratio: number): WearClass {
  if (isAtMost(ratio, 0.8)) return "light";
  return isAtMost(ratio, 1.2) ? "moderate" : "severe";
}

/** Vickers hardness of the particles, and what it is said of; quartz where it may be. */
function hardnessOf(particle: Particle | null): { readonly vickers: number; readonly said: string } {
  if (particle === null) return { vickers: QUARTZ, said: "solids of unstated hardness, taken as quartz," };
  if (particle.vickers !== null) return { vickers: particle.vickers, said: particle.name };
  return particle.isHard ? { vickers: QUARTZ, said: particle.name } : { vickers: 0, said: particle.name };
}

/** Particles that break white iron, m. */
const BREAKING_SIZE = 0.075;

/** What the wear parts may be of where the metal itself wears. */
export type HardParts = "white iron" | "the same metal";

/** What the solids mean for a metal. Advice of hardened iron is given only where white iron itself may serve. */
export function wearJudgements(casting: Casting, duty: WettedDuty, hardParts: HardParts): readonly Judgement[] {
  const broken = casting.id === WHITE_IRON ? breaks(duty) : [];
  if (duty.solids === 0) return [judge("fine", { code: "wear-none" })];
  const { vickers, said } = hardnessOf(duty.solids === null ? null : duty.particle);
  const ratio = vickers / facedHardness(casting);
  const found = amount("percent", duty.solids ?? UNSTATED_SOLIDS);
  const facts = { particle: said, ratio: Number(ratio.toPrecision(2)), hardParts };
  const worn = levelOf(duty.solids ?? UNSTATED_SOLIDS, wearClass(ratio), casting);
  const code =
    duty.solids === null
      ? "wear-unstated"
      : worn === "fine"
        ? "wear-light"
        : found.value < FEW_SOLIDS
          ? "wear-moderate"
          : "wear-severe";
  return [...broken, judge(worn, { code, found, facts })];
}

function levelOf(solids: number, by: WearClass, { id }: Casting): Level {
  if (solids < TRACES) return "fine";
  if (by === "severe") return "limited";
  if (by === "moderate") return solids < FEW_SOLIDS ? "fine" : "limited";
  return solids > MANY_SOLIDS && id !== WHITE_IRON ? "limited" : "fine";
}

function breaks({ particleSize }: WettedDuty): readonly Judgement[] {
  if (particleSize === null || particleSize <= BREAKING_SIZE) return [];
  const found = amount("size", particleSize);
  const limit = { quantity: "size", value: BREAKING_SIZE, side: "at most" } as const;
  return [judge("out", { code: "white-iron-breaks", found, limit })];
}
