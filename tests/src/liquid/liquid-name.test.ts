import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { findingText } from "../../../shared/text/finding-text.ts";
import { toEngine, type Unit, unitNamed } from "../../../src/basis/units.ts";
import { glycolFreezingPoint, glycolInWater } from "../../../src/liquid/glycol.ts";
import type { Liquid, LiquidState } from "../../../src/liquid/liquid.ts";
import { LISTED_LIQUIDS } from "../../../src/liquid/liquid-list.ts";
import { LIQUID_NAMES, liquidNamed } from "../../../src/liquid/liquid-name.ts";
import { saturationPressure } from "../../../src/liquid/saturation.ts";
import { seaWater } from "../../../src/liquid/sea-water.ts";
import { WATER } from "../../../src/liquid/water.ts";
import { pumpedLiquidNamed } from "../../../src/slurry/slurry-liquid-name.ts";
import { expectPublished, inputAmount } from "../../support/expect-published.ts";
import { type PublishedAmount, type PublishedCase, publishedCases } from "../../support/published-cases.ts";

const ROOM = 293.15;

function named(text: string): Liquid {
  const result = liquidNamed(text);
  if (!result.ok) throw new Error(`${text}: ${JSON.stringify(result.findings)}`);
  return result.value;
}

function stateOf(text: string, temperature = ROOM): LiquidState {
  const result = named(text).at(temperature);
  if (!result.ok) throw new Error(`${text}: ${JSON.stringify(result.findings)}`);
  return result.value;
}

function codesOf(text: string, temperature = ROOM): readonly string[] {
  const result = liquidNamed(text);
  const findings = result.ok ? [...result.findings, ...result.value.at(temperature).findings] : result.findings;
  return findings.map(({ code, kind }) => `${kind} ${code}`);
}

describe("published figures of other liquids (hydraulics-2-liquids)", () => {
  const engine = ({ value, unit }: PublishedAmount): number => toEngine(value, unitNamed(unit) as Unit);

  function liquidOf({ inputs, id }: PublishedCase): Liquid {
    const one = inputs["S"];
    const made =
      typeof one === "object"
        ? seaWater(one.value)
        : glycolInWater(inputs["solute"] as "ethylene glycol", (inputs["x_mass"] as PublishedAmount).value);
    if (!made.ok) throw new Error(id);
    return made.value;
  }

  it.each(publishedCases("2-liquids"))("$id: $source", (one) => {
    const state = liquidOf(one).at(engine(inputAmount(one, "T")));
    if (!state.ok) throw new Error(JSON.stringify(state.findings));
    expectPublished(state.value.density, "rho", one);
    expectPublished(state.value.dynamicViscosity * 1000, "mu", one);
    if ("p_v" in one.expected) expectPublished(state.value.vapourPressure as number, "p_v", one);
  });
});

describe("the name of a liquid", () => {
  it.each([
    ["water", "water"],
    [" WATER ", "water"],
    ["fresh  water", "water"],
    ["sea water", "sea water 35 g/kg"],
    ["Seawater", "sea water 35 g/kg"],
    ["sea water 38 g/kg", "sea water 38 g/kg"],
    ["sea water, 3.8 %", "sea water 38 g/kg"],
    ["sea water 38000 ppm", "sea water 38 g/kg"],
    ["ethylene glycol 40 %", "ethylene glycol 40 %"],
    ["Ethylene Glycol 40%", "ethylene glycol 40 %"],
    ["40 % ethylene glycol in water", "ethylene glycol 40 %"],
    ["EG 40%", "ethylene glycol 40 %"],
    ["propylene glycol 32.5 % by weight", "propylene glycol 32.5 %"],
    ["PG 30 wt %", "propylene glycol 30 %"],
  ])("“%s” is %s", (text, name) => {
    expect(named(text).name).toBe(name);
  });

  it("is printed in a form that is read back", () => {
    for (const text of [...LIQUID_NAMES, ...LISTED_LIQUIDS.map(({ name }) => name)]) {
      const { name } = named(text);
      expect(named(name).name).toBe(name);
      expect(stateOf(name)).toEqual(stateOf(text));
    }
  });

  it.each([
    ["vater", "water"],
    ["see water", "sea water"],
    ["glycol 40 %", "ethylene glycol 40 %"],
    ["ethylen glycol 40 %", "ethylene glycol 40 %"],
  ])("unknown “%s” brings up %s", (text, near) => {
    const result = liquidNamed(text);
    expect(result.findings[0]).toMatchObject({ code: "name-unknown", given: text, subject: "liquid" });
    expect(result.findings[0]?.suggestions).toContain(near);
  });

  it.each([
    ["petrol", "error name-unknown"],
    ["brine", "error liquid-incomplete"],
    ["brine 30 %", "error out-of-range"],
    ["", "error name-unknown"],
    ["1118", "error name-unknown"],
    ["sea water 38", "error unit-missing"],
    ["sea water 38 m", "error unit-wrong-kind"],
    ["sea water 270 g/kg", "error out-of-range"],
    ["sea water 0 g/kg", "error out-of-range"],
    ["propylene glycol", "error liquid-incomplete"],
    ["propylene glycol 70 %", "error out-of-range"],
    ["ethylene glycol 0 %", "error out-of-range"],
    ["propylene glycol 30 % by volume", "error glycol-by-volume"],
    ["propylene glycol 30 vol %", "error glycol-by-volume"],
  ])("“%s”: %s", (text, code) => {
    expect(codesOf(text)).toEqual([code]);
  });
});

