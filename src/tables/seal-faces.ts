import type { Citation } from "../basis/citation.ts";
import type { StandingColumn } from "./constituents.ts";

/**
 * Face pairs of mechanical seals, softest first: pH they stand freely, and with care. Verified: common practice; cobalt
 * leaches from its carbide in acid, and free silicon from reaction-bonded carbide in alkali and strong acid (a seal
 * institute's page, looked up).
 */
export interface SealFaces {
  readonly name: string;
  readonly column: StandingColumn;
  /** For liquid that carries abrasive solids. */
  readonly standsAbrasion: boolean;
  readonly free: readonly [least: number, greatest: number];
  readonly care: readonly [least: number, greatest: number];
  /** Of a pH beyond: ask, or it is attacked. */
  readonly beyond: "unknown" | "out";
}

export const SEAL_FACES: readonly SealFaces[] = [
  {
    name: "carbon on sintered silicon carbide",
    column: "carbon/SSiC",
    standsAbrasion: false,
    free: [1, 13],
    care: [1, 13],
    beyond: "unknown",
  },
  {
    name: "cobalt-bound tungsten carbide on silicon carbide",
    column: "WC-Co/SSiC",
    standsAbrasion: true,
    free: [6, 11],
    care: [6, 11],
    beyond: "out",
  },
  {
    name: "nickel-bound tungsten carbide on silicon carbide",
    column: "WC-Ni/SSiC",
    standsAbrasion: true,
    free: [4, 12],
    care: [4, 12],
    beyond: "out",
  },
  {
    name: "reaction-bonded silicon carbide pair",
    column: "RBSiC",
    standsAbrasion: true,
    free: [2, 10],
    care: [2, 12],
    beyond: "out",
  },
  {
    name: "sintered silicon carbide pair",
    column: "SSiC",
    standsAbrasion: true,
    free: [0, 14],
    care: [0, 14],
    beyond: "out",
  },
];

export const SEAL_FACES_CITE: Citation = {
  source: "practice",
  at: "hard faces on abrasive liquid, carbon against silicon carbide on clean; binder by pH; flush at 1 to 2 bar over the box",
};
