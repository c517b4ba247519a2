import { describe, expect, it } from "vitest";
import { isInRegion, minimumFlowRemark, preferredRegion, surelyPreferred } from "../../../src/pump/operating-region.ts";

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

describe("the minimum continuous flow where no maker states one", () => {
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
