import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { STANDARD_ATMOSPHERE, STANDARD_GRAVITY } from "../../../src/basis/constants.ts";
import { toEngine, type Unit, unitNamed } from "../../../src/basis/units.ts";
import { standardAir, standardAtmosphere } from "../../../src/site/atmosphere.ts";
import { expectPublished, inputAmount } from "../../support/expect-published.ts";
import { publishedCases } from "../../support/published-cases.ts";

function air(altitude: number) {
  const result = standardAir(altitude);
  if (!result.ok) throw new Error(JSON.stringify(result.findings));
  return result.value;
}

describe("published figures of the atmosphere (hydraulics-2-atmosphere)", () => {
  it.each(publishedCases("2-atmosphere"))("$id: $source", (one) => {
    const { value, unit } = inputAmount(one, "Z_geometric");
    const { pressure, temperature, density } = air(toEngine(value, unitNamed(unit) as Unit));
    const names = Object.keys(one.expected);
    const pressureUnit = one.expected["p"]?.unit === "kPa" ? 1000 : 1;
    // Feet or metres of water of a stated density.
    const answers: Record<string, number> = {
      p: pressure / pressureUnit,
      T: temperature,
      rho: density,
      h_water_1000kgm3: pressure / (1000 * STANDARD_GRAVITY),
    };
    if ("rho" in one.inputs) answers["h_atm"] = pressure / (inputAmount(one, "rho").value * STANDARD_GRAVITY) / 0.3048;
    expect(Object.keys(answers)).toEqual(expect.arrayContaining(names));
    for (const name of names) expectPublished(answers[name] as number, name, one);
  });
});

describe("the standard atmosphere", () => {
  it("is one atmosphere, 15 °C and 1.225 kg/m³ at sea level", () => {
    // U.S. Standard Atmosphere 1976, sea level.
    expect(air(0).pressure).toBe(STANDARD_ATMOSPHERE);
    expect(air(0).temperature).toBe(288.15);
    expect(air(0).density).toBeCloseTo(1.225, 4);
  });

  it("loses pressure, warmth and density with height", () => {
    const altitude = fc.double({ min: -5000, max: 10_990, noNaN: true });
    fc.assert(
      fc.property(altitude, fc.double({ min: 0.01, max: 10, noNaN: true }), (low, rise) => {
        const below = air(low);
        const above = air(low + rise);
        expect(above.pressure).toBeLessThan(below.pressure);
        expect(above.temperature).toBeLessThan(below.temperature);
        expect(above.density).toBeLessThan(below.density);
      }),
    );
  });

  it("loses in pressure what the air in between weighs", () => {
    // dp/dh = −ρ g over geopotential height; over 1 m the middle density serves.
    const altitude = fc.double({ min: -400, max: 8000, noNaN: true });
    fc.assert(
      fc.property(altitude, (low) => {
        const radius = 6_356_766;
        const geopotential = (z: number): number => (radius * z) / (radius + z);
        const weight = air(low + 0.5).density * STANDARD_GRAVITY * (geopotential(low + 1) - geopotential(low));
        expect(Math.abs((air(low).pressure - air(low + 1).pressure) / weight - 1)).toBeLessThan(1e-6);
      }),
    );
  });

  it.each([
    { altitude: -5001, codes: ["error out-of-range"] },
    { altitude: -5000, codes: ["check altitude-unusual"] },
    { altitude: -501, codes: ["check altitude-unusual"] },
    { altitude: -500, codes: [] },
    { altitude: 9000, codes: [] },
    { altitude: 9001, codes: ["check altitude-unusual"] },
    { altitude: 11_000, codes: ["check altitude-unusual"] },
    { altitude: 11_001, codes: ["error out-of-range"] },
    { altitude: Number.NaN, codes: ["error not-a-number"] },
  ])("at $altitude m: $codes", ({ altitude, codes }) => {
    expect(standardAtmosphere(altitude).findings.map(({ code, kind }) => `${kind} ${code}`)).toEqual(codes);
  });
});
