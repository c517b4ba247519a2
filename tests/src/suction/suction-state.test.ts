import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { pipeNamed } from "../../../src/pipework/pipe-name.ts";
import { gasRemarks } from "../../../src/suction/suction-practice.ts";
import { type SuctionStateInput, suctionState } from "../../../src/suction/suction-state.ts";
import { COLD_WATER, fittingOf, pipeOf, segmentOf } from "../../support/pipes.ts";

const pipe = pipeOf(0.2, 4.5e-5);
const base: SuctionStateInput = {
  flow: 0.03,
  suctionLift: 2,
  suctionLine: [segmentOf(pipe, 8, fittingOf(2))],
  atmosphericPressure: 101_325,
  surfacePressure: 0,
  liquid: COLD_WATER,
};

function stateOf(change: Partial<SuctionStateInput> = {}) {
  const state = suctionState({ ...base, ...change });
  if (!state.ok) throw new Error(JSON.stringify(state.findings));
  return state.value;
}

function codesOf(change: Partial<SuctionStateInput>): readonly string[] {
  return suctionState({ ...base, ...change }).findings.map(({ code, kind }) => `${kind} ${code}`);
}

const noLoss = { flow: 0 };

describe("vacuum on thin polyethylene", () => {
  const line = (name: string) => {
    const found = pipeNamed(name);
    if (!found.ok) throw new Error(name);
    return [segmentOf(found.value, 18)];
  };
  // DR 32.5 of a grade not stated: 2 × 28 000/0.7975/31.5³ × 0.764 = 1.7 psi (11.8 kPa) of 50 years, 5.0 psi (34.6 kPa) of half an
  // hour at best; DR 11 as PE3608 53 psi. At rest 1 m of lift is 9.8 kPa of vacuum, 4 m 39 kPa.
  it.each([
    ["8in HDPE DR32.5", 0.5, []],
    ["8in HDPE DR32.5", 1, ["check pipe-vacuum-collapses"]],
    ["8in HDPE DR32.5", 4, ["limit pipe-vacuum-collapses"]],
    ["8in HDPE DR11", 7, []],
    ["8in HDPE DR32.5", -3, []],
  ])("in %s at a lift of %d m", (name, suctionLift, said) => {
    const codes = codesOf({ ...noLoss, suctionLift, suctionLine: line(name) });
    expect(codes.filter((code) => code.endsWith("pipe-vacuum-collapses"))).toEqual(said);
  });
});