// Names heard on site. What is taken as water says so.
describe("liquids of the trade", () => {
  it.each([
    ["sewage", "sewage"],
    ["Raw Sewage", "sewage"],
    ["waste water", "wastewater"],
    ["raw water", "raw water"],
    ["stormwater", "storm water"],
    ["groundwater", "ground water"],
    ["cold water", "cold water"],
    ["brackish water", "brackish water"],
    ["mine water", "mine water"],
  ])("%s is %s: water, and said to be", (text, name) => {
    expect(named(text).name).toBe(name);
    expect(stateOf(text, 300)).toEqual(stateOf("water", 300));
    expect(codesOf(text)).toEqual(["assumed liquid-taken-as"]);
    expect(liquidNamed(text).findings[0]?.facts).toEqual({ as: "water" });
  });

  it("mine water SG 1.05 is as heavy as it says, and water in the rest", () => {
    for (const text of ["mine water SG 1.05", "Mine water, SG=1.05", "mine water 1048.11 kg/m3"]) {
      const state = stateOf(text, 300);
      expect(state.density).toBeCloseTo(1.05 * 998.2, 6);
      expect(state.dynamicViscosity).toBe(stateOf("water", 300).dynamicViscosity);
      expect(state.vapourPressure).toBe(stateOf("water", 300).vapourPressure);
    }
    expect(codesOf("mine water SG 1.05")).toEqual(["assumed liquid-taken-as", "assumed liquid-viscosity-of-water"]);
  });

  it("an SG alone has the viscosity of water, said, and no vapour pressure", () => {
    const state = stateOf("SG 1.05", 313.15);
    expect(state.density).toBeCloseTo(1048.11, 6);
    expect(state.dynamicViscosity).toBe(stateOf("water", 313.15).dynamicViscosity);
    expect(state.vapourPressure).toBeUndefined();
    expect(codesOf("SG 1.05")).toEqual(["assumed liquid-viscosity-of-water"]);
  });

  // A density of salt water is that of sea water of the same salt within half a per cent: NaCl of 10 % weighs 1070.7 kg/m³ at 20 °C
  // (handbook of chemistry and physics, from memory).
  it("brine is asked its strength, and is sea water of it", () => {
    expect(liquidNamed("brine").findings[0]).toMatchObject({
      code: "liquid-incomplete",
      facts: { what: "strength" },
      suggestions: ["brine 10 %", "brine SG 1.07", "sea water"],
    });
    expect(stateOf("brine 10 %")).toEqual(stateOf("sea water 100 g/kg"));
    expect(Math.abs(stateOf("brine 10 % NaCl").density / 1070.7 - 1)).toBeLessThan(0.005);
    expect(codesOf("brine 10 %")).toEqual(["assumed liquid-taken-as"]);
    expect(stateOf("brackish water 5 g/kg")).toEqual(stateOf("sea water 5 g/kg"));
    expect(stateOf("brine SG 1.07").density).toBeCloseTo(1.07 * 998.2, 6);
  });

  // EN 590: 820 to 845 kg/m³ at 15 °C, 2 to 4.5 mm²/s at 40 °C.
  it("diesel is taken at the heavy end of its standard", () => {
    expect(stateOf("Diesel fuel")).toEqual({ density: 845, dynamicViscosity: 845 * 7e-6, vapourPressure: 1000 });
    expect(codesOf("diesel")).toEqual(["assumed liquid-taken-as"]);
  });

  it.each([
    ["water 90 F", 305.372222],
    ["water 90°F", 305.372222],
    ["water, 20 C", 293.15],
    ["water at 20 °C", 293.15],
    ["Water 68 deg F", 293.15],
    ["sea water 15 °C", 288.15],
    ["sewage 12 C", 285.15],
    ["mine water SG 1.05, 25 C", 298.15],
    ["ethylene glycol 40 % -5 °C", 268.15],
  ])("%s carries its temperature", (text, kelvin) => {
    expect(named(text).statedTemperature).toBeCloseTo(kelvin, 5);
  });

  it("a name without a temperature carries none", () => {
    expect(
      [named("water"), named("sea water 38 g/kg"), named("SG 1.1, 2 cP")].map((one) => one.statedTemperature),
    ).toEqual([undefined, undefined, undefined]);
  });

  it.each(["SG 1050", "SG 998", "SG 25.1", "SG 0.29", "mine water SG 1050"])(
    "%s asks whether a density was typed",
    (text) => {
      expect(liquidNamed(text).findings.at(-1)).toMatchObject({ code: "gravity-of-no-liquid", kind: "error" });
    },
  );

  it.each(["SG 25", "SG 0.3"])("%s is just inside", (text) => expect(liquidNamed(text).ok).toBe(true));

  it.each([
    ["wastewatr", "wastewater"],
    ["sewge", "sewage"],
    ["ground watter", "ground water"],
    ["deisel", "diesel"],
  ])("a slip such as %s offers liquids, %s among them", (text, near) => {
    expect(liquidNamed(text).findings[0]?.suggestions).toContain(near);
  });
});

