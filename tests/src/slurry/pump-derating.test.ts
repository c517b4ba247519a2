import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { clearWaterDuty } from "../../../src/slurry/clear-water-duty.ts";
import { headReduction } from "../../../src/slurry/head-reduction-chart.ts";
import { type PumpDeratingInputs, pumpDerating } from "../../../src/slurry/pump-derating.ts";
import { expectPublished } from "../../support/expect-published.ts";
import { factsOf } from "../../support/facts.ts";
import { numberOf, publishedCases } from "../../support/published-cases.ts";

const base: PumpDeratingInputs = {
  impellerDiameter: 0.35,
  particleSize: 1.5e-3,
  solidsSG: 2.65,
  solidsByVolume: 0.1,
  fines: 0,
};

function deratingOf(change: Partial<PumpDeratingInputs> = {}) {
  const derating = pumpDerating({ ...base, ...change });
  if (!derating.ok) throw new Error(JSON.stringify(derating.findings));
  return derating.value;
}

function codesOf(change: Partial<PumpDeratingInputs>): readonly string[] {
  return pumpDerating({ ...base, ...change }).findings.map(({ code, kind }) => `${kind} ${code}`);
}

const byWeight = (fraction: number, solids: number): number => fraction / solids / (fraction / solids + (1 - fraction));

describe("head and efficiency of a pump on slurry", () => {
  it.each(publishedCases("9-slurry-derating").filter(({ expected }) => expected["HR_Cave"]))("$id", (of) => {
    const solidsSG = numberOf(of, "S_s");
    const solidsByVolume = byWeight(numberOf(of, "Cw"), solidsSG);
    const particleSize = numberOf(of, "d50") * 1e-3;
    const { headRatio, kazimHeadRatio } = deratingOf({ solidsSG, solidsByVolume, particleSize });
    expectPublished(headRatio, "HR_Cave", of);
    expectPublished(kazimHeadRatio, "HR_Kazim", of);
  });

  const size = fc.double({ min: 3e-5, max: 4e-3, noNaN: true });
  const fraction = fc.double({ min: 0.001, max: 0.2, noNaN: true });

  it("falls with the solids and their size", () => {
    fc.assert(
      fc.property(size, fraction, (particleSize, solidsByVolume) => {
        const at = deratingOf({ particleSize, solidsByVolume });
        const more = deratingOf({ particleSize, solidsByVolume: solidsByVolume * 1.1 });
        const larger = deratingOf({ particleSize: particleSize * 1.1, solidsByVolume });
        for (const ratio of ["headRatio", "efficiencyRatio", "kazimHeadRatio"] as const) {
          expect(more[ratio]).toBeLessThan(at[ratio]);
          expect(larger[ratio]).toBeLessThan(at[ratio]);
        }
      }),
    );
  });

  it("tends to that on water as the solids thin out", () => {
    fc.assert(
      fc.property(size, (particleSize) => {
        const { headRatio, kazimHeadRatio } = deratingOf({ particleSize, solidsByVolume: 1e-9 });
        expect(Math.abs(1 - headRatio)).toBeLessThan(1e-8);
        expect(Math.abs(1 - kazimHeadRatio)).toBeLessThan(1e-8);
      }),
    );
    expect(deratingOf({ solidsByVolume: 0 })).toEqual({ headRatio: 1, efficiencyRatio: 1, kazimHeadRatio: 1 });
  });

  it("loses less with fines, as (1 − X)²", () => {
    const whole = 1 - deratingOf().headRatio;
    // 0.92² = 0.8464, the fines factor of 9-slurry-derating-001.
    expect((1 - deratingOf({ fines: 0.08 }).headRatio) / whole).toBeCloseTo(0.8464, 12);
  });

  const usual = ["check derating-scatter", "check npshr-rises"];
  it.each([
    ["an ordinary sand", {}, usual],
    ["water", { solidsByVolume: 0 }, ["check derating-scatter"]],
    ["0.4 m", { impellerDiameter: 0.4 }, usual],
    ["over 0.4 m", { impellerDiameter: 0.401 }, [usual[0], "check derating-large-impeller", usual[1]]],
    ["20 %", { solidsByVolume: 0.2 }, usual],
    ["over 20 %", { solidsByVolume: 0.201 }, [usual[0], "check derating-efficiency-lower", usual[1]]],
    ["fines", { fines: 0.08 }, [usual[0], "check derating-fines-relief", usual[1]]],
    ["half of it fines", { fines: 0.5 }, [usual[0], "check derating-fines-relief", usual[1]]],
    ["more than half of it fines", { fines: 0.51 }, ["error fines-contradict-size"]],
    [
      "mostly fines, d50 among them",
      { fines: 0.6, particleSize: 7e-5 },
      [usual[0], "check derating-fines-relief", usual[1]],
    ],
    [
      "mostly fines, d50 the largest of them",
      { fines: 0.6, particleSize: 7.5e-5 },
      [usual[0], "check derating-fines-relief", usual[1]],
    ],
    ["10 mm", { particleSize: 0.01 }, usual],
    ["over 10 mm", { particleSize: 0.0101 }, ["limit outside-usual-range", ...usual]],
    ["0.0227 mm", { particleSize: 2.27e-5 }, ["check derating-scatter"]],
    ["finer", { particleSize: 2.269e-5 }, ["error derating-too-fine"]],
    ["solids that float", { solidsSG: 1 }, ["error solids-do-not-settle"]],
    ["packed solids", { solidsByVolume: 0.62 }, ["error out-of-range"]],
    ["a small impeller", { impellerDiameter: 0.0499 }, ["error out-of-range"]],
    ["a great impeller", { impellerDiameter: 5.01 }, ["error out-of-range"]],
    ["nothing but fines", { fines: 1 }, ["error out-of-range"]],
  ] as const)("remarks on %s", (_, change, codes) => {
    expect(codesOf(change)).toEqual(codes);
  });

  it("is not held at a half, but refused below it", () => {
    // 1 − HR = 0.0385 × 1.65 × 2.5094340 × ln(8/0.0227) C_w = 0.934907 C_w: 0.5 at C_w = 0.534813.
    const at = (weight: number) => ({ particleSize: 8e-3, solidsByVolume: byWeight(weight, 2.65) });
    expect(deratingOf(at(0.5348)).headRatio).toBeCloseTo(0.5, 4);
    expect(codesOf(at(0.5349))).toEqual(["error derating-below-measured"]);
  });

  it("asks for the unit where micrometres come to a loss beyond what was measured", () => {
    const slip = "check particle-size-doubted";
    expect(codesOf({ particleSize: 0.34, solidsByVolume: 0.2 })).toEqual(["error derating-below-measured", slip]);
    expect(codesOf({ particleSize: 0.35 })).toEqual(["error out-of-range", slip]);
    expect(codesOf({ particleSize: 0.34 })).toContain(slip);
  });

  it("says by how much NPSHR rises", () => {
    expect(factsOf(pumpDerating(base), "npshr-rises").factor).toEqual({
      quantity: "ratio",
      value: 1 / deratingOf().headRatio,
    });
  });
});

