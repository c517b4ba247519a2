import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  PRIMING_METHODS,
  type PrimingChoiceInput,
  type PrimingMethod,
  type PrimingOption,
  primingChoice,
} from "../../../src/priming/priming-choice.ts";
import { solidsNamed, solidsOf } from "../../../src/priming/priming-solids.ts";
import { COLD_WATER, pipeOf, segmentOf } from "../../support/pipes.ts";

const CLEAN = solidsOf(0);
const base: PrimingChoiceInput = {
  suctionLift: 4,
  suctionLine: [segmentOf(pipeOf(0.15), 12)],
  solids: solidsOf(0.05),
  atmosphericPressure: 101_325,
  liquid: COLD_WATER,
  airPump: null,
  casingVolume: null,
  greatestLift: null,
  pumps: null,
};

function options(change: Partial<PrimingChoiceInput> = {}): readonly PrimingOption[] {
  const choice = primingChoice({ ...base, ...change });
  if (!choice.ok) throw new Error(JSON.stringify(choice.findings));
  return choice.value;
}

function verdict(method: PrimingMethod, change: Partial<PrimingChoiceInput>): string {
  return options(change).find((option) => option.method === method)?.verdict ?? "absent";
}

function codes(option: PrimingOption | undefined): readonly string[] {
  return [...(option?.reasons ?? []), ...(option?.needs ?? []), ...(option?.cautions ?? [])].map(({ code }) => code);
}

const shortLine = [segmentOf(pipeOf(0.15), 5.9)];

