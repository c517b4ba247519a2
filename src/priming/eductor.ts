import { checkInputs, type Method, outOfRange } from "../basis/method.ts";
import { andThen, fail, type Result, succeed } from "../basis/result.ts";

export interface EductorInput {
  /** Bore of the motive nozzle, m. */
  readonly nozzleDiameter: number;
  /** Absolute pressure of the motive air, Pa. */
  readonly motivePressure: number;
  /** Temperature of the motive air, K. */
  readonly motiveTemperature: number;
  /** Absolute pressure the nozzle blows into, Pa. */
  readonly backPressure: number;
}

export const eductorMethod = {
  cites: [{ source: "gas-dynamics", at: "choked flow of an ideal gas, γ = 1.4, R = 287.05 J/(kg K), C_d = 1" }],
  inputs: {
    nozzleDiameter: { name: "nozzle diameter", symbol: "d", quantity: "size", above: 0 },
    motivePressure: { name: "motive pressure", symbol: "p₀", quantity: "absolutePressure", above: 0 },
    motiveTemperature: { name: "motive temperature", symbol: "T₀", quantity: "temperature", above: 0 },
    backPressure: { name: "back pressure", quantity: "absolutePressure", above: 0 },
  },
} as const satisfies Method<keyof EductorInput>;

const HEAT_RATIO = 1.4;
/** J/(kg K), dry air. */
const GAS_CONSTANT = 287.05;
/** m/A √(T₀)/p₀ of a choked nozzle, s √K/m: √(γ/R) (2/(γ+1))^((γ+1)/(2(γ−1))) = 0.04042. */
const CHOKED = Math.sqrt(HEAT_RATIO / GAS_CONSTANT) * (2 / (HEAT_RATIO + 1)) ** 3;
/** Least ratio of motive to back pressure at which a nozzle is choked: ((γ+1)/2)^(γ/(γ−1)) = 1.893. */
const CHOKING_RATIO = ((HEAT_RATIO + 1) / 2) ** 3.5;

/** The motive pressure that chokes the nozzle, absolute as the back pressure is, Pa. */
export function leastMotivePressure(backPressure: number): number {
  return CHOKING_RATIO * backPressure;
}

/**
 * Air a motive nozzle takes, kg/s.
 * Formula: m = 0.04042 A p₀/√T₀
 * Fails: out-of-range inputs; a motive pressure below 1.893 times the back pressure, which does not choke the nozzle.
 * Source: choked flow of an ideal gas, γ = 1.4, C_d = 1.
 */
export function motiveAir(input: EductorInput): Result<number> {
  return andThen(checkInputs(eductorMethod, input), () => {
    const { nozzleDiameter, motivePressure, motiveTemperature, backPressure } = input;
    const least = leastMotivePressure(backPressure);
    if (motivePressure < least) {
      return fail([outOfRange("motive pressure", "absolutePressure", motivePressure, "at least", least)]);
    }
    const area = (Math.PI / 4) * nozzleDiameter ** 2;
    return succeed((CHOKED * area * motivePressure) / Math.sqrt(motiveTemperature));
  });
}
