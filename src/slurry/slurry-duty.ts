import { SPECIFIC_GRAVITY_REFERENCE } from "../basis/constants.ts";
import type { Method } from "../basis/method.ts";
import { amount, andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import type { LiquidState } from "../liquid/liquid.ts";
import { clearWaterDuty, clearWaterDutyMethod } from "./clear-water-duty.ts";
import { headReduction, headReductionMethod } from "./head-reduction-chart.ts";
import {
  belowMeasured,
  carrierRemark,
  efficiencyRemarks,
  LEAST_RATIO,
  npshRemark,
  pumpDerating,
  pumpDeratingMethod,
} from "./pump-derating.ts";
import { slurryMixture } from "./slurry-mixture.ts";
import { doNotSettle } from "./solids.ts";

export const slurryDutyMethod = {
  cites: [...pumpDeratingMethod.cites, ...headReductionMethod.cites, ...clearWaterDutyMethod.cites],
  inputs: {},
} as const satisfies Method<never>;

export interface SlurryDutyInputs {
  /** Of the slurry, m³/s. */
  readonly flow: number;
  /** m of slurry. */
  readonly slurryHead: number;
  /** m; null where no pump is chosen yet. */
  readonly impellerDiameter: number | null;
  /** d50, m. */
  readonly particleSize: number;
  readonly solidsSG: number;
  /** Volume fraction. */
  readonly solidsByVolume: number;
  /** Mass fraction of the solids below 75 µm. */
  readonly fines: number;
  /** On water at this flow, 0 to 1; null where it is not known. */
  readonly waterEfficiency: number | null;
  /** 1 − HR read from a chart for SG 2.65 at 15 % by volume; null goes by Cave. */
  readonly chartReduction: number | null;
  /** Between the solids. */
  readonly liquid: LiquidState;
}

export interface SlurryDuty {
  readonly headRatio: number;
  readonly efficiencyRatio: number;
  /** Head to read the water curve at, m. */
  readonly waterHead: number;
  readonly mixtureSG: number;
  /** Shaft power on slurry over that of the same pump at the same flow on water of SG 1. */
  readonly powerRatio: number;
  /** On slurry, W; null without an efficiency. */
  readonly shaftPower: number | null;
}

type Ratios = Pick<SlurryDuty, "headRatio" | "efficiencyRatio">;

/**
 * What a slurry duty asks of a pump known by its curves for water: head to read them at, m, and power it takes, W.
 * Formula: H_w = H_m/HR, P = ρ_m g Q H_m/(η_w ER), P/P_w = S_m HR/ER; HR, ER by `pumpDerating` or a chart (ER = HR)
 * Fails: solids-do-not-settle; HR under 0.5; as `slurryMixture`, `clearWaterDuty`, `pumpDerating` or `headReduction`.
 * Warns: cautions derating-by-chart, derating-not-in-water (SG outside 0.95 to 1.05); as these.
 * Source: as `pumpDerating`, `headReduction` and `clearWaterDuty`.
 */
export function slurryDuty(inputs: SlurryDutyInputs): Result<SlurryDuty> {
  const { flow, slurryHead, solidsSG, solidsByVolume, waterEfficiency, liquid } = inputs;
  const liquidSG = liquid.density / SPECIFIC_GRAVITY_REFERENCE;
  if (solidsSG <= liquidSG) return fail([doNotSettle(solidsSG, liquidSG)]);
  return andThen(slurryMixture({ liquidSG, solidsSG, solidsByVolume }), ({ mixtureSG }) =>
    andThen(ratiosOf(inputs), ({ headRatio, efficiencyRatio }) =>
      andThen(
        clearWaterDuty({
          flow,
          slurryHead,
          slurryDensity: mixtureSG * SPECIFIC_GRAVITY_REFERENCE,
          waterEfficiency,
          headRatio,
          efficiencyRatio,
        }),
        ({ waterHead, shaftPower }) =>
          succeed(
            {
              headRatio,
              efficiencyRatio,
              waterHead,
              mixtureSG,
              powerRatio: (mixtureSG * headRatio) / efficiencyRatio,
              shaftPower,
            },
            carrierRemark(liquidSG),
          ),
      ),
    ),
  );
}

function ratiosOf(inputs: SlurryDutyInputs): Result<Ratios> {
  const { chartReduction, solidsSG, fines, solidsByVolume } = inputs;
  if (chartReduction === null) return pumpDerating(inputs);
  return andThen(headReduction({ chartReduction, solidsSG, fines, solidsByVolume }), ({ reduction }) => {
    const headRatio = 1 - reduction;
    if (headRatio < LEAST_RATIO) return fail([belowMeasured(headRatio)]);
    return succeed({ headRatio, efficiencyRatio: headRatio }, [
      byChart(headRatio),
      ...efficiencyRemarks(inputs),
      ...npshRemark(headRatio),
    ]);
  });
}

function byChart(headRatio: number): Finding {
  return {
    code: "derating-by-chart",
    kind: "check",
    subject: "head ratio",
    found: amount("ratio", headRatio),
    cites: headReductionMethod.cites[0],
  };
}
