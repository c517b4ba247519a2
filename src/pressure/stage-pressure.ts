import type { Citation } from "../basis/citation.ts";
import { SPECIFIC_GRAVITY_REFERENCE } from "../basis/constants.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { amount, andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { SPECIFIC_GRAVITY } from "../pump/shaft-power.ts";
import { defaultTolerance, toleranceAssumed, type UngradedPump } from "./default-tolerance.ts";
import { greatestHead, greatestHeadMethod } from "./greatest-head.ts";
import { laterStageSuction } from "./nozzle-class.ts";
import { nozzlePressures, nozzlePressuresMethod } from "./nozzle-pressure.ts";

export interface StagePressureInput extends UngradedPump {
  /** Greatest gauge pressure at the suction of the first stage, Pa. */
  readonly suctionPressure: number;
  /** Greatest head of one pump, m. */
  readonly shutoffHead: number;
  readonly specificGravity: number;
  /** Which of the equal pumps in series, from 1. */
  readonly stage: number;
  /** A fraction; null where nobody states it: the default of service and power. */
  readonly headTolerance: number | null;
}

export interface StagePressure {
  /** Pa gauge */
  readonly suction: number;
  readonly discharge: number;
}

/** Equal pumps in a row that are still looked at. */
const MOST_STAGES = 20;

export const stagePressureMethod = {
  cites: [nozzlePressuresMethod.cites[0], greatestHeadMethod.cites[1]],
  inputs: {
    shutoffHead: greatestHeadMethod.inputs.curveTop,
    specificGravity: SPECIFIC_GRAVITY,
    stage: { name: "stage", quantity: "ratio", atLeast: 1, atMost: MOST_STAGES },
    headTolerance: greatestHeadMethod.inputs.headTolerance,
  },
} as const satisfies Method<"shutoffHead" | "specificGravity" | "stage" | "headTolerance">;

/**
 * Greatest suction and discharge pressure of a stage of equal, level pumps against a shut valve, Pa gauge.
 * Formula: P_s = P_1 + (i − 1) ρ g H (1 + τ),  P_d = P_s + ρ g H (1 + τ)
 * Fails: as the method and `nozzlePressures` bound the inputs; a stage that is no whole number from 1 to 20.
 * Warns: cautions on tolerance assumed, suction below atmosphere, unusual SG, later suctions, surge left out.
 * Source: ANSI/HI 14.3, pumps in series; ISO 9906, table 8; ANSI/HI 14.6, default grades.
 */
export function stagePressure(input: StagePressureInput): Result<StagePressure> {
  const { suctionPressure, shutoffHead, specificGravity, stage } = input;
  const headTolerance = input.headTolerance ?? defaultTolerance(input).tolerance;
  const checked = checkInputs(stagePressureMethod, { shutoffHead, specificGravity, stage, headTolerance });
  if (!checked.ok) return checked;
  if (!Number.isInteger(stage)) {
    const found = amount("ratio", stage);
    return fail([{ code: "not-a-whole-number", kind: "error", subject: "stage", found }]);
  }
  const density = specificGravity * SPECIFIC_GRAVITY_REFERENCE;
  const greatest = greatestHead({ curveTop: shutoffHead, speedRatio: 1, trimRatio: 1, headTolerance });
  const remarks = [
    ...checked.findings,
    ...(input.headTolerance === null ? [toleranceAssumed(input)] : []),
    ...(stage > 1 ? [laterStageSuction(`stage ${stage}`)] : []),
    withoutSurge(),
  ];
  return andThen(greatest, (head) => {
    const pumps = Array.from({ length: stage }, (_, i) => ({
      name: `stage ${i + 1}`,
      head,
      elevation: 0,
      lineLoss: 0,
    }));
    return andThen(nozzlePressures({ pumps, suctionPressure, density }), (nozzles) => {
      const [suction, discharge] = nozzles.slice(-2).map((nozzle) => nozzle.greatest);
      return succeed({ suction: suction as number, discharge: discharge as number }, remarks);
    });
  });
}

/** Caution that surge comes on top. */
export function withoutSurge(): Finding {
  const cites: Citation = { source: "house", at: "surge is reported apart and does not choose a class" };
  return { code: "nozzle-pressure-without-surge", kind: "check", subject: "nozzle pressure", cites };
}
