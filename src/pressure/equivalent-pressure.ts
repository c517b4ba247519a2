import { checkInputs, type Method } from "../basis/method.ts";
import { andThen, type Result, succeed } from "../basis/result.ts";

export interface EquivalentPressureInput {
  /** Bending moment on the joint, N·m. */
  readonly moment: number;
  /** Axial pull on the joint, N. */
  readonly pull: number;
  /** Diameter at which the gasket load acts, m. */
  readonly gasketDiameter: number;
}

export const equivalentPressureMethod = {
  title: "Pressure that loads a flange joint like a moment and a pull",
  cites: [{ source: "kellogg-piping", at: "equivalent pressure of external loads on a flange (from memory)" }],
  inputs: {
    moment: { name: "bending moment", symbol: "M", quantity: "torque", atLeast: 0 },
    pull: { name: "axial pull", symbol: "F", quantity: "force", atLeast: 0 },
    gasketDiameter: { name: "gasket diameter", symbol: "G", quantity: "size", above: 0 },
  },
} as const satisfies Method<keyof EquivalentPressureInput>;

/**
 * Pressure to add to the working pressure before it is held against a rating, Pa: a quick screen of pipe loads. The
 * nozzle loads the pump's standard or maker allows still govern.
 *
 *   P_eq = 16 M / (π G³) + 4 F / (π G²)
 */
export function equivalentPressure(input: EquivalentPressureInput): Result<number> {
  return andThen(checkInputs(equivalentPressureMethod, input), () => {
    const { moment, pull, gasketDiameter } = input;
    return succeed((16 * moment) / (Math.PI * gasketDiameter ** 3) + (4 * pull) / (Math.PI * gasketDiameter ** 2));
  });
}
