import { describe, expect, it } from "vitest";
import { unitOf } from "../../../src/basis/units.ts";
import { liquidNamed } from "../../../src/liquid/liquid-name.ts";
import { WATER } from "../../../src/liquid/water.ts";
import { shutoffHeating, temperatureRise, thermalMinimumFlow } from "../../../src/pump/heating.ts";
import { expectPublished } from "../../support/expect-published.ts";
import { publishedCases } from "../../support/published-cases.ts";
import { curveOf, FALLING, running } from "../../support/pumps.ts";

const [GPM, FOOT] = [unitOf("US gpm").factor, unitOf("ft").factor];
const minimum = (allowedRise: number | null, pump = running(FALLING)) =>
  thermalMinimumFlow({ pump, allowedRise, specificHeat: 4184 });

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
    const found = thermalMinimumFlow({ pump, allowedRise: 8, specificHeat: 4182 });
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
      const suction = { npshAvailable, liquid: WATER, temperature: 333.15 };
      const read = thermalMinimumFlow({ pump: running(FALLING), allowedRise: 8, specificHeat: 4184, suction });
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
    const described = liquidNamed("SG 1, 1 cP, pv 2 kPa", "liquid");
    if (!described.ok) throw new Error("no liquid");
    const suction = { npshAvailable: 5, liquid: described.value, temperature: 293.15 };
    const read = thermalMinimumFlow({ pump: running(FALLING), allowedRise: 8, specificHeat: null, suction });
    expect(read.findings.map(({ code }) => code)).toEqual(["rise-by-npsh-not-known", "specific-heat-of-water"]);
    const none = { ...suction, liquid: WATER, npshAvailable: 1 };
    const refused = thermalMinimumFlow({ pump: running(FALLING), allowedRise: 8, specificHeat: null, suction: none });
    expect(refused.findings.map(({ code }) => code)).toContain("thermal-flow-not-found");
  });
});

describe("a pump shut in", () => {
  // By hand: 30 kW over 60 kg · 4184 + 300 kg · 460 J/K = 389 040 J/K: 4.627 K a minute.
  it("warms by its power over liquid and metal", () => {
    const input = { shaftPower: 30_000, liquidVolume: 0.06, metalMass: 300, specificHeat: null, density: 1000 };
    const read = shutoffHeating(input);
    expect(read.ok && read.value * 60).toBeCloseTo(4.627, 3);
    expect(read.findings.map(({ kind, code }) => `${kind} ${code}`)).toEqual([
      "safety shut-in-heats",
      "assumed specific-heat-of-water",
    ]);
    expect(shutoffHeating({ ...input, liquidVolume: 0 }).ok).toBe(false);
    expect(shutoffHeating({ ...input, metalMass: -1 }).ok).toBe(false);
  });
});
