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
