import { SPECIFIC_GRAVITY_REFERENCE, STANDARD_GRAVITY } from "../basis/constants.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { andThen, type Result, succeed } from "../basis/result.ts";
import { type PumpCurve, pumpCurve } from "./pump-curve.ts";
import { bestPointOf, efficiencyAtFlow, npshRequiredAtFlow } from "./pump-reading.ts";
import { asGiven, runningPump } from "./running-pump.ts";
import { SPECIFIC_GRAVITY } from "./shaft-power.ts";
import {
  type ViscousCorrection,
  viscousCorrection,
  viscousCorrectionMethod,
  viscousHeadRatio,
  viscousNpshRatio,
} from "./viscous-correction.ts";

export interface ViscousCurveInput {
  /** Of one stage, with water. */
  readonly curve: PumpCurve;
  /** Of the curve, r/s. */
  readonly speed: number;
  /** How the pump runs, over the speed and impeller of the curve. */
  readonly speedRatio?: number;
  readonly trimRatio?: number;
  /** m²/s */
  readonly kinematicViscosity: number;
  readonly specificGravity: number;
}

/** One point of the curve with the viscous liquid; null where the curve gives no figure, and power at shutoff. */
export interface ViscousCurvePoint {
  readonly flow: number;
  readonly head: number;
  readonly efficiency: number | null;
  /** With the liquid itself, W. */
  readonly power: number | null;
  readonly npshRequired: number | null;
}

export const viscousCurveMethod = {
  cites: viscousCorrectionMethod.cites,
  inputs: { specificGravity: SPECIFIC_GRAVITY },
} as const satisfies Method<"specificGravity">;

/**
 * The curve with a viscous liquid, point by point of that with water; m³/s, m, W. The shutoff head does not change. The
 * pump as it runs decides the correction; the points stay those of the curve's own speed and impeller, from which they
 * are carried to the running ones like any curve.
 * Formula: Q = C_Q Q_W, H = C_H(Q_W) H_W, η = C_η η_W, P = ρ g Q H/η (printed with 367: 0.2 % more); NPSHR as
 * `viscousNpshRatio`
 * Fails: out-of-range inputs; curve-column-missing, neither efficiency nor power; as `viscousCorrection`.
 * Warns: caution outside-usual-range (SG 0.6 to 2.2); as `viscousCorrection`.
 * Source: as `viscousCorrection`.
 */
export function viscousCurve(input: ViscousCurveInput): Result<readonly ViscousCurvePoint[]> {
  const { curve, specificGravity } = input;
  const density = specificGravity * SPECIFIC_GRAVITY_REFERENCE;
  const checked = checkInputs(viscousCurveMethod, { specificGravity });
  if (!checked.ok) return checked;
  const pump = asGiven(curve);
  return andThen(bestPointOf(pump), (best) =>
    andThen(correctionAsRun(input), ({ correction, npshRatio }) =>
      succeed(
        curve.points.map(({ flow: waterFlow, head: waterHead }) => {
          const flow = correction.flow * waterFlow;
          const head = viscousHeadRatio(correction, waterFlow / best.flow) * waterHead;
          const waterEfficiency = orNull(efficiencyAtFlow(pump, waterFlow));
          const npshRequired = times(npshRatio, orNull(npshRequiredAtFlow(pump, waterFlow)));
          const efficiency = times(correction.efficiency, waterEfficiency);
          const power =
            efficiency !== null && efficiency > 0 ? (density * STANDARD_GRAVITY * flow * head) / efficiency : null;
          return { flow, head, efficiency, power, npshRequired };
        }),
        checked.findings,
      ),
    ),
  );
}

/** The same as a curve to be read and carried to other speeds, at which it then does not hold. */
export function viscousPumpCurve(input: Omit<ViscousCurveInput, "specificGravity">): Result<PumpCurve> {
  return andThen(viscousCurve({ ...input, specificGravity: 1 }), (points) =>
    pumpCurve({
      points: points.map(({ flow, head, efficiency, npshRequired }) => ({
        flow,
        head,
        ...(efficiency !== null && { efficiency }),
        ...(npshRequired !== null && { npshRequired }),
      })),
      subject: "viscous curve",
      labels: points.map((_, i) => `viscous curve point ${i + 1}`),
    }),
  );
}

/** The correction of the pump at its running speed and trim; of NPSH required too, where its curve gives one. */
function correctionAsRun({
  curve,
  speed,
  speedRatio = 1,
  trimRatio = 1,
  kinematicViscosity,
}: ViscousCurveInput): Result<{ readonly correction: ViscousCorrection; readonly npshRatio: number }> {
  const running = runningPump({ curve, speedRatio, trimRatio });
  if (!running.ok) return running;
  return andThen(bestPointOf(running.value), ({ flow: bestFlow, head: bestHead }) => {
    const atRunning = { bestFlow, bestHead, speed: speed * speedRatio, kinematicViscosity };
    return andThen(viscousCorrection(atRunning), (correction) => {
      const required = npshRequiredAtFlow(running.value, bestFlow);
      return succeed({
        correction,
        npshRatio: required.ok ? viscousNpshRatio(correction, atRunning, required.value) : 1,
      });
    });
  });
}

function orNull(read: Result<number>): number | null {
  return read.ok ? read.value : null;
}

function times(factor: number, figure: number | null): number | null {
  return figure === null ? null : factor * figure;
}
