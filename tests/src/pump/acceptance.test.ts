import { describe, expect, it } from "vitest";
import { acceptanceBands, acceptanceGradeNamed, meetsGuarantee, smallPumpBands } from "../../../src/pump/acceptance.ts";
import { ACCEPTANCE_GRADES } from "../../../src/tables/acceptance-grades.ts";
import { curveOf, FALLING } from "../../support/pumps.ts";

const GUARANTEE = { flow: 0.05, head: 31, efficiency: 0.8 };

function bandsOf(grade: string, guarantee = GUARANTEE) {
  const row = acceptanceGradeNamed(grade);
  if (!row.ok) throw new Error(`no grade ${grade}`);
  const bands = acceptanceBands(row.value, guarantee);
  if (!bands.ok) throw new Error("no bands");
  return bands.value;
}

describe("the table of acceptance grades", () => {
  it("has the six grades of 2012 in the standard's order and the two classes of 1999", () => {
    expect(ACCEPTANCE_GRADES.map(({ grade }) => grade)).toEqual([
      "1B",
      "1E",
      "1U",
      "2B",
      "2U",
      "3B",
      "1999 class 1",
      "1999 class 2",
    ]);
  });

  // ISO 9906:2012 table 8, from memory.
  it("has the figures of three rows", () => {
    expect(ACCEPTANCE_GRADES[0]).toMatchObject({ flow: [-5, 5], head: [-3, 3], power: 4, efficiency: -3 });
    expect(ACCEPTANCE_GRADES[4]).toMatchObject({ flow: [0, 16], head: [0, 10], power: 16, efficiency: -5 });
    expect(ACCEPTANCE_GRADES[5]).toMatchObject({ flow: [-9, 9], head: [-7, 7], power: 9, efficiency: -7 });
  });

  it("is found by name, with the nearest where it is not", () => {
    expect(acceptanceGradeNamed(" grade 2b ").ok).toBe(true);
    const { findings } = acceptanceGradeNamed("4B");
    expect(findings[0]?.code).toBe("name-unknown");
    expect(findings[0]?.suggestions).toContain("1B");
  });
});

describe("bands around a guarantee", () => {
  it("multiply the figures; efficiency loses a part of itself, not points", () => {
    const { flow, head, leastEfficiency } = bandsOf("2B");
    expect([flow.least, flow.most, head.least, head.most, leastEfficiency]).toEqual([
      0.05 * 0.92,
      0.05 * 1.08,
      31 * 0.95,
      31 * 1.05,
      0.8 * 0.95,
    ]);
    expect(bandsOf("1U").flow).toEqual({ least: 0.05, most: 0.05 * 1.1 });
  });

  it.each([
    { power: 999, ok: false },
    { power: 1000, ok: true },
    { power: 10_000, ok: true },
    { power: 10_001, ok: false },
  ])("of small pumps are for 1 to 10 kW: $power W", ({ power, ok }) => {
    expect(smallPumpBands(GUARANTEE, power).ok).toBe(ok);
  });
});

describe("a measured curve against its guarantee", () => {
  const raised = (by: number) => curveOf(FALLING.points.map((point) => ({ ...point, head: point.head * by })));
  const { efficiency: _, ...HEAD_ONLY } = GUARANTEE;

  // The curve passes through 50 L/s at 31 m and falls there by some 0.45 m a L/s; ±5 % of flow are 2.5 L/s, so a curve
  // more than ±3 % in head can still cut the flow band, by 2.5 · 0.45 / 31 = 3.6 %.
  it.each([
    { why: "as guaranteed", by: 1, meets: true },
    { why: "2.9 % high", by: 1.029, meets: true },
    { why: "3.3 % high, through the flow band", by: 1.033, meets: true },
    { why: "5 % high", by: 1.05, meets: false },
    { why: "3.3 % low, through the flow band", by: 0.967, meets: true },
    { why: "5 % low", by: 0.95, meets: false },
  ])("$why: $meets", ({ by, meets }) => {
    expect(meetsGuarantee(raised(by), HEAD_ONLY, bandsOf("1B")).meetsFlowAndHead).toBe(meets);
  });

  it("of grade 1U must not fall short at all", () => {
    expect(meetsGuarantee(raised(0.999), GUARANTEE, bandsOf("1U")).meetsFlowAndHead).toBe(false);
    expect(meetsGuarantee(raised(1.001), GUARANTEE, bandsOf("1U")).meetsFlowAndHead).toBe(true);
  });

  it.each([
    { efficiency: 0.7759, meets: false },
    { efficiency: 0.7761, meets: true },
  ])("is read for efficiency on the line through the origin: $efficiency", ({ efficiency, meets }) => {
    // Grade 1B lets 0.97 · 0.8 = 0.776 pass.
    const measured = curveOf(
      FALLING.points.map(({ flow, head }) => ({ flow, head, ...(flow > 0 ? { efficiency } : {}) })),
    );
    expect(meetsGuarantee(measured, GUARANTEE, bandsOf("1B")).meetsEfficiency).toBe(meets);
  });

  it("reads the efficiency where the line meets the measured curve, not at the guaranteed flow", () => {
    // 24.8 m at 40 L/s lies on the line through 31 m at 50 L/s.
    const measured = (onLine: number) =>
      curveOf([
        { flow: 0, head: 35 },
        { flow: 0.04, head: 24.8, efficiency: onLine },
        { flow: 0.05, head: 18, efficiency: 0.78 },
        { flow: 0.06, head: 10, efficiency: 0.6 },
      ]);
    expect(meetsGuarantee(measured(0.7), GUARANTEE, bandsOf("1B")).meetsEfficiency).toBe(false);
    expect(meetsGuarantee(measured(0.777), GUARANTEE, bandsOf("1B")).meetsEfficiency).toBe(true);
  });
});
