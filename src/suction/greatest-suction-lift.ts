import type { Citation } from "../basis/citation.ts";
import { STANDARD_GRAVITY } from "../basis/constants.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { amount, andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { headLost } from "../head/head-lost.ts";
import { suctionLineRemarks } from "../head/line-remarks.ts";
import { velocityHead } from "../head/velocity-head.ts";
import type { LiquidState } from "../liquid/liquid.ts";
import { flowIn, type Line } from "../pipework/line.ts";
import { npshAvailableMethod } from "./npsh-available.ts";
import { defaultNpshMargin } from "./npsh-margin.ts";
import { gasRemarks, liftRemarks } from "./suction-practice.ts";
import { layFlatCollapse, vapourPressureMissing } from "./suction-state.ts";

export interface GreatestSuctionLiftInput {
  /** m³/s */
  readonly flow: number;
  readonly suctionLine: Line;
  /** NPSH the pump asks for at this flow (3 % head drop), m. */
  readonly npshRequired: number;
  /** NPSH to keep in hand over `npshRequired`, m. `defaultNpshMargin` where left out. */
  readonly npshMargin: number | null;
  /** Absolute pressure of the air on site, Pa. */
  readonly atmosphericPressure: number;
  readonly liquid: LiquidState;
}

export const greatestSuctionLiftMethod = {
  cites: [
    npshAvailableMethod.cites[0],
    { source: "ansi-hi-9.6.1", at: "NPSH margin, as summarised in a public digest; check the edition in force" },
  ],
  inputs: {
    flow: { name: "flow", symbol: "Q", quantity: "flow", atLeast: 0 },
    npshRequired: { name: "NPSHR", symbol: "NPSHR", quantity: "head", atLeast: 0 },
    npshMargin: { name: "NPSH margin", quantity: "head", atLeast: 0 },
    atmosphericPressure: { name: "atmospheric pressure", quantity: "absolutePressure", above: 0 },
  },
} as const satisfies Method<"flow" | "npshRequired" | "npshMargin" | "atmosphericPressure">;

const MARGIN_CHOICE: Citation = {
  source: "house",
  at: "NPSH available at least NPSHR + 1.0 m (3.28 ft) and at least 1.3 NPSHR, for self-priming and dewatering duty",
};

/** Least margin of ANSI/HI 9.6.1 for water, waste water and general pumps of low suction energy, m. */
function leastNpshMargin(npshRequired: number): number {
  return Math.max(0.6, 0.1 * npshRequired);
}

/**
 * Greatest height of the pump datum over an open liquid surface, by NPSH alone [m]; negative, a depth under it.
 * Formula: z_max = (p_atm − p_v)/(ρ g) − h_L,s − NPSHR − margin
 * Fails: out-of-range inputs as the method bounds them; vapour-pressure-missing, suction-lay-flat-collapses; as
 * `lineLoss`.
 * Warns: npsh-margin-assumed, npsh-margin-small, flooded-suction-needed; of line, lift and gas as `suctionState`.
 * Source: ISO 17769-1, NPSHA; ANSI/HI 9.6.1, NPSH margin.
 */
export function greatestSuctionLift(input: GreatestSuctionLiftInput): Result<number> {
  const { flow, suctionLine, npshRequired, atmosphericPressure, liquid } = input;
  const npshMargin = input.npshMargin ?? defaultNpshMargin(npshRequired);
  const checked = checkInputs(greatestSuctionLiftMethod, { flow, npshRequired, npshMargin, atmosphericPressure });
  if (!checked.ok) return checked;
  const { density, vapourPressure } = liquid;
  if (vapourPressure === undefined) return fail([vapourPressureMissing()]);

  return andThen(headLost(suctionLine, flow, liquid), (suctionLoss) => {
    const weight = density * STANDARD_GRAVITY;
    const lift = (atmosphericPressure - vapourPressure) / weight - suctionLoss - npshRequired - npshMargin;
    const last = suctionLine.at(-1);
    const inletVelocityHead = last === undefined ? 0 : velocityHead(flowIn(last, flow), last.pipe.bore);
    const inletPressure = vapourPressure + weight * (npshRequired + npshMargin - inletVelocityHead);
    if (inletPressure < atmosphericPressure) {
      const collapses = layFlatCollapse(suctionLine, atmosphericPressure - inletPressure);
      if (collapses !== undefined) return fail([collapses]);
    }
    return succeed(lift, [
      ...marginRemarks(input.npshMargin, npshRequired),
      ...floodedRemark(lift),
      ...suctionLineRemarks(suctionLine, flow),
      ...liftRemarks("maximum suction lift", lift, atmosphericPressure, density, vapourPressure),
      ...gasRemarks(inletPressure),
    ]);
  });
}

function marginRemarks(stated: number | null, npshRequired: number): readonly Finding[] {
  const subject = "NPSH margin";
  if (stated === null) {
    const found = amount("head", defaultNpshMargin(npshRequired));
    return [{ code: "npsh-margin-assumed", kind: "assumed", subject, found, cites: MARGIN_CHOICE }];
  }
  const least = leastNpshMargin(npshRequired);
  if (stated >= least) return [];
  return [
    {
      code: "npsh-margin-small",
      kind: "check",
      subject,
      found: amount("head", stated),
      limit: { quantity: "head", value: least, side: "at least" },
      cites: greatestSuctionLiftMethod.cites[1],
    },
  ];
}

function floodedRemark(lift: number): readonly Finding[] {
  if (lift >= 0) return [];
  const found = amount("head", -lift);
  return [{ code: "flooded-suction-needed", kind: "check", subject: "maximum suction lift", found }];
}
