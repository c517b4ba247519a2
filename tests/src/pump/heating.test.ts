import { describe, expect, it } from "vitest";
import { findingText } from "../../../shared/text/finding-text.ts";
import { unitOf } from "../../../src/basis/units.ts";
import type { Liquid, LiquidState } from "../../../src/liquid/liquid.ts";
import { specificHeatOf } from "../../../src/liquid/specific-heat.ts";
import { WATER } from "../../../src/liquid/water.ts";
import { shutoffHeating, temperatureRise, thermalMinimumFlow } from "../../../src/pump/heating.ts";
import { pumpedLiquidNamed } from "../../../src/slurry/slurry-liquid-name.ts";
import { expectPublished } from "../../support/expect-published.ts";
import { publishedCases } from "../../support/published-cases.ts";
import { curveOf, FALLING, running } from "../../support/pumps.ts";

const [GPM, FOOT] = [unitOf("US gpm").factor, unitOf("ft").factor];
const ANY = { liquid: WATER, temperature: 293.15, specificHeat: null, npshAvailable: null };
const minimum = (allowedRise: number | null, pump = running(FALLING)) =>
  thermalMinimumFlow({ ...ANY, pump, allowedRise, specificHeat: 4184 });

function liquidOf(text: string): Liquid {
  const read = pumpedLiquidNamed(text);
  if (!read.ok) throw new Error(`${text}: refused`);
  return read.value;
}

function stateOf(text: string): LiquidState {
  const state = liquidOf(text).at(293.15);
  if (!state.ok) throw new Error(`${text}: no state`);
  return state.value;
}

describe("the rise of the liquid in a pump", () => {
  const [of] = publishedCases("6-min-flow", "station");
  if (of === undefined) throw new Error("no case");
  const efficiency = new Map(of.inputs["efficiency"] as unknown as readonly (readonly [number, number])[]);
  const points = (of.inputs["curve_gpm_ft"] as unknown as readonly (readonly [number, number])[]).map(
    ([flow, head]) => ({
      flow: flow * GPM,
      head: head * FOOT,
      efficiency: efficiency.get(flow) as number,
    }),
  );
  const pump = running(curveOf(points));

  it("agrees with the case worked apart from this product", () => {
    const rise = (flow: number) => {
      const read = temperatureRise(pump, flow * GPM, 4182);
      return read.ok ? read.value : Number.NaN;
    };
    expectPublished(rise(100), "rise_at_100_gpm", of);
    expectPublished(rise(800), "rise_at_800_gpm", of);
    const found = thermalMinimumFlow({ ...ANY, pump, allowedRise: 8, specificHeat: 4182 });
    expectPublished(found.ok ? found.value.flow / GPM : Number.NaN, "min_flow", of);
    // H/778 (1/η − 1), °F: the trade's form.
    expectPublished((716 / 778) * (1 / 0.22 - 1), "US_form H/778(1/eta-1) at 100 gpm", of);
    expect(rise(100) * 1.8).toBeCloseTo((716 / 778) * (1 / 0.22 - 1), 2);
  });

  it("goes by the power curve, which stays finite at no flow", () => {
    // 8000 W at no flow: near it ΔT = 8000/(998.2 · 4184 · Q); at 0.1 L/s 19.2 K, less what the flow carries off.
    const near = temperatureRise(running(FALLING), 1e-7, 4184);
    expect(near.ok && near.value).toBeCloseTo(8000 / (998.2 * 4184 * 1e-7), -1);
    // By hand at 10 L/s: (11 950 − 998.2 · 9.80665 · 0.01 · 41.5)/(998.2 · 0.01 · 4184) = 0.18886 K.
    const read = temperatureRise(running(FALLING), 0.01, 4184);
    expect(read.ok && read.value).toBeCloseTo(0.18886, 5);
  });

  it("is just what is allowed at the minimum flow", () => {
    for (const allowedRise of [0.3, 1, 8]) {
      const read = minimum(allowedRise);
      if (!read.ok) throw new Error("refused");
      const rise = temperatureRise(running(FALLING), read.value.flow, 4184);
      expect(rise.ok && rise.value).toBeCloseTo(allowedRise, 9);
      expect(read.value.limitedBy).toBe("rise");
    }
    expect(minimum(null)).toEqual(minimum(8));
  });

  it("is refused where best efficiency warms too much, and without efficiency", () => {
    expect(minimum(0.001).findings.map(({ code }) => code)).toEqual(["thermal-flow-not-found"]);
    expect(minimum(0).findings.map(({ code }) => code)).toEqual(["out-of-range"]);
    const bare = running(curveOf(FALLING.points.map(({ flow, head }) => ({ flow, head }))));
    expect(minimum(8, bare).ok).toBe(false);
  });

  it("is the first flow of a curve that stays cool enough", () => {
    const open = minimum(8, running(curveOf(FALLING.points.slice(2))));
    expect(open.ok && open.value.flow).toBe(0.02);
  });

  // Water of 60 °C has 19.946 kPa of vapour pressure and 983.2 kg/m³; half a metre of it more is 24.767 kPa. Steam tables
  // give 23.93 kPa at 64 °C and 25.03 kPa at 65 °C: a rise of 4.76 K; a whole metre, 29.59 kPa, one of 8.8 K.
  it("is held by the NPSH in hand where that is the less", () => {
    const at = (npshAvailable: number) => {
      const hot = { ...ANY, npshAvailable, temperature: 333.15 };
      const read = thermalMinimumFlow({ ...hot, pump: running(FALLING), allowedRise: 8, specificHeat: 4184 });
      if (!read.ok) throw new Error("refused");
      return read.value;
    };
    // NPSHR of the first flow given is 1.6 m.
    expect(at(2.6)).toMatchObject({ limitedBy: "rise", allowedRise: 8 });
    expect(at(2.1).limitedBy).toBe("NPSH");
    expect(at(2.1).allowedRise).toBeCloseTo(4.76, 1);
    expect(at(2.1).flow).toBeGreaterThan(at(2.6).flow);
  });

  it("says what a described liquid does not know, and refuses a pump that has no NPSH in hand", () => {
    const on = { ...ANY, pump: running(FALLING), allowedRise: 8 };
    const read = thermalMinimumFlow({ ...on, npshAvailable: 5, liquid: liquidOf("SG 1, 1 cP, pv 2 kPa") });
    expect(read.findings.map(({ code }) => code)).toEqual(["rise-by-npsh-not-known", "specific-heat-assumed"]);
    const refused = thermalMinimumFlow({ ...on, npshAvailable: 1 });
    expect(refused.findings.map(({ code }) => code)).toContain("thermal-flow-not-found");
  });
});

