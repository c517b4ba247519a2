import { describe, expect, it } from "vitest";
import type { HeadCurve } from "../../../src/pump/head-curve.ts";
import { systemCurveThrough } from "../../../src/pump/system-curve-through.ts";
import { stationOperation } from "../../../src/station/operating-point.ts";
import type { StationPump } from "../../../src/station/station-pump.ts";
import { publishedCases } from "../../support/published-cases.ts";
import { curveByFormula, curveOf, running, systemByFormula } from "../../support/pumps.ts";

// Sources beside each case in tests/published/hydraulics-s2-pumps.csv. Cases 011, 016 and 017, which have lines, are held
// in tests/shared/catalogue/station.test.ts. Figures stand in whatever units the case has: the engine's laws have none.

type Points = readonly (readonly [flow: number, head: number])[];

const CASES = new Map(publishedCases("s2-pumps").map((one) => [one.id, one]));

function expectedOf(id: string): (name: string) => number {
  const found = CASES.get(id);
  if (found === undefined) throw new Error(`there is no case ${id}`);
  return (name) => {
    const amount = found.expected[name];
    if (typeof amount?.value !== "number") throw new Error(`${id} expects no number ${name}`);
    return amount.value;
  };
}

const byPoints = (points: Points) => running(curveOf(points.map(([flow, head]) => ({ flow, head }))));
const parabola = (shutoff: number, k: number, most = 0.98 * Math.sqrt(shutoff / k)) =>
  running(curveByFormula((q) => shutoff - k * q * q, most, 40));
const asked = (still: number, k: number): HeadCurve => systemByFormula((q) => still + k * q * q);

function pump(name: string, of: StationPump["pump"], change: Partial<StationPump> = {}): StationPump {
  return { name, pump: of, level: 0, hasCheckValve: true, count: 1, ...change };
}

function at(pumps: readonly StationPump[], system: HeadCurve, arrangement: "parallel" | "series" = "parallel") {
  const found = stationOperation({ pumps, system, arrangement, specificGravity: 1 });
  if (!found.ok) throw new Error(JSON.stringify(found.findings));
  return { ...found.value, codes: found.findings.map(({ code, of = "" }) => `${code} ${of}`.trim()) };
}

/** A parabola at 41 points under PCHIP lies within this of itself. */
const SAMPLED = 2e-4;
const near = (found: number | undefined, expected: number, within: number): void =>
  expect(Math.abs((found as number) / expected - 1), `${found} for ${expected}`).toBeLessThanOrEqual(within);

it("leaves no case out", () => {
  const numbers = ["001", "002", "003", "004", "005", "006", "009", "011", "014", "016", "017", "018", "020"];
  expect([...CASES.keys()]).toEqual(numbers.map((number) => `s2-pumps-${number}`));
});

