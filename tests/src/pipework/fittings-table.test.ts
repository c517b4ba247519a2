import { describe, expect, it } from "vitest";
import { fittingNamed } from "../../../src/pipework/fitting-name.ts";
import { fullyRoughFactor } from "../../../src/pipework/friction-factor.ts";
import type { Pipe } from "../../../src/pipework/pipe.ts";
import { EQUIVALENT_LENGTHS } from "../../../src/tables/fittings-equivalent-length.ts";
import { FIXED_FITTINGS } from "../../../src/tables/fittings-fixed.ts";
import { pipeOf } from "../../support/pipes.ts";

const inch = 0.0254;

function coefficient(name: string, pipe: Pipe, reynolds?: number): number {
  const found = fittingNamed(name);
  if (!found.ok) throw new Error(JSON.stringify(found.findings));
  const loss = found.value.lossCoefficient(pipe, reynolds);
  if (!loss.ok) throw new Error(JSON.stringify(loss.findings));
  return loss.value;
}

function remarks(name: string, pipe: Pipe): readonly string[] {
  const found = fittingNamed(name);
  const loss = found.ok ? found.value.lossCoefficient(pipe) : found;
  return [...found.findings, ...loss.findings].map(({ kind, code }) => `${kind} ${code}`);
}

function lengths(name: string, pipe: Pipe): number {
  return Math.round((coefficient(name, pipe) / fullyRoughFactor(pipe.bore)) * 1e9) / 1e9;
}

function inchPipe(nominalInches: number): Pipe {
  return pipeOf(nominalInches * inch, 0, { nominalInches });
}

// Source: Technical Paper 410, resistance coefficients (from memory, held against the library fluids for Python).
describe("equivalent lengths", () => {
  it("are 51 rows in the order of the source", () => {
    expect(EQUIVALENT_LENGTHS).toHaveLength(51);
    expect(EQUIVALENT_LENGTHS.map(({ name }) => name).filter((_, i) => i % 12 === 0)).toEqual([
      "elbow 90",
      "elbow 90 r/D 20",
      "ball",
      "diaphragm straight",
      "stop check angle clear",
    ]);
  });

  it.each([
    ["gate", 8],
    ["ball", 3],
    ["plug", 18],
    ["globe", 340],
    ["angle", 150],
    ["angle straightened", 55],
    ["swing check", 100],
    ["swing check clearway", 50],
    ["lift check", 600],
    ["lift check angle", 55],
    ["foot valve poppet", 420],
    ["foot valve hinged", 75],
    ["elbow 90", 30],
    ["elbow 90 short", 20],
    ["elbow 90 long", 14],
    ["elbow 90 r/D 3", 12],
    ["elbow 45", 16],
    ["mitre 45", 15],
    ["mitre 90", 60],
    ["close return", 50],
    ["tee run", 20],
    ["tee branch", 60],
  ])("%s has L/D %d", (name, ratio) => expect(lengths(name, inchPipe(6))).toBe(ratio));

  it.each([
    ["butterfly", [45, 45, 35, 35, 25, 25]],
    ["butterfly double offset", [74, 74, 52, 52, 43, 43]],
    ["butterfly triple offset", [218, 218, 96, 96, 55, 55]],
    ["tilting check 5", [40, 40, 30, 30, 20, 20]],
    ["tilting check 15", [120, 120, 90, 90, 60, 60]],
  ])("%s goes by size", (name, ratios) => {
    expect([2, 8, 10, 14, 16, 24].map((size) => lengths(name, inchPipe(size)))).toEqual(ratios);
  });

  it("take a measured bore for the size, with the cut midway between two bands", () => {
    expect(lengths("butterfly", pipeOf(8.99 * inch))).toBe(45);
    // At the cut itself the longer holds.
    expect(lengths("butterfly", pipeOf(9 * inch))).toBe(45);
    expect(lengths("butterfly", pipeOf(9.01 * inch))).toBe(35);
    expect(lengths("butterfly", pipeOf(15.01 * inch))).toBe(25);
  });

  it("check of a size the table does not have", () => {
    expect(remarks("butterfly", inchPipe(1.5))).toEqual(["check fitting-size-outside-table"]);
    expect(remarks("butterfly", inchPipe(2))).toEqual([]);
    expect(remarks("butterfly", inchPipe(24))).toEqual([]);
    expect(remarks("butterfly", inchPipe(30))).toEqual(["check fitting-size-outside-table"]);
  });
});

describe("fixed coefficients", () => {
  it("are 14 rows", () => expect(FIXED_FITTINGS).toHaveLength(14));

  // Source: Technical Paper 410, pipe entrance and exit.
  it.each([
    ["entrance inward", 0.78],
    ["entrance", 0.5],
    ["entrance rounded", 0.09],
    ["bellmouth", 0.04],
    ["exit", 1],
  ])("%s has K %d, without remark", (name, value) => {
    expect(coefficient(name, inchPipe(6))).toBe(value);
    expect(remarks(name, inchPipe(6))).toEqual([]);
  });

  // Common practice, no source: K of a strainer goes with the inverse square of its open share.
  it("of the trade carry a caution, and a strainer half blocked loses four times as much", () => {
    expect(remarks("strainer", inchPipe(6))).toEqual(["assumed fitting-assumed"]);
    expect(remarks("hose coupling", inchPipe(6))).toEqual(["assumed fitting-assumed"]);
    const clean = coefficient("strainer", inchPipe(6));
    expect(clean).toBeGreaterThanOrEqual(0.8);
    expect(clean).toBeLessThanOrEqual(1.5);
    expect(coefficient("strainer 50 % blocked", inchPipe(6))).toBe(4 * clean);
    expect(coefficient("suction strainer 0% clogged", inchPipe(6))).toBe(clean);
  });

  it("are as written where they are given", () => {
    expect(coefficient("K 3.2", inchPipe(6))).toBe(3.2);
    expect(coefficient("K -0.04", inchPipe(6))).toBe(-0.04);
  });

  // Source: definition of Kv; 1 bar over a bore of area A at Kv/3600 m³/s of water at 998.2 kg/m³, by hand.
  it("of a valve follow from Kv", () => {
    const velocity = 500 / 3600 / ((Math.PI / 4) * 0.154 ** 2);
    expect(coefficient("Kv 500", pipeOf(0.154))).toBeCloseTo(2e5 / (998.2 * velocity ** 2), 12);
  });
});

describe("3-K fittings", () => {
  it("need a Reynolds number, and take their turbulent part at rest", () => {
    const elbow = fittingNamed("3K elbow 90 flanged");
    const pipe = inchPipe(4);
    expect(elbow.ok && elbow.value.lossCoefficient(pipe)).toMatchObject({
      ok: false,
      findings: [{ code: "fitting-needs-flow" }],
    });
    // 0.091 (1 + 4 / 4^0.3) = 0.3311504, by hand.
    expect(coefficient("3K elbow 90 flanged", pipe, 0)).toBeCloseTo(0.3311504, 6);
    expect(coefficient("3K elbow 90 flanged", pipe, 1000)).toBeCloseTo(0.8 + 0.3311504, 6);
  });
});
