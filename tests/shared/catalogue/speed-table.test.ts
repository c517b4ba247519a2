import { describe, expect, it } from "vitest";
import type { Cell } from "../../../shared/cells/cell.ts";
import { cell, refusal } from "../../support/cells.ts";
import { expectPublished } from "../../support/expect-published.ts";
import { publishedCases } from "../../support/published-cases.ts";

type Rows = readonly (readonly Cell[])[];

const [SPEEDS, ENERGY] = publishedCases("7-cases", "station") as [
  ReturnType<typeof publishedCases>[number],
  ReturnType<typeof publishedCases>[number],
];
/** 41 points of each: H = 72 − 18 (Q/1550)², η = 0.78 (2x − x²), and the system 20 + 27 (Q/1500)², gpm and ft. */
const flows = Array.from({ length: 41 }, (_, i) => 50 * i);
const CURVE: Rows = [
  ["flow", "head", "efficiency", "NPSHR"],
  ...flows.map((flow) => {
    const x = flow / 1550;
    return [flow, 72 - 18 * x * x, Math.max(0, 0.78 * (2 * x - x * x)), 5 + 6 * x * x];
  }),
];
const SYSTEM: Rows = [["flow", "head"], ...flows.map((flow) => [flow, 20 + 27 * (flow / 1500) ** 2])];
const NAMES = ["dry", "wet", "storm"] as const;
const HOURS = { dry: 6000, wet: 2000, storm: 300 } as const;
const FLOWS = { dry: 600, wet: 1100, storm: 1500 } as const;

const COLUMN = {
  flow: 0,
  head: 1,
  ratio: 2,
  each: 3,
  fixed: 4,
  efficiency: 5,
  power: 6,
  npshRequired: 7,
  percent: 8,
  pressure: 9,
  response: 10,
  verdict: 11,
} as const;

function table(of: readonly Cell[], ...rest: readonly Cell[]): (row: number, column: keyof typeof COLUMN) => Cell {
  const rows = cell(
    "SPEEDTABLE",
    of.map((flow) => [flow]),
    CURVE,
    SYSTEM,
    ...rest,
  ) as Rows;
  return (row, column) => rows[row + 1]?.[COLUMN[column]] as Cell;
}

