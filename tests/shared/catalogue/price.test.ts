import { describe, expect, it } from "vitest";
import { cell, numberIn, refusal, remarks } from "../../support/cells.ts";

type Answer = readonly (readonly (string | number)[])[];

/** One figure of a record by its heading. */
function figure(answer: unknown, heading: string): string | number | undefined {
  const [headings = [], values = []] = answer as Answer;
  const place = headings.indexOf(heading);
  if (place < 0) throw new Error(`no ${heading} in ${headings.join("; ")}`);
  return values[place];
}

describe("a price in cells", () => {
  it("says every line", () => {
    // By hand: 10 000 + 1000 + 550 = 11 550; / 0.8 = 14 437.50; 8 % of it 1155.
    const price = cell("SELLINGPRICE", 10_000, 10, 5, 20, "margin", null, 8);
    expect((price as Answer)[1]).toEqual([
      10_000,
      1000,
      550,
      11_550,
      expect.closeTo(2887.5, 9),
      expect.closeTo(14_437.5, 9),
      expect.closeTo(1155, 9),
      expect.closeTo(15_592.5, 9),
      expect.closeTo(20, 9),
      expect.closeTo(25, 9),
    ]);
  });

  it("takes 30 % of markup for 23.1 % of margin, and the other way round", () => {
    const marked = cell("SELLINGPRICE", 1000, 0, 0, 30, "Markup");
    expect(figure(marked, "selling price")).toBeCloseTo(1300, 9);
    expect(figure(marked, "profit margin, %")).toBeCloseTo(23.0769, 4);
    expect(figure(cell("SELLINGPRICE", 1000, 0, 0, "23.0769 %", "margin"), "markup on cost, %")).toBeCloseTo(30, 3);
  });

  it("refuses a margin of 100 %, and takes a fraction", () => {
    expect(refusal("SELLINGPRICE", 1000, 0, 0, 100, "margin")).toMatch(
      /Profit margin must be below 100 %; 100 % was given/,
    );
    expect(refusal("SELLINGPRICE", 1000, 0, 0, 1, "margin")).toMatch(/must be below 100 %; 100 % was given/);
    expect(cell("SELLINGPRICE", 1000, 0.1, 0, 0.2, "margin")).toEqual(
      cell("SELLINGPRICE", 1000, "10 %", 0, "20 %", "margin"),
    );
    expect(numberOf(cell("SELLINGPRICE", 1000, "0.5 %", 0, 0, "margin"), "overhead")).toBeCloseTo(5, 9);
  });

  it("asks whether the profit is a margin or a markup", () => {
    expect(refusal("SELLINGPRICE", 1000, 10, 5, 20)).toMatch(/Profit on is left out/);
    expect(refusal("SELLINGPRICE", 1000, 10, 5, 20, "cost")).toMatch(/"margin" or "markup"/);
  });

  it("doubts a 0 that a blank cell may be, and wants every share", () => {
    expect(remarks("SELLINGPRICE", 1000, 0, 5, 20, "margin")).toEqual(["check zero-may-be-blank"]);
    expect(refusal("SELLINGPRICE", 1000, null, 5, 20, "margin")).toMatch(/Overhead is left out/);
  });

  it("grows with the margin", () => {
    const priceAt = (margin: number): number =>
      numberOf(cell("SELLINGPRICE", 500, 10, 5, margin, "margin"), "selling price");
    const prices = [2, 5, 20, 50, 99].map(priceAt);
    expect(prices).toEqual(prices.toSorted((a, b) => a - b));
  });
});

describe("rental in cells", () => {
  it("says terms and money", () => {
    // By hand: 40 and 5 days are a month of 28, two weeks and 3 days: 1350 + 900 + 3 × 140 = 2670; with 600 and 500.
    const hire = cell("RENTAL", 40, 140, 450, 1350, 5, 7, 600, 500);
    expect((hire as Answer)[1]).toEqual([45, 1, 2, 3, 2670, 600, 500, 3770]);
  });

  it("doubts a rate of 0 and one above the shorter term's", () => {
    expect(remarks("RENTAL", 5, 100, 300, 0)).toContain("check zero-may-be-blank");
    expect(remarks("RENTAL", 5, 100, 800, 2400)).toEqual(["check rental-rate-above-shorter"]);
    expect(refusal("RENTAL", 0, 100, 300, 900)).toMatch(/Days must be above 0/);
  });
});

