import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Result } from "../../../src/basis/result.ts";
import { greatestHead, headToleranceOf } from "../../../src/pressure/greatest-head.ts";
import { type NozzlePressuresInput, nozzlePressures, type SeriesPump } from "../../../src/pressure/nozzle-pressure.ts";
import { stagePressure } from "../../../src/pressure/stage-pressure.ts";

const PSI = 6894.757293168361;
const BAR = 1e5;
const FOOT = 0.3048;
const G = 9.80665;

function good<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(JSON.stringify(result.findings));
  return result.value;
}

function codesOf({ findings }: Result<unknown>): readonly string[] {
  return findings.map(({ kind, code }) => `${kind} ${code}`);
}

function pump(name: string, head: number, elevation = 0, lineLoss = 0): SeriesPump {
  return { name, head, elevation, lineLoss };
}

function pressuresOf(input: NozzlePressuresInput): readonly number[] {
  return good(nozzlePressures(input)).map(({ greatest }) => greatest);
}

describe("the maximum head of a pump", () => {
  const base = { curveTop: 50, speedRatio: 1, trimRatio: 1, headTolerance: 0 };

  it.each([
    [{}, 50],
    [{ headTolerance: 0.05 }, 52.5],
    // 50 × 1.1² = 60.5
    [{ speedRatio: 1.1 }, 60.5],
    // 50 × 1.1² × (13/12)² × 1.05 = 74.5536…
    [{ speedRatio: 1.1, trimRatio: 13 / 12, headTolerance: 0.05 }, 74.55364583],
  ])("is %o → %d m", (change, expected) => {
    expect(good(greatestHead({ ...base, ...change }))).toBeCloseTo(expected, 7);
  });

  it("is refused where the top of the curve is below the duty head", () => {
    expect(codesOf(greatestHead({ ...base, dutyHead: 50.1 }))).toEqual(["error shutoff-below-duty"]);
    expect(greatestHead({ ...base, dutyHead: 50 }).ok).toBe(true);
  });

  // ISO 9906:2012, table 8, upper tolerance of head, from memory.
  it.each([
    ["1B", 0.03],
    ["1U", 0.06],
    ["grade 2B", 0.05],
    ["2u", 0.1],
    ["3B", 0.07],
    ["9Z", undefined],
  ])("has the tolerance of grade %s", (grade, expected) => {
    expect(headToleranceOf(grade)).toBe(expected);
  });
});

