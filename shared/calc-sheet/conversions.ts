import type { UnitSetName } from "../../src/basis/quantities.ts";
import { constant, type Expression, product, ratio } from "./expression.ts";

/**
 * Figures between the units of a unit set, each made of numbers that are known by sight: standard gravity 9.80665 m/s²,
 * 12 in a foot, 231 in³ a US gallon, π. A formula shows them, and not what they come to.
 */
const of = (...factors: readonly number[]): Expression => {
  const [first = 1, ...others] = factors;
  return others.length === 0 ? constant(first) : product(constant(first), ...others.map(constant));
};

/** Flow through a round bore at a velocity, of all that goes through it. */
export function flowThrough(bore: Expression, velocity: Expression, units: UnitSetName): Expression {
  const made = {
    // in² × ft/s × 12 in/ft × 60 s/min over 231 in³ a gallon.
    US: ratio(of(Math.PI, 12, 60), of(4, 231)),
    // mm² × m/s are mL/s.
    SI: ratio(constant(Math.PI), of(4, 1000)),
    METRIC: ratio(of(Math.PI, 3600), of(4, 1e6)),
  } as const;
  return product(bore, bore, velocity, made[units]);
}