describe("NPSH available", () => {
  // By hand: (101325 − 2339) / (998.2 × 9.80665) = 10.111964 m.
  it.each([
    { why: "water at 20 °C, at rest, 2 m lift", change: {}, npsha: 8.111964 },
    { why: "flooded by 3 m", change: { suctionLift: -3 }, npsha: 13.111964 },
    // 50 kPa / (998.2 × 9.80665) = 5.1077751 m
    { why: "50 kPa over the surface", change: { surfacePressure: 5e4 }, npsha: 13.21974 },
    { why: "50 kPa of vacuum over the surface", change: { surfacePressure: -5e4 }, npsha: 3.004189 },
    { why: "air at 80 kPa", change: { atmosphericPressure: 8e4 }, npsha: 5.9334984 },
  ])("is the head left over vapour pressure: $why", ({ change, npsha }) => {
    expect(stateOf({ ...noLoss, ...change }).npshAvailable).toBeCloseTo(npsha, 5);
  });

  it("takes off what the line loses", () => {
    // V = 0.03 / (π 0.2² / 4) = 0.954930 m/s, V²/2g = 0.0464935 m, K = 2.
    const state = stateOf({ suctionLine: [segmentOf(pipe, 0, fittingOf(2))] });
    expect(state.npshAvailable).toBeCloseTo(8.111964 - 2 * 0.0464935, 5);
    expect(state.suctionLoss).toBeCloseTo(0.092987, 6);
  });

  it("does not take off the velocity head, which the inlet pressure does", () => {
    const state = stateOf({ suctionLine: [segmentOf(pipe, 0)] });
    expect(state.npshAvailable).toBeCloseTo(8.111964, 5);
    // 101325 − 998.2 × 9.80665 × (2 + 0.0464935) = 81291.9
    expect(state.inletPressure).toBeCloseTo(81_291.9, 0);
  });

  it("gains exactly the level it is raised by", () => {
    const level = fc.double({ min: -20, max: 20, noNaN: true });
    fc.assert(
      fc.property(level, level, (lift, rise) => {
        const gain = stateOf({ suctionLift: lift - rise }).npshAvailable - stateOf({ suctionLift: lift }).npshAvailable;
        expect(gain).toBeCloseTo(rise, 10);
      }),
    );
  });

  it("falls with more flow", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-9, max: 0.2, noNaN: true }),
        fc.double({ min: 1e-6, max: 0.1, noNaN: true }),
        (flow, more) => {
          expect(stateOf({ flow: flow + more }).npshAvailable).toBeLessThan(stateOf({ flow }).npshAvailable);
        },
      ),
    );
  });

  it("says nothing of an ordinary suction", () => {
    expect(codesOf({})).toEqual([]);
  });

  const layFlat = [segmentOf(pipeOf(0.2, 3e-5, { collapsible: true }), 8)];
  it.each([
    ["nothing left", { suctionLift: 10.2 }, ["limit npsha-not-positive"]],
    [
      "a lift beyond priming",
      { suctionLift: 7.63, ...noLoss },
      ["check lift-beyond-practice", "check inlet-pressure-low"],
    ],
    ["no pipe", { suctionLine: [] }, ["check line-lossless"]],
    ["hot liquid on a lift", { liquid: { ...COLD_WATER, vapourPressure: 19_950 } }, ["check suction-liquid-hot"]],
    ["hot liquid, flooded", { liquid: { ...COLD_WATER, vapourPressure: 19_950 }, suctionLift: -1 }, []],
    // 60 kPa at the inlet: (101325 − 60000) / (998.2 × 9.80665) = 4.221576 m
    ["low pressure at the inlet", { suctionLift: 4.2216, ...noLoss }, ["check inlet-pressure-low"]],
    ["just enough pressure at the inlet", { suctionLift: 4.2215, ...noLoss }, []],
    ["lay-flat hose, flooded", { suctionLine: layFlat, suctionLift: -5 }, []],
    // 2.4 m/s in 0.2 m is 0.0753982 m³/s
    ["a fast line", { flow: 0.0754, suctionLift: 0 }, ["check velocity-high"]],
  ] as const)("remarks on %s", (_, change, codes) => {
    expect(codesOf(change)).toEqual(expect.arrayContaining([...codes]));
    if (codes.length === 0) expect(codesOf(change)).toEqual([]);
  });

  // The vacuum at the inlet of a lossless line of 6 m is 998.2 × 9.80665 × 6 Pa, 58 734 Pa, and its velocity head.
  it.each([
    [58_000, ["check hose-beyond-vacuum"]],
    [70_000, []],
    [0, ["check hose-beyond-vacuum"]],
  ])("says where a hose that stands %d Pa of vacuum is under more", (standsVacuum, codes) => {
    const hose = pipeOf(0.3, 0, { make: { material: "hose", rule: "hose", standsVacuum } });
    const found = codesOf({ suctionLine: [segmentOf(hose, 0)], suctionLift: 6 });
    expect(found.filter((code) => code.endsWith("hose-beyond-vacuum"))).toEqual(codes);
  });

  it("lowers the practical lift with the air", () => {
    // 7.62 − (101325 − 80000) / (998.2 × 9.80665) = 7.62 − 2.178466 = 5.441534 m
    const high = { atmosphericPressure: 8e4, ...noLoss };
    expect(codesOf({ ...high, suctionLift: 5.4416 })).toContain("check lift-beyond-practice");
    expect(codesOf({ ...high, suctionLift: 5.4415 })).not.toContain("check lift-beyond-practice");
  });

  it("says nothing of air in a liquid that boils, nor of a practical lift below none", () => {
    expect(codesOf({ suctionLift: 10.2 })).not.toContain("check inlet-pressure-low");
    const { findings } = suctionState({ ...base, surfacePressure: -90_000, suctionLift: 0.5, flow: 0 });
    expect(findings.find(({ code }) => code === "lift-beyond-practice")?.limit?.value).toBe(0);
  });

  it("warns of a liquid that boils in its vessel", () => {
    expect(codesOf({ surfacePressure: -99_000 })).toContain("limit boils-at-surface");
    expect(codesOf({ surfacePressure: -98_986, suctionLift: -5 })).not.toContain("limit boils-at-surface");
  });

  it.each([
    [
      "a liquid without a vapour pressure",
      { liquid: { density: 1000, dynamicViscosity: 1e-3 } },
      "vapour-pressure-missing",
    ],
    ["a surface below absolute zero", { surfacePressure: -101_326 }, "out-of-range"],
    ["a negative flow", { flow: -1 }, "out-of-range"],
    ["lay-flat hose under vacuum", { suctionLine: layFlat }, "suction-lay-flat-collapses"],
    ["no number", { suctionLift: Number.POSITIVE_INFINITY }, "not-a-number"],
  ])("refuses %s", (_, change, code) => {
    const state = suctionState({ ...base, ...change });
    expect(state.ok).toBe(false);
    expect(state.findings.map((finding) => finding.code)).toContain(code);
  });

  it("takes each limit itself as kept", () => {
    // A surface at absolute zero is the emptiest there is; 7.62 m is the practical lift at sea level; 60 kPa keeps its air.
    expect(suctionState({ ...base, ...noLoss, surfacePressure: -101_325 }).ok).toBe(true);
    expect(codesOf({ ...noLoss, suctionLift: 7.62 })).not.toContain("check lift-beyond-practice");
    expect(codesOf({ ...noLoss, suctionLift: 7.620001 })).toContain("check lift-beyond-practice");
    expect(gasRemarks(60_000)).toEqual([]);
    expect(gasRemarks(59_999.9)).toHaveLength(1);
  });
});
