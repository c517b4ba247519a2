import { checkInputs, type Method } from "../basis/method.ts";
import { type Result, succeed } from "../basis/result.ts";

export const lifeCycleCostMethod = {
  cites: [{ source: "hi-europump-lcc", at: "present value of the cost elements" }],
  inputs: {
    firstCost: { name: "first cost", symbol: "C_0", quantity: "ratio", atLeast: 0 },
    yearlyCost: { name: "yearly cost", symbol: "C_y", quantity: "ratio", atLeast: 0 },
    years: { name: "years", symbol: "n", quantity: "ratio", above: 0, atMost: 200 },
    discountRate: { name: "discount rate", symbol: "r", quantity: "percent", above: -1, atMost: 1 },
    inflation: { name: "inflation", symbol: "p", quantity: "percent", above: -1, atMost: 1 },
  },
} as const satisfies Method<"firstCost" | "yearlyCost" | "years" | "discountRate" | "inflation">;

export interface LifeCycleCostInputs {
  /** Money spent at the start. */
  readonly firstCost: number;
  /** Money spent in each year, at today's prices. */
  readonly yearlyCost: number;
  readonly years: number;
  /** Nominal where inflation is given, real where it is 0; a fraction. */
  readonly discountRate: number;
  /** Of the yearly cost, a fraction. */
  readonly inflation: number;
}

/**
 * Present value of a first cost and of a yearly cost at the end of each year, in the money they are given in.
 * Formula: C_0 + C_y (1 − (1 + i)^−n)/i, i = (1 + r)/(1 + p) − 1; at i = 0 the factor is n
 * Fails: out-of-range inputs as the method bounds them (n above 0, r and p above −1 up to 1: a rate of 5 is not 5 %).
 * Source: Hydraulic Institute and Europump, Pump Life Cycle Costs.
 */
export function lifeCycleCost(inputs: LifeCycleCostInputs): Result<number> {
  const checked = checkInputs(lifeCycleCostMethod, { ...inputs });
  if (!checked.ok) return checked;
  const { firstCost, yearlyCost, years, discountRate, inflation } = inputs;
  const realRate = (discountRate - inflation) / (1 + inflation);
  return succeed(firstCost + yearlyCost * presentValueFactor(realRate, years));
}

/** Through logarithms, which keep their figures at a rate near 0. */
function presentValueFactor(rate: number, years: number): number {
  return rate === 0 ? years : -Math.expm1(-years * Math.log1p(rate)) / rate;
}
