import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { STANDARD_ATMOSPHERE, STANDARD_GRAVITY } from "../../../src/basis/constants.ts";
import { fromEngine, toEngine, type Unit, unitNamed } from "../../../src/basis/units.ts";
import type { LiquidState } from "../../../src/liquid/liquid.ts";
import { liquidVapourPressure, saturationPressure, saturationTemperature } from "../../../src/liquid/saturation.ts";
import { WATER } from "../../../src/liquid/water.ts";
import { waterDensity } from "../../../src/liquid/water-density.ts";
import { waterViscosity } from "../../../src/liquid/water-viscosity.ts";
import { expectAsPrinted, expectPublished, inputAmount } from "../../support/expect-published.ts";
import { type PublishedAmount, type PublishedCase, publishedCases } from "../../support/published-cases.ts";

const cases = publishedCases("2-water");

/** Cases no function answers, and why. */
const NOT_APPLICABLE = new Map([
  ["2-water-021", "supercooled water at 260 K (IAPWS SR6-08), which is refused as ice"],
  ["2-water-024", "IAPWS SR1-86, another formulation of saturation; region 4 is held to it within 5e-5 below"],
  ["2-water-025", "IAPWS SR1-86, as 2-water-024"],
  ["2-water-067", "surface tension, which no function needs"],
  ["2-water-068", "surface tension, which no function needs"],
  ["2-water-069", "surface tension, which no function needs"],
  ["2-water-070", "surface tension, which no function needs"],
]);

/** Cases whose exact value is not that of their inputs, and why. */
const ONLY_AS_PRINTED = new Map([
  ["2-water-054", "its exact value is that of the triple point, 273.16 K, not of 32 °F = 273.15 K"],
]);

function unit(symbol: string): Unit {
  const found = unitNamed(symbol);
  if (found === undefined) throw new Error(`unit ${symbol}`);
  return found;
}

function engine({ value, unit: symbol }: PublishedAmount): number {
  if (symbol === "m3/kg") return value;
  return toEngine(value, unit(symbol));
}

/** The engine's figure in the unit of the case. */
function shown(value: number, symbol: string): number {
  return symbol === "m3/kg" ? value : fromEngine(value, unit(symbol));
}

function state(temperature: number): LiquidState & { readonly vapourPressure: number } {
  const result = WATER.at(temperature);
  if (!result.ok || result.value.vapourPressure === undefined) throw new Error(JSON.stringify(result.findings));
  return { ...result.value, vapourPressure: result.value.vapourPressure };
}

/** Every figure of a case that a function answers, by name, in engine units. */
function answers(one: PublishedCase): Readonly<Record<string, number>> {
  if (!("T" in one.inputs)) return { T_sat: saturationTemperature(engine(inputAmount(one, "p"))) };
  const temperature = engine(inputAmount(one, "T"));
  if ("rho" in one.inputs) {
    return { mu: waterViscosity({ temperature, density: engine(inputAmount(one, "rho")) }) };
  }
  if ("p_sat" in one.expected) return { p_sat: saturationPressure(temperature) };
  if ("v" in one.expected) {
    const density = waterDensity({ temperature, pressure: engine(inputAmount(one, "p")) });
    return { v: 1 / density, rho: density };
  }
  if ("p" in one.inputs) expect(engine(inputAmount(one, "p"))).toBe(STANDARD_ATMOSPHERE);
  const { density, dynamicViscosity, vapourPressure } = state(temperature);
  return {
    rho: density,
    mu: dynamicViscosity,
    nu: dynamicViscosity / density,
    p_v: vapourPressure,
    h_v: vapourPressure / (density * STANDARD_GRAVITY),
  };
}

describe("published figures of water (hydraulics-2-water)", () => {
  const applicable = cases.filter(({ id }) => !NOT_APPLICABLE.has(id));

  it.each(applicable)("$id: $source", (one) => {
    const found = answers(one);
    for (const [name, expected] of Object.entries(one.expected)) {
      expect(found[name], name).toBeDefined();
      const check = ONLY_AS_PRINTED.has(one.id) ? expectAsPrinted : expectPublished;
      check(shown(found[name] as number, expected.unit), name, one);
    }
  });

  it("leaves no case aside without a reason", () => {
    const known = cases.map(({ id }) => id);
    for (const id of NOT_APPLICABLE.keys()) expect(known).toContain(id);
    expect(applicable.length).toBe(cases.length - NOT_APPLICABLE.size);
  });
});

describe("density", () => {
  // IAPWS R7-97(2012), table 5, second and third column, from memory; nine figures, so good to half of 1e-8.
  it.each([
    { temperature: 300, pressure: 80e6, volume: 0.971180894e-3 },
    { temperature: 500, pressure: 3e6, volume: 0.1202418e-2 },
  ])("is that of the verification table at $temperature K and $pressure Pa", ({ temperature, pressure, volume }) => {
    expect(Math.abs(waterDensity({ temperature, pressure }) * volume - 1)).toBeLessThan(5e-9);
  });
});

