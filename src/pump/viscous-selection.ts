import { checkInputs, type Method } from "../basis/method.ts";
import { andThen, type Result, succeed } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";
import { viscousRatios } from "./viscous-correction.ts";

/** A duty with the viscous liquid, for which a pump is sought by its curve with water. */
export interface ViscousDutyInput {
  /** m³/s */
  readonly flow: number;
  /** m of one stage. */
  readonly head: number;
  /** m²/s */
  readonly kinematicViscosity: number;
}

/** The duty with water to look for, m³/s and m, and what the viscosity does to efficiency. */
export interface WaterDuty {
  readonly flow: number;
  readonly head: number;
  /** Viscous efficiency over water efficiency. */
  readonly efficiencyRatio: number;
}

export const viscousSelectionMethod = {
  title: "Water duty for choosing a pump for a viscous liquid",
  cites: [{ source: "ansi-hi-9.6.7", at: "preliminary selection for a given viscous duty (equations from memory)" }],
  inputs: {
    flow: { name: "flow", symbol: "Q_vis", quantity: "flow", above: 0 },
    head: { name: "head", symbol: "H_vis", quantity: "head", above: 0 },
    kinematicViscosity: {
      name: "viscosity",
      symbol: "ν",
      quantity: "kinematicViscosity",
      above: 0,
      usual: { atLeast: 1e-6, atMost: 4e-3 },
    },
  },
} as const satisfies Method<keyof ViscousDutyInput>;

/**
 * The duty with water of a pump that meets a duty with a viscous liquid, near enough to choose by.
 *
 *   B = 2.80 ν^0.5 / (Q^0.25 H^0.125)      ν in cSt, Q in m³/h, H in m
 *   Q_W = Q_vis / C_Q,  H_W = H_vis / C_H
 *
 * The chosen pump is then worked out with `viscousCurve`. Fails at B of 40 and more.
 */
export function waterDutyFor(input: ViscousDutyInput): Result<WaterDuty> {
  return andThen(checkInputs(viscousSelectionMethod, input), () => {
    const { flow, head, kinematicViscosity } = input;
    const parameter =
      (2.8 * Math.sqrt(kinematicViscosity / unitOf("cSt").factor)) /
      ((flow / unitOf("m³/h").factor) ** 0.25 * head ** 0.125);
    return andThen(viscousRatios(parameter), (ratios) =>
      succeed({ flow: flow / ratios.flow, head: head / ratios.flow, efficiencyRatio: ratios.efficiency }),
    );
  });
}
