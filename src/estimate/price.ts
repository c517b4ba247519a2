import { checkInputs, type Method } from "../basis/method.ts";
import { type Result, succeed } from "../basis/result.ts";

export type ProfitOn = "margin" | "markup";
export const PROFIT_ON: readonly ProfitOn[] = ["margin", "markup"];

type PriceKey = "directCost" | "overhead" | "contingency" | "margin" | "markup" | "taxableShare" | "tax";

export const priceMethod = {
  cites: [
    {
      source: "practice",
      at: "price = (direct cost + overhead + contingency)/(1 − margin); margin = markup/(1 + markup)",
    },
    {
      source: "practice",
      at: "contingency 3 % to 5 % on a firm scope, 10 % to 20 % on a budget price, 30 % on a concept",
    },
  ],
  inputs: {
    directCost: { name: "direct cost", quantity: "ratio", atLeast: 0 },
    overhead: { name: "overhead", quantity: "percent", atLeast: 0, atMost: 5 },
    contingency: { name: "contingency", quantity: "percent", atLeast: 0, atMost: 1 },
    margin: { name: "profit margin", symbol: "M", quantity: "percent", atLeast: 0, below: 1 },
    markup: { name: "markup on cost", symbol: "m", quantity: "percent", atLeast: 0, atMost: 10 },
    taxableShare: { name: "taxable share", quantity: "percent", atLeast: 0, atMost: 1 },
    tax: { name: "tax", quantity: "percent", atLeast: 0, atMost: 1 },
  },
} as const satisfies Method<PriceKey>;

const { margin, markup, ...OTHERS } = priceMethod.inputs;
/** The same method by what the profit is a share of. */
const BY_PROFIT = {
  margin: { ...priceMethod, inputs: { ...OTHERS, profit: margin } },
  markup: { ...priceMethod, inputs: { ...OTHERS, profit: markup } },
} as const;

export interface PriceInputs {
  /** Labour, materials, equipment, fuel and subcontracts, in any money. */
  readonly directCost: number;
  /** Of the direct cost, a fraction. */
  readonly overhead: number;
  /** Of direct cost and overhead together, a fraction. */
  readonly contingency: number;
  /** Of the price where it is a margin, of the cost where it is a markup; a fraction. */
  readonly profit: number;
  readonly profitOn: ProfitOn;
  /** Of the selling price, a fraction. */
  readonly taxableShare: number;
  /** Of the taxable share, a fraction. */
  readonly tax: number;
}

/** Every line of the price, in the money of the direct cost; margin and markup as fractions. */
export interface Price {
  readonly overhead: number;
  readonly contingency: number;
  readonly cost: number;
  readonly profit: number;
  readonly sellingPrice: number;
  readonly tax: number;
  readonly priceWithTax: number;
  readonly margin: number;
  readonly markup: number;
}

/**
 * Selling price line by line, in the money of the direct cost: overhead, contingency on both, profit on all, tax last.
 * Formula: cost = direct (1 + o) (1 + c); price = cost/(1 − M) with a margin M, cost (1 + m) with a markup m
 *          M = m/(1 + m); tax = price × taxable share × rate
 * Fails: out-of-range inputs as the method bounds them (a margin below 100 %).
 * Source: common practice.
 */
export function priceRollUp({ profitOn, ...inputs }: PriceInputs): Result<Price> {
  const checked = checkInputs(BY_PROFIT[profitOn], inputs);
  if (!checked.ok) return checked;
  const { directCost, profit } = inputs;
  const overhead = directCost * inputs.overhead;
  const contingency = (directCost + overhead) * inputs.contingency;
  const cost = directCost + overhead + contingency;
  const sellingPrice = profitOn === "margin" ? cost / (1 - profit) : cost * (1 + profit);
  const tax = sellingPrice * inputs.taxableShare * inputs.tax;
  return succeed({
    overhead,
    contingency,
    cost,
    profit: sellingPrice - cost,
    sellingPrice,
    tax,
    priceWithTax: sellingPrice + tax,
    margin: profitOn === "margin" ? profit : profit / (1 + profit),
    markup: profitOn === "margin" ? profit / (1 - profit) : profit,
  });
}
