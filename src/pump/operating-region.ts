import type { Citation } from "../basis/citation.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { amount, type Finding, type Result, succeed } from "../basis/result.ts";
import { US_PER_SI } from "./specific-speed.ts";

/** A range of flows over the best efficiency flow. */
export interface FlowRegion {
  readonly least: number;
  readonly most: number;
}

const REGION_RULE: Citation = { source: "ansi-hi-9.6.3", at: "preferred operating region" };
const MINIMUM_RULE: Citation = {
  source: "house",
  at: "no maker's minimum flow: doubted below 30 % of best efficiency flow, not continuous below 10 %; above N_s 4500 (n_s 87) below 50 % and 30 %",
};

export const operatingRegionMethod = {
  cites: [REGION_RULE, MINIMUM_RULE],
  inputs: { specificSpeed: { name: "specific speed", symbol: "n_s", quantity: "ratio", above: 0 } },
} as const satisfies Method<"specificSpeed">;

/** Specific speeds, rpm, m³/s and m, above which the regions narrow: N_s 4500 and 9000 in US units. */
export const REGION_STEPS = { high: 4500 / US_PER_SI, axial: 9000 / US_PER_SI } as const;

/** A figure that stands at a limit but for rounding has not passed it. */
const ROUNDING = 1 + 1e-9;

function isAbove(step: keyof typeof REGION_STEPS, specificSpeed: number | undefined): boolean {
  return specificSpeed !== undefined && specificSpeed > REGION_STEPS[step] * ROUNDING;
}

/**
 * Preferred operating region over the best efficiency flow, by specific speed (rpm, m³/s, m): 0.70 to 1.20; above 87
 * (N_s 4500) 0.80 to 1.15, between the 1.10 and 1.20 that summaries print; above 174 (N_s 9000) 0.90 to 1.10. Without
 * one the widest is taken: `surelyPreferred` says what holds all the same.
 * Source: ANSI/HI 9.6.3; where the last step begins is a house choice.
 */
export function preferredRegion(specificSpeed?: number): FlowRegion {
  if (isAbove("axial", specificSpeed)) return { least: 0.9, most: 1.1 };
  return isAbove("high", specificSpeed) ? MIXED_FLOW : RADIAL;
}

const RADIAL: FlowRegion = { least: 0.7, most: 1.2 };
const MIXED_FLOW: FlowRegion = { least: 0.8, most: 1.15 };

/** The preferred region; of a pump whose speed nobody states, the part that pumps of the usual two kinds share. */
export function surelyPreferred(specificSpeed?: number): FlowRegion {
  return specificSpeed === undefined ? MIXED_FLOW : preferredRegion(specificSpeed);
}

/** Flows over the best efficiency flow: below the first the least continuous flow is doubted, below the second it is broken. */
export interface LeastFlows {
  readonly doubted: number;
  readonly continuous: number;
}

/** Least flows where no maker states one: 0.3 and 0.1; above n_s 87 (N_s 4500) 0.5 and 0.3. House choice. */
export function leastFlows(specificSpeed?: number): LeastFlows {
  return isAbove("high", specificSpeed) ? { doubted: 0.5, continuous: 0.3 } : { doubted: 0.3, continuous: 0.1 };
}

/**
 * Preferred region and least flows of a pump over its best efficiency flow, by specific speed (rpm, m³/s, m); without one
 * as `surelyPreferred`.
 * Fails: a specific speed not above 0.
 * Source: ANSI/HI 9.6.3; house choice of the least flows.
 */
export function operatingRegion(specificSpeed: number | undefined): Result<FlowRegion & LeastFlows> {
  const checked = specificSpeed === undefined ? succeed(null) : checkInputs(operatingRegionMethod, { specificSpeed });
  return checked.ok ? succeed({ ...surelyPreferred(specificSpeed), ...leastFlows(specificSpeed) }) : checked;
}

/** Whether a flow over the best efficiency flow lies in a region; at its end it does. */
export function isInRegion(flowRatio: number, { least, most }: FlowRegion): boolean {
  return flowRatio * ROUNDING >= least && flowRatio <= most * ROUNDING;
}

/** Finding, by the code given, of a flow over best efficiency flow outside the preferred region. */
export function regionRemark(
  code: "outside-preferred-region" | "one-pump-alone-outside-region",
  flowRatio: number,
  specificSpeed?: number,
): Finding | undefined {
  const region = preferredRegion(specificSpeed);
  if (isInRegion(flowRatio, region)) return undefined;
  const basis = specificSpeed === undefined ? "for specific speeds up to 87, N_s 4500" : "by its specific speed";
  const facts = { least: amount("percent", region.least), most: amount("percent", region.most), basis };
  const found = amount("percent", flowRatio);
  return { code, kind: "check", subject: "flow", found, facts, cites: REGION_RULE };
}

/** A flow too small for long running, by `leastFlows`. Warns: flow-below-minimum (house choice). */
export function minimumFlowRemark(flowRatio: number, specificSpeed?: number): Finding | undefined {
  const { doubted, continuous } = leastFlows(specificSpeed);
  if (flowRatio >= doubted) return undefined;
  const isTiny = flowRatio < continuous;
  const limit = { quantity: "percent", value: isTiny ? continuous : doubted, side: "at least" } as const;
  const advice = isTiny ? "do not run it there continuously" : "ask the maker for the minimum continuous flow";
  const found = amount("percent", flowRatio);
  return {
    code: "flow-below-minimum",
    kind: isTiny ? "limit" : "check",
    subject: "flow",
    found,
    limit,
    facts: { advice },
    cites: MINIMUM_RULE,
  };
}
