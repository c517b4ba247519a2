import type { Citation } from "../basis/citation.ts";
import { STANDARD_GRAVITY } from "../basis/constants.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { amount, andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { brent } from "../numeric/brent.ts";
import { bestPointOf, efficiencyAtFlow, headOf } from "./pump-reading.ts";
import type { RunningPump } from "./running-pump.ts";

/** A range of flows over the best efficiency flow. */
export interface FlowRegion {
  readonly least: number;
  readonly most: number;
}

const REGION_RULE: Citation = { source: "ansi-hi-9.6.3", at: "preferred operating region" };
const MINIMUM_RULE: Citation = {
  source: "house",
  at: "no maker's minimum flow: doubted below 30 % of best efficiency flow, not continuous below 10 %",
};

/** Over the best efficiency flow: below this the least continuous flow is doubted (house choice). */
export const LEAST_DOUBTED_RATIO = 0.3;

/** Specific speed above which the region is narrower: 87 (N_s 4500 in US units). */
const HIGH_SPECIFIC_SPEED = 87;

/**
 * Preferred operating region over the best efficiency flow: 0.70 to 1.20; 0.80 to 1.15 for specific speeds above 87
 * (N_s 4500 in US units; later summaries of the standard print 0.80 to 1.20). Without one the wider region is taken.
 * Source: ANSI/HI 9.6.3.
 */
export function preferredRegion(specificSpeed?: number): FlowRegion {
  return specificSpeed !== undefined && specificSpeed > HIGH_SPECIFIC_SPEED
    ? { least: 0.8, most: 1.15 }
    : { least: 0.7, most: 1.2 };
}

/** Warning, by the code given, of a flow over best efficiency flow outside the preferred region. */
export function regionWarning(
  code: "outside-preferred-region" | "one-pump-alone-outside-region",
  flowRatio: number,
  specificSpeed?: number,
): Finding | undefined {
  const region = preferredRegion(specificSpeed);
  if (flowRatio >= region.least && flowRatio <= region.most) return undefined;
  const basis = specificSpeed === undefined ? "for specific speeds up to 87, N_s 4500" : "by its specific speed";
  const facts = { least: amount("percent", region.least), most: amount("percent", region.most), basis };
  const found = amount("percent", flowRatio);
  return { code, kind: "limit", subject: "flow", found, facts, cites: REGION_RULE };
}

/**
 * A flow too small for long running. Warns: caution flow-below-minimum under 30 % of best efficiency (house choice).
 */
export function minimumFlowCaution(flowRatio: number): Finding | undefined {
  if (flowRatio >= LEAST_DOUBTED_RATIO) return undefined;
  const isTiny = flowRatio < 0.1;
  const limit = { quantity: "percent", value: isTiny ? 0.1 : LEAST_DOUBTED_RATIO, side: "at least" } as const;
  const advice = isTiny ? "do not run it there continuously" : "ask the maker for the least continuous flow";
  const found = amount("percent", flowRatio);
  return {
    code: "flow-below-minimum",
    kind: "check",
    subject: "flow",
    found,
    limit,
    facts: { advice },
    cites: MINIMUM_RULE,
  };
}

export interface ThermalMinimumFlowInput {
  readonly pump: RunningPump;
  /** Rise allowed in one pass, K. 8 K is usual. */
  readonly allowedRise: number;
  /** Of the liquid, J/(kg·K). Water at 20 °C: 4184. */
  readonly specificHeat: number;
}

export const thermalMinimumFlowMethod = {
  cites: [{ source: "pump-handbook", at: "temperature rise and minimum flow" }],
  inputs: {
    allowedRise: { name: "allowed rise", symbol: "ΔT", quantity: "temperatureDifference", above: 0 },
    specificHeat: { name: "specific heat, J/(kg·K)", symbol: "c_p", quantity: "ratio", above: 0 },
  },
} as const satisfies Method<"allowedRise" | "specificHeat">;

/**
 * Flow below which the liquid warms by more than allowed in the pump, m³/s; the curve's least where none does. All
 * losses warm the liquid; below best efficiency the rise grows as the flow falls.
 * Formula: ΔT = g H (1/η − 1)/c_p, by Brent
 * Fails: out-of-range inputs; curve-column-missing (efficiency); thermal-flow-not-found, too warm at best efficiency.
 * Source: Karassik and others, Pump Handbook, temperature rise and minimum flow.
 */
export function thermalMinimumFlow({ pump, allowedRise, specificHeat }: ThermalMinimumFlowInput): Result<number> {
  return andThen(checkInputs(thermalMinimumFlowMethod, { allowedRise, specificHeat }), () =>
    andThen(bestPointOf(pump), (best) => {
      const riseOver = (flow: number): number => {
        const efficiency = efficiencyAtFlow(pump, flow);
        if (!efficiency.ok || efficiency.value <= 0) return Number.MAX_VALUE;
        return (STANDARD_GRAVITY * headOf(pump, flow) * (1 / efficiency.value - 1)) / specificHeat - allowedRise;
      };
      const atBest = riseOver(best.flow);
      if (atBest > 0) {
        const found = amount("temperatureDifference", atBest + allowedRise);
        const limit = { quantity: "temperatureDifference", value: allowedRise, side: "at most" } as const;
        return fail([{ code: "thermal-flow-not-found", kind: "error", subject: "allowed rise", found, limit }]);
      }
      return succeed(brent(riseOver, pump.leastFlow, best.flow) ?? pump.leastFlow);
    }),
  );
}
