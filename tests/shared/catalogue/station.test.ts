import { describe, expect, it } from "vitest";
import type { Cell } from "../../../shared/cells/cell.ts";
import { cell, numberIn, refusal, remarks } from "../../support/cells.ts";
import { publishedCases } from "../../support/published-cases.ts";

type Rows = readonly (readonly Cell[])[];

// Cases s2-pumps-011 and -017 of tests/published/hydraulics-s2-pumps.csv: a bypass of two pumps, each with its own 12 in
// suction hose and 10 in branch, on one 18 in line. f_T by the fully rough law in each bore, as the case has it.
const fT = (bore: number): number => 0.25 / Math.log10(0.0018 / 3.7 / bore) ** 2;
const MAIN_BORE = 18 - (2.12 * 18) / 17;
const HOSE = ["ID 12 in rough 0.03 mm", 40, "K 0.64"];
const BRANCH = ["ID 10.02 in rough 0.045 mm", 10, `K ${122 * fT(10.02)}`];
const MAIN = [`ID ${MAIN_BORE} in rough 0.02 mm`, 4200, `K ${128 * fT(MAIN_BORE) + 1}`];
const LIQUID = [null, "water", 70] as const;
const OWN = cell("SYSTEMCURVE", 0, [HOSE], [BRANCH], 2100, 60, ...LIQUID) as Rows;
const COMMON = cell("SYSTEMCURVE", 24, [[null, null, null]], [MAIN], 4200, 60, ...LIQUID) as Rows;

const FLOWS = [0, 288, 576, 864, 1151, 1439, 1727, 2015];
const HEADS = [72, 71.38, 69.51, 66.41, 62.07, 56.49, 49.65, 41.58];
const EFFICIENCIES = [0, 0.2629, 0.472, 0.6272, 0.7283, 0.776, 0.7698, 0.7098];
const NPSHRS = [6.9, 7.06, 7.54, 8.33, 9.44, 10.86, 12.61, 14.67];
const HEADING = ["flow", "head", "efficiency", "NPSHR"];
const POINTS = FLOWS.map((flow, i) => [flow, HEADS[i], EFFICIENCIES[i], NPSHRS[i]] as Cell[]);
const CURVE: Rows = [HEADING, ...POINTS];
/** The same curve for each of these pumps. */
const named = (...names: readonly string[]): Rows => [
  ["pump", ...HEADING],
  ...names.flatMap((name) => POINTS.map((row, i) => [i === 0 ? name : null, ...row])),
];
/** Speed and trim ratio, count, arrangement, SG and speed of the curve left out; losses of own rows. */
const withOwn = (count: number | null = null) => [null, null, count, null, 1, null, OWN] as const;

const expectedOf = (id: string): ((name: string) => number) => {
  const one = publishedCases("s2-pumps").find((found) => found.id === id);
  return (name) => one?.expected[name]?.value as number;
};
const near = (found: Cell | undefined, expected: number, within: number): void =>
  expect(Math.abs((found as number) / expected - 1), `${found} for ${expected}`).toBeLessThanOrEqual(within);

