import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Price, type PriceInputs, priceRollUp } from "../../../src/estimate/price.ts";

const base: PriceInputs = {
  directCost: 10_000,
  overhead: 0.1,
  contingency: 0.05,
  profit: 0.2,
  profitOn: "margin",
  taxableShare: 0.5,
  tax: 0.08,
};

function priceOf(change: Partial<PriceInputs> = {}): Price {
  const price = priceRollUp({ ...base, ...change });
  if (!price.ok) throw new Error(JSON.stringify(price.findings));
  return price.value;
}

describe("a price from direct cost", () => {
  it("rolls up in the order of the trade", () => {
    // By hand: 10 000; 10 % of it 1000; 5 % of 11 000 is 550; cost 11 550; / 0.8 = 14 437.50; 8 % of half of it 577.50.
    const price = priceOf();
    expect(price.overhead).toBeCloseTo(1000, 9);
    expect(price.contingency).toBeCloseTo(550, 9);
    expect(price.cost).toBeCloseTo(11_550, 9);
    expect(price.sellingPrice).toBeCloseTo(14_437.5, 9);
    expect(price.profit).toBeCloseTo(2887.5, 9);
    expect(price.tax).toBeCloseTo(577.5, 9);
    expect(price.priceWithTax).toBeCloseTo(15_015, 9);
    expect(price.margin).toBe(0.2);
    // By hand: 0.2 / 0.8.
    expect(price.markup).toBeCloseTo(0.25, 12);
  });

  // By hand, M = m/(1 + m); 30 % of markup is 23.1 % of margin in the estimating texts too (from memory).
  it.each([
    { markup: 0.3, margin: 0.230769 },
    { markup: 0.5, margin: 0.333333 },
    { markup: 1, margin: 0.5 },
    { markup: 0, margin: 0 },
  ])("a markup of $markup is a margin of $margin", ({ markup, margin }) => {
    const marked = priceOf({ profit: markup, profitOn: "markup" });
    expect(marked.margin).toBeCloseTo(margin, 6);
    expect(marked.sellingPrice).toBeCloseTo(11_550 * (1 + markup), 9);
    expect(priceOf({ profit: marked.margin }).sellingPrice).toBeCloseTo(marked.sellingPrice, 6);
    expect(priceOf({ profit: marked.margin }).markup).toBeCloseTo(markup, 9);
  });

  it("grows with every share of it", () => {
    const share = fc.double({ min: 0, max: 0.9, noNaN: true });
    const keys = ["overhead", "contingency", "profit", "taxableShare", "tax"] as const;
    fc.assert(
      fc.property(fc.constantFrom(...keys), share, share, (key, one, other) => {
        fc.pre(Math.abs(one - other) > 1e-6);
        const low = priceOf({ [key]: Math.min(one, other) }).priceWithTax;
        expect(priceOf({ [key]: Math.max(one, other) }).priceWithTax).toBeGreaterThan(low);
      }),
    );
  });

  it.each<Partial<PriceInputs>>([
    { profit: 0.999_999 },
    { profit: 10, profitOn: "markup" },
    { overhead: 5 },
    { contingency: 1 },
    { taxableShare: 1, tax: 1 },
    { directCost: 0, overhead: 0, contingency: 0, profit: 0, taxableShare: 0, tax: 0 },
  ])("takes %o", (change) => {
    expect(priceRollUp({ ...base, ...change }).ok).toBe(true);
  });

  it.each<Partial<PriceInputs>>([
    { profit: 1 },
    { profit: 1.2 },
    { profit: -0.01 },
    { profit: 10.01, profitOn: "markup" },
    { profit: -0.01, profitOn: "markup" },
    { directCost: -1 },
    { overhead: -0.01 },
    { overhead: 5.01 },
    { contingency: -0.01 },
    { contingency: 1.01 },
    { taxableShare: 1.01 },
    { taxableShare: -0.01 },
    { tax: 1.01 },
    { tax: -0.01 },
  ])("refuses %o", (change) => {
    const refused = priceRollUp({ ...base, ...change });
    expect(refused.ok).toBe(false);
    expect(refused.findings.map(({ code }) => code)).toEqual(["out-of-range"]);
  });
});
