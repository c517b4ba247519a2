import { describe, expect, it } from "vitest";
import { inUnit } from "../../../src/basis/conversion.ts";
import type { Quantity } from "../../../src/basis/quantities.ts";
import { readNumber, readQuantity, readWrittenAmount, unitsThatDo } from "../../../src/basis/quantity-text.ts";
import { toEngine, type UnitSymbol, unitOf } from "../../../src/basis/units.ts";
import { SIEVES_E11 } from "../../../src/tables/sieves-e11.ts";

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
    ["1 200", 1200],
    ["1\u00a0200", 1200],
    ["1\u2009200\u2009000", 1_200_000],
    ["1\u202f200,5", 1200.5],
    ["1'200", 1200],
    ["1’200’000", 1_200_000],
    ["1.200,5", 1200.5],
    ["1.200.000", 1_200_000],
    ["1.200", 1.2],
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
    ["5½ in", 5.5, "in"],
    ['½"', 0.5, "in"],
    ["2 ¾ in", 2.75, "in"],
    ["1 200 m3/h", 1200, "m³/h"],
    ["1\u00a0200 m³/h", 1200, "m³/h"],
    ["1'200 m3/h", 1200, "m³/h"],
    ["1.200,5 m3/h", 1200.5, "m³/h"],
    ["450 g.p.m.", 450, "US gpm"],
    ["450 U.S. gpm", 450, "US gpm"],
    ["60 p.s.i.", 60, "psi"],
    ["25 in. Hg", 25, "inHg"],
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
    ["1,200 m3/h", "number-ambiguous"],
    ["1,200 L/s", "number-ambiguous"],
    ["1,200 kPa", "number-ambiguous"],
    ["6,065 in", "number-ambiguous"],
    ["1 20 L/s", "digits-parted"],
    ["1 2000 L/s", "digits-parted"],
    ["1'20 L/s", "digits-parted"],
    ["12\u202f00 gpm", "digits-parted"],
    ["25 ft vac", "unit-unknown"],
    ["10+0", "unit-unknown"],
    ["33 mesh", "unit-unknown"],
    ["1/0 in", "not-a-number"],
    ["3 mPa", "unit-ambiguous"],
    ["3 ton", "unit-ambiguous"],
    ["5 ft 6", "unit-unknown"],
  ])("“%s” is refused: %s", (text, code) => {
    const read = readWrittenAmount(text, "flow", "45 L/s");
    expect(read).toMatchObject({ ok: false, findings: [{ code, kind: "error", subject: "flow" }] });
  });
});

// Thousands in the units of the US, stations of a line, vacuum and sieves.
describe("an amount read by a rule of the trade", () => {
  it.each<[string, Quantity, number, UnitSymbol]>([
    ["1,200 gpm", "flow", 1200, "US gpm"],
    ["5,500 ft", "elevation", 5500, "ft"],
    ["-1,500 ft", "elevation", -1500, "ft"],
    ["1,440 psi", "gaugePressure", 1440, "psi"],
    ["1,250 hp", "power", 1250, "hp"],
    ["1,750 rpm", "speed", 1750, "rpm"],
    ["1,100 °F", "temperature", 1100, "°F"],
    ["2,500 lb", "mass", 2500, "lb"],
    ["10+00", "length", 1000, "ft"],
    ["STA 12+34.5", "length", 1234.5, "ft"],
    ["0+50 ft", "length", 50, "ft"],
    ["1+200", "length", 1200, "m"],
    ["ch 0+350.5", "length", 350.5, "m"],
    ["100 mesh", "size", 0.15, "mm"],
    ["No. 200 mesh", "size", 0.075, "mm"],
  ])("“%s” as %s is %d %s", (text, quantity, value, symbol) => {
    const read = readQuantity(text, quantity, "amount");
    if (!read.ok) throw new Error(JSON.stringify(read.findings));
    expect(read.value).toBeCloseTo(toEngine(value, unitOf(symbol)), 9);
    const said = [{ code: "number-read-as", kind: "check", found: { quantity } }];
    // A station can be nothing else, and a column of them would fill the notes.
    expect(read.findings).toMatchObject(text.includes("+") ? [] : said);
  });

  it("a vacuum is a gauge pressure below zero, and a difference above it", () => {
    const inHg = 3386.389;
    for (const text of ["25 in. Hg vac", "25 inHg vacuum", "25 in Hg vac."]) {
      expect(readQuantity(text, "gaugePressure", "p")).toMatchObject({ ok: true, value: -25 * inHg });
      expect(readQuantity(text, "pressureDifference", "p")).toMatchObject({ ok: true, value: 25 * inHg });
      expect(readQuantity(text, "absolutePressure", "p")).toMatchObject({ findings: [{ code: "unit-wrong-kind" }] });
    }
  });

  it("a station is no pressure, and no number without its plus", () => {
    expect(readQuantity("10+00", "flow", "flow").ok).toBe(false);
    expect(readQuantity("1000", "length", "length").findings[0]?.code).toBe("unit-missing");
  });

  // ASTM E11: each opening is some 0.84 of the one before it.
  it("has sieves in falling openings", () => {
    expect(SIEVES_E11).toHaveLength(31);
    for (const [i, [, opening]] of SIEVES_E11.slice(1).entries()) {
      expect(opening / (SIEVES_E11[i]?.[1] as number)).toBeGreaterThan(0.76);
      expect(opening / (SIEVES_E11[i]?.[1] as number)).toBeLessThan(0.88);
    }
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