describe("a bypass of two pumps with hoses and branches of their own", () => {
  const pair = cell("OPERATINGPOINT", CURVE, COMMON, ...withOwn(2)) as Rows;
  const [, all, first, second] = cell("OPERATINGPOINT", named("A", "B"), COMMON, ...withOwn()) as Rows;

  it("s2-pumps-017: runs at 3504 gpm, entered as two unlike pumps", () => {
    const expected = expectedOf("s2-pumps-017");
    near(all?.[0], expected("flow_total"), 5e-4);
    // The head of each pump holds its own hose and branch; the header has less.
    near(first?.[1], expected("head"), 5e-4);
    near(all?.[0], pair[1]?.[0] as number, 1e-6);
    expect(all?.slice(6)).toEqual([2, "2 run", "all"]);
    expect([first, second].map((row) => row?.slice(6))).toEqual([
      [1, "runs", "A"],
      [1, "runs", "B"],
    ]);
    // s1-shares-002: 121.8 % of BEP each.
    near(first?.[5], 121.7575, 5e-4);
    near(all?.[2], first?.[2] as number, 1e-9);
    near(all?.[3], (first?.[3] as number) + (second?.[3] as number), 1e-12);
  });

  it("agrees with shares of 1/2 on the rows of one system curve", () => {
    const shared = cell(
      "SYSTEMCURVE",
      24,
      [[...HOSE, "1/2"]],
      [
        [...BRANCH, "1/2"],
        [...MAIN, ""],
      ],
      4200,
      60,
      ...LIQUID,
    ) as Rows;
    const [, row] = cell("OPERATINGPOINT", CURVE, shared, null, null, 2, null, 1) as Rows;
    near(row?.[0], pair[1]?.[0] as number, 1e-5);
  });

  it("s2-pumps-011: one of them alone runs off the end of its curve", () => {
    const expected = expectedOf("s2-pumps-011");
    const [names, one, other] = cell("PUMPSTOPS", named("A", "B"), COMMON, ...withOwn()) as Rows;
    expect(names?.map((name) => String(name).split(",")[0])).toEqual([
      "stopped",
      "left running",
      "what the rest does",
      "flow",
      "head",
      "maximum % of BEP flow",
      "maximum NPSHR",
      "head left at the end of the curve",
      "flow back without check valve",
      "flow without check valve",
    ]);
    expect(one?.slice(0, 4)).toEqual(["A", "B", "B: runs off its curve", ""]);
    expect(other?.slice(0, 3)).toEqual(["B", "A", "A: runs off its curve"]);
    near(one?.[7], expected("head_left_at_end"), 1e-3);
    const [, alike] = cell("PUMPSTOPS", CURVE, COMMON, ...withOwn(2)) as Rows;
    expect(alike?.slice(0, 3)).toEqual(["1 of 2", "1 of 2", "runs off its curve"]);
  });

  // By hand: back through the other its rated 56.49 ft at 1439 gpm and its own rows are the resistance, and the grade of
  // the header over the source drives it.
  it.each([38, 60])("passes liquid back through the stopped one where it has no check valve, lift of %s ft", (lift) => {
    const line = COMMON.map((row, i) => (i === 0 ? row : [row[0] as Cell, (row[1] as number) + lift - 24]));
    const [, row] = cell("PUMPSTOPS", named("A", "B"), line, ...withOwn()) as Rows;
    const [back, forward] = [row?.[8] as number, row?.[9] as number];
    expect(forward).toBeLessThan(row?.[3] as number);
    // Against 60 ft all of it goes back.
    expect(forward > 0).toBe(lift < 60);
    const grade = numberIn("PUMPHEAD", CURVE, forward + back) - lossAt(OWN, forward + back);
    near(56.49 * (back / 1439) ** 2 + lossAt(OWN, back), grade, 1e-3);
    if (forward > 0) near(lossAt(line, forward), grade, 1e-3);
  });

  function lossAt(table: Rows, flow: number): number {
    const points = table.slice(1) as unknown as readonly (readonly [number, number])[];
    const i = points.findIndex(([q]) => q >= flow);
    const [[q0, h0], [q1, h1]] = [points[i - 1], points[i]] as [[number, number], [number, number]];
    return h0 + ((h1 - h0) * (flow ** 2 - q0 ** 2)) / (q1 ** 2 - q0 ** 2);
  }
});