describe("pumps of a station", () => {
  it("001: three of 12 − 0.1 Q² are 36 − 0.3 Q² in series and 12 − 0.0111 Q² in parallel", () => {
    const expected = expectedOf("s2-pumps-001");
    const three = [pump("", parabola(12, 0.1), { count: 3 })];
    const series = at(
      three,
      systemByFormula(() => expected("H_series_at_Q_5")),
      "series",
    );
    near(series.flow, 5, SAMPLED);
    const parallel = at(
      three,
      systemByFormula(() => expected("H_parallel_at_Q_5")),
    );
    near(parallel.flow, 5, 1e-3);
  });

  it("002: one, two side by side and two in series on 15 + 0.03 Q²", () => {
    const expected = expectedOf("s2-pumps-002");
    const of = parabola(20, 0.08);
    const system = asked(15, 0.03);
    near(at([pump("", of)], system).flow, expected("one"), SAMPLED);
    near(at([pump("", of, { count: 2 })], system).flow, expected("two_parallel"), SAMPLED);
    near(at([pump("", of, { count: 2 })], system, "series").flow, expected("two_series"), SAMPLED);
  });

  it("003: a table of six points on 35 + 0.002 Q²", () => {
    const expected = expectedOf("s2-pumps-003");
    const of = byPoints([
      [0, 100],
      [110, 90],
      [180, 80],
      [250, 60],
      [300, 40],
      [340, 20],
    ]);
    const system = asked(35, 0.002);
    const one = at([pump("", of)], system);
    near(one.flow, expected("one"), 1e-8);
    near(one.head, expected("one_head"), 1e-8);
    near(at([pump("", of, { count: 2 })], system, "series").flow, expected("two_series"), 1e-8);
    near(at([pump("", of, { count: 2 })], system).flow, expected("two_parallel"), 1e-8);
  });

  it("004: two unlike pumps side by side, their efficiencies and power", () => {
    const expected = expectedOf("s2-pumps-004");
    const friction = (0.018 * 200) / 0.2 / (2 * 9.81 * (Math.PI * 0.01) ** 2);
    const [a, b] = [
      { head: (q: number) => 50 - 5000 * q * q, efficiency: (q: number) => 30 * q - 300 * q * q, most: 0.09 },
      { head: (q: number) => 50 - 3200 * q * q, efficiency: (q: number) => 20 * q - 125 * q * q, most: 0.11 },
    ].map(({ head, efficiency, most }) => {
      const flows = Array.from({ length: 41 }, (_, i) => (most * i) / 40);
      return running(curveOf(flows.map((flow) => ({ flow, head: head(flow), efficiency: efficiency(flow) }))));
    });
    const found = at([pump("A", a as StationPump["pump"]), pump("B", b as StationPump["pump"])], asked(30, friction));
    near(found.flow, expected("flow_total"), SAMPLED);
    near(found.pumps[0]?.flow, expected("flow_A"), SAMPLED);
    near(found.pumps[1]?.flow, expected("flow_B"), SAMPLED);
    near(found.head, expected("head"), SAMPLED);
    near(found.pumps[0]?.efficiency as number, expected("eta_A (30Q-300Q2)"), SAMPLED);
    near(found.pumps[1]?.efficiency as number, expected("eta_B (20Q-125Q2)"), SAMPLED);
    // The case has 1000 kg/m³ and g 9.81, the engine 998.2 and 9.80665.
    near(found.shaftPower as number, (expected("power") * 1000 * 998.2 * 9.80665) / 9810, 5e-4);
    const carried = 998.2 * 9.80665 * found.flow * found.head;
    near(found.efficiency as number, carried / (found.shaftPower as number), 1e-9);
  });

  it("005: the weaker is held shut, 6 m below the header", () => {
    const expected = expectedOf("s2-pumps-005");
    const found = at([pump("pump 1", parabola(60, 0.004)), pump("pump 2", parabola(38, 0.003))], asked(30, 0.0035));
    near(found.flow, expected("flow_total"), SAMPLED);
    near(found.head, expected("head"), SAMPLED);
    expect(found.pumps[1]).toMatchObject({ flow: expected("flow_2"), does: "held shut", running: 0 });
    near(found.pumps[1]?.short as number, expected("head_over_shutoff_of_2"), 1e-3);
    expect(found.codes).toContain("pump-held-closed pump 2");
  });

  it("006: both pump on an easier line", () => {
    const expected = expectedOf("s2-pumps-006");
    const [first, second] = [pump("pump 1", parabola(60, 0.004)), pump("pump 2", parabola(38, 0.003))];
    const found = at([first, second], asked(20, 0.0008));
    near(found.flow, expected("flow_total"), SAMPLED);
    near(found.pumps[0]?.flow, expected("flow_1"), SAMPLED);
    near(found.pumps[1]?.flow, expected("flow_2"), SAMPLED);
    near(found.head, expected("head"), SAMPLED);
    near(at([first], asked(20, 0.0008)).flow, expected("pump_1_alone"), SAMPLED);
  });

  it("009: of two drooping alike the second is held shut; the point of both on the rising part is no answer", () => {
    const expected = expectedOf("s2-pumps-009");
    const points: Points = [
      [0, 15],
      [50, 19],
      [100, 32],
      [125, 33],
      [150, 38],
      [300, 90],
    ];
    const system = systemCurveThrough({
      points: points.map(([flow, head]) => ({ flow, head })),
      subject: "system",
      labels: points.map(String),
    });
    if (!system.ok) throw new Error("refused");
    const of = byPoints([
      [0, 30],
      [50, 34],
      [100, 35],
      [150, 30],
      [200, 20],
    ]);
    const found = at([pump("", of, { count: 2 })], system.value);
    near(found.flow, expected("flow_with_both_switched_on"), 1e-3);
    near(found.head, expected("head_one_alone"), 1e-3);
    expect(found.running).toBe(1);
    expect(found.pumps[0]).toMatchObject({ does: "held shut", count: 2 });
    near(found.head - (found.pumps[0]?.short as number), expected("shutoff_of_second"), 1e-9);
  });

  it("014: two unlike in series", () => {
    const expected = expectedOf("s2-pumps-014");
    const found = at(
      [pump("first", parabola(40, 0.002)), pump("second", parabola(25, 0.001))],
      asked(30, 0.004),
      "series",
    );
    near(found.flow, expected("flow"), SAMPLED);
    near(found.pumps[0]?.head, expected("head_1"), SAMPLED);
    near(found.pumps[1]?.head, expected("head_2"), SAMPLED);
    near(found.head, expected("head"), SAMPLED);
  });

  it("018: one, two in series and two side by side of 365 − 20 Q²", () => {
    const expected = expectedOf("s2-pumps-018");
    const of = parabola(365, 20);
    const system = asked(290, expected("K_system"));
    near(at([pump("", of)], system).flow, expected("one"), SAMPLED);
    near(at([pump("", of, { count: 2 })], system, "series").flow, expected("two_series"), SAMPLED);
    near(at([pump("", of, { count: 2 })], system).flow, expected("two_parallel"), SAMPLED);
  });

  it("020: two side by side with one booster after them, as one pump of the pair's curve", () => {
    const expected = expectedOf("s2-pumps-020");
    const pair = running(curveByFormula((q) => 45 - 0.0005 * q * q, 280, 80));
    const found = at([pump("pair", pair), pump("booster", parabola(30, 0.0006))], asked(35, 0.0015), "series");
    near(found.flow, expected("flow"), SAMPLED);
    near(found.flow / 2, expected("flow_each_of_pair"), SAMPLED);
    near(found.pumps[0]?.head, expected("head_pair"), SAMPLED);
    near(found.pumps[1]?.head, expected("head_booster"), SAMPLED);
  });
});