describe("sea water", () => {
  it("cautions beyond the measured salinity", () => {
    expect(codesOf("sea water 150 g/kg")).toEqual([]);
    expect(codesOf("sea water 151 g/kg")).toEqual(["check outside-usual-range"]);
    expect(codesOf("sea water 260 g/kg")).toEqual(["check outside-usual-range"]);
  });

  it("holds from 0 °C to 180 °C, and says where it boils", () => {
    expect(codesOf("sea water", 273.14)).toEqual(["error out-of-range"]);
    expect(codesOf("sea water", 273.15)).toEqual([]);
    expect(codesOf("sea water", 453.15)).toEqual(["check liquid-boils-in-the-open"]);
    expect(codesOf("sea water", 453.2)).toEqual(["error out-of-range"]);
  });

  // UNESCO equation of state of sea water (1980), salinity 35, one atmosphere, from memory; the fit is within 0.1 %.
  it.each([
    { celsius: 5, density: 1027.675 },
    { celsius: 20, density: 1024.763 },
    { celsius: 25, density: 1023.343 },
  ])("weighs $density kg/m³ at $celsius °C", ({ celsius, density }) => {
    expect(Math.abs(stateOf("sea water", 273.15 + celsius).density / density - 1)).toBeLessThan(0.001);
  });

  // The printed polynomials summed term by term with 40-digit decimals, at the far end of the range.
  it("is the published polynomial at 150 g/kg and 150 °C", () => {
    const state = stateOf("sea water 150 g/kg", 423.15);
    expect(Math.abs(state.density / 1033.4155216875 - 1)).toBeLessThan(1e-9);
    expect(Math.abs(state.dynamicViscosity / 2.7775652228e-4 - 1)).toBeLessThan(1e-9);
  });

  it("is heavier, thicker and less volatile the saltier it is", () => {
    const salinity = fc.integer({ min: 1, max: 148 });
    fc.assert(
      fc.property(salinity, fc.double({ min: 274, max: 450, noNaN: true }), (grams, temperature) => {
        const less = stateOf(`sea water ${grams} g/kg`, temperature);
        const more = stateOf(`sea water ${grams + 1} g/kg`, temperature);
        expect(more.density).toBeGreaterThan(less.density);
        expect(more.dynamicViscosity).toBeGreaterThan(less.dynamicViscosity);
        expect(more.vapourPressure).toBeLessThan(less.vapourPressure as number);
      }),
    );
  });

  it("comes near fresh water as the salt goes", () => {
    const fresh = stateOf("water");
    const faint = stateOf("sea water 0.001 g/kg");
    expect(Math.abs(faint.density / fresh.density - 1)).toBeLessThan(0.0003);
    expect(Math.abs(faint.dynamicViscosity / fresh.dynamicViscosity - 1)).toBeLessThan(0.01);
  });
});