describe("several curves in one range", () => {
  const SYSTEM: Rows = [
    [0, 60],
    [300, 75],
    [600, 120],
    [1200, 300],
  ];
  const A: Rows = [
    [0, 140],
    [300, 128],
    [600, 88],
  ];
  const B: Rows = [
    [0, 100],
    [200, 90],
    [400, 60],
  ];
  const rowsOf = (
    heading: readonly string[],
    ...pumps: readonly (readonly [name: string, own: readonly Cell[], Rows])[]
  ) => [
    ["pump", "flow", "head", ...heading],
    ...pumps.flatMap(([name, own, points]) => points.map((point) => [name, ...point, ...own])),
  ];

  it("take their speed, trim, level, count and check valve from columns", () => {
    const range = rowsOf(
      ["speed ratio", "level, ft", "count", "check valve"],
      ["A", [0.9, 0, 1, "yes"], A],
      ["B", [null, 5, 2, "no"], B],
    );
    const [, all, a, b] = cell("OPERATINGPOINT", range, SYSTEM, null, null, null, null, 1) as Rows;
    const [total, grade] = [all?.[0] as number, all?.[1] as number];
    near(numberIn("PUMPHEAD", A, a?.[0] as number, 0.9), grade, 1e-9);
    near(numberIn("PUMPHEAD", B, b?.[0] as number) + 5, grade, 1e-9);
    near((a?.[0] as number) + 2 * (b?.[0] as number), total, 1e-9);
    expect(b?.slice(6)).toEqual([2, "2 run", "B"]);
    expect(all?.slice(6)).toEqual([3, "3 run", "all"]);
  });

  // Common practice, no source: pumps run whole or not at all.
  it.each(["OPERATINGPOINT", "STATIONCURVE"])("are counted in whole numbers from 1 on by %s", (name) => {
    const system = name === "OPERATINGPOINT" ? [SYSTEM] : [];
    const counted = (count: Cell) => rowsOf(["count"], ["A", [2], A], ["B", [count], B]);
    expect(refusal(name, counted(1.5), ...system)).toMatch(/count.* must be a whole number; 1.5 was given/);
    expect(refusal(name, counted(0), ...system)).toMatch(/count.* must be at least 1; 0 was given/);
    const [first, ...others] = counted(null);
    const beside = [first as Cell[], ...others.map((row, i) => (i === 3 ? [...row.slice(0, 3), 0] : row))];
    expect(refusal(name, beside, ...system)).toMatch(/must be at least 1; 0 was given/);
    for (const [count, words] of [
      [0, /Number of pumps must be at least 1; 0/],
      [-2, /Number of pumps must be at least 1; -2/],
      [1.5, /Number of pumps must be a whole number; 1.5/],
    ] as const) {
      expect(refusal(name, A, ...system, null, null, count)).toMatch(words);
    }
  });

  // A blank cell of a range may arrive as 0, and then all of them do.
  it("take a column of zeros beside one count for blank cells", () => {
    const zeros = rowsOf(["count"], ["A", [0], A], ["B", [0], B]);
    zeros[1] = ["A", 0, 140, 2];
    const blank = rowsOf(["count"], ["A", [null], A], ["B", [null], B]);
    blank[1] = ["A", 0, 140, 2];
    expect(cell("OPERATINGPOINT", zeros, SYSTEM)).toEqual(cell("OPERATINGPOINT", blank, SYSTEM));
  });

  it("answer by name what is held shut", () => {
    const range = rowsOf(
      [],
      ["A", [], A],
      ["small", [], B.map(([flow, head]) => [flow as number, (head as number) / 2])],
    );
    const [, all, , small] = cell("OPERATINGPOINT", range, SYSTEM, null, null, null, null, 1) as Rows;
    expect(small).toEqual([0, 50, "", "", "", "", 0, "held shut", "small"]);
    expect(all?.[7]).toBe("1 of 2 runs");
    expect(remarks("OPERATINGPOINT", range, SYSTEM)).toContain("limit pump-held-closed");
  });

  it("are a table as RANKPUMPS takes it, one curve a pump", () => {
    const range = [
      ["pump", "speed", "impeller diameter", "flow", "head"],
      ...A.map((point) => ["A", 1750, 10, ...point]),
      ...B.map((point) => ["B", 1750, 9, ...point]),
    ];
    expect((cell("OPERATINGPOINT", range, SYSTEM) as Rows).map((row) => row.at(-1))).toEqual(["pump", "all", "A", "B"]);
    const twice = [...range, ["A", 1450, 10, 0, 90], ["A", 1450, 10, 400, 60]];
    expect(refusal("OPERATINGPOINT", twice, SYSTEM)).toMatch(/speed differs from another row of “A”; a pump has one/);
  });

  it("are refused without a name among names, and with the name of the pump whose curve cannot be read", () => {
    const nameless = [
      ["pump", "flow", "head"],
      ...B.map((point) => [null, ...point]),
      ...A.map((point) => ["A", ...point]),
    ];
    expect(refusal("OPERATINGPOINT", nameless, SYSTEM)).toMatch(/pump/);
    const unsorted = rowsOf([], ["A", [], A], ["B", [], B.toReversed()]);
    expect(refusal("OPERATINGPOINT", unsorted, SYSTEM)).toMatch(/sort the rows by flow/);
    expect(refusal("OPERATINGPOINT", rowsOf(["check valve"], ["A", ["perhaps"], A]), SYSTEM)).toMatch(/"yes"/);
    expect(refusal("PUMPSTOPS", A, SYSTEM)).toMatch(/two pumps or more/);
  });

  // By hand: the header holds what A gives at all it pumps, the system at what goes on, and drives the rest back through B,
  // whose rated head over the square of its rated flow is the resistance: 90 ft at 200 gpm.
  it("lose by a stopped one without a check valve what goes back through it, and not by one with", () => {
    const head = (flow: number): number => 140 - (52 * flow ** 2) / 600 ** 2;
    const many = Array.from({ length: 31 }, (_, i) => [20 * i, head(20 * i), i === 0 ? 0 : i === 22 ? 0.8 : 0.5]);
    const weak = B.map(([flow, at], i) => [flow as number, at as number, [0, 0.7, 0.3][i] as number]);
    const station = (valve: Cell) => [
      ["pump", "flow", "head", "efficiency", "check valve"],
      ...many.map((point) => ["A", ...point, "yes"]),
      ...weak.map((point) => ["B", ...point, valve]),
    ];
    const line: Rows = Array.from({ length: 31 }, (_, i) => [20 * i, 60 + 100 * (i / 30) ** 2]);
    const ofB = (valve: Cell) => (cell("PUMPSTOPS", station(valve), line) as Rows)[2] as readonly Cell[];
    const [shut, open] = [ofB("yes"), ofB("no")];
    near(shut[3], Math.sqrt(80 / (52 / 600 ** 2 + 100 / 600 ** 2)), 1e-4);
    const grade = 60 + 100 * ((open[3] as number) / 600) ** 2;
    const back = 200 * Math.sqrt(grade / 90);
    near(head((open[3] as number) + back), grade, 1e-3);
    near(open[8], back, 1e-3);
    expect(open[3]).toBe(open[9]);
    // A stands at its own flow, over its best efficiency flow of 440 gpm.
    near(open[5], ((open[3] as number) + back) / 4.4, 1e-3);
    expect(shut[2]).toBe("runs");
    expect(open[2]).toBe("A: outside preferred region");
    expect(open.slice(8)).toEqual(shut.slice(8));
    const unread = (valve: Cell) => station(valve).map(([name, flow, at, , own]) => [name, flow, at, own] as Cell[]);
    expect((cell("PUMPSTOPS", unread("no"), line) as Rows)[2]?.slice(2, 4)).toEqual([
      "not known: no check valve, flow back not known",
      "",
    ]);
    expect(remarks("PUMPSTOPS", unread("no"), line)).toEqual(
      expect.arrayContaining(["check back-flow-left-blank", "check reverse-flow-unknown"]),
    );
    expect(remarks("PUMPSTOPS", station("no"), line)).not.toContain("check back-flow-left-blank");
  });

  it("of which nothing goes on where all flows back", () => {
    const alone = (valve: Cell) => [
      ["pump", "flow", "head", "efficiency", "check valve"],
      ...A.map((point, i) => ["A", ...point, [0, 0.7, 0.8][i] as number, valve]),
      ...A.map((point, i) => ["B", ...point, [0, 0.7, 0.8][i] as number, valve]),
    ];
    const high: Rows = [
      [0, 120],
      [600, 130],
      [1300, 200],
    ];
    expect((cell("PUMPSTOPS", alone("no"), high) as Rows)[1]?.slice(2, 4)).toEqual([
      expect.stringMatching(/^nothing goes on: all flows back/),
      0,
    ]);
    expect((cell("PUMPSTOPS", alone("yes"), high) as Rows)[1]?.[3]).toBeGreaterThan(300);
  });

  // By hand: 140 − … + 100 − … at one flow; at 300 gpm A gives 128 and B somewhere between 90 and 60, on a line of 200 ft.
  it("in series add their heads", () => {
    const range = rowsOf([], ["A", [], A], ["B", [], B]);
    const line: Rows = [
      [0, 100],
      [400, 260],
    ];
    const [, all, a, b] = cell("OPERATINGPOINT", range, line, null, null, null, "series", 1) as Rows;
    expect(a?.[0]).toBe(all?.[0]);
    near((a?.[1] as number) + (b?.[1] as number), all?.[1] as number, 1e-9);
    const [, one] = cell("PUMPSTOPS", range, line, null, null, null, "series", 1) as Rows;
    expect(one?.slice(0, 2)).toEqual(["A", "B"]);
    expect(one?.slice(8)).toEqual(["", ""]);
  });
});