// Every rule here: common practice, no source.
describe("the choice of priming", () => {
  it.each([
    ["solids", {}, "vacuum-assisted dry prime"],
    ["solids in a short line", { suctionLine: shortLine }, "vacuum-assisted dry prime"],
    ["clean liquid in a long line", { solids: CLEAN }, "vacuum-assisted dry prime"],
    ["clean liquid in a short line", { solids: CLEAN, suctionLine: shortLine }, "self-priming casing"],
    ["a flooded pump", { suctionLift: -0.5 }, "flooded suction or submerged pump"],
    ["hot liquid", { liquid: { ...COLD_WATER, vapourPressure: 19_947 } }, "flooded suction or submerged pump"],
    ["a lift above 7.62 m", { suctionLift: 7.63 }, "flooded suction or submerged pump"],
    ["a lift above the barometric", { suctionLift: 11 }, "flooded suction or submerged pump"],
  ])("for %s puts first what serves it", (_, change, method) => {
    expect(options(change)[0]?.method).toBe(method);
  });

  it("lists every method once, whatever the suction", () => {
    const lifts = fc.double({ min: -5, max: 12, noNaN: true });
    const shares = fc.double({ min: 0, max: 0.69, noNaN: true });
    fc.assert(
      fc.property(lifts, shares, fc.integer({ min: 0, max: 40_000 }), (suctionLift, share, vapourPressure) => {
        const liquid = { ...COLD_WATER, vapourPressure };
        const listed = options({ suctionLift, solids: solidsOf(share), liquid }).map(({ method }) => method);
        expect(listed.toSorted()).toEqual([...PRIMING_METHODS].toSorted());
      }),
    );
  });

  it.each([
    ["no foot valve for solids", "foot valve and filled line", {}, "not suited"],
    ["a foot valve with care on clean liquid", "foot valve and filled line", { solids: CLEAN }, "suits with care"],
    ["no liquid-filled casing above 7.62 m", "self-priming casing", { suctionLift: 7.63 }, "not suited"],
    ["a liquid-filled casing at 7.62 m with care", "self-priming casing", { suctionLift: 7.62 }, "suits with care"],
    ["no dry prime above 7.62 m", "vacuum-assisted dry prime", { suctionLift: 7.63 }, "not suited"],
    ["a dry prime freely at 7.23 m", "vacuum-assisted dry prime", { suctionLift: 7.23 }, "suits"],
    ["a dry prime with care near the limit", "vacuum-assisted dry prime", { suctionLift: 7.25 }, "suits with care"],
    ["no dry prime beyond the NPSH lift", "vacuum-assisted dry prime", { greatestLift: 3.9 }, "not suited"],
    ["a dry prime 0.31 m inside the NPSH lift", "vacuum-assisted dry prime", { greatestLift: 4.31 }, "suits"],
    ["a dry prime with care 0.29 m inside", "vacuum-assisted dry prime", { greatestLift: 4.29 }, "suits with care"],
    ["a dry prime of 19 % slurry", "vacuum-assisted dry prime", { solids: solidsOf(0.19) }, "suits"],
    ["a dry prime of 20 % slurry with care", "vacuum-assisted dry prime", { solids: solidsOf(0.2) }, "suits with care"],
    ["nothing else where flooded", "vacuum-assisted dry prime", { suctionLift: -0.1 }, "not needed"],
  ] as const)("offers %s", (_, method, change, expected) => {
    expect(verdict(method, change)).toBe(expected);
  });

  it("takes a lift at 60 °C and no warmer", () => {
    const at = (vapourPressure: number): string =>
      verdict("vacuum-assisted dry prime", { suctionLift: 2, liquid: { ...COLD_WATER, vapourPressure } });
    expect(at(19_946)).toBe("suits");
    expect(at(19_947)).toBe("not suited");
  });

  it("asks for a larger air pump where it takes more than five minutes", () => {
    // The time goes as the volume: find the length at which it passes 300 s, and ask either side of it.
    const timeOf = (length: number) => options({ suctionLine: [segmentOf(pipeOf(0.3), length)] })[0];
    const per = ((timeOf(400)?.time ?? 0) - (timeOf(100)?.time ?? 0)) / 300;
    const length = 100 + (300 - (timeOf(100)?.time ?? 0)) / per;
    const short = timeOf(length - 0.1);
    expect(short?.verdict).toBe("suits");
    expect(codes(short)).toContain("prime-time-short");
    const long = options({ suctionLine: [segmentOf(pipeOf(0.3), length * 1.5)] }).find(
      ({ method }) => method === "vacuum-assisted dry prime",
    );
    expect(long?.verdict).toBe("suits with care");
    expect(codes(long)).toContain("prime-time-long");
    const needed = long?.needs.find(({ code }) => code === "prime-needs-larger-air-pump")?.found?.value ?? 0;
    // By proportion: capacity × time is what it takes.
    expect(needed * 300).toBeCloseTo(0.023597 * (long?.time ?? 0), 3);
    const veryLong = options({ suctionLine: [segmentOf(pipeOf(0.3), length * 2.5)] }).flatMap(codes);
    expect(veryLong).toContain("prime-time-very-long");
  });

  it("warns of stringy solids in float valves", () => {
    const stringy = { solids: { kind: "stringy", massFraction: null } as const };
    expect(codes(options(stringy)[0])).toContain("prime-float-stringy");
    expect(codes(options()[0])).not.toContain("prime-float-stringy");
  });

  const layFlat = [segmentOf(pipeOf(0.15, 0, { collapsible: true }), 12)];
  it.each([
    ["70 % solids", { solids: solidsOf(0.7) }, "out-of-range"],
    ["negative solids", { solids: solidsOf(-0.01) }, "out-of-range"],
    ["lay-flat hose", { suctionLine: layFlat }, "suction-lay-flat-collapses"],
    ["a line shorter than the lift", { suctionLine: [segmentOf(pipeOf(0.15), 3)] }, "line-shorter-than-lift"],
    ["no vapour pressure", { liquid: { density: 1000, dynamicViscosity: 1e-3 } }, "vapour-pressure-missing"],
  ])("refuses %s", (_, change, code) => {
    expect(primingChoice({ ...base, ...change }).findings[0]?.code).toBe(code);
  });

  it("takes 69.9 % solids", () => {
    expect(primingChoice({ ...base, solids: solidsOf(0.699) }).ok).toBe(true);
  });
});

describe("solids in words", () => {
  it.each([
    ["clean", "none", 0],
    ["Rags", "stringy", null],
    ["sand", "grit", null],
    ["raw sewage", "stringy", null],
    ["sewage with rags", "stringy", null],
    ["wipes", "stringy", null],
    ["sand and leaves", "stringy", null],
    ["gravel, mud", "grit", null],
    ["sludge", "unspecified", null],
  ])("reads %s", (text, kind, share) => {
    const read = solidsNamed(text, "solids");
    if (!read.ok) throw new Error(JSON.stringify(read.findings));
    expect(read.value.kind).toBe(kind);
    expect(read.value.massFraction).toBe(share);
  });

  it.each([
    ["sound", "choice-unknown"],
    ["constructor", "choice-unknown"],
  ])("refuses %s", (text, code) => {
    expect(solidsNamed(text, "solids").findings[0]?.code).toBe(code);
  });
});

it("offers the common words for solids where nothing is near the word given", () => {
  const { suggestions } = solidsNamed("xyzzyx", "solids").findings[0] ?? {};
  expect(suggestions).toEqual(["a percent by weight", "clean", "rags", "sand"]);
});
