import { SPECIFIC_GRAVITY_REFERENCE, STANDARD_GRAVITY } from "../basis/constants.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { andThen, type Result, succeed } from "../basis/result.ts";
import type { PumpCurve } from "./pump-curve.ts";
import { bestPointOf, efficiencyAtFlow } from "./pump-reading.ts";
import { asGiven } from "./running-pump.ts";
import { SPECIFIC_GRAVITY } from "./shaft-power.ts";
import { viscousCorrection, viscousCorrectionMethod, viscousHeadRatio } from "./viscous-correction.ts";

export interface ViscousCurveInput {
  /** Of one stage, with water. */
  readonly curve: PumpCurve;
  /** r/s */
  readonly speed: number;
  /** m²/s */
  readonly kinematicViscosity: number;
  readonly specificGravity: number;
}

/** One point of the curve with the viscous liquid; null where the curve gives no efficiency, and power at shutoff. */
export interface ViscousCurvePoint {
  readonly flow: number;
  readonly head: number;
  readonly efficiency: number | null;
  /** With the liquid itself, W. */
  readonly power: number | null;
}

export const viscousCurveMethod = {
  cites: viscousCorrectionMethod.cites,
  inputs: { specificGravity: SPECIFIC_GRAVITY },
} as const satisfies Method<"specificGravity">;

/**
 * The curve with a viscous liquid, point by point of that with water; m³/s, m, W. The shutoff head does not change.
 * Formula: Q = C_Q Q_W, H = C_H(Q_W) H_W, η = C_η η_W, P = ρ g Q H/η (printed with 367: 0.2 % more)
 * Fails: out-of-range inputs; curve-column-missing, neither efficiency nor power; as `viscousCorrection`.
 * Warns: caution outside-usual-range (SG 0.6 to 2.2); as `viscousCorrection`.
 * Source: as `viscousCorrection`.
 */
export function viscousCurve(input: ViscousCurveInput): Result<readonly ViscousCurvePoint[]> {
  const { curve, speed, kinematicViscosity, specificGravity } = input;
  const density = specificGravity * SPECIFIC_GRAVITY_REFERENCE;
  const checked = checkInputs(viscousCurveMethod, { specificGravity });
  if (!checked.ok) return checked;
  const pump = asGiven(curve);
  return andThen(bestPointOf(pump), (best) =>
    andThen(viscousCorrection({ bestFlow: best.flow, bestHead: best.head, speed, kinematicViscosity }), (correction) =>
      succeed(
        curve.points.map((point) => {
          const flow = correction.flow * point.flow;
          const head = viscousHeadRatio(correction, point.flow / best.flow) * point.head;
          const water = efficiencyAtFlow(pump, point.flow);
          if (!water.ok) return { flow, head, efficiency: null, power: null };
          const efficiency = correction.efficiency * water.value;
          const power = efficiency > 0 ? (density * STANDARD_GRAVITY * flow * head) / efficiency : null;
          return { flow, head, efficiency, power };
        }),
        checked.findings,
      ),
    ),
  );
}