// Case s2-pumps-016: two stages alike on 90 m of lift, the second at mid height, a liquid of SG 1.03.
describe("a second stage at mid height of a 90 m lift", () => {
  const expected = expectedOf("s2-pumps-016");
  const points = Array.from({ length: 41 }, (_, i) => [10 * i, 64 - 0.00028 * (10 * i) ** 2]);
  const stages = (level: number, afterRow: number): Rows => [
    ["pump", "flow", "head", "level", "after row"],
    ...points.map((point, i) => [i === 0 ? "stage 1" : null, ...point, 0, 0] as Cell[]),
    ...points.map((point, i) => [i === 0 ? "stage 2" : null, ...point, level, afterRow] as Cell[]),
  ];
  const pipe = "ID 202.7 mm rough 0.045 mm";
  const line: Rows = [
    [pipe, 300, "K 1.5"],
    [pipe, 300, "K 1"],
  ];
  const noLine: Rows = [[null, null, null]];
  const liquid = "1028.146 kg/m3, 1 cP";
  const system = cell("SYSTEMCURVE", 90, noLine, line, 380, 100, null, liquid, null, "METRIC") as Rows;
  const left = (count: number) => Array.from({ length: count }, () => null);
  const [, all] = cell(
    "OPERATINGPOINT",
    stages(45, 1),
    system,
    ...left(3),
    "series",
    1.03,
    null,
    null,
    "METRIC",
  ) as Rows;
  const flow = all?.[0] as number;
  const at = (table: Rows) =>
    cell("BOOSTERS", table, flow, 0, noLine, line, ...left(2), liquid, ...left(3), "METRIC") as Rows;
  /** Total heads times the weight of the liquid, kPa: the case leaves the velocity head in. */
  const weight = (1028.146 * 9.80665) / 1000;

  it("gives 225.46 m³/h, wherever the second stands", () => {
    near(flow, expected("flow"), 5e-4);
    const [, low] = cell(
      "OPERATINGPOINT",
      stages(0, 0),
      system,
      ...left(3),
      "series",
      1.03,
      null,
      null,
      "METRIC",
    ) as Rows;
    expect(low?.[0]).toBe(flow);
  });

  it("has 0.5 kPa of vacuum at the inlet of the second, and 501 kPa at its outlet", () => {
    const [, first, second] = at(stages(45, 1));
    const heads = [first?.[4], second?.[3], second?.[4]] as readonly number[] as [number, number, number];
    // The parabola at 41 points lies within 2 mm of itself.
    expect(Math.abs(heads[0] * weight - expected("stage1_outlet_pressure"))).toBeLessThanOrEqual(0.05);
    expect(Math.abs(heads[1] - expected("booster_inlet_head"))).toBeLessThanOrEqual(0.005);
    expect(Math.abs(heads[1] * weight - expected("booster_inlet_pressure"))).toBeLessThanOrEqual(0.05);
    expect(Math.abs(heads[2] * weight - expected("booster_outlet_pressure"))).toBeLessThanOrEqual(0.05);
    // A gauge there reads the velocity head less, V²/2g with 1.9407 m/s.
    expect((second?.[5] as number) * 100).toBeCloseTo(heads[1] * weight - (1.028146 * 1.9407 ** 2) / 2, 2);
    expect(second?.[9]).toBe("inlet below atmosphere");
    expect(
      remarks("BOOSTERS", stages(45, 1), flow, 0, noLine, line, ...left(2), liquid, ...left(3), "METRIC"),
    ).toContain("limit booster-below-atmosphere");
  });

  it("has 1,004 kPa behind the second with both at the sump", () => {
    const [, , second] = at(stages(0, 0));
    expect(
      Math.abs((second?.[4] as number) * weight - expected("if_both_at_the_sump: outlet of stage 2")),
    ).toBeLessThanOrEqual(0.1);
  });

  // By hand: the gauge at 45 m shows −0.24 m of head; 3.3 m lower it shows 3.06 m, 0.308 bar; 3.2 m lower 0.298 bar.
  it("keeps 0.3 bar 3.3 m lower, and not 3.2 m lower", () => {
    const verdict = (level: number) => at(stages(level, 1))[2]?.[9];
    expect([verdict(45 - 3.3), verdict(45 - 3.2)]).toEqual(["inlet kept", "inlet below 0.3 bar gauge"]);
  });

  it("is refused out of the order of flow, and beyond the line", () => {
    const args = [flow, 0, noLine, line, ...left(2), liquid, ...left(3), "METRIC"] as const;
    expect(refusal("BOOSTERS", stages(45, 3), ...args)).toMatch(/stage 2: .*from 0 to 2 of the discharge line/i);
    expect(refusal("BOOSTERS", stages(45, 0.5), ...args)).toMatch(/from 0 to 2/);
  });
});

