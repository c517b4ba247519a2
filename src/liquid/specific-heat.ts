import { SPECIFIC_GRAVITY_REFERENCE } from "../basis/constants.ts";
import { amount, type Finding } from "../basis/result.ts";
import type { LiquidState } from "./liquid.ts";

/** Of water at 20 °C, J/(kg·K): IAPWS-IF97 gives 4184. */
export const WATER_SPECIFIC_HEAT = 4184;

/** Of petroleum oils near 20 °C, J/(kg·K), 0.45 Btu/(lb·°F): at the lower end of 0.45 to 0.5, from memory. */
const OIL_SPECIFIC_HEAT = 1884;

interface SpecificHeat {
  /** J/(kg·K) */
  readonly specificHeat: number;
  readonly findings: readonly Finding[];
}

/**
 * The specific heat to reckon with: the one stated, or one that is hardly above the true one, so that a liquid is never
 * taken to warm more slowly than it does. Of a liquid with water in it that of its water alone, which for sea water is
 * 1 % above the true one and for glycol and slurries below; of any other, or one known by its figures alone, that of oil.
 * Warns: specific-heat-of-water, specific-heat-assumed (assumed).
 * Source: water IAPWS-IF97; petroleum oil from memory; the rule is a house choice.
 */
export function specificHeatOf({ density, waterByMass, solids }: LiquidState, stated: number | null): SpecificHeat {
  if (stated !== null) return { specificHeat: stated, findings: [] };
  const ofLiquid = Math.max((waterByMass ?? 0) * WATER_SPECIFIC_HEAT, OIL_SPECIFIC_HEAT);
  const solidsByMass =
    solids === undefined ? 0 : (solids.byVolume * solids.specificGravity * SPECIFIC_GRAVITY_REFERENCE) / density;
  const specificHeat = (1 - solidsByMass) * ofLiquid;
  const found = amount("specificHeat", specificHeat);
  if (specificHeat === WATER_SPECIFIC_HEAT) {
    return { specificHeat, findings: [{ code: "specific-heat-of-water", kind: "assumed", subject: SUBJECT, found }] };
  }
  const taken = ofLiquid === OIL_SPECIFIC_HEAT ? "oil" : "water";
  const facts = { taken, withoutSolids: solidsByMass > 0 } as const;
  const cites = {
    source: "practice",
    at: "specific heat of petroleum oils, 0.45 to 0.5 Btu/(lb·°F)",
    unverified: true,
  } as const;
  return {
    specificHeat,
    findings: [
      {
        code: "specific-heat-assumed",
        kind: "assumed",
        subject: SUBJECT,
        found,
        facts,
        ...(taken === "oil" && { cites }),
      },
    ],
  };
}

const SUBJECT = "specific heat";