describe("saturation", () => {
  // IAPWS SR1-86(1992), table 1: another formulation; the two differ by 3e-5.
  it.each([
    { temperature: 273.16, pressure: 611.657 },
    { temperature: 373.1243, pressure: 101_325 },
  ])("is within 5e-5 of the supplementary equation at $temperature K", ({ temperature, pressure }) => {
    expect(Math.abs(saturationPressure(temperature) / pressure - 1)).toBeLessThan(5e-5);
  });

  // IAPWS R7-97(2012), table 35, third line, from memory: 600 K, 12.3443146 MPa.
  it("holds to 600 K", () => {
    expect(Math.abs(saturationPressure(600) / 12.3443146e6 - 1)).toBeLessThan(1e-8);
  });

  it("is the same curve read either way", () => {
    fc.assert(
      fc.property(fc.double({ min: 273.15, max: 647, noNaN: true }), (temperature) => {
        expect(Math.abs(saturationTemperature(saturationPressure(temperature)) - temperature)).toBeLessThan(1e-7);
      }),
    );
  });

  // Murphy and Koop (2005), table C1, liquid, from memory.
  it.each([
    { temperature: 240, pressure: 37.667 },
    { temperature: 273.15, pressure: 611.213 },
  ])("over liquid water at $temperature K is $pressure Pa", ({ temperature, pressure }) => {
    expect(Math.abs(liquidVapourPressure(temperature) / pressure - 1)).toBeLessThan(2e-5);
  });

  it("goes through the ice point without a step", () => {
    expect(Math.abs(liquidVapourPressure(273.15 - 1e-9) / liquidVapourPressure(273.15) - 1)).toBeLessThan(1e-6);
  });
});

describe("water", () => {
  const codesAt = (temperature: number): readonly string[] =>
    WATER.at(temperature).findings.map(({ code, kind }) => `${kind} ${code}`);

  it.each([
    { why: "ice", temperature: 273.14, codes: ["error liquid-frozen"] },
    { why: "at the ice point", temperature: 273.15, codes: [] },
    { why: "32 °F, as it is converted", temperature: toEngine(32, unit("°F")), codes: [] },
    { why: "below its boiling point", temperature: 373.12, codes: [] },
    { why: "above it", temperature: 373.13, codes: ["check liquid-boils-in-the-open"] },
    { why: "at 200 °C", temperature: 473.15, codes: ["check liquid-boils-in-the-open"] },
    { why: "above 200 °C", temperature: 473.2, codes: ["check liquid-boils-in-the-open", "check liquid-hot"] },
    { why: "at 350 °C", temperature: 623.15, codes: ["check liquid-boils-in-the-open", "check liquid-hot"] },
    { why: "above 350 °C", temperature: 623.2, codes: ["error out-of-range"] },
    { why: "no number", temperature: Number.NaN, codes: ["error not-a-number"] },
    { why: "below absolute zero", temperature: -1, codes: ["error liquid-frozen"] },
  ])("$why", ({ temperature, codes }) => {
    expect(codesAt(temperature)).toEqual(codes);
  });

  it("takes its density at one atmosphere, and at the vapour pressure above the boiling point", () => {
    const hot = 450;
    expect(state(300).density).toBe(waterDensity({ temperature: 300, pressure: STANDARD_ATMOSPHERE }));
    expect(state(hot).density).toBe(waterDensity({ temperature: hot, pressure: saturationPressure(hot) }));
  });

  const temperatures = fc.double({ min: 273.15, max: 620, noNaN: true });
  const apart = fc.double({ min: 0.01, max: 3, noNaN: true });

  it("has a vapour pressure that rises with temperature", () => {
    fc.assert(
      fc.property(temperatures, apart, (temperature, more) => {
        expect(state(temperature + more).vapourPressure).toBeGreaterThan(state(temperature).vapourPressure);
      }),
    );
  });

  it("grows lighter and thinner with temperature above 4 °C", () => {
    fc.assert(
      fc.property(fc.double({ min: 277.2, max: 620, noNaN: true }), apart, (temperature, more) => {
        expect(state(temperature + more).density).toBeLessThan(state(temperature).density);
        expect(state(temperature + more).dynamicViscosity).toBeLessThan(state(temperature).dynamicViscosity);
      }),
    );
  });

  it("is heaviest near 4 °C", () => {
    // 3.98 °C and 999.975 kg/m³ at one atmosphere: CIPM formula for standard mean ocean water, from memory.
    const heaviest = state(277.13).density;
    expect(Math.abs(heaviest - 999.975)).toBeLessThan(0.01);
    for (const temperature of [274, 275, 276, 278.5, 280, 285])
      expect(state(temperature).density).toBeLessThan(heaviest);
  });

  it("answers the same after another temperature was asked for", () => {
    const before = state(300);
    state(350);
    expect(state(300)).toEqual(before);
  });
});
