import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  bestPointOf,
  efficiencyAtFlow,
  headAtFlow,
  npshRequiredAtFlow,
  shaftPowerAtFlow,
} from "../../../src/pump/pump-reading.ts";
import { runningPump } from "../../../src/pump/running-pump.ts";
import { trimExponents } from "../../../src/pump/trim-exponents.ts";
import { factsOf } from "../../support/facts.ts";
import { curveOf, FALLING, running } from "../../support/pumps.ts";

const value = (read: { readonly ok: boolean; readonly value?: number }): number =>
  read.ok ? (read.value as number) : Number.NaN;

function findingsAt(speedRatio: number, trimRatio: number): readonly string[] {
  return runningPump({ curve: FALLING, speedRatio, trimRatio }).findings.map(({ kind, code }) => `${kind} ${code}`);
}

describe("another speed", () => {
  // The affinity laws as every handbook states them (common practice, no source).
  it("doubled gives 2 times the flow, 4 times the head, 8 times the power and the same efficiency", () => {
    const fast = running(FALLING, 2);
    expect(value(headAtFlow(fast, 0.1))).toBeCloseTo(4 * 31, 12);
    expect(value(shaftPowerAtFlow(fast, 0.1, 998.2))).toBeCloseTo(8 * 18_970, 8);
    expect(value(efficiencyAtFlow(fast, 0.1))).toBe(0.8);
  });

  it("doubled takes the best point from 50 L/s at 31 m to 100 L/s at 124 m", () => {
    const best = bestPointOf(running(FALLING, 2));
    expect(best.ok && [best.value.flow, best.value.head, best.value.efficiency]).toEqual([
      expect.closeTo(0.1, 9),
      expect.closeTo(124, 9),
      expect.closeTo(0.8, 9),
    ]);
  });

  it("takes NPSHR up with the square and down with the power 1.5", () => {
    expect(value(npshRequiredAtFlow(running(FALLING, 1.1), 0.055))).toBeCloseTo(3.7 * 1.1 ** 2, 12);
    expect(value(npshRequiredAtFlow(running(FALLING, 0.81), 0.0405))).toBeCloseTo(3.7 * 0.81 ** 1.5, 12);
  });

  it("there and back is where it began", () => {
    const ratio = fc.double({ min: 0.45, max: 2.2, noNaN: true });
    fc.assert(
      fc.property(ratio, (there) => {
        const { flowFactor, headFactor } = running(FALLING, there);
        const moved = curveOf(
          FALLING.points.map(({ flow, head, power = 0 }) => ({
            flow: flow * flowFactor,
            head: head * headFactor,
            power: power * flowFactor * headFactor,
          })),
        );
        const back = running(moved, 1 / there);
        for (const flow of [0, 0.013, 0.05, 0.0699]) {
          const [home, away] = [running(FALLING), back];
          expect(value(headAtFlow(away, flow)) / value(headAtFlow(home, flow))).toBeCloseTo(1, 12);
          expect(value(shaftPowerAtFlow(away, flow, 998.2)) / value(shaftPowerAtFlow(home, flow, 998.2))).toBeCloseTo(
            1,
            12,
          );
        }
      }),
    );
  });

  it.each([
    { ratio: 0.2, ok: true },
    { ratio: 0.1999, ok: false },
    { ratio: 2.5, ok: true },
    { ratio: 2.5001, ok: false },
    { ratio: Number.NaN, ok: false },
  ])("is answered at $ratio: $ok", ({ ratio, ok }) => {
    expect(runningPump({ curve: FALLING, speedRatio: ratio, trimRatio: 1 }).ok).toBe(ok);
  });

  it.each([
    { ratio: 1, codes: [] },
    { ratio: 0.8, codes: [] },
    { ratio: 0.79, codes: ["check speed-far-from-curve"] },
    { ratio: 1.2, codes: ["check speed-raised"] },
    { ratio: 1.21, codes: ["check speed-far-from-curve", "check speed-raised"] },
    { ratio: 0.5, codes: ["check speed-far-from-curve"] },
    { ratio: 0.49, codes: ["check speed-far-from-curve", "check speed-below-half"] },
  ])("at $ratio says $codes", ({ ratio, codes }) => {
    expect(findingsAt(ratio, 1)).toEqual(codes);
  });

  it("names the efficiency below half speed: 1 − 0.2 · (1/0.4)^0.1 = 0.7808", () => {
    const read = runningPump({ curve: FALLING, speedRatio: 0.4, trimRatio: 1 });
    // 2.5^0.1 = e^0.0916291 = 1.095958; 0.2 times that is 0.219192.
    expect(factsOf(read, "speed-below-half").corrected.value).toBeCloseTo(0.780808, 5);
  });
});

