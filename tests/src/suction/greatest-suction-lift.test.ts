import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type GreatestSuctionLiftInput, greatestSuctionLift } from "../../../src/suction/greatest-suction-lift.ts";
import { defaultNpshMargin } from "../../../src/suction/npsh-margin.ts";
import { suctionState } from "../../../src/suction/suction-state.ts";
import { COLD_WATER, fittingOf, pipeOf, segmentOf } from "../../support/pipes.ts";

const pipe = pipeOf(0.2, 4.5e-5);
const base: GreatestSuctionLiftInput = {
  flow: 0.03,
  suctionLine: [segmentOf(pipe, 8, fittingOf(2))],
  npshRequired: 3,
  npshMargin: 1,
  atmosphericPressure: 101_325,
  liquid: COLD_WATER,
};

const layFlat = [segmentOf(pipeOf(0.2, 3e-5, { collapsible: true }), 8)];

function liftOf(change: Partial<GreatestSuctionLiftInput>): number {
  const lift = greatestSuctionLift({ ...base, ...change });
  if (!lift.ok) throw new Error(JSON.stringify(lift.findings));
  return lift.value;
}

function codesOf(change: Partial<GreatestSuctionLiftInput>): readonly string[] {
  return greatestSuctionLift({ ...base, ...change }).findings.map(({ code, kind }) => `${kind} ${code}`);
}

describe("maximum suction lift", () => {
  // By hand: (101325 − 2339) / (998.2 × 9.80665) = 10.111964 m, less 3 and 1 and no loss.
  it("is what NPSHR, margin and losses leave of the atmosphere", () => {
    expect(liftOf({ flow: 0 })).toBeCloseTo(6.111964, 5);
  });

  // The margin is a choice of this product: the greater of 1.0 m and 0.3 NPSHR.
  it.each([
    [2, 1],
    [3, 1],
    [4, 1.2],
    [10, 3],
  ])("keeps the default margin at an NPSHR of %d m", (npshRequired, margin) => {
    expect(defaultNpshMargin(npshRequired)).toBeCloseTo(margin, 12);
    expect(liftOf({ npshRequired, npshMargin: null })).toBeCloseTo(liftOf({ npshRequired, npshMargin: margin }), 12);
  });

  it("leaves exactly NPSHR and the margin when the pump stands there", () => {
    const inputs = [
      fc.double({ min: 1e-9, max: 0.1, noNaN: true }),
      fc.double({ min: 0, max: 15, noNaN: true }),
      fc.double({ min: 0, max: 3, noNaN: true }),
    ] as const;
    fc.assert(
      fc.property(...inputs, (flow, npshRequired, npshMargin) => {
        const suctionLift = liftOf({ flow, npshRequired, npshMargin });
        const state = suctionState({ ...base, flow, suctionLift, surfacePressure: 0 });
        if (!state.ok) throw new Error("no state");
        expect(state.value.npshAvailable).toBeCloseTo(npshRequired + npshMargin, 9);
      }),
    );
  });

  // By hand: V = 0.03/(π 0.2²/4) = 0.954930 m/s, V²/2g = 0.0464935 m; 2339 + 9788.998 (3 + 1 − 0.0464935) = 41 039.9 Pa.
  it("says how low the pressure at the inlet comes, absolute and as a vacuum in lay-flat hose", () => {
    const { findings } = greatestSuctionLift(base);
    expect(findings.find(({ code }) => code === "inlet-pressure-low")?.found?.value).toBeCloseTo(41_039.9, 0);
    const [collapse] = greatestSuctionLift({ ...base, suctionLine: layFlat }).findings;
    expect(collapse?.found?.value).toBeCloseTo(101_325 - 41_039.9, 0);
  });

  it("lets lay-flat hose be where the inlet is just at atmospheric pressure", () => {
    const atmosphericPressure = 2339 + 998.2 * 9.80665 * 4;
    const change = { flow: 0, suctionLine: layFlat };
    expect(greatestSuctionLift({ ...base, ...change, atmosphericPressure }).ok).toBe(true);
    expect(greatestSuctionLift({ ...base, ...change, atmosphericPressure: atmosphericPressure + 1 }).ok).toBe(false);
  });

  it("asks for no depth where the lift is just nothing", () => {
    const npshRequired = (101_325 - 2339) / (998.2 * 9.80665);
    expect(liftOf({ flow: 0, npshRequired, npshMargin: 0 })).toBe(0);
    expect(codesOf({ flow: 0, npshRequired, npshMargin: 0 })).not.toContain("check flooded-suction-needed");
  });

  it("falls as the air thins", () => {
    expect(liftOf({ atmosphericPressure: 8e4 })).toBeLessThan(liftOf({}));
  });

  it("is not capped, but says what priming reaches", () => {
    const lift = greatestSuctionLift({ ...base, flow: 0, npshRequired: 0.5 });
    expect(lift.ok && lift.value).toBeCloseTo(8.611964, 5);
    const limit = lift.findings.find(({ code }) => code === "lift-beyond-practice")?.limit;
    expect(limit?.value).toBeCloseTo(7.62, 9);
  });

  it("comes back negative with the depth it takes", () => {
    const lift = greatestSuctionLift({ ...base, flow: 0, npshRequired: 12 });
    expect(lift.ok && lift.value).toBeCloseTo(-2.888036, 5);
    const flooded = lift.findings.find(({ code }) => code === "flooded-suction-needed");
    expect(flooded?.found?.value).toBeCloseTo(2.888036, 5);
  });

  it.each([
    ["the margin it assumes", { npshMargin: null }, "assumed npsh-margin-assumed"],
    ["a margin under 0.6 m", { npshMargin: 0.59 }, "check npsh-margin-small"],
    ["a margin under a tenth of NPSHR", { npshRequired: 8, npshMargin: 0.79 }, "check npsh-margin-small"],
    ["hot liquid", { liquid: { ...COLD_WATER, vapourPressure: 2e4 } }, "check suction-liquid-hot"],
    ["gas at the inlet", {}, "check inlet-pressure-low"],
  ])("remarks on %s", (_, change, code) => {
    expect(codesOf(change)).toContain(code);
  });

  it.each([
    ["0.6 m", { npshMargin: 0.6 }],
    ["a tenth of NPSHR", { npshRequired: 8, npshMargin: 0.8 }],
  ])("takes a margin of %s without a remark", (_, change) => {
    expect(codesOf(change)).not.toContain("check npsh-margin-small");
  });

  it.each([
    [
      "a liquid without a vapour pressure",
      { liquid: { density: 1000, dynamicViscosity: 1e-3 } },
      "vapour-pressure-missing",
    ],
    ["lay-flat hose", { suctionLine: layFlat }, "suction-lay-flat-collapses"],
    ["a negative margin", { npshMargin: -0.1 }, "out-of-range"],
    ["a negative NPSHR", { npshRequired: -0.1 }, "out-of-range"],
  ])("refuses %s", (_, change, code) => {
    const lift = greatestSuctionLift({ ...base, ...change });
    expect(lift.ok).toBe(false);
    expect(lift.findings[0]?.code).toBe(code);
  });
});
