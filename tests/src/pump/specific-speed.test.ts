import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { shaftPower } from "../../../src/pump/shaft-power.ts";
import { specificSpeed, suctionSpecificSpeed } from "../../../src/pump/specific-speed.ts";

const positive = (most: number) => fc.double({ min: 1e-3, max: most, noNaN: true });

describe("specific speed", () => {
  // Handbooks print 51.64 or 51.65 between the two; worked from the exact gallon and foot: 51.6447.
  it("in US units is 51.645 times that in SI, whatever the pump", () => {
    fc.assert(
      fc.property(positive(100), positive(5), positive(500), (speed, flow, head) => {
        const us = specificSpeed({ speed, flow, head, convention: "US" });
        const si = specificSpeed({ speed, flow, head, convention: "SI" });
        expect(us.ok && si.ok && us.value / si.value).toBeCloseTo(51.645, 3);
      }),
    );
  });

  it("does not change with speed along the affinity laws", () => {
    fc.assert(
      fc.property(positive(5), (ratio) => {
        const base = specificSpeed({ speed: 24, flow: 0.1, head: 30, convention: "SI" });
        const other = specificSpeed({ speed: 24 * ratio, flow: 0.1 * ratio, head: 30 * ratio ** 2, convention: "SI" });
        expect(base.ok && other.ok && other.value / base.value).toBeCloseTo(1, 12);
      }),
    );
  });

  it.each(["speed", "flow", "head"] as const)("refuses a %s of 0", (name) => {
    expect(specificSpeed({ speed: 24, flow: 0.1, head: 30, [name]: 0, convention: "US" }).ok).toBe(false);
  });
});

describe("suction specific speed", () => {
  // n √Q / NPSHR^0.75 with 1 m³/s and 1 m is the speed in rpm itself; 11 000 / 51.6447 = 212.99.
  it.each([
    { speed: 212.9 / 60, codes: [] },
    { speed: 213.1 / 60, codes: ["suction-specific-speed-high"] },
  ])("cautions above 11 000 in US units: $codes", ({ speed, codes }) => {
    for (const convention of ["US", "SI"] as const) {
      const read = suctionSpecificSpeed({ speed, flow: 1, npshRequired: 1, convention });
      expect(read.findings.map(({ code }) => code)).toEqual(codes);
    }
  });
});

describe("shaft power", () => {
  const at = (change: object) => shaftPower({ flow: 0.1, head: 30, efficiency: 0.75, specificGravity: 1, ...change });

  it.each([
    { why: "a percentage", change: { efficiency: 75 }, code: "out-of-range" },
    { why: "just above 1", change: { efficiency: 1.0001 }, code: "out-of-range" },
    { why: "no efficiency", change: { efficiency: 0 }, code: "out-of-range" },
    { why: "no specific gravity", change: { specificGravity: 0 }, code: "out-of-range" },
    { why: "a flow below zero", change: { flow: -1 }, code: "out-of-range" },
    { why: "an efficiency that is no number", change: { efficiency: Number.NaN }, code: "not-a-number" },
  ])("refuses $why", ({ change, code }) => {
    const read = at(change);
    expect(read.ok).toBe(false);
    expect(read.findings.map((finding) => finding.code)).toEqual([code]);
  });

  it.each([
    { change: { efficiency: 0.92 }, codes: [] },
    { change: { efficiency: 0.93 }, codes: ["outside-usual-range"] },
    { change: { efficiency: 1 }, codes: ["outside-usual-range"] },
    { change: { specificGravity: 2.2 }, codes: [] },
    { change: { specificGravity: 2.3 }, codes: ["outside-usual-range"] },
  ])("says of $change: $codes", ({ change, codes }) => {
    const read = at(change);
    expect(read.ok).toBe(true);
    expect(read.findings.map(({ code }) => code)).toEqual(codes);
  });

  it("goes with the specific gravity", () => {
    const [water, heavy] = [at({}), at({ specificGravity: 1.3 })];
    expect(water.ok && heavy.ok && heavy.value / water.value).toBeCloseTo(1.3, 14);
  });
});