describe("head reduction read from the handbook's chart", () => {
  it.each(publishedCases("9-slurry-derating").filter(({ expected }) => expected["R_H"]))("$id", (of) => {
    const reduced = headReduction({
      chartReduction: numberOf(of, "R_H_reference") / 100,
      solidsSG: numberOf(of, "S_s"),
      fines: numberOf(of, "X_h"),
      solidsByVolume: numberOf(of, "Cv"),
    });
    if (!reduced.ok) throw new Error("refused");
    expectPublished(reduced.value.densityFactor, "factor_S", of);
    expectPublished(reduced.value.finesFactor, "factor_X", of);
    expectPublished(reduced.value.atChartConcentration * 100, "R_H_at_15", of);
    expectPublished(reduced.value.reduction * 100, "R_H", of);
  });

  it.each([
    ["solids that float", { solidsSG: 1 }, "solids-do-not-settle"],
    ["the whole head", { chartReduction: 0.9, solidsByVolume: 0.3 }, "out-of-range"],
    ["a negative reading", { chartReduction: -0.1 }, "out-of-range"],
  ] as const)("refuses %s", (_, change, code) => {
    const chart = { chartReduction: 0.14, solidsSG: 2.65, fines: 0, solidsByVolume: 0.15, ...change };
    expect(headReduction(chart).findings.map((finding) => finding.code)).toEqual([code]);
  });
});

describe("clear-water duty", () => {
  const duty = {
    flow: 0.1,
    slurryHead: 24,
    slurryDensity: 1250,
    waterEfficiency: 0.75,
    headRatio: 0.8,
    efficiencyRatio: 0.8,
  };

  it("divides the head by the ratio and takes density into the power alone", () => {
    const answer = clearWaterDuty(duty);
    // 24/0.8 = 30 m; 1250 × 9.80665 × 0.1 × 24 / (0.75 × 0.8) = 49 033.25 W
    expect(answer.ok && answer.value.waterHead).toBeCloseTo(30, 12);
    expect(answer.ok && answer.value.shaftPower).toBeCloseTo(49_033.25, 8);
    const light = clearWaterDuty({ ...duty, slurryDensity: 1000 });
    expect(light.ok && light.value.waterHead).toBeCloseTo(30, 12);
  });

  it.each([
    ["headRatio", 1.01],
    ["headRatio", 0],
    ["efficiencyRatio", 1.01],
    ["waterEfficiency", 0],
    ["waterEfficiency", 1.01],
    ["slurryDensity", 0],
    ["flow", -1],
    ["slurryHead", -1],
  ] as const)("refuses %s of %d", (figure, value) => {
    expect(clearWaterDuty({ ...duty, [figure]: value }).ok).toBe(false);
  });
});
