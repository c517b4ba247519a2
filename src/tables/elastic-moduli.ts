import type { Citation } from "../basis/citation.ts";

/**
 * Elastic modulus, GPa, and Poisson's ratio of pipe walls for surge: the figure taken, then the range that is found.
 * Plastics: short-term modulus. Where the range is wide the upper end is taken, which gives the higher surge.
 *
 * Verified: from memory of handbooks. Held by test against the surge of PVC pipe printed by AWWA M23 (modulus 400 000 psi,
 * 2.76 GPa).
 */
export interface WallMaterial {
  readonly modulus: number;
  readonly least: number;
  readonly greatest: number;
  readonly poisson: number;
  readonly cites: Citation;
}

const HANDBOOK: Citation = { source: "practice", at: "elastic moduli of pipe walls", unverified: true };

export const WALL_MATERIALS = {
  steel: { modulus: 207, least: 200, greatest: 210, poisson: 0.3, cites: HANDBOOK },
  "stainless steel": { modulus: 193, least: 190, greatest: 200, poisson: 0.3, cites: HANDBOOK },
  "ductile iron": { modulus: 170, least: 165, greatest: 172, poisson: 0.28, cites: HANDBOOK },
  "cast iron": { modulus: 100, least: 80, greatest: 110, poisson: 0.25, cites: HANDBOOK },
  copper: { modulus: 120, least: 110, greatest: 130, poisson: 0.34, cites: HANDBOOK },
  aluminium: { modulus: 69, least: 68, greatest: 72, poisson: 0.33, cites: HANDBOOK },
  PVC: { modulus: 2.8, least: 2.4, greatest: 3, poisson: 0.4, cites: HANDBOOK },
  HDPE: { modulus: 1.1, least: 0.8, greatest: 1.1, poisson: 0.45, cites: HANDBOOK },
  concrete: { modulus: 35, least: 25, greatest: 35, poisson: 0.2, cites: HANDBOOK },
} as const satisfies Record<string, WallMaterial>;

export type WallMaterialName = keyof typeof WALL_MATERIALS;
