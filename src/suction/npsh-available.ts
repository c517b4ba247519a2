import { STANDARD_GRAVITY } from "../basis/constants.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { amount, andThen, type Finding, type Result, succeed } from "../basis/result.ts";

export interface NpshAvailableInput {
  /** Absolute pressure on the suction liquid surface, Pa. */
  readonly surfacePressure: number;
  /** Absolute vapour pressure at pumping temperature, Pa. */
  readonly vapourPressure: number;
  /** Density at pumping temperature, kg/m³. */
  readonly density: number;
  /** Height of the pump datum over the liquid surface, m. Negative where the pump is flooded. */
  readonly suctionLift: number;
  /** Head lost in the suction line, m. */
  readonly suctionLoss: number;
}

export const npshAvailableMethod = {
  cites: [{ source: "iso-17769-1", at: "net positive suction head available, NPSHA" }],
  inputs: {
    surfacePressure: { name: "source pressure", symbol: "p_s", quantity: "absolutePressure", atLeast: 0 },
    vapourPressure: { name: "vapour pressure", symbol: "p_v", quantity: "absolutePressure", atLeast: 0 },
    density: { name: "density", symbol: "ρ", quantity: "density", above: 0 },
    suctionLift: { name: "suction lift", symbol: "z_p − z_s", quantity: "head" },
    suctionLoss: { name: "suction loss", symbol: "h_L,s", quantity: "head" },
  },
} as const satisfies Method<keyof NpshAvailableInput>;

/**
 * NPSH the installation offers at the pump datum, from a liquid surface at rest [m of the liquid]. The velocity head at
 * the pump inlet is part of it and is not subtracted.
 * Formula: NPSHA = (p_s − p_v)/(ρ g) − (z_p − z_s) − h_L,s
 * Fails: out-of-range inputs as the method bounds them.
 * Warns: npsha-not-positive, boils-at-surface (warnings).
 * Source: ISO 17769-1, net positive suction head available.
 */
export function npshAvailable(input: NpshAvailableInput): Result<number> {
  return andThen(checkInputs(npshAvailableMethod, input), () => {
    const { surfacePressure, vapourPressure, density, suctionLift, suctionLoss } = input;
    const pressureHead = (surfacePressure - vapourPressure) / (density * STANDARD_GRAVITY);
    const npsha = pressureHead - suctionLift - suctionLoss;
    return succeed(npsha, remarks(input, npsha));
  });
}

function remarks({ surfacePressure, vapourPressure }: NpshAvailableInput, npsha: number): readonly Finding[] {
  const [cites] = npshAvailableMethod.cites;
  const findings: Finding[] = [];
  if (surfacePressure < vapourPressure) {
    findings.push({
      code: "boils-at-surface",
      kind: "limit",
      subject: "liquid",
      found: amount("absolutePressure", surfacePressure),
      limit: { quantity: "absolutePressure", value: vapourPressure, side: "at least" },
      cites,
    });
  }
  if (npsha <= 0) {
    const found = amount("head", npsha);
    findings.push({ code: "npsha-not-positive", kind: "limit", subject: "NPSH available", found, cites });
  }
  return findings;
}
