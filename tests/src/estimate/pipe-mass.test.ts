import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { unitOf } from "../../../src/basis/units.ts";
import { type MassOfLengthInputs, massOfLength } from "../../../src/estimate/pipe-mass.ts";
import { pipeNamed } from "../../../src/pipework/pipe-name.ts";
import { figureIn, publishedTable } from "../../support/published-table.ts";

const FOOT = unitOf("ft").factor;
const POUND = unitOf("lb").factor;

function massesOf(pipe: string, change: Partial<MassOfLengthInputs> = {}) {
  const named = pipeNamed(pipe);
  if (!named.ok) throw new Error(pipe);
  const mass = massOfLength({ pipe: named.value, specificGravity: 1, length: FOOT, ...change });
  if (!mass.ok) throw new Error(JSON.stringify(mass.findings));
  return mass;
}

// ASME B36.10M; masses by its formula, held against the printed column of a reprint to 0.6 %, and rounded to 0.01 lb/ft.
const STEEL = publishedTable("pipe-schedules").filter((row) => /^(40|80|STD|XS)$/.test(row["schedule"] ?? ""));

describe("mass of a length of pipe", () => {
  it.each(STEEL.map((row) => ({ row, name: `${row["nps"]}in ${named(row["schedule"])}` })))(
    "is that of the standard: $name",
    ({ row, name }) => {
      const { empty = 0, contents, full } = massesOf(name).value;
      expectPrinted(empty / POUND, figureIn(row, "mass_lb_ft"));
      // Its water is 62.4 lb/ft³ or so, ours 998.2 kg/m³: 0.2 % apart.
      expectPrinted(contents / POUND, figureIn(row, "water_lb_ft"));
      expect(full).toBeCloseTo(empty + contents, 9);
    },
  );

  it("is that of the worked examples, full of water", () => {
    // By hand: 18.99 + 12.53 and 49.61 + 49.03 lb/ft.
    expect((massesOf("6in sch40").value.full ?? 0) / POUND).toBeCloseTo(31.5, 1);
    expect(Math.abs((massesOf("12in STD").value.full ?? 0) / POUND - 98.6)).toBeLessThan(0.15);
  });

  it("is that of polyethylene by its mean wall", () => {
    // By hand: 10.75 in, 1.06 × 10.75/17 = 0.6703 in; π × 10.0797 × 0.6703 in² × 955 kg/m³ = 8.79 lb/ft.
    expect((massesOf("10in HDPE DR17").value.empty ?? 0) / POUND).toBeCloseTo(8.79, 2);
  });

  it("grows in step with length, the contents alone with their specific gravity", () => {
    const water = massesOf("6in sch40").value;
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 20, noNaN: true }), (times) => {
        const long = massesOf("6in sch40", { length: times * FOOT }).value;
        expect((long.full ?? 0) / (water.full ?? 1)).toBeCloseTo(times, 9);
        const heavy = massesOf("6in sch40", { specificGravity: times }).value;
        expect(heavy.contents / water.contents).toBeCloseTo(times, 9);
        expect(heavy.empty).toBe(water.empty);
      }),
    );
  });

  it("is not guessed for hose, whose contents stand", () => {
    const hose = massesOf("6in suction hose");
    expect(hose.value.empty).toBeUndefined();
    expect(hose.value.full).toBeUndefined();
    expect(hose.value.contents).toBeGreaterThan(0);
    expect(hose.findings.map(({ code }) => code)).toEqual(["pipe-mass-not-known"]);
  });

  it.each([
    ["specificGravity", 0],
    ["specificGravity", 25.1],
    ["length", -1],
  ] as const)("refuses %s of %d", (input, value) => {
    const pipe = pipeNamed("6in sch40");
    if (!pipe.ok) throw new Error("no pipe");
    const refused = massOfLength({ pipe: pipe.value, specificGravity: 1, length: 1, [input]: value });
    expect(refused.findings.map(({ code }) => code)).toEqual(["out-of-range"]);
  });
});

function named(schedule: string | undefined): string {
  return /^\d/.test(schedule ?? "") ? `sch${schedule}` : String(schedule);
}

function expectPrinted(actual: number, printed: number): void {
  expect(Math.abs(actual - printed), `${actual} for ${printed}`).toBeLessThanOrEqual(0.005 + 0.006 * printed);
}