describe("a trimmed impeller", () => {
  it("gives flow in proportion and head with the square, efficiency kept down to 90 %", () => {
    const trimmed = running(FALLING, 1, 0.9);
    expect(value(headAtFlow(trimmed, 0.045))).toBeCloseTo(0.81 * 31, 12);
    expect(value(efficiencyAtFlow(trimmed, 0.045))).toBe(0.8);
    expect(value(shaftPowerAtFlow(trimmed, 0.045, 998.2))).toBeCloseTo(0.729 * 18_970, 8);
  });

  it("loses a point of best efficiency for each 5 % below 90 %", () => {
    expect(value(efficiencyAtFlow(running(FALLING, 1, 0.85), 0.0425))).toBeCloseTo(0.79, 12);
    expect(value(efficiencyAtFlow(running(FALLING, 1, 0.8), 0.04))).toBeCloseTo(0.78, 12);
    expect(value(shaftPowerAtFlow(running(FALLING, 1, 0.8), 0.04, 998.2))).toBeCloseTo(
      (0.512 * 18_970 * 0.8) / 0.78,
      8,
    );
  });

  it("keeps NPSHR at a flow: the eye is not trimmed", () => {
    expect(value(npshRequiredAtFlow(running(FALLING, 1, 0.8), 0.05))).toBe(3.7);
  });

  it.each([
    { ratio: 1, codes: [] },
    { ratio: 0.9, codes: ["check trim-not-similar"] },
    { ratio: 11.7 / 13, codes: ["check trim-not-similar"] },
    { ratio: 0.89, codes: ["check trim-not-similar", "assumed trim-efficiency-assumed"] },
    { ratio: 0.79, codes: ["check trim-not-similar", "assumed trim-efficiency-assumed", "check trim-deep"] },
    { ratio: 0.7499, codes: ["error out-of-range"] },
    { ratio: 1.0001, codes: ["error out-of-range"] },
  ])("at $ratio says $codes", ({ ratio, codes }) => {
    expect(findingsAt(1, ratio)).toEqual(codes);
  });
});

describe("two measured trims", () => {
  const measured = {
    largeDiameter: 0.33,
    smallDiameter: 0.28,
    largeFlow: 0.05,
    smallFlow: 0.0445,
    largeHead: 31,
    smallHead: 21.5,
  };
  const fitted = trimExponents(measured);
  const exponents = fitted.ok ? fitted.value : undefined;

  it("give the exponents that join them", () => {
    // ln(50/44.5) / ln(33/28) = 0.1165338 / 0.1643031; ln(31/21.5) / ln(33/28) = 0.3659343 / 0.1643031.
    expect(exponents?.flow).toBeCloseTo(0.709261, 5);
    expect(exponents?.head).toBeCloseTo(2.22719, 5);
  });

  it("carry the large impeller onto the small one, and no further", () => {
    const at = (trimRatio: number) =>
      runningPump({ curve: FALLING, speedRatio: 1, trimRatio, ...(exponents && { trimExponents: exponents }) });
    const small = at(0.28 / 0.33);
    if (!small.ok) throw new Error("the measured trim is refused");
    expect(small.value.flowFactor * 0.05).toBeCloseTo(0.0445, 12);
    expect(value(headAtFlow(small.value, 0.0445))).toBeCloseTo(21.5, 10);
    expect(at(0.84).findings.map(({ code }) => code)).toEqual(["trim-beyond-measured"]);
  });

  it.each([
    {
      why: "a smaller diameter that is larger",
      change: { smallDiameter: 0.34 },
      subject: "diameter of the smaller impeller",
    },
    { why: "a flow of nothing", change: { smallFlow: 0 }, subject: "flow of the smaller impeller" },
  ])("refuse $why", ({ change, subject }) => {
    const refused = trimExponents({ ...measured, ...change });
    expect(refused.ok).toBe(false);
    expect(refused.findings.map((finding) => finding.subject)).toEqual([subject]);
  });
});
