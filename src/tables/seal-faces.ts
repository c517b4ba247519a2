import type { Citation } from "../basis/citation.ts";

/**
 * Face pairs of mechanical seals, softest first. Verified: common practice, no source.
 */
export interface SealFaces {
  readonly name: string;
  /** For liquid that carries abrasive solids. */
  readonly standsAbrasion: boolean;
}

export const SEAL_FACES: readonly SealFaces[] = [
  { name: "carbon on silicon carbide", standsAbrasion: false },
  { name: "tungsten carbide on silicon carbide", standsAbrasion: true },
  { name: "silicon carbide on silicon carbide", standsAbrasion: true },
];

export const SEAL_FACES_CITE: Citation = {
  source: "practice",
  at: "hard faces on abrasive liquid, carbon against silicon carbide on clean; flush at 1 to 2 bar over the box",
};