describe("glycol in water", () => {
  // ASHRAE Handbook, Fundamentals (2001), tables of glycol solutions, by the fits an open property library keeps of them
  // (its strengths by volume, here by weight). Another set of measurements: the two differ by up to 9 % in viscosity,
  // 1 % in density and 2.5 K in freezing point.
  it.each([
    { glycol: "ethylene glycol", strength: 0.21919, celsius: 20, viscosity: 0.001666, density: 1029.7, freezes: -9.0 },
    { glycol: "ethylene glycol", strength: 0.21919, celsius: 60, viscosity: 0.0007448, density: 1012.0, freezes: -9.0 },
    {
      glycol: "ethylene glycol",
      strength: 0.21919,
      celsius: 100,
      viscosity: 0.0004222,
      density: 986.47,
      freezes: -9.0,
    },
    { glycol: "ethylene glycol", strength: 0.32372, celsius: 20, viscosity: 0.002156, density: 1045.2, freezes: -15.7 },
    {
      glycol: "ethylene glycol",
      strength: 0.32372,
      celsius: 60,
      viscosity: 0.0009124,
      density: 1026.4,
      freezes: -15.7,
    },
    {
      glycol: "ethylene glycol",
      strength: 0.32372,
      celsius: 100,
      viscosity: 0.0004794,
      density: 999.69,
      freezes: -15.7,
    },
    { glycol: "ethylene glycol", strength: 0.52387, celsius: 20, viscosity: 0.003884, density: 1073.3, freezes: -37.1 },
    { glycol: "ethylene glycol", strength: 0.52387, celsius: 60, viscosity: 0.001435, density: 1052.0, freezes: -37.1 },
    {
      glycol: "ethylene glycol",
      strength: 0.52387,
      celsius: 100,
      viscosity: 0.0006864,
      density: 1023.0,
      freezes: -37.1,
    },
    { glycol: "propylene glycol", strength: 0.20587, celsius: 20, viscosity: 0.001996, density: 1019.0, freezes: -7.4 },
    {
      glycol: "propylene glycol",
      strength: 0.20587,
      celsius: 60,
      viscosity: 0.0007776,
      density: 999.31,
      freezes: -7.4,
    },
    {
      glycol: "propylene glycol",
      strength: 0.20587,
      celsius: 100,
      viscosity: 0.0004345,
      density: 971.56,
      freezes: -7.4,
    },
    {
      glycol: "propylene glycol",
      strength: 0.30607,
      celsius: 20,
      viscosity: 0.003069,
      density: 1028.3,
      freezes: -13.1,
    },
    {
      glycol: "propylene glycol",
      strength: 0.30607,
      celsius: 60,
      viscosity: 0.001006,
      density: 1006.4,
      freezes: -13.1,
    },
    {
      glycol: "propylene glycol",
      strength: 0.30607,
      celsius: 100,
      viscosity: 0.0005171,
      density: 976.37,
      freezes: -13.1,
    },
    { glycol: "propylene glycol", strength: 0.50118, celsius: 20, viscosity: 0.0066, density: 1042.9, freezes: -33.7 },
    {
      glycol: "propylene glycol",
      strength: 0.50118,
      celsius: 60,
      viscosity: 0.001717,
      density: 1017.0,
      freezes: -33.7,
    },
    {
      glycol: "propylene glycol",
      strength: 0.50118,
      celsius: 100,
      viscosity: 0.0008049,
      density: 983.0,
      freezes: -33.7,
    },
  ] as const)("$glycol $strength at $celsius °C is as other tables have it", (row) => {
    const { glycol, strength, celsius, viscosity, density, freezes } = row;
    const state = stateOf(`${glycol} ${strength * 100} %`, 273.15 + celsius);
    expect(Math.abs(state.dynamicViscosity / viscosity - 1)).toBeLessThan(0.09);
    expect(Math.abs(state.density / density - 1)).toBeLessThan(0.01);
    expect(Math.abs(glycolFreezingPoint(glycol, strength) - 273.15 - freezes)).toBeLessThan(2.5);
  });

  it("is refused as frozen below its freezing point, and cautioned above 40 °C", () => {
    const freezes = glycolFreezingPoint("propylene glycol", 0.4);
    expect(codesOf("propylene glycol 40 %", freezes - 0.01)).toEqual(["error liquid-frozen"]);
    expect(codesOf("propylene glycol 40 %", freezes + 0.01)).toEqual([]);
    expect(codesOf("propylene glycol 40 %", 313.15)).toEqual([]);
    expect(codesOf("propylene glycol 40 %", 313.2)).toEqual(["check outside-usual-range"]);
    expect(codesOf("propylene glycol 40 %", 373.15)).toEqual(["check outside-usual-range"]);
    expect(codesOf("propylene glycol 40 %", 373.2)).toEqual(["error out-of-range"]);
  });

  // The printed polynomials summed term by term with 40-digit decimals, near the corners of the range.
  it.each([
    {
      glycol: "ethylene glycol",
      strength: 0.6,
      temperature: 260,
      density: 1093.7010116755,
      viscosity: 0.0218816376199,
      freezes: 221.94908491717,
    },
    {
      glycol: "ethylene glycol",
      strength: 0.1,
      temperature: 280,
      density: 1012.956195748,
      viscosity: 0.00186808825235,
      freezes: 269.7928097865,
    },
    {
      glycol: "propylene glycol",
      strength: 0.6,
      temperature: 260,
      density: 1063.3240630875,
      viscosity: 0.07727076219952088,
      freezes: 223.14735331505,
    },
    {
      glycol: "propylene glycol",
      strength: 0.1,
      temperature: 280,
      density: 1008.7123639778,
      viscosity: 0.0021488134293789,
      freezes: 270.28301268788,
    },
  ] as const)("is the published polynomial: $strength of $glycol at $temperature K", (row) => {
    const state = stateOf(`${row.glycol} ${row.strength * 100} %`, row.temperature);
    expect(Math.abs(state.density / row.density - 1)).toBeLessThan(1e-10);
    expect(Math.abs(state.dynamicViscosity / row.viscosity - 1)).toBeLessThan(1e-10);
    expect(Math.abs(glycolFreezingPoint(row.glycol, row.strength) / row.freezes - 1)).toBeLessThan(1e-10);
  });

  it("has the water's share of the vapour pressure by moles", () => {
    // 40 g of glycol at 62.068 g/mol, 60 g of water at 18.01528 g/mol: x = 3.330506 / (3.330506 + 0.644455) = 0.837871.
    const state = stateOf("ethylene glycol 40 %");
    expect((state.vapourPressure as number) / saturationPressure(ROOM)).toBeCloseTo(0.837871, 5);
  });

  it("freezes lower and has less vapour pressure the stronger it is", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 58 }), (percent) => {
        for (const glycol of ["ethylene glycol", "propylene glycol"] as const) {
          const weak = percent / 100;
          expect(glycolFreezingPoint(glycol, weak + 0.01)).toBeLessThan(glycolFreezingPoint(glycol, weak));
          const less = stateOf(`${glycol} ${percent} %`).vapourPressure as number;
          expect(stateOf(`${glycol} ${percent + 1} %`).vapourPressure).toBeLessThan(less);
        }
      }),
    );
  });

  it("comes near water as the glycol goes", () => {
    for (const glycol of ["ethylene glycol", "propylene glycol"] as const) {
      const faint = stateOf(`${glycol} 0.01 %`);
      expect(Math.abs(faint.density / stateOf("water").density - 1)).toBeLessThan(0.002);
      expect(Math.abs(faint.dynamicViscosity / stateOf("water").dynamicViscosity - 1)).toBeLessThan(0.05);
    }
  });

  it("grows thinner and more volatile with temperature over all it answers for", () => {
    const strengths = fc.integer({ min: 1, max: 60 });
    fc.assert(
      fc.property(strengths, fc.double({ min: 0, max: 0.99, noNaN: true }), (percent, at) => {
        for (const glycol of ["ethylene glycol", "propylene glycol"] as const) {
          const low = glycolFreezingPoint(glycol, percent / 100) + 1e-6;
          const temperature = low + at * (373.15 - low);
          const cold = stateOf(`${glycol} ${percent} %`, temperature);
          const warm = stateOf(`${glycol} ${percent} %`, Math.min(373.15, temperature + 0.5));
          expect(warm.dynamicViscosity).toBeLessThan(cold.dynamicViscosity);
          expect(warm.vapourPressure).toBeGreaterThan(cold.vapourPressure as number);
        }
      }),
    );
  });
});