describe("a pump shut in", () => {
  const input = {
    shaftPower: 30_000,
    liquidVolume: 0.06,
    metalMass: 300,
    specificHeat: null,
    liquid: stateOf("water"),
  };

  // By hand: 30 kW over 59.89 kg · 4184 + 300 kg · 460 J/K = 388 590 J/K: 4.632 K a minute.
  it("warms by its power over liquid and metal", () => {
    const read = shutoffHeating(input);
    expect(read.ok && read.value * 60).toBeCloseTo(4.632, 3);
    expect(read.findings.map(({ kind, code }) => `${kind} ${code}`)).toEqual([
      "safety shut-in-heats",
      "assumed specific-heat-of-water",
    ]);
    expect(shutoffHeating({ ...input, liquidVolume: 0 }).ok).toBe(false);
    expect(shutoffHeating({ ...input, metalMass: -1 }).ok).toBe(false);
  });

  it.each([
    // 50.70 kg · 1884 + 138 000 = 233 519 J/K.
    ["diesel", 7.708],
    // 40 % by weight of SG 2.65: SG 1.33166, 79.76 kg of which 60 % are water: 200 219 + 138 000 J/K.
    ["water with solids 40 %, SG 2.65, d50 0.4 mm", 5.322],
  ])("warms faster full of %s", (text, rate) => {
    const read = shutoffHeating({ ...input, liquid: stateOf(text) });
    expect(read.ok && read.value * 60).toBeCloseTo(rate, 2);
    expect(read.findings.map(({ code }) => code)).toEqual(["shut-in-heats", "specific-heat-assumed"]);
    const stated = shutoffHeating({ ...input, liquid: stateOf(text), specificHeat: 2000 });
    expect(stated.findings.map(({ code }) => code)).toEqual(["shut-in-heats"]);
  });
});

describe("the specific heat of a liquid that states none", () => {
  // Water 4184 J/(kg·K) by its share of the mass, oil 1884; beside it the true one near 20 °C, which it is hardly above.
  it.each([
    ["water", 4184, 4184],
    ["raw sewage", 4184, 4184],
    // Sharqawy 2010, table of specific heat: 3.998 kJ/(kg·K) at 35 g/kg, from memory.
    ["sea water 35 g/kg", 4037.6, 3998],
    // Salt in water of 26 %: some 3.3 kJ/(kg·K), from memory.
    ["brine 26 %", 3096.2, 3300],
    ["brine SG 1.2", 3064, 3300],
    ["mine water SG 1.05", 3864, 3900],
    // Handbooks of refrigeration: some 3.4 kJ/(kg·K) at 40 % by weight, 3.1 at 60 %, from memory.
    ["ethylene glycol 40 %", 2510.4, 3400],
    ["ethylene glycol 60 %", 1884, 3100],
    // Fuels and oils 0.45 to 0.5 Btu/(lb·°F), from memory.
    ["diesel", 1884, 1900],
    ["SG 1", 1884, 4184],
    ["SG 0.9, 100 cP", 1884, 1900],
  ])("of %s is %d J/(kg·K)", (text, expected, actual) => {
    const { specificHeat } = specificHeatOf(stateOf(text), null);
    expect(Math.abs(specificHeat - expected)).toBeLessThan(0.1);
    expect(specificHeat).toBeLessThan(1.011 * actual);
  });

  it("is said in words, with what replaces it", () => {
    const [said] = specificHeatOf(stateOf("SG 0.9, 100 cP"), null).findings;
    expect(said && findingText(said, "US")).toBe(
      "No specific heat is stated; 0.450 Btu/(lb·°F) is taken, that of petroleum oil, for the liquid is not known to be water: a liquid that holds more heat warms more slowly; state its own where it is known.",
    );
  });

  it("says what it is taken for", () => {
    const said = (text: string) => specificHeatOf(stateOf(text), null).findings.map(({ code, facts }) => [code, facts]);
    expect(said("raw sewage")).toEqual([["specific-heat-of-water", undefined]]);
    expect(said("SG 0.9, 100 cP")).toEqual([["specific-heat-assumed", { taken: "oil", withoutSolids: false }]]);
    expect(said("brine 26 %")).toEqual([["specific-heat-assumed", { taken: "water", withoutSolids: false }]]);
    expect(said("water with solids 5 %, SG 2.65")).toEqual([
      ["specific-heat-assumed", { taken: "water", withoutSolids: true }],
    ]);
  });
});
