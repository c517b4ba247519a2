import { numfmt } from "@univerjs/core";
import { describe, expect, it } from "vitest";
import { decimalsOf, numberFormat, UNIT_PRICE_FORMAT } from "../../../shared/calc-sheet/styles.ts";
import { digitsOf } from "../../../shared/text/digits.ts";
import { figureIn, figureSaid, figures, moneyFigure, saidApart } from "../../../shared/text/figure.ts";
import { comparedText } from "../../../shared/text/verdict-text.ts";
import { printedUnit, QUANTITIES, type Quantity, UNIT_SET_NAMES } from "../../../src/basis/quantities.ts";

// Digits as the trade reads them: common practice, no source. Roundings by hand.
describe("a figure beside its unit", () => {
  it.each([
    ["US gpm", 1000.4, "1,000"],
    ["US gpm", 62.48, "62"],
    ["L/s", 63.09, "63.1"],
    ["L/s", 222.6, "223"],
    ["L/s", 99.96, "100"],
    ["m³/h", 1234.5, "1,235"],
    ["ft", 96.583, "96.6"],
    ["ft", 1250.02, "1,250.0"],
    ["m", 25.77, "25.8"],
    ["m", -10, "-10.0"],
    ["psig", 168.7, "169"],
    ["psig", 9.62, "9.6"],
    ["psig", -4.26, "-4.3"],
    ["psig", -12.228, "-12.2"],
    ["bar(g)", -1.0132, "-1.01"],
    ["kPa(g)", -82.74, "-82.7"],
    ["psia", 14.696, "14.7"],
    ["psia", 0.3388, "0.34"],
    ["kPa(g)", 1634.4, "1,634"],
    ["bar(g)", 15.96, "16.0"],
    ["bar(g)", -0.348, "-0.35"],
    ["hp", 29.684, "29.7"],
    ["hp", 121.34, "121"],
    ["kW", 4.581, "4.58"],
    ["kW", 9.996, "10.0"],
    ["rpm", 1639.3, "1,639"],
    ["ft/s", 7.874, "7.9"],
    ["m/s", 1.748, "1.75"],
    ["°F", 67.98, "68"],
    ["°C", 20.4, "20"],
    ["%", 76.54, "77"],
    ["%", 9.756, "9.8"],
    ["%", 9.96, "10"],
  ])("%s: %d is %s", (unit, value, text) => {
    expect(figureIn(unit, value)).toBe(text);
  });

  it("is 0 where only the trace of a calculation is left, without a sign", () => {
    expect([figureIn("%", -0.00001976), figureIn("ft", 3e-14), figureIn("US gpm", -0)]).toEqual(["0", "0", "0"]);
  });

  it("shows what is small, and is not nothing", () => {
    expect([figureIn("ft", 0.042), figureIn("ft", -0.0049), figureIn("US gpm", 0.4)]).toEqual([
      "0.04",
      "-0.005",
      "0.4",
    ]);
  });

  it("has digits for every unit that a quantity is printed in", () => {
    const units = Object.keys(QUANTITIES).flatMap((quantity) =>
      UNIT_SET_NAMES.map((set) => printedUnit(quantity as Quantity, set)),
    );
    expect(units.filter((unit) => digitsOf(unit) === undefined)).toEqual([]);
  });

  it("has four significant figures beside a unit of somebody's own", () => {
    expect([figureIn("litres a head", 12.3456), figures(123456), figures(0.0012345)]).toEqual([
      "12.35",
      "123,456",
      "0.001234",
    ]);
  });
});

describe("a figure in a sentence", () => {
  it("stands as it was stated", () => {
    expect([
      figureSaid("m", 1.25),
      figureSaid("ft", 100),
      figureSaid("US gpm", 62.5),
      figureSaid("in", 0.00005),
    ]).toEqual(["1.25", "100", "62.5", "0.00005"]);
  });

  it("is rounded where it was worked out", () => {
    expect(figureSaid("ft", 96.58312457)).toBe("96.6");
  });
});

describe("a figure that rounds onto its limit", () => {
  it.each([
    ["ft", 10.04, 10, "10.04", "10"],
    ["psig", 150.3141592, 150, "150.3", "150"],
    ["%", 80.000123456, 80, "80.0001", "80"],
    ["ft", 14.123456789, 14.109876543, "14.12", "14.11"],
  ])("shows more digits: %s %d of %d", (unit, found, limit, one, other) => {
    expect(saidApart(unit, found, limit)).toEqual([one, other]);
  });

  it("never fails beside itself", () => {
    const comparison = { found: 10.0000004, limit: 10, mustBe: "at most", broken: "fail", held: "pass" } as const;
    const words = { what: "casing", unit: "bar(g)", when: "", why: "", assumed: "" };
    expect(comparedText("fail", comparison, words)).toBe("Fails: casing, 10.0000004 of 10 bar(g).");
  });

  it("is one with it where nothing but rounding parts them", () => {
    expect(saidApart("ft", 0.1 + 0.2, 0.3)).toEqual(["0.3", "0.3"]);
  });
});

// An estimate is read whole, small amounts with their cents: common practice, no source. Roundings by hand.
describe("an amount of money", () => {
  it.each([
    [0, "0.00"],
    [0.126, "0.13"],
    [96.6, "96.60"],
    [999.994, "999.99"],
    [999.996, "1,000"],
    [1000, "1,000"],
    [24_500.6, "24,501"],
    [1_234_567, "1,234,567"],
  ])("%d is %s, in the pane and in its cell", (value, text) => {
    expect(moneyFigure(value)).toBe(text);
    expect(numfmt.format(numberFormat("money", "US"), value)).toBe(text);
  });

  it.each([
    [0.1, "0.10"],
    [0.085, "0.085"],
    [3.9, "3.90"],
    [1200, "1,200.00"],
  ])("%d, the price of one unit, is %s", (value, text) => {
    expect(numfmt.format(UNIT_PRICE_FORMAT, value)).toBe(text);
  });
});

describe("the number format of a cell", () => {
  it.each([
    ["flow", "US", "#,##0"],
    ["head", "US", "#,##0.0"],
    ["head", "METRIC", "#,##0.0"],
    ["gaugePressure", "METRIC", "#,##0.00"],
    ["velocity", "SI", "#,##0.00"],
    ["power", "SI", "#,##0.00"],
    ["speed", "US", "#,##0"],
  ] as const)("of %s in %s is %s", (quantity, units, format) => {
    expect(numberFormat(quantity, units)).toBe(format);
  });

  it("rounds to what the pane shows: it has as many decimals, or more", () => {
    const fewer = UNIT_SET_NAMES.flatMap((set) =>
      (Object.keys(QUANTITIES) as Quantity[]).filter((quantity) =>
        [0.7, 4.44, 44.44, 444.44, 4444.44].some((value) => {
          const shown = figureIn(printedUnit(quantity, set), value).replaceAll(",", "");
          return (shown.split(".")[1]?.length ?? 0) > decimalsOf(quantity, set);
        }),
      ),
    );
    expect(fewer).toEqual([]);
  });
});