describe("SPEEDTABLE", () => {
  it("finds the speed of each flow", () => {
    const found = table(NAMES.map((name) => FLOWS[name]));
    // Sampled at 41 points: rel 2e-4, as the case says.
    const sampled = { ...SPEEDS, tolerance: { value: { rel: 2e-4 } } };
    NAMES.forEach((name, row) => {
      expectPublished(Number(found(row, "ratio")), `speed_ratio_${name}`, sampled);
      expectPublished(Number(found(row, "head")), `head_${name}`, sampled);
    });
  });

  it("gives the power that the energy of each case comes of", () => {
    const found = table(NAMES.map((name) => FLOWS[name]));
    const energies = NAMES.map((name, row) => (Number(found(row, "power")) * 0.7457 * HOURS[name]) / 0.93 / 0.96);
    energies.forEach((energy, row) => {
      expectPublished(energy, `kWh_${NAMES[row]}`, ENERGY);
    });
    const total = energies.reduce((sum, energy) => sum + energy, 0);
    expectPublished(total, "kWh_total", ENERGY);
  });

  it("reads efficiency at Q/r, BEP at r times its flow, NPSHR by the rule, and the head as a pressure", () => {
    const found = table([1100]);
    // By hand: x = 1100/(0.7780456 × 1550); 34.52 ft of water of 998.2 kg/m³ and 9.80665 m/s²; NPSHR × r^1.5.
    const x = 1100 / (0.7780456 * 1550);
    expect(Number(found(0, "efficiency"))).toBeCloseTo(0.78 * (2 * x - x * x), 3);
    expect(Number(found(0, "percent"))).toBeCloseTo(100 * x, 0);
    expect(Number(found(0, "npshRequired"))).toBeCloseTo((5 + 6 * x * x) * 0.7780456 ** 1.5, 2);
    expect(Number(found(0, "pressure"))).toBeCloseTo((34.52 * 0.3048 * 998.2 * 9.80665) / 6894.757, 2);
  });

  it("tells the response to speed: by the closed form of both parabolas", () => {
    // r² 72 − 18 (Q/1550)² = 20 + 27 (Q/1500)²: 144 r dr = 2 Q (18/1550² + 27/1500²) dQ.
    const [flow, ratio] = [600, 0.6125673481];
    const response = (144 * ratio * ratio) / (2 * flow * flow * (18 / 1550 ** 2 + 27 / 1500 ** 2));
    expect(Number(table([flow])(0, "response")) / response).toBeCloseTo(1, 2);
  });

  it("says what is beyond the range of speeds, too little for the pump, or pinned by the static head", () => {
    const all = [100, 250, 600, 1500, 1900];
    const found = table(all, null, null, 0.6, 0.94);
    expect(all.map((_, row) => found(row, "verdict"))).toEqual([
      "below the minimum speed",
      "below the minimum speed",
      "within the range",
      "above the maximum speed",
      "above the maximum speed",
    ]);
    expect(table([250])(0, "verdict")).toBe("below 30 % of BEP flow");
    // Without efficiencies the share of BEP is not known, and what is left is the response: 26.5 at 200 gpm.
    const bare = CURVE.map(([flow, head]) => [flow as Cell, head as Cell]);
    const rows = cell("SPEEDTABLE", 200, bare, SYSTEM) as Rows;
    expect(rows[1]?.[COLUMN.verdict]).toBe("pinned by the static head");
  });

  it("shares the flow of several at one speed", () => {
    // Two pumps at 2200 gpm on a system of as much head as one at 1100 gpm finds: the same speed.
    const wide = SYSTEM.map(([flow, head], i) =>
      i === 0 ? [flow as Cell, head as Cell] : [2 * Number(flow), head as Cell],
    );
    const rows = cell("SPEEDTABLE", 2200, CURVE, wide, 2) as Rows;
    expect(Number(rows[1]?.[COLUMN.ratio]) / Number(table([1100])(0, "ratio"))).toBeCloseTo(1, 6);
    expect(rows[1]?.[COLUMN.each]).toBeCloseTo(1100, 6);
  });

  it("lets fixed pumps give their part at the head of the system", () => {
    // At 1900 gpm the system asks for 63.32 ft, where the fixed pump has 1550 √((72 − 63.32)/18) = 1076.4 gpm.
    const found = table([1900], 1, 1);
    expect(Number(found(0, "fixed"))).toBeCloseTo(1076.4, 0);
    const rest = 1900 - 1550 * Math.sqrt((72 - 63.32) / 18);
    expect(Number(found(0, "ratio"))).toBeCloseTo(Math.sqrt((63.32 + 18 * (rest / 1550) ** 2) / 72), 4);
    expect(table([1000], 1, 1)(0, "verdict")).toBe("fixed pumps alone give more");
  });

  it("refuses counts, flows and ratios that cannot be", () => {
    expect(refusal("SPEEDTABLE", 600, CURVE, SYSTEM, 1.5)).toMatch(/whole number/);
    expect(refusal("SPEEDTABLE", -5, CURVE, SYSTEM)).toMatch(/above 0/);
    expect(refusal("SPEEDTABLE", 600, CURVE, SYSTEM, 1, 0, 0.9, 0.8)).toMatch(
      /inimum speed ratio must be at most 0\.8/,
    );
    expect(refusal("SPEEDTABLE", 600, CURVE, SYSTEM, 1, 0, 0.1)).toMatch(/at least 0\.2/);
    expect(table([2100])(0, "verdict")).toBe("beyond the system curve");
  });
});
