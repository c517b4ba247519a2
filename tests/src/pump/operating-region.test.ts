import { describe, expect, it } from "vitest";
import { preferredRegion, thermalMinimumFlow } from "../../../src/pump/operating-region.ts";
import { efficiencyAtFlow, headOf } from "../../../src/pump/pump-reading.ts";
import { curveOf, FALLING, running } from "../../support/pumps.ts";

describe("the preferred operating region", () => {
  // ANSI/HI 9.6.3, from memory: 70 to 120 % of best efficiency flow, 80 to 115 % above N_s 4500.
  it.each([
    { specificSpeed: undefined, region: { least: 0.7, most: 1.2 } },
    { specificSpeed: 87, region: { least: 0.7, most: 1.2 } },
    { specificSpeed: 88, region: { least: 0.8, most: 1.15 } },
  ])("at $specificSpeed is $region", ({ specificSpeed, region }) => {
    expect(preferredRegion(specificSpeed)).toEqual(region);
  });
});

describe("the thermal minimum flow", () => {
  const rise = (flow: number) => {
    const efficiency = efficiencyAtFlow(running(FALLING), flow);
    return efficiency.ok ? (9.80665 * headOf(running(FALLING), flow) * (1 / efficiency.value - 1)) / 4184 : Number.NaN;
  };

  it("is where the liquid warms by just as much as allowed", () => {
    for (const allowedRise of [0.3, 1, 8]) {
      const read = thermalMinimumFlow({ pump: running(FALLING), allowedRise, specificHeat: 4184 });
      expect(read.ok && rise(read.value)).toBeCloseTo(allowedRise, 9);
    }
  });

  // By hand at the second point: 9.80665 · 41.5 · (1/0.34 − 1) / 4184 = 0.18882 K.
  it("agrees with a rise worked out by hand at 10 L/s", () => {
    const read = thermalMinimumFlow({ pump: running(FALLING), allowedRise: 0.18882, specificHeat: 4184 });
    expect(read.ok && read.value).toBeCloseTo(0.01, 5);
  });

  it("is refused where best efficiency warms too much, and without efficiency", () => {
    const at = (allowedRise: number) => thermalMinimumFlow({ pump: running(FALLING), allowedRise, specificHeat: 4184 });
    expect(at(0.001).findings.map(({ code }) => code)).toEqual(["thermal-flow-not-found"]);
    expect(at(0).findings.map(({ code }) => code)).toEqual(["out-of-range"]);
    const bare = running(curveOf(FALLING.points.map(({ flow, head }) => ({ flow, head }))));
    expect(thermalMinimumFlow({ pump: bare, allowedRise: 8, specificHeat: 4184 }).ok).toBe(false);
  });

  it("is the first flow of a curve that stays cool enough", () => {
    const open = running(curveOf(FALLING.points.slice(2)));
    expect(thermalMinimumFlow({ pump: open, allowedRise: 8, specificHeat: 4184 })).toEqual({
      ok: true,
      value: 0.02,
      findings: [],
    });
  });
});
