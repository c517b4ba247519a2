import { describe, expect, it } from "vitest";
import type { Result } from "../../../src/basis/result.ts";
import { unitOf } from "../../../src/basis/units.ts";
import { type GeneratorSizeInput, generatorSize } from "../../../src/drive/generator-size.ts";
import { leastSpeed } from "../../../src/drive/least-speed.ts";
import { CODE_LETTERS, USUAL_CODE_LETTERS } from "../../../src/tables/motor-code-letters.ts";

const HP = unitOf("hp").factor;

function value<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(JSON.stringify(result.findings));
  return result.value;
}

function codes(result: Result<unknown>): readonly string[] {
  return result.findings.map(({ kind, code }) => `${kind} ${code}`);
}

/** 100 hp at 95.4 % and power factor 0.86, code letter G. */
const HUNDRED: GeneratorSizeInput = {
  motorRating: 100 * HP,
  efficiency: 0.954,
  powerFactor: 0.86,
  series: "NEMA",
  codeLetter: "G",
  starter: "direct on line",
};

describe("a generator for one motor", () => {
  // By hand: 74.57/0.954 = 78.17 kW, /0.86 = 90.9 kVA; 100 hp × 6.29 = 629 kVA, /2.5 = 251.6; 1.25 × 78.17 = 97.7.
  it("starts a motor direct on line at 30 % dip", () => {
    const found = value(generatorSize(HUNDRED));
    expect(found.runningPower / 1e3).toBeCloseTo(78.17, 1);
    expect(found.runningApparent / 1e3).toBeCloseTo(90.9, 1);
    expect(found.startingApparent / 1e3).toBeCloseTo(629, 6);
    expect(found.alternator / 1e3).toBeCloseTo(251.6, 6);
    expect(found.enginePower / 1e3).toBeCloseTo(97.7, 1);
  });

  // By hand: half of 629 is 314.5, /2.5 = 125.8; a third, 209.7, /2.5 = 83.9, below the 90.9 of running; a drive of 6
  // pulses 2.0 × 78.17/0.95 = 164.6, one of few harmonics 1.4 × 82.3 = 115.2.
  it.each([
    ["soft starter", 314.5, 125.8],
    ["star-delta", 209.7, 90.9],
    ["VFD", 82.3, 164.6],
    ["low-harmonic VFD", 82.3, 115.2],
  ] as const)("with %s starts at %f kVA and wants %f kVA", (starter, starting, alternator) => {
    const found = value(generatorSize({ ...HUNDRED, starter }));
    expect(found.startingApparent / 1e3).toBeCloseTo(starting, 1);
    expect(found.alternator / 1e3).toBeCloseTo(alternator, 1);
  });

  // Code letters by rating, looked up in two lists: F from 15 hp, G 10 to 7.5, H 5, J 3, K 2 to 1.5, L 1.
  it.each([
    [100, "F", 5.59],
    [15, "F", 5.59],
    [10, "G", 6.29],
    [7.5, "G", 6.29],
    [5, "H", 7.09],
    [3, "J", 7.99],
    [2, "K", 8.99],
    [1.5, "K", 8.99],
    [1, "L", 9.99],
  ])("of %f hp takes code letter %s where none is given", (hp, letter, perHorsepower) => {
    const found = generatorSize({ ...HUNDRED, motorRating: hp * HP, codeLetter: null });
    expect(value(found).startingApparent / 1e3 / hp).toBeCloseTo(perHorsepower, 9);
    expect(found.findings).toContainEqual(expect.objectContaining({ code: "code-letter-assumed", facts: { letter } }));
  });

  // Common practice: an IEC motor draws 6 to 8 times its full-load current.
  it("takes 7 times the running kVA of an IEC motor", () => {
    const found = generatorSize({ ...HUNDRED, series: "IEC", codeLetter: null });
    expect(value(found).startingApparent / value(found).runningApparent).toBeCloseTo(7, 12);
    expect(codes(found)).toEqual(["assumed locked-rotor-assumed", "check generator-sizing-figure"]);
  });

  it("refuses a letter that is none, or has no end", () => {
    expect(codes(generatorSize({ ...HUNDRED, codeLetter: "I" }))).toEqual(["error name-unknown"]);
    expect(codes(generatorSize({ ...HUNDRED, codeLetter: "v" }))).toEqual(["error code-letter-open"]);
    expect(codes(generatorSize({ ...HUNDRED, efficiency: 95.4 }))).toEqual(["error out-of-range"]);
    expect(codes(generatorSize({ ...HUNDRED, powerFactor: 0.3 }))).toEqual(["error out-of-range"]);
  });
});

// NEMA MG 1-10.37.2: 19 letters without I, O and Q, each beginning where the one before ends.
it("has the code letters in their order", () => {
  expect(CODE_LETTERS.map(([letter]) => letter).join("")).toBe("ABCDEFGHJKLMNPRSTUV");
  expect(CODE_LETTERS.find(([letter]) => letter === "G")).toEqual(["G", 5.6, 6.29]);
  for (const [i, [, from, to]] of CODE_LETTERS.entries()) {
    const before = CODE_LETTERS[i - 1]?.[2];
    if (typeof before === "number") expect(from - before).toBeCloseTo(0.01, 9);
    if (to !== null) expect(to).toBeGreaterThan(from);
  }
  const from = USUAL_CODE_LETTERS.map(([hp]) => hp);
  expect(from).toEqual(from.toSorted((a, b) => b - a));
});

describe("the minimum speed", () => {
  const at = (staticHead: number, shutoffHead: number) =>
    leastSpeed({ staticHead, shutoffHead, speed: 1750 / 60, frequency: 60 });

  // By hand: √(22/95) = 0.48123; × 60 Hz = 28.87; × 1750 = 842.1 rpm, 2 % more 859.0.
  it("holds the static head at shutoff", () => {
    const found = value(at(22, 95));
    expect(found.ratio).toBeCloseTo(0.48123, 5);
    expect(found.frequency).toBeCloseTo(28.87, 2);
    expect(found.speed * 60).toBeCloseTo(842.1, 1);
    expect(found.stableSpeed * 60).toBeCloseTo(859, 1);
    expect(codes(at(22, 95))).toEqual(["check speed-affinity-doubted"]);
  });

  it("doubts little of what is near the speed, more of what is far below", () => {
    expect(codes(at(25, 100))).toEqual([]);
    expect(codes(at(24.9, 100))).toEqual(["check speed-affinity-doubted"]);
    expect(codes(at(8.9, 100))).toEqual(["check speed-affinity-doubted", "check speed-turndown-wide"]);
    expect(codes(at(-5, 100))).toEqual(["check speed-flows-alone", "check speed-turndown-wide"]);
    expect(value(at(-5, 100)).ratio).toBe(0);
    expect(value(at(99.9, 100)).stableSpeed * 60).toBeCloseTo(1750, 9);
  });

  it("is none where the static head is not reached", () => {
    expect(codes(at(100, 100))).toEqual(["error speed-range-empty"]);
    expect(codes(at(10, 0))).toEqual(["error out-of-range"]);
  });
});
