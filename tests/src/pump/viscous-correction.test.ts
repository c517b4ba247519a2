import { describe, expect, it } from "vitest";
import {
  viscousCorrection,
  viscousHeadRatio,
  viscousNeed,
  viscousNpshRatio,
} from "../../../src/pump/viscous-correction.ts";
import { viscousCurve, viscousPumpCurve } from "../../../src/pump/viscous-curve.ts";
import { curveOf, FALLING } from "../../support/pumps.ts";

/** The pump of the worked example of ANSI/HI 9.6.7: 110 m³/h, 77 m, 2950 rpm, with 120 cSt. */
const EXAMPLE = { bestFlow: 110 / 3600, bestHead: 77, speed: 2950 / 60, kinematicViscosity: 120e-6 };

function corrected(change: Partial<typeof EXAMPLE> = {}) {
  const read = viscousCorrection({ ...EXAMPLE, ...change });
  if (!read.ok) throw new Error(JSON.stringify(read.findings));
  return read.value;
}
const codes = (change: Partial<typeof EXAMPLE>) =>
  viscousCorrection({ ...EXAMPLE, ...change }).findings.map(({ code }) => code);

describe("the correction of ANSI/HI 9.6.7", () => {
  // The standard's own example prints B 5.52, C_Q 0.938, C_η 0.738 and C_H 0.958, 0.947, 0.938, 0.929 at 0.6, 0.8, 1.0 and
  // 1.2 of best efficiency flow.
  it("gives the figures of the standard's example", () => {
    const found = corrected();
    expect(Math.abs(found.parameter - 5.52)).toBeLessThanOrEqual(0.005);
    expect(Math.abs(found.flow - 0.938)).toBeLessThanOrEqual(0.0005);
    expect(Math.abs(found.efficiency - 0.738)).toBeLessThanOrEqual(0.0005);
    for (const [ratio, printed] of [
      [0.6, 0.958],
      [0.8, 0.947],
      [1, 0.938],
      [1.2, 0.929],
    ] as const) {
      expect(Math.abs(viscousHeadRatio(found, ratio) - printed)).toBeLessThanOrEqual(0.0005);
    }
  });

  it("is 0.40 % in B above the constant 26.6 printed for US units", () => {
    const us = (26.6 * Math.sqrt(120) * (77 / 0.3048) ** 0.0625) / (484.315 ** 0.375 * 2950 ** 0.25);
    expect(corrected().parameter / us - 1).toBeCloseTo(0.004, 3);
  });

  it("tends to 1 as the liquid thins, and leaves the shutoff head alone", () => {
    let before = corrected({ kinematicViscosity: 1e-3 });
    for (const kinematicViscosity of [1e-4, 3e-5, 1e-5, 5e-6]) {
      const next = corrected({ kinematicViscosity });
      expect(next.flow).toBeGreaterThan(before.flow);
      expect(next.efficiency).toBeGreaterThan(before.efficiency);
      before = next;
    }
    // B goes with the root of viscosity: 1.0005 here.
    const nearly = corrected({ kinematicViscosity: 120e-6 * (1.0005 / corrected().parameter) ** 2 });
    expect(nearly.flow).toBeCloseTo(1, 9);
    expect(nearly.efficiency).toBeCloseTo(1, 4);
    expect(viscousHeadRatio(corrected(), 0)).toBe(1);
  });

  // B of 1 and of 40 by its own definition, from B of the example at 120 cSt.
  const viscosityAt = (b: number) => 120e-6 * (b / corrected().parameter) ** 2;
  it.each([
    { b: 0.999, found: ["viscosity-needs-no-correction"] },
    { b: 1.001, found: [] },
    { b: 26, found: [] },
    { b: 39.9, found: ["outside-usual-range"] },
    { b: 40.1, found: ["outside-usual-range", "viscosity-beyond-method"] },
  ])("at B of $b says $found", ({ b, found }) => {
    expect(codes({ kinematicViscosity: viscosityAt(b) })).toEqual(found);
    expect(viscousCorrection({ ...EXAMPLE, kinematicViscosity: viscosityAt(b) }).ok).toBe(b < 40);
  });

  it.each([
    { why: "thinner than 1 cSt", change: { kinematicViscosity: 0.9e-6 }, found: "outside-usual-range" },
    { why: "more than 260 m³/h", change: { bestFlow: 261 / 3600 }, found: "outside-usual-range" },
    { why: "more than 130 m", change: { bestHead: 131 }, found: "outside-usual-range" },
    // 2950 √(110/3600) / H^0.75 = 60 at H = 17.2 m.
    { why: "a specific speed above 60", change: { bestHead: 16 }, found: "viscosity-impeller-not-radial" },
    { why: "no viscosity", change: { kinematicViscosity: 0 }, found: "out-of-range" },
  ])("says of $why: $found", ({ change, found }) => {
    expect(codes(change)).toContain(found);
  });
});

