import { checkInputs, type Method, outOfRange } from "../basis/method.ts";
import { andThen, fail, type Result, type Side, succeed } from "../basis/result.ts";

export interface PumpDownInput {
  /** Air held, m³. It does not change: no water comes up. */
  readonly volume: number;
  /** Displacement of the air pump at its inlet, m³/s. */
  readonly displacement: number;
  /** Absolute, Pa. */
  readonly startPressure: number;
  /** Absolute, Pa. */
  readonly endPressure: number;
  /** Absolute pressure the air pump ends at, by its leak or its blank-off, Pa. */
  readonly ultimatePressure: number;
}

export const pumpDownMethod = {
  cites: [{ source: "boyle-mariotte", at: "isothermal evacuation of a fixed volume at constant displacement" }],
  inputs: {
    volume: { name: "volume", symbol: "V", quantity: "volume", above: 0 },
    displacement: { name: "displacement", symbol: "S", quantity: "freeAirFlow", above: 0 },
    startPressure: { name: "start pressure", symbol: "p₀", quantity: "absolutePressure", above: 0 },
    endPressure: { name: "end pressure", symbol: "p₁", quantity: "absolutePressure", above: 0 },
    ultimatePressure: { name: "ultimate pressure", symbol: "p_u", quantity: "absolutePressure", atLeast: 0 },
  },
} as const satisfies Method<keyof PumpDownInput>;

/**
 * Time to draw a fixed volume of air down, s: a vacuum drop test, a vessel, a line shut at its foot. The time to prime
 * is longer: there the water comes up and the air must leave altogether.
 * Formula: t = (V/S) ln[(p₀ − p_u)/(p₁ − p_u)]
 * Fails: out-of-range inputs as the method bounds them; an end pressure above the start or not above the ultimate one.
 * Source: Boyle–Mariotte law.
 */
export function pumpDownTime(input: PumpDownInput): Result<number> {
  return andThen(checkInputs(pumpDownMethod, input), () => {
    const { volume, displacement, startPressure, endPressure, ultimatePressure } = input;
    const beyond = (side: Side, limit: number): Result<never> =>
      fail([outOfRange("end pressure", "absolutePressure", endPressure, side, limit)]);
    if (endPressure > startPressure) return beyond("at most", startPressure);
    if (endPressure <= ultimatePressure) return beyond("above", ultimatePressure);
    return succeed(
      (volume / displacement) * Math.log((startPressure - ultimatePressure) / (endPressure - ultimatePressure)),
    );
  });
}
