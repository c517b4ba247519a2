import { describe, expect, it } from "vitest";
import { inUnit } from "../../../src/basis/conversion.ts";
import type { Quantity } from "../../../src/basis/quantities.ts";
import { readNumber, readQuantity, readWrittenAmount, unitsThatDo } from "../../../src/basis/quantity-text.ts";
import { type UnitSymbol, unitOf } from "../../../src/basis/units.ts";

describe("a number as typed", () => {
  it.each([
    ["1200", 1200],
    [" 1200 ", 1200],
    ["-4.5e-3", -0.0045],
    ["−12", -12],
    ["+3", 3],
    [".5", 0.5],
    ["1,200,000", 1_200_000],
    ["1,200.5", 1200.5],
    ["12,5", 12.5],
    ["0,125", 0.125],
  ])("“%s” is %d", (text, value) => {
    expect(readNumber(text, "flow")).toMatchObject({ ok: true, value });
  });

  it("asks whether “1,200” is twelve hundred or one and a fifth", () => {
    const read = readNumber("1,200", "flow");
    expect(read.ok).toBe(false);
    expect(read.findings[0]).toMatchObject({
      code: "number-ambiguous",
      subject: "flow",
      suggestions: ["1200", "1.200"],
    });
  });

  it.each(["", "abc", "1.2.3", "0x10", "1e999", "Infinity", "NaN", "12a", "1,20,300", "--2", "."])(
    "“%s” is refused",
    (text) => {
      expect(readNumber(text, "flow")).toMatchObject({ ok: false, findings: [{ code: "not-a-number" }] });
    },
  );
});

describe("an amount as typed", () => {
  it.each([
    ["45 L/s", 45, "L/s"],
    ["45L/s", 45, "L/s"],
    ["1,200.5 gpm", 1200.5, "US gpm"],
    ["12,5 m3/h", 12.5, "m³/h"],
    ["1.5e3 gpm", 1500, "US gpm"],
    ["-20 °C", -20, "°C"],
    ["−20 degC", -20, "°C"],
    ["68°F", 68, "°F"],
    ['6"', 6, "in"],
    ["6 in.", 6, "in"],
    ["6'", 6, "ft"],
    ["5 ft 6 in", 5.5, "ft"],
    ["5 ft. 6 in.", 5.5, "ft"],
    [`5' 6"`, 5.5, "ft"],
    [`5'-6"`, 5.5, "ft"],
    ["5’ 6″", 5.5, "ft"],
    [`5'-6 3/4"`, 5 + 6.75 / 12, "ft"],
    ["-5 ft 6 in", -5.5, "ft"],
    ["-0 ft 6 in", -0.5, "ft"],
    ["2-1/2 in", 2.5, "in"],
    ["2 1/2 in", 2.5, "in"],
    ['1/2"', 0.5, "in"],
    ["-10 3/4 in", -10.75, "in"],
    ["3 MPa", 3, "MPa"],
    ["3 mPa·s", 3, "mPa·s"],
    ["1750 1/min", 1750, "rpm"],
    ["100 %", 100, "%"],
  ] as const)("“%s” is %d %s", (text, value, symbol) => {
    const read = readWrittenAmount(text, "size", "1 m");
    expect(read.ok).toBe(true);
    if (!read.ok) return;
    expect(read.value.value).toBeCloseTo(value, 12);
    expect(read.value.unit.symbol).toBe(symbol);
  });

  it.each([
    ["45", "unit-missing"],
    ["", "not-a-number"],
    ["about 45 gpm", "not-a-number"],
    ["45 gpx", "unit-unknown"],
    ["1,200 gpm", "number-ambiguous"],
    ["1 200 L/s", "unit-unknown"],
    ["1/0 in", "not-a-number"],
    ["3 mPa", "unit-ambiguous"],
    ["3 ton", "unit-ambiguous"],
    ["5 ft 6", "unit-unknown"],
  ])("“%s” is refused: %s", (text, code) => {
    const read = readWrittenAmount(text, "flow", "45 L/s");
    expect(read).toMatchObject({ ok: false, findings: [{ code, kind: "error", subject: "flow" }] });
  });
});

describe("an amount of a quantity", () => {
  it.each<[string, Quantity, number]>([
    ["45 L/s", "flow", 0.045],
    ["14 ft", "head", 4.2672],
    ["2.1 bar", "gaugePressure", 210_000],
    ["2.1 bar(g)", "gaugePressure", 210_000],
    ["14.7 psia", "absolutePressure", 101_352.93221],
    ["68 degF", "temperature", 293.15],
    ["18 degF", "temperatureDifference", 10],
    ["18 °F difference", "temperatureDifference", 10],
    ["35 ‰", "salinity", 0.035],
    ["3.5 %", "salinity", 0.035],
  ])("“%s” as %s", (text, quantity, value) => {
    const read = readQuantity(text, quantity, "amount");
    expect(read.ok).toBe(true);
    if (read.ok) expect(read.value).toBeCloseTo(value, 5);
  });

  it.each<[string, Quantity]>([
    ["14 ft", "flow"],
    ["2 bar(a)", "gaugePressure"],
    ["2 psig", "absolutePressure"],
    ["2 psig", "pressureDifference"],
    ["10 K difference", "temperature"],
    ["3 cP", "kinematicViscosity"],
  ])("“%s” is no %s", (text, quantity) => {
    expect(readQuantity(text, quantity, "amount")).toMatchObject({
      ok: false,
      findings: [{ code: "unit-wrong-kind" }],
    });
  });

  it("names units that would do", () => {
    expect(unitsThatDo("flow")).toBe("US gpm, L/s or m³/h");
    expect(unitsThatDo("size")).toBe("in or mm");
    expect(unitsThatDo("percent")).toBe("%");
    expect(unitsThatDo("ratio")).toBe("a plain number");
  });
});

describe("an amount in another unit", () => {
  const convert = (value: number, from: UnitSymbol, to: UnitSymbol) =>
    inUnit({ value, unit: unitOf(from) }, unitOf(to), "quantity text");

  // Exact definitions, NIST SP 811 appendix B.
  it.each<[number, UnitSymbol, UnitSymbol, number]>([
    [1, "US gal", "in³", 231],
    [-40, "°F", "°C", -40],
    [10, "K difference", "°F difference", 18],
    [30, "psig", "kPa", 206.842718795],
    [14.5, "psia", "kPa(a)", 99.973980751],
    [760, "mmHg", "psia", 14.695952],
  ])("%d %s in %s is %d", (value, from, to, expected) => {
    const result = convert(value, from, to);
    expect(result.ok).toBe(true);
    if (result.ok) expect(result.value).toBeCloseTo(expected, 6);
  });

  it.each<[UnitSymbol, UnitSymbol]>([
    ["psig", "psia"],
    ["kPa(a)", "bar(g)"],
    ["psi", "psia"],
    ["kPa(a)", "bar"],
  ])("%s is not given in %s: gauge and absolute", (from, to) => {
    expect(convert(30, from, to)).toMatchObject({
      ok: false,
      findings: [{ code: "gauge-or-absolute", given: `30 ${from}` }],
    });
  });

  it.each<[UnitSymbol, UnitSymbol]>([
    ["ft", "psi"],
    ["°C", "K difference"],
    ["cP", "cSt"],
    ["lb", "lbf"],
  ])("%s is not given in %s: another kind", (from, to) => {
    expect(convert(30, from, to)).toMatchObject({ ok: false, findings: [{ code: "unit-wrong-kind" }] });
  });
});
