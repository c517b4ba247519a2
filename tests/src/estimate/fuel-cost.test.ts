import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { unitOf } from "../../../src/basis/units.ts";
import { type FuelCost, type FuelCostInputs, fuelCost } from "../../../src/estimate/fuel-cost.ts";
import { fuelPriceNamed } from "../../../src/estimate/fuel-price.ts";

const HOUR = 3600;
const LITRE = 1e-3;
const GRAM_A_KILOWATT_HOUR = unitOf("g/kWh").factor;

const base: FuelCostInputs = {
  shaftPower: 100_000,
  hours: 1000 * HOUR,
  fuelPrice: 1.2 / LITRE,
  specificConsumption: 210 * GRAM_A_KILOWATT_HOUR,
  loadFactor: 0.8,
};

function costOf(change: Partial<FuelCostInputs> = {}): FuelCost {
  const cost = fuelCost({ ...base, ...change });
  if (!cost.ok) throw new Error(JSON.stringify(cost.findings));
  return cost.value;
}

describe("cost of fuel", () => {
  it("is power, load, consumption and hours over the density, times the price", () => {
    // By hand: 80 kW × 210 g/kWh = 16.8 kg/h; / 0.84 kg/L = 20 L/h; 1000 h: 20 000 L; × 1.2.
    const { rate, volume, cost } = costOf();
    expect(rate / (LITRE / HOUR)).toBeCloseTo(20, 9);
    expect(volume / LITRE).toBeCloseTo(20_000, 6);
    expect(cost).toBeCloseTo(24_000, 6);
  });

  it("grows in step with hours, price, load and consumption", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.9, max: 1.2, noNaN: true }), (times) => {
        for (const key of ["shaftPower", "hours", "fuelPrice", "loadFactor", "specificConsumption"] as const) {
          expect(costOf({ [key]: (base[key] as number) * times }).cost / costOf().cost).toBeCloseTo(times, 9);
        }
      }),
    );
  });

  it("takes the usual consumption at the mean power where none is given, with a caution", () => {
    // Common practice, no source: 228 g/kWh at 110 kW.
    const unknown = fuelCost({ ...base, shaftPower: 137_500, specificConsumption: null });
    expect(unknown.ok && unknown.value.rate / (LITRE / HOUR)).toBeCloseTo((110 * 228) / 840, 6);
    expect(unknown.findings).toMatchObject([{ code: "fuel-consumption-assumed" }]);
  });

  it.each([
    ["hours", -1],
    ["fuelPrice", -1],
    ["loadFactor", 0],
    ["loadFactor", 1.01],
    ["shaftPower", 0],
    ["specificConsumption", 179 * GRAM_A_KILOWATT_HOUR],
    ["specificConsumption", 401 * GRAM_A_KILOWATT_HOUR],
  ] as const)("refuses %s of %d", (input, value) => {
    const refused = fuelCost({ ...base, [input]: value });
    expect(refused.ok).toBe(false);
    expect(refused.findings.map(({ code }) => code)).toEqual(["out-of-range"]);
  });

  it.each([
    ["loadFactor", 1],
    ["hours", 0],
    ["fuelPrice", 0],
  ] as const)("takes %s of %d", (input, value) => {
    expect(fuelCost({ ...base, [input]: value }).ok).toBe(true);
  });
});

describe("a written price of fuel", () => {
  // NIST SP 811: a US gallon is 3.785 411 784 L, an imperial one 4.546 09 L.
  it.each([
    { text: "3.785411784 per US gal", litre: 1 },
    { text: "3.785411784/gal", litre: 1 },
    { text: "1.03 per L", litre: 1.03 },
    { text: "1,03 / l", litre: 1.03 },
    { text: "1030 per m3", litre: 1.03 },
    { text: "4.54609 an imp gal", litre: 1 },
  ])("reads $text", ({ text, litre }) => {
    const read = fuelPriceNamed(text, "fuel price");
    if (!read.ok) throw new Error(JSON.stringify(read.findings));
    expect(read.value * LITRE).toBeCloseTo(litre, 9);
  });

  it.each([
    { text: "3.90", code: "unit-missing" },
    { text: "3.90 per kg", code: "unit-unknown" },
    { text: "3.90 per mile", code: "unit-unknown" },
    { text: "dear", code: "not-a-number" },
    { text: "", code: "not-a-number" },
    { text: "1,030 per L", code: "number-ambiguous" },
  ])("refuses “$text”", ({ text, code }) => {
    const read = fuelPriceNamed(text, "fuel price");
    expect(read.ok).toBe(false);
    expect(read.findings.map((finding) => finding.code)).toEqual([code]);
  });
});
