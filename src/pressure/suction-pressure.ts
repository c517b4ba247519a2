import { SPECIFIC_GRAVITY_REFERENCE, STANDARD_ATMOSPHERE, STANDARD_GRAVITY } from "../basis/constants.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { amount, andThen, type Finding, type Result, succeed } from "../basis/result.ts";
import { SPECIFIC_GRAVITY } from "../pump/shaft-power.ts";
import { exceeds } from "./trade-figure.ts";

export interface SuctionPressureInput {
  /** Highest gauge pressure over the source, Pa. */
  readonly sourcePressure: number;
  /** Highest level of the source and level of the pump, m above one datum. */
  readonly sourceLevel: number;
  readonly pumpLevel: number;
  readonly specificGravity: number;
  /** Stated for the suction nozzle by somebody who knows, Pa gauge; null where nobody does. */
  readonly statedPressure: number | null;
}

export interface SuctionPressure {
  /** By source pressure and level, Pa gauge. */
  readonly derived: number;
  /** The greater of derived and stated, Pa gauge. */
  readonly greatest: number;
}

export const suctionPressureMethod = {
  cites: [{ source: "ansi-hi-14.3", at: "maximum suction pressure" }],
  inputs: {
    sourcePressure: { name: "source pressure", quantity: "gaugePressure", atLeast: -STANDARD_ATMOSPHERE },
    sourceLevel: { name: "source level", symbol: "z_s", quantity: "elevation" },
    pumpLevel: { name: "pump level", symbol: "z_p", quantity: "elevation" },
    specificGravity: SPECIFIC_GRAVITY,
    statedPressure: { name: "stated pressure", quantity: "gaugePressure", atLeast: -STANDARD_ATMOSPHERE },
  },
} as const satisfies Method<keyof SuctionPressureInput>;

/**
 * Greatest gauge pressure at the suction nozzle of a pump with no flow, Pa: from the source, and no less than was stated.
 * Formula: P_s = max(0, P_source + ρ g (z_source − z_pump)),  ρ = SG × 998.2 kg/m³
 * Fails: pressures below absolute zero, SG out of range.
 * Warns: limit for a stated pressure below the derived one. Check: that the source is at its highest.
 * Source: ANSI/HI 14.3.
 */
export function suctionPressure(input: SuctionPressureInput): Result<SuctionPressure> {
  const { sourcePressure, sourceLevel, pumpLevel, specificGravity } = input;
  const statedPressure = input.statedPressure ?? 0;
  const inputs = { sourcePressure, sourceLevel, pumpLevel, specificGravity, statedPressure };
  return andThen(checkInputs(suctionPressureMethod, inputs), () => {
    const weight = specificGravity * SPECIFIC_GRAVITY_REFERENCE * STANDARD_GRAVITY;
    const derived = Math.max(0, sourcePressure + weight * (sourceLevel - pumpLevel));
    const isBelow = input.statedPressure !== null && exceeds(derived, Math.max(0, statedPressure));
    const findings: readonly Finding[] = [
      ...(isBelow ? [belowSource(statedPressure, derived)] : []),
      ...(derived > 0 && (isBelow || input.statedPressure === null) ? [confirmHighest(derived)] : []),
    ];
    return succeed({ derived, greatest: Math.max(derived, statedPressure) }, findings);
  });
}

const cites = suctionPressureMethod.cites[0];

function belowSource(stated: number, derived: number): Finding {
  return {
    code: "suction-pressure-below-source",
    kind: "limit",
    subject: "suction pressure",
    found: amount("gaugePressure", stated),
    limit: { quantity: "gaugePressure", value: derived, side: "at least" },
    cites,
  };
}

function confirmHighest(derived: number): Finding {
  const found = amount("gaugePressure", derived);
  return { code: "highest-source-assumed", kind: "check", subject: "suction pressure", found, cites };
}