describe("a described liquid", () => {
  // By hand; SG is relative to 998.2 kg/m³.
  it.each([
    ["SG 1.12, 3.5 cP, pv 2.3 kPa", 1117.984, 0.0035, 2300],
    ["pv 2.3 kPa, 3.5 cP, SG 1.12", 1117.984, 0.0035, 2300],
    ["sg=1.12; viscosity 3.5 mPa·s; vapor pressure 2.3 kPa(a)", 1117.984, 0.0035, 2300],
    ["SG 1,12; 3,5 cP", 1117.984, 0.0035, undefined],
    ["1118 kg/m3, 3.1 cSt", 1118, 0.0034658, undefined],
    ["1118 kg/m3,3.1 cSt", 1118, 0.0034658, undefined],
    ["density 70 lb/ft3, 2 cP", 1121.2924361772, 0.002, undefined],
    ["SG 0.86, 0.05 Pa·s, pv 0 Pa", 858.452, 0.05, 0],
    // 0.220 × 1000 − 135/1000 = 219.865 mm²/s
    ["SG 0.9, 1000 SSU", 898.38, 219.865e-6 * 898.38, undefined],
    // 0.226 × 50 − 195/50 = 7.4 mm²/s; handbooks print 7.4 cSt for 50 SSU
    ["SG 1, 50 ssu", 998.2, 7.4e-6 * 998.2, undefined],
  ])("“%s”", (text, density, dynamicViscosity, vapourPressure) => {
    const state = stateOf(text);
    expect(state.density).toBeCloseTo(density, 8);
    expect(state.dynamicViscosity).toBeCloseTo(dynamicViscosity, 12);
    expect(state.vapourPressure).toBe(vapourPressure);
  });

  it.each([
    ["SG 1.12", "assumed liquid-viscosity-of-water"],
    // A density typed for it: no liquid is heavier than 25 times water.
    ["SG 1050, 3.5 cP", "error gravity-of-no-liquid"],
    ["25000 kg/m3, 3.5 cP", "error out-of-range"],
    ["3.5 cP, pv 2 kPa", "error liquid-incomplete"],
    ["SG 1.12, 3.5 cP, 3 cSt", "error liquid-stated-twice"],
    ["SG 1.12, 1100 kg/m3, 3 cSt", "error liquid-stated-twice"],
    ["SG 1.12, 3.5 cP, pv 1 kPa, pv 2 kPa", "error liquid-stated-twice"],
    ["SG 1.12, 3.5 furlongs", "error liquid-part-unread"],
    ["SG 1.12, 3.5 cP, brown", "error liquid-part-unread"],
    ["SG heavy, 3.5 cP", "error not-a-number"],
    ["SG 1.12, 3.5 cP, pv 2 kPa(g)", "error unit-wrong-kind"],
    ["SG 1.12, 3.5 cP, pv 2", "error unit-missing"],
    ["SG 0, 3.5 cP", "error gravity-of-no-liquid"],
    ["SG -1, 3.5 cP", "error gravity-of-no-liquid"],
    ["SG 1.12, 0 cP", "error out-of-range"],
    ["SG 1.12, 3.5 cP, pv -1 kPa", "error out-of-range"],
    ["SG 1.12, 31 SSU", "error out-of-range"],
    ["1,118 kg/m3, 3 cP", "error number-ambiguous"],
  ])("“%s”: %s", (text, code) => {
    expect(codesOf(text)).toEqual([code]);
  });

  it.each([
    ["SG 0.59, 1 cP", ["check liquid-density-unusual"]],
    ["SG 0.6, 1 cP", []],
    ["SG 2.2, 1 cP", []],
    ["SG 2.21, 1 cP", ["check liquid-density-unusual"]],
    ["SG 1, 100 SSU", ["check viscosity-from-saybolt"]],
  ])("“%s” is remarked on: %s", (text, codes) => {
    expect(codesOf(text)).toEqual(codes);
  });

  it("keeps its figures at another temperature, and says so", () => {
    const text = "SG 1.12, 3.5 cP";
    expect(stateOf(text, 350)).toEqual(stateOf(text));
    expect(codesOf(text, 350)).toEqual(["check liquid-figures-fixed"]);
    expect(codesOf(text, toEngine(68, unitNamed("°F") as Unit))).toEqual([]);
  });

  it("does not mind the order of its figures", () => {
    const parts = ["SG 1.07", "2.2 cSt", "pv 3 kPa"];
    const orders = fc.shuffledSubarray(parts, { minLength: 3 });
    fc.assert(
      fc.property(orders, fc.constantFrom(", ", "; ", " ;"), (order, mark) => {
        expect(stateOf(order.join(mark))).toEqual(stateOf(parts.join(", ")));
      }),
    );
  });
});

