import type { Citation } from "../basis/citation.ts";
import type { WallMaterialName } from "./elastic-moduli.ts";

/**
 * How pipe is bought and joined: density kg/m³, length of one piece in feet and in metres as each market sells it, share
 * added for cutting, and the joint between two pieces.
 *
 * Verified: densities of steel and HDPE from the mass formulas of ASME B36.10M (0.02466 kg/m per mm²) and a
 * polyethylene handbook (0.955 kg/L), the others from memory of handbooks; lengths, allowances and joints are common
 * practice, no source.
 */
export interface PipeStock {
  readonly density: number;
  readonly feet: number;
  readonly metres: number;
  readonly allowance: number;
  readonly joint: string;
}

export const PIPE_STOCK: Readonly<Record<Exclude<WallMaterialName, "cast iron">, PipeStock>> = {
  steel: { density: 7850, feet: 20, metres: 6, allowance: 0.05, joint: "butt weld" },
  "stainless steel": { density: 7960, feet: 20, metres: 6, allowance: 0.05, joint: "butt weld" },
  "ductile iron": { density: 7050, feet: 20, metres: 6, allowance: 0.05, joint: "push-on joint" },
  copper: { density: 8940, feet: 20, metres: 6, allowance: 0.05, joint: "brazed joint" },
  aluminium: { density: 2700, feet: 30, metres: 9, allowance: 0, joint: "hook or band coupler" },
  concrete: { density: 2400, feet: 8, metres: 2.5, allowance: 0, joint: "gasketed joint" },
  PVC: { density: 1400, feet: 20, metres: 6, allowance: 0.05, joint: "solvent-cement joint" },
  HDPE: { density: 955, feet: 40, metres: 12, allowance: 0.03, joint: "butt fusion" },
};

/** Hose comes in made-up lengths with a coupling at each end. */
export const HOSE_STOCK = { feet: 20, metres: 6, joint: "hose coupling pair" } as const;
/** Galvanised pipe with its couplings on. */
export const QUICK_CONNECT_STOCK = { feet: 20, metres: 6, allowance: 0, joint: "lever coupling" } as const;
/** Lay-flat discharge hose. */
export const LAY_FLAT_STOCK = { feet: 50, metres: 15, joint: "hose coupling pair" } as const;

export const STOCK_PRACTICE: Citation = { source: "practice", at: "stock lengths, cutting allowance and spares" };
