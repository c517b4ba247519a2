import { SPECIFIC_GRAVITY_REFERENCE } from "../basis/constants.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { amount, type Result, succeed } from "../basis/result.ts";
import type { LiquidState } from "../liquid/liquid.ts";
import { PACKED, SOLIDS_SG, volumeRemarks } from "./solids.ts";

export const fineSlurryMethod = {
  cites: [{ source: "thomas-1965", at: "relative viscosity of suspensions of uniform spheres" }],
  inputs: {
    solidsSG: SOLIDS_SG,
    solidsByVolume: { name: "solids by volume", symbol: "C_v", quantity: "percent", atLeast: 0, below: PACKED },
  },
} as const satisfies Method<"solidsSG" | "solidsByVolume">;

/** Clays form structures above this volume fraction, and the slurry is no longer Newtonian. */
const CLAY_LIMIT = 0.1;

export interface FineSlurryInputs {
  /** The carrier. */
  readonly liquid: LiquidState;
  readonly solidsSG: number;
  /** Volume fraction. */
  readonly solidsByVolume: number;
}

/**
 * A slurry of fine particles that do not settle, as one Newtonian liquid, kg/m³ and Pa·s; not for settling sand, whose
 * carrier keeps its viscosity. At no solids the fit leaves 0.27 % over the carrier, which is given itself there.
 * Formula: ρ_m = ρ_l (1 − C_v) + C_v ρ_s, μ_m/μ_l = 1 + 2.5 C_v + 10.05 C_v² + 0.00273 exp(16.6 C_v)
 * Fails: out-of-range inputs as the method bounds them.
 * Warns: cautions clay-not-newtonian above 10 % by volume, solids-dense.
 * Source: Thomas 1965.
 */
export function fineSlurry({ liquid, solidsSG, solidsByVolume }: FineSlurryInputs): Result<LiquidState> {
  const checked = checkInputs(fineSlurryMethod, { solidsSG, solidsByVolume });
  if (!checked.ok) return checked;
  const density = liquid.density * (1 - solidsByVolume) + solidsByVolume * solidsSG * SPECIFIC_GRAVITY_REFERENCE;
  const dynamicViscosity = liquid.dynamicViscosity * relativeViscosity(solidsByVolume);
  const state = { ...liquid, density, dynamicViscosity };
  if (solidsByVolume <= CLAY_LIMIT) return succeed(state);
  return succeed(state, [
    {
      code: "clay-not-newtonian",
      kind: "check",
      subject: "solids by volume",
      found: amount("percent", solidsByVolume),
      limit: { quantity: "percent", value: CLAY_LIMIT, side: "at most" },
    },
    ...volumeRemarks(solidsByVolume),
  ]);
}

function relativeViscosity(v: number): number {
  return v === 0 ? 1 : 1 + 2.5 * v + 10.05 * v * v + 0.00273 * Math.exp(16.6 * v);
}