describe("nozzle pressures in series", () => {
  // Case O-N02: three pumps of 70 m at 1000 kg/m³, the third 10 m higher.
  it("follow the heads and the elevations", () => {
    const pumps = [pump("1", 70), pump("2", 70), pump("3", 70, 10)];
    const pressures = pressuresOf({ pumps, suctionPressure: 0.5 * BAR, density: 1000 });
    const expected = [0.5, 7.365, 7.365, 14.229, 13.249, 20.113];
    for (const [i, bar] of expected.entries()) expect((pressures[i] as number) / BAR).toBeCloseTo(bar, 2);
  });

  it("lose the friction of the line between", () => {
    const pressures = pressuresOf({
      pumps: [pump("1", 50), pump("2", 50, 4, 6)],
      suctionPressure: 0,
      density: 1000,
    });
    // 50 − 4 − 6 = 40 m, then 90 m
    expect(pressures.map((p) => p / (1000 * G))).toEqual([0, 50, 40, 90].map((head) => expect.closeTo(head, 9)));
  });

  it("are those of the standing column where it is the greater", () => {
    const nozzles = good(
      nozzlePressures({
        pumps: [pump("1", 20, 2)],
        suctionPressure: 0.1 * BAR,
        density: 1000,
        standing: { top: 62, pressure: 0.5 * BAR },
      }),
    );
    const standing = 60 * 1000 * G + 0.5 * BAR;
    expect(nozzles.map(({ standing: still }) => still)).toEqual([standing, standing]);
    expect(nozzles.map(({ greatest }) => greatest)).toEqual([standing, standing]);
    const low = good(
      nozzlePressures({
        pumps: [pump("1", 20)],
        suctionPressure: 0,
        density: 1000,
        standing: { top: 5, pressure: 0 },
      }),
    );
    expect(low[1]?.greatest).toBeCloseTo(20 * 1000 * G, 6);
  });

  it("count a suction below atmosphere as atmosphere, with a caution", () => {
    const vacuum = nozzlePressures({ pumps: [pump("1", 30)], suctionPressure: -0.4 * BAR, density: 1000 });
    expect(good(vacuum).map(({ greatest }) => greatest)).toEqual([0, 30 * 1000 * G]);
    expect(codesOf(vacuum)).toEqual(["check suction-vacuum-as-zero"]);
    expect(nozzlePressures({ pumps: [], suctionPressure: -1.02 * BAR, density: 1000 }).ok).toBe(false);
  });

  it("name the pump whose figures are wrong", () => {
    for (const head of [-1, 0]) {
      const refused = nozzlePressures({ pumps: [pump("booster", head)], suctionPressure: 0, density: 1000 });
      expect(refused.findings[0]?.subject).toBe("booster: maximum head");
    }
    const parts = [{ name: "casing", workingPressure: 0 }];
    const unrated = nozzlePressures({ pumps: [{ ...pump("P1", 30), parts }], suctionPressure: 0, density: 1000 });
    expect(unrated.findings[0]?.subject).toBe("P1: casing: working pressure");
  });

  it("need a standing column that can be", () => {
    const base = { pumps: [pump("1", 30)], suctionPressure: 0, density: 1000 };
    expect(nozzlePressures({ ...base, standing: { top: Number.NaN, pressure: 0 } }).ok).toBe(false);
    expect(nozzlePressures({ ...base, standing: { top: 5, pressure: -1.02 * BAR } }).ok).toBe(false);
    expect(nozzlePressures({ ...base, standing: { top: 5, pressure: -1 * BAR } }).ok).toBe(true);
  });

  it("of equal stages: 5 psi, two of 300 ft (1000 kg/m³): 5 / 135 / 135 / 265 psi", () => {
    const pumps = [pump("1", 300 * FOOT), pump("2", 300 * FOOT)];
    const pressures = pressuresOf({ pumps, suctionPressure: 5 * PSI, density: 1000 });
    for (const [i, psi] of [5, 135, 135, 265].entries())
      expect(Math.abs((pressures[i] as number) / PSI - psi)).toBeLessThan(0.2);
  });

  // Case O-R13: 600 ft at 62.428 lb/ft³ is 260.1 psi.
  it("turn 600 ft of water into 260.1 psi", () => {
    const [, discharge] = pressuresOf({ pumps: [pump("1", 600 * FOOT)], suctionPressure: 0, density: 1000 });
    expect(Math.abs((discharge as number) / PSI - 260.1)).toBeLessThan(0.05);
  });

  it("of a stage agree with the series, and rise by one head a stage", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 20 }), fc.double({ min: 1, max: 200, noNaN: true }), (stage, head) => {
        const { suction, discharge } = good(
          stagePressure({ suctionPressure: BAR, shutoffHead: head, specificGravity: 1, stage, headTolerance: 0.05 }),
        );
        const rise = 998.2 * G * head * 1.05;
        expect(suction).toBeCloseTo(BAR + (stage - 1) * rise, 3);
        expect(discharge).toBeCloseTo(BAR + stage * rise, 3);
      }),
    );
  });

  it.each([
    [{ stage: 1.5 }, "error not-a-whole-number"],
    [{ stage: 0 }, "error out-of-range"],
    [{ stage: 21 }, "error out-of-range"],
    [{ shutoffHead: 0 }, "error out-of-range"],
    [{ specificGravity: 0 }, "error out-of-range"],
    [{ headTolerance: -0.01 }, "error out-of-range"],
    [{ headTolerance: 0.51 }, "error out-of-range"],
    [{ suctionPressure: -2 * BAR }, "error out-of-range"],
    [{ headTolerance: null }, "assumed head-tolerance-assumed"],
    [{ specificGravity: 2.3 }, "check outside-usual-range"],
    [{ stage: 2 }, "check later-stage-suction"],
    [{}, "check nozzle-pressure-without-surge"],
  ])("of a stage: %o gives %s", (change, code) => {
    const base = { suctionPressure: 0, shutoffHead: 50, specificGravity: 1, stage: 1, headTolerance: 0 };
    expect(codesOf(stagePressure({ ...base, ...change }))).toContain(code);
  });
});
