import { checkInputs, type Method } from "../basis/method.ts";
import { amount, fail, type Result, succeed } from "../basis/result.ts";
import { fitPolynomial, polynomialAt } from "../numeric/least-squares.ts";

export interface FittedCurveInput {
  /** Test points in any order: m³/s, and m (or any figure against flow). */
  readonly points: readonly { readonly flow: number; readonly head: number }[];
  /** 2 to 4. */
  readonly degree: number;
}

export interface FittedCurve {
  /** Of (flow / greatest flow) to the power 0, 1, 2 … */
  readonly coefficients: readonly number[];
  readonly greatestFlow: number;
  /** Root of the mean square of the residuals, m. */
  readonly rms: number;
  /** Head given less head fitted, m, point by point. */
  readonly residuals: readonly number[];
  /** m, for a flow among the points; not meant beyond them. */
  readonly headAt: (flow: number) => number;
}

export const fittedCurveMethod = {
  title: "Smooth curve through many noisy test points",
  cites: [
    {
      source: "house",
      at: "least-squares polynomial in flow over greatest flow, degree 2 to 4, at most half the points",
    },
  ],
  inputs: { degree: { name: "degree", quantity: "ratio", atLeast: 2, atMost: 4 } },
} as const satisfies Method<"degree">;

/**
 * Least-squares polynomial of head in flow, by Householder QR in flow over greatest flow.
 *
 * Show the residuals beside it: a quadratic hides a hump. Fails for a degree that is not 2, 3 or 4 or is more than half
 * the number of points, and for points that do not determine it.
 */
export function fittedCurve({ points, degree }: FittedCurveInput): Result<FittedCurve> {
  const checked = checkInputs(fittedCurveMethod, { degree });
  if (!checked.ok) return checked;
  if (!Number.isInteger(degree)) {
    return fail([{ code: "not-a-whole-number", severity: "error", subject: "degree", found: amount("ratio", degree) }]);
  }
  const greatestFlow = Math.max(...points.map(({ flow }) => flow));
  const fit =
    points.length >= 2 * degree && greatestFlow > 0
      ? fitPolynomial(
          points.map(({ flow }) => flow / greatestFlow),
          points.map(({ head }) => head),
          degree,
        )
      : undefined;
  if (fit === undefined) {
    const facts = { degree, least: 2 * degree, given: points.length };
    return fail([{ code: "fit-degree-too-high", severity: "error", subject: "degree", facts }]);
  }
  return succeed({ ...fit, greatestFlow, headAt: (flow) => polynomialAt(fit.coefficients, flow / greatestFlow) });
}
