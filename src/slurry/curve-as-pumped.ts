import { andThen, type Result, succeed } from "../basis/result.ts";
import type { LiquidState } from "../liquid/liquid.ts";
import { type PumpCurve, pumpCurve } from "../pump/pump-curve.ts";
import type { PumpCurvePoint } from "../pump/pump-curve-point.ts";
import { pumpRatios } from "./as-pumped.ts";

/**
 * The curve of a pump for water on the liquid as pumped, in m of it: head and efficiency times their ratios, NPSHR over
 * the head ratio; the curve itself where nothing is lost.
 * Fails: as `pumpRatios` and `pumpCurve`.
 * Warns: as these.
 * Source: as `pumpRatios`; NPSHR over the head ratio is a house choice.
 */
export function curveOn(liquid: LiquidState, curve: PumpCurve): Result<PumpCurve> {
  if (liquid.solids === undefined) return succeed(curve);
  return andThen(pumpRatios(liquid, null), ({ headRatio, efficiencyRatio }) => {
    if (headRatio === 1 && efficiencyRatio === 1) return succeed(curve);
    const points = curve.points.map(
      ({ flow, head, efficiency, npshRequired, power }): PumpCurvePoint => ({
        flow,
        head: head * headRatio,
        ...(efficiency !== undefined && { efficiency: efficiency * efficiencyRatio }),
        ...(npshRequired !== undefined && { npshRequired: npshRequired / headRatio }),
        ...(power !== undefined && { power: (power * headRatio) / efficiencyRatio }),
      }),
    );
    const labels = points.map((_, i) => `curve point ${i + 1}`);
    return pumpCurve({ points, subject: "curve on slurry", labels });
  });
}
