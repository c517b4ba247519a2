import { checkInputs, type Method } from "../basis/method.ts";
import { andThen, type Result, succeed } from "../basis/result.ts";

/** How flow and head go with the diameter of a trimmed impeller: Q ∝ D^flow, H ∝ D^head. */
export interface TrimExponents {
  readonly flow: number;
  readonly head: number;
  /** Smallest diameter measured over the largest; the exponents hold no further. */
  readonly leastRatio?: number;
}

/** The working rule where only one diameter is known. */
export const SIMILAR_TRIM: TrimExponents = { flow: 1, head: 2 };

/** Two best efficiency points of one casing at one speed, with the larger and the smaller impeller. */
export interface TrimExponentsInput {
  /** m */
  readonly largeDiameter: number;
  readonly smallDiameter: number;
  /** m³/s */
  readonly largeFlow: number;
  readonly smallFlow: number;
  /** m */
  readonly largeHead: number;
  readonly smallHead: number;
}

export const trimExponentsMethod = {
  cites: [{ source: "pump-handbook", at: "impeller trimming" }],
  inputs: {
    largeDiameter: { name: "diameter of the larger impeller", symbol: "D_a", quantity: "size", above: 0 },
    smallDiameter: { name: "diameter of the smaller impeller", symbol: "D_b", quantity: "size", above: 0 },
    largeFlow: { name: "flow of the larger impeller", symbol: "Q_a", quantity: "flow", above: 0 },
    smallFlow: { name: "flow of the smaller impeller", symbol: "Q_b", quantity: "flow", above: 0 },
    largeHead: { name: "head of the larger impeller", symbol: "H_a", quantity: "head", above: 0 },
    smallHead: { name: "head of the smaller impeller", symbol: "H_b", quantity: "head", above: 0 },
  },
} as const satisfies Method<keyof TrimExponentsInput>;

/**
 * Exponents from two measured trims at their best efficiency points; they serve between the two diameters only.
 * Formula: m_Q = ln(Q_a/Q_b)/ln(D_a/D_b), m_H = ln(H_a/H_b)/ln(D_a/D_b)
 * Fails: out-of-range inputs: not above zero, or the smaller diameter not the smaller.
 * Source: Karassik and others, Pump Handbook, impeller trimming.
 */
export function trimExponents(input: TrimExponentsInput): Result<TrimExponents> {
  const { largeDiameter, smallDiameter, largeFlow, smallFlow, largeHead, smallHead } = input;
  const { smallDiameter: small } = trimExponentsMethod.inputs;
  const method = {
    ...trimExponentsMethod,
    inputs: { ...trimExponentsMethod.inputs, smallDiameter: { ...small, below: largeDiameter } },
  };
  return andThen(checkInputs(method, input), () => {
    const span = Math.log(largeDiameter / smallDiameter);
    return succeed({
      flow: Math.log(largeFlow / smallFlow) / span,
      head: Math.log(largeHead / smallHead) / span,
      leastRatio: smallDiameter / largeDiameter,
    });
  });
}