describe("any text at all", () => {
  it("is a liquid or a refusal with one reason, and never throws", () => {
    const words = fc.array(
      fc.constantFrom(
        "water",
        "sea",
        "SG",
        "1.12",
        "-3",
        "%",
        "cP",
        "pv",
        "kPa",
        ",",
        ";",
        "glycol",
        "ethylene",
        "g/kg",
        "/",
        "(",
        " ",
      ),
      { maxLength: 9 },
    );
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          words.map((list) => list.join(" ")),
        ),
        (text) => {
          const result = liquidNamed(text);
          if (!result.ok) expect(result.findings.some(({ kind }) => kind === "error")).toBe(true);
          else if (result.value !== WATER) expect(result.value.name.length).toBeGreaterThan(0);
        },
      ),
      { numRuns: 2000 },
    );
  });
});

describe("a liquid that is no water", () => {
  const refusedAs = (text: string) => {
    const [finding] = liquidNamed(text).findings;
    return [finding?.kind, finding?.code, finding?.facts];
  };

  it.each([
    "sludge",
    "Digested sludge",
    "primary sludge 3%",
    "WAS",
    "septage",
    "drilling mud",
    "bentonite slurry",
    "paper stock 3 %",
    "grout",
  ])("%s is asked for its solids and yield stress", (text) => {
    expect(refusedAs(text)).toEqual(["error", "liquid-yields", undefined]);
  });

  it("is refused in words that say what would do", () => {
    const [finding] = liquidNamed("sludge").findings;
    const words = finding === undefined ? "" : findingText(finding, "US");
    expect(words).toContain("“sludge” is not taken as water");
    expect(words).toContain("dry solids and on its yield stress");
    expect(words).toContain("SG 1.02, 40 cP");
    expect(liquidNamed("SG 1.02, 40 cP").ok).toBe(true);
    expect(pumpedLiquidNamed("water with solids 25 %, SG 2.65, d50 0.4 mm").ok).toBe(true);
  });

  it.each(["slurry", "sand slurry", "tailings", "grit", "dredge spoil"])("%s is asked for its solids", (text) => {
    expect(refusedAs(text)).toEqual(["error", "liquid-incomplete", { what: "solids" }]);
  });

  it("is asked for the temperature that its name promises", () => {
    expect(refusedAs("hot water")).toEqual(["error", "liquid-incomplete", { what: "temperature" }]);
    expect(liquidNamed("hot water 180 F")).toMatchObject({ ok: true, value: { name: "water" } });
    expect(refusedAs("salt water")).toEqual(["error", "liquid-incomplete", { what: "strength" }]);
  });

  it("is offered names of its own kind alone", () => {
    const offered = (text: string) => liquidNamed(text).findings[0]?.suggestions ?? [];
    for (const text of ["Jet A", "SAE 30", "RO permeate", "crude oil", "acetone"])
      expect(offered(text), text).toEqual([]);
    for (const name of offered("50/50 glycol")) expect(name).toContain("glycol");
    for (const name of offered("muddy water")) expect(name).toContain("water");
    expect(offered("50/50 glycol").length * offered("muddy water").length).toBeGreaterThan(0);
  });

  it("is water by further names of the trade", () => {
    for (const text of ["bore water", "flood water", "canal water", "process water", "fire water", "grey water"]) {
      expect(
        liquidNamed(text).findings.map(({ code }) => code),
        text,
      ).toEqual(["liquid-taken-as"]);
    }
    for (const text of ["H2O", "DI water", "demineralised water"]) expect(liquidNamed(text).findings, text).toEqual([]);
    expect(liquidNamed("1.05 SG")).toMatchObject({ ok: true });
    expect(liquidNamed("#2 diesel")).toMatchObject({ ok: true, value: { name: "diesel" } });
  });
});
