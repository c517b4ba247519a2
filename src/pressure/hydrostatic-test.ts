import { checkInputs, type Method } from "../basis/method.ts";
import { andThen, type Result, succeed } from "../basis/result.ts";
import { toEngine } from "../basis/units.ts";
import type { FlangeRating } from "./flange-rating.ts";
import { RATING_UNITS } from "./rating-curves.ts";

const ROUNDING = 1e-9;

/**
 * Hydrostatic test pressure of a flanged joint, Pa gauge: 1.5 times the rating of cold metal, rounded up to the next
 * 25 psi or 1 bar, whichever the table is printed in. ASME B16.5 and B16.42; B16.1 and EN 1092-2 in the same way.
 */
export function flangeTestPressure({ coldPressure, system }: Pick<FlangeRating, "coldPressure" | "system">): number {
  const { pressure, testStep } = RATING_UNITS[system];
  const steps = Math.ceil((1.5 * coldPressure) / pressure.factor / testStep - ROUNDING);
  return toEngine(steps * testStep, pressure);
}

export interface CasingTestInput {
  /** Greatest pressure the maker allows the casing at 20 °C, Pa gauge. */
  readonly workingPressure: number;
  /** Discharge pressure at the rated point, Pa gauge. */
  readonly ratedPressure: number;
  /** Discharge pressure at shutoff, Pa gauge. */
  readonly shutoffPressure: number;
}

export const casingTestMethod = {
  title: "Hydrostatic test of a pump casing",
  cites: [
    { source: "iso-5199", at: "hydrostatic test, 1.5 times the working pressure (from memory)" },
    { source: "ansi-hi-14.6", at: "hydrostatic test, 1.5 rated or 1.25 shutoff (from memory)" },
  ],
  inputs: {
    workingPressure: { name: "casing working pressure", quantity: "gaugePressure", above: 0 },
    ratedPressure: { name: "rated discharge pressure", quantity: "gaugePressure", atLeast: 0 },
    shutoffPressure: { name: "shutoff discharge pressure", quantity: "gaugePressure", atLeast: 0 },
  },
} as const satisfies Method<keyof CasingTestInput>;

/**
 * Hydrostatic test pressure of a pump casing, Pa gauge, by two standards: 1.5 times the working pressure the maker
 * states, and the greater of 1.5 times the rated and 1.25 times the shutoff discharge pressure.
 */
export function casingTestPressure(
  input: CasingTestInput,
): Result<{ readonly byWorkingPressure: number; readonly byDuty: number }> {
  const { workingPressure, ratedPressure, shutoffPressure } = input;
  return andThen(checkInputs(casingTestMethod, input), () =>
    succeed({
      byWorkingPressure: 1.5 * workingPressure,
      byDuty: Math.max(1.5 * ratedPressure, 1.25 * shutoffPressure),
    }),
  );
}
