import { describe, expect, it } from "vitest";
import {
  isInRegion,
  minimumFlowRemark,
  preferredRegion,
  surelyPreferred,
  thermalMinimumFlow,
} from "../../../src/pump/operating-region.ts";
import { efficiencyAtFlow, headOf } from "../../../src/pump/pump-reading.ts";
import { curveOf, FALLING, running } from "../../support/pumps.ts";

describe("the preferred operating region", () => {
  // ANSI/HI 9.6.3, from memory and as trade articles print it: 70 to 120 % of best efficiency flow, 80 to 115 % above N_s
  // 4500, and 90 to 110 % for propellers, from N_s 9000 on (house choice). N_s = 51.645 n_s.
  it.each([
    { ns: undefined, region: { least: 0.7, most: 1.2 } },
    { ns: 2030, region: { least: 0.7, most: 1.2 } },
    { ns: 4499, region: { least: 0.7, most: 1.2 } },
    { ns: 4501, region: { least: 0.8, most: 1.15 } },
    { ns: 7314, region: { least: 0.8, most: 1.15 } },
    { ns: 8999, region: { least: 0.8, most: 1.15 } },
    { ns: 9001, region: { least: 0.9, most: 1.1 } },
    { ns: 14_386, region: { least: 0.9, most: 1.1 } },
  ])("at N_s $ns is $region", ({ ns, region }) => {
    expect(preferredRegion(ns === undefined ? undefined : ns / 51.645)).toEqual(region);
  });

  it("is, where nobody states the speed, what pumps to N_s 4500 and those above share", () => {
    expect(surelyPreferred()).toEqual({ least: 0.8, most: 1.15 });
    expect(surelyPreferred(40)).toEqual({ least: 0.7, most: 1.2 });
  });

  it("holds its own ends, whatever rounding does to them", () => {
    const region = { least: 0.7, most: 1.2 };
    expect([910 / 1300, 1560 / 1300].every((share) => isInRegion(share, region))).toBe(true);
    expect([909 / 1300, 1561 / 1300].some((share) => isInRegion(share, region))).toBe(false);
  });
});

describe("the least continuous flow where no maker states one", () => {
  // House choice: 30 % doubted and 10 % broken of best efficiency flow; 50 % and 30 % above N_s 4500.
  it.each([
    { share: 0.301, ns: 2030, found: "" },
    { share: 0.299, ns: 2030, found: "check" },
    { share: 0.1, ns: 2030, found: "check" },
    { share: 0.099, ns: 2030, found: "limit" },
    { share: 0.501, ns: 7314, found: "" },
    { share: 0.499, ns: 7314, found: "check" },
    { share: 0.299, ns: 7314, found: "limit" },
  ])("at $share of best efficiency flow and N_s $ns: “$found”", ({ share, ns, found }) => {
    expect(minimumFlowRemark(share, ns / 51.645)?.kind ?? "").toBe(found);
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