describe("whether a liquid changes the curve of a pump", () => {
  const best = { flow: 110 / 3600, head: 77 };
  // B is 5.52 at 120 cSt and goes with the root of viscosity: 1 at 120/5.52² = 3.94 cSt. At 400 rpm it is 1.65 times that
  // of 2950 rpm, so 1 at 1.45 cSt, which is as thin as water.
  it.each([
    { cSt: 1, best, speed: 2950 / 60, need: "none" },
    { cSt: 3.9, best, speed: 2950 / 60, need: "none" },
    { cSt: 4, best, speed: 2950 / 60, need: "correction" },
    { cSt: 1.79, best, speed: undefined, need: "none" },
    { cSt: 1.81, best, speed: undefined, need: "speed" },
    { cSt: 10, best: undefined, speed: 2950 / 60, need: "none" },
    { cSt: 10.1, best: undefined, speed: 2950 / 60, need: "efficiency" },
  ] as const)("$cSt cSt: $need", ({ cSt, best: of, speed, need }) => {
    expect(viscousNeed(cSt * 1e-6, of, speed)).toBe(need);
  });

  // Hand calculation: B of water in a pump of 3 m³/h at 30 m and 1450 rpm is 2.19, yet its curve was made with water.
  it("is never so of water, however small the pump", () => {
    const small = { bestFlow: 3 / 3600, bestHead: 30, speed: 1450 / 60 };
    const read = viscousCorrection({ ...small, kinematicViscosity: 1e-6 });
    expect(read.ok && [read.value.parameter.toFixed(2), read.value.flow, read.value.efficiency]).toEqual([
      "2.19",
      1,
      1,
    ]);
  });
});

describe("the curve with a viscous liquid", () => {
  const input = { curve: FALLING, speed: 1450 / 60, kinematicViscosity: 120e-6, specificGravity: 0.9 };

  it("moves each point by the ratios of the best efficiency point", () => {
    const read = viscousCurve(input);
    const ratios = corrected({ bestFlow: 0.05, bestHead: 31, speed: 1450 / 60 });
    const best = read.ok ? read.value[5] : undefined;
    expect(best?.flow).toBeCloseTo(0.05 * ratios.flow, 14);
    expect(best?.head).toBeCloseTo(31 * ratios.flow, 12);
    expect(best?.efficiency).toBeCloseTo(0.8 * ratios.efficiency, 14);
    const power = (0.9 * 998.2 * 9.80665 * 0.05 * 31 * ratios.flow ** 2) / (0.8 * ratios.efficiency);
    expect((best?.power as number) / power).toBeCloseTo(1, 12);
    expect(read.ok && read.value[0]).toEqual({ flow: 0, head: 42, efficiency: 0, power: null, npshRequired: null });
  });

  // Hand calculation: B goes with the speed to −0.5 along the affinity laws, 6.17 at 0.8 of 2950 rpm for 5.52, so C_Q is
  // 0.9246 in place of 0.9378.
  it("is corrected for the speed it runs at, at the points of its own", () => {
    const curve = curveOf([
      { flow: 0, head: 94 },
      { flow: 66 / 3600, head: 89, efficiency: 0.58 },
      { flow: 110 / 3600, head: 77, efficiency: 0.68 },
      { flow: 132 / 3600, head: 68, efficiency: 0.66 },
    ]);
    const flowOf = (speedRatio: number) => {
      const read = viscousCurve({ ...EXAMPLE, curve, speedRatio, specificGravity: 0.9 });
      return read.ok ? Number(((read.value[2]?.flow ?? 0) / (110 / 3600)).toFixed(4)) : 0;
    };
    expect([flowOf(1), flowOf(0.8)]).toEqual([0.9378, 0.9246]);
  });

  // Hand calculation by the standard's equation with A = 0.5: 4.15 m at 110 m³/h and 2950 rpm, C_H 0.9378, gives 1.0398.
  it("requires more NPSH by the standard's rule, and the curve drawn through it is a curve", () => {
    expect(viscousNpshRatio(corrected(), EXAMPLE, 4.15)).toBeCloseTo(1.0398, 3);
    const read = viscousPumpCurve(input);
    if (!read.ok) throw new Error(JSON.stringify(read.findings));
    const ratio = (read.value.points[5]?.npshRequired ?? 0) / (FALLING.points[5]?.npshRequired ?? 1);
    expect(ratio).toBeGreaterThan(1);
    expect(ratio).toBeLessThan(1.2);
    expect(read.value.bestEfficiency?.flow).toBeCloseTo(
      0.05 * corrected({ bestFlow: 0.05, bestHead: 31, speed: 1450 / 60 }).flow,
      12,
    );
  });

  it("refuses a curve without efficiency or power, and a specific gravity of 0", () => {
    const bare = curveOf(FALLING.points.map(({ flow, head }) => ({ flow, head })));
    expect(viscousCurve({ ...input, curve: bare }).findings.map(({ code }) => code)).toEqual(["curve-column-missing"]);
    expect(viscousCurve({ ...input, specificGravity: 0 }).ok).toBe(false);
  });
});
