import type { Citation } from "../basis/citation.ts";
import { STANDARD_ATMOSPHERE } from "../basis/constants.ts";
import { checkInputs, type Method, outOfRange } from "../basis/method.ts";
import { amount, andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";
import { AIR_EDUCTOR } from "../tables/suction-air-pumps.ts";
import { leastMotivePressure, motiveAir } from "./eductor.ts";

export interface EductorAirInput {
  /** Bore of the motive nozzle, m. */
  readonly nozzleBore: number;
  /** Gauge pressure of the air before the nozzle, Pa. */
  readonly motivePressure: number;
  /** Temperature of that air, K. */
  readonly airTemperature: number;
  /** Absolute pressure of the air on site, Pa. */
  readonly atmosphericPressure: number;
}

/** From the least to the greatest that is usual. */
export interface Band {
  readonly least: number;
  readonly most: number;
}

export interface EductorAir {
  /** Motive air, m³/s at 15 °C and one standard atmosphere. */
  readonly motiveAir: number;
  /** Power of the compressor that gives it, W. */
  readonly compressorPower: Band;
  /** Air drawn out of the suction line at 10 to 20 inHg of vacuum, as the motive air is counted. */
  readonly airDrawn: Band;
  /** Vacuum at which no more is drawn, Pa below the air of the site. */
  readonly vacuum: Band;
}

const COMPRESSOR_PRACTICE: Citation = {
  source: "practice",
  at: "4 to 5 ft³/min of free air for each horsepower of compressor, air of 100 psi",
};

export const eductorAirMethod = {
  cites: [
    { source: "gas-dynamics", at: "choked flow of an ideal gas, γ = 1.4, R = 287.05 J/(kg K), C_d = 1" },
    { source: "us-standard-atmosphere", at: "density of air at 15 °C and one atmosphere, 1.225 kg/m³" },
    AIR_EDUCTOR.cites,
    COMPRESSOR_PRACTICE,
  ],
  inputs: {
    nozzleBore: { name: "nozzle bore", symbol: "d", quantity: "size", above: 0 },
    motivePressure: { name: "motive pressure", quantity: "gaugePressure", above: 0 },
    airTemperature: { name: "motive temperature", symbol: "T₀", quantity: "temperature", above: 0 },
    atmosphericPressure: { name: "atmospheric pressure", symbol: "p_a", quantity: "absolutePressure", above: 0 },
  },
} as const satisfies Method<keyof EductorAirInput>;

/** Air at 15 °C and one atmosphere (U.S. Standard Atmosphere 1976), kg/m³. */
const STANDARD_AIR = 1.225;

/** Air drawn over motive air by mass at 10 to 20 inHg, single stage: common practice, no source. */
const ENTRAINMENT: Band = { least: 0.2, most: 0.5 };

/** Free air a compressor gives for its power at 100 psi, (m³/s)/W: common practice, no source. */
const HORSEPOWER = unitOf("hp").factor;
const AIR_PER_POWER: Band = {
  least: (4 * unitOf("ft³/min").factor) / HORSEPOWER,
  most: (5 * unitOf("ft³/min").factor) / HORSEPOWER,
};

/** Motive pressures for which the figure for 100 psi is near enough, Pa gauge: house choice, 80 to 125 psi. */
const PSI = unitOf("psi").factor;
const NEAR_ENOUGH: Band = { least: 80 * PSI, most: 125 * PSI };

const INCH_OF_MERCURY = unitOf("inHg").factor;

/**
 * What a single-stage compressed-air eductor takes and does: air, m³/s; power, W; vacuum, Pa below the air of the site.
 * Formula: motive air m/ρ_std, m by `motiveAir`, ρ_std = 1.225 kg/m³; bands: 4 to 5 ft³/min a horsepower, 0.2 to 0.5 of
 *          the motive air drawn at 10 to 20 inHg, none at 25 to 27 inHg (at sea level, in proportion elsewhere)
 * Fails: out-of-range inputs as the method bounds them; as `motiveAir`.
 * Warns: cautions eductor-by-practice (always), eductor-power-rough outside 80 to 125 psi.
 * Source: choked flow of an ideal gas; U.S. Standard Atmosphere 1976; the bands by common practice.
 */
export function eductorAir(input: EductorAirInput): Result<EductorAir> {
  const { nozzleBore, motivePressure, airTemperature, atmosphericPressure } = input;
  return andThen(checkInputs(eductorAirMethod, input), () => {
    // Told as a gauge shows it, as it was stated.
    const least = leastMotivePressure(atmosphericPressure) - atmosphericPressure;
    if (motivePressure < least) {
      return fail([outOfRange("motive pressure", "gaugePressure", motivePressure, "at least", least)]);
    }
    const mass = motiveAir({
      nozzleDiameter: nozzleBore,
      motivePressure: motivePressure + atmosphericPressure,
      motiveTemperature: airTemperature,
      backPressure: atmosphericPressure,
    });
    return andThen(mass, (flow) => {
      const air = flow / STANDARD_AIR;
      const ofSite = (INCH_OF_MERCURY * atmosphericPressure) / STANDARD_ATMOSPHERE;
      return succeed(
        {
          motiveAir: air,
          compressorPower: { least: air / AIR_PER_POWER.most, most: air / AIR_PER_POWER.least },
          airDrawn: { least: air * ENTRAINMENT.least, most: air * ENTRAINMENT.most },
          vacuum: { least: AIR_EDUCTOR.leastBlankOff * ofSite, most: AIR_EDUCTOR.greatestBlankOff * ofSite },
        },
        [
          { code: "eductor-by-practice", kind: "check", subject: "eductor", cites: AIR_EDUCTOR.cites },
          ...powerRemarks(motivePressure),
        ],
      );
    });
  });
}

function powerRemarks(motivePressure: number): readonly Finding[] {
  if (motivePressure >= NEAR_ENOUGH.least && motivePressure <= NEAR_ENOUGH.most) return [];
  return [
    {
      code: "eductor-power-rough",
      kind: "check",
      subject: "eductor",
      found: amount("gaugePressure", motivePressure),
      facts: { usual: amount("gaugePressure", 100 * PSI) },
      cites: COMPRESSOR_PRACTICE,
    },
  ];
}