describe("STATIONCURVE", () => {
  const stationCurve = (...args: readonly (Cell | Rows)[]): Rows => (cell("STATIONCURVE", ...args) as Rows).slice(1);

  // Case s2-pumps-017: at 3504.2 gpm the common line of the pair asks for its share of 49.0 ft; the header has that head.
  it("meets the common line of the bypass pair at its operating point", () => {
    const curve = stationCurve(named("A", "B"), null, null, null, null, OWN, 200);
    const [, all] = cell("OPERATINGPOINT", named("A", "B"), COMMON, ...withOwn()) as Rows;
    const [flow, head] = all as readonly number[];
    const after = curve.findIndex(([at]) => (at as number) > (flow as number));
    const [[q0, h0], [q1, h1]] = [curve[after - 1], curve[after]] as unknown as [number[], number[]];
    const part = ((flow as number) - (q0 as number)) / ((q1 as number) - (q0 as number));
    near((h0 as number) + part * ((h1 as number) - (h0 as number)), head as number, 2e-4);
  });

  it("answers in 25 rows of flow and head unless told otherwise", () => {
    expect(stationCurve(CURVE, null, null, 2)).toHaveLength(25);
    expect(stationCurve(CURVE, null, null, 2).at(-1)).toEqual([expect.closeTo(4030, 6), expect.closeTo(41.58, 9), 0]);
    expect(stationCurve(CURVE, 0.9, null, 2, null, null, 3).at(-1)).toEqual([
      expect.closeTo(4030 * 0.9, 6),
      expect.closeTo(41.58 * 0.81, 9),
      0,
    ]);
    expect(refusal("STATIONCURVE", CURVE, null, null, null, null, null, 1)).toMatch(/Number of points/);
  });
});