describe("fuel in cells", () => {
  it("takes a bare price for the volume of the unit set", () => {
    // By hand: 80 kW × 210 g/kWh / 840 g/L = 20 L/h, 1000 h, 1.2 a litre.
    const metric = cell("FUELCOST", 100, 1000, 1.2, 210, 80, "METRIC");
    expect((metric as Answer)[1]).toEqual([expect.closeTo(20, 9), expect.closeTo(20, 9), expect.closeTo(24_000, 6)]);
    // NIST SP 811: 3.785411784 L a US gallon.
    const inGallons = cell("FUELCOST", "100 kW", 1000, 1.2 * 3.785411784, "210 g/kWh", 80);
    expect(figure(inGallons, "cost of fuel")).toBeCloseTo(24_000, 6);
    expect(figure(inGallons, "fuel, US gal")).toBeCloseTo(20_000 / 3.785411784, 6);
    expect(figure(cell("FUELCOST", "100 kW", 1000, "1.2 per L", "210 g/kWh", 80), "cost of fuel")).toBeCloseTo(
      24_000,
      6,
    );
  });

  it("refuses a price without a volume, and doubts one of 0", () => {
    expect(refusal("FUELCOST", 100, 1000, "3.90")).toMatch(/Fuel price is the text “3.90” without a unit; add one/);
    expect(refusal("FUELCOST", 100, 1000, "3.90 per kg")).toMatch(/“kg”, which is not known; use “3.90 per US gal”/);
    expect(cell("FUELCOST", 100, 1000, 4, null, 0.8)).toEqual(cell("FUELCOST", 100, 1000, 4, null, 80));
    expect(remarks("FUELCOST", 100, 1000, 0, "0.38 lb/hp-h")).toEqual(["check zero-may-be-blank"]);
  });
});

describe("masses, thrust and collapse in cells", () => {
  it("gives masses for a foot, a metre or a length", () => {
    // ASME B36.10M: 18.99 lb/ft, 28.26 kg/m.
    expect(figure(cell("PIPEMASS", "6in sch40"), "empty, lb")).toBeCloseTo(18.99, 1);
    expect(figure(cell("PIPEMASS", "6in sch40", null, null, "SI"), "empty, kg")).toBeCloseTo(28.26, 1);
    expect(numberOf(cell("PIPEMASS", "6in sch40", 1, 100), "full, lb") / 100).toBeCloseTo(31.5, 1);
    const [water, slurry] = [1, 1.4].map((sg) => numberOf(cell("PIPEMASS", "6in sch40", sg), "contents, lb"));
    expect((slurry ?? 0) / (water ?? 1)).toBeCloseTo(1.4, 9);
    expect(figure(cell("PIPEMASS", "6in suction hose"), "full, lb")).toBe("");
  });

  it("tells a bend from a dead end", () => {
    // By hand: 150 psi × 50.03 in²; a bend of 90° 2 sin 45° times that.
    expect(numberIn("BENDTHRUST", "8in sch40", 150, "Dead end")).toBeCloseTo(7504, 0);
    expect(numberIn("BENDTHRUST", "8in sch40", 150, "90°")).toBeCloseTo(10_612, -1);
    expect(refusal("BENDTHRUST", "8in sch40", 150)).toMatch(/Angle is left out/);
    expect(remarks("BENDTHRUST", "8in sch40", 150, 90)).toEqual(["check thrust-for-caution"]);
  });

  it("judges pipe on a vacuum", () => {
    // By hand with the modulus of 50 years, 3 % out of round, PE3608 at 68 °F: some 59 psi at DR 11 is 4 times a full vacuum; at
    // DR 13.5 some 30 psi at 60 000 psi (12 h) × 1.07 stands, the 29.5 psi of 50 years × 0.97 does not.
    expect(figure(cell("COLLAPSEPRESSURE", "8in HDPE DR11"), "verdict")).toBe("stands a full vacuum");
    expect(figure(cell("COLLAPSEPRESSURE", "8in HDPE DR13.5", 12), "verdict")).toBe("stands a full vacuum");
    expect(figure(cell("COLLAPSEPRESSURE", "8in HDPE DR17"), "verdict")).toBe("does not stand a full vacuum");
    expect(refusal("COLLAPSEPRESSURE", "6in suction hose")).toMatch(/how it buckles.*ask the maker/);
  });
});

function numberOf(answer: unknown, heading: string): number {
  const found = figure(answer, heading);
  if (typeof found !== "number") throw new Error(`${heading} is ${found}`);
  return found;
}
