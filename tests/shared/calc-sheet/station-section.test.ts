import { describe, expect, it } from "vitest";
import { dutyPlan } from "../../../shared/calc-sheet/duty-plan.ts";
import { layOut } from "../../../shared/calc-sheet/layout.ts";
import { type WorkedPlan, workOut } from "../../../shared/calc-sheet/work-out.ts";
import { decodeDuty } from "../../../shared/duty/decode.ts";
import { type DutyText, EMPTY_OTHER_PUMP, type OtherPumpText } from "../../../shared/duty/duty-text.ts";
import { loadDuty, saveDuty } from "../../../shared/duty/saved.ts";
import { quotedSheetName } from "../../../shared/ports/sheet-name.ts";
import { headlessGrid } from "../../../workbench/headless.ts";
import { bypass, BYPASS_CURVE as CURVE, otherPump as other } from "../../support/bypass.ts";
import { dutyRead, dutyText, pumpText } from "../../support/duty-of.ts";
import { judged, stateOf } from "../../support/judged.ts";
import { sheetsOf } from "../../support/laid-out.ts";
import { publishedCases } from "../../support/published-cases.ts";

const cellsOf = (typed: DutyText): WorkedPlan["cells"] => workOut(dutyPlan(dutyRead(typed))).cells;
const number = (cells: WorkedPlan["cells"], key: string): number => cells.get(key) as number;
const near = (found: number, expected: number, within: number): void =>
  expect(Math.abs(found / expected - 1), `${found} for ${expected}`).toBeLessThanOrEqual(within);

const expected = (name: string): number =>
  publishedCases("s2-pumps").find(({ id }) => id === "s2-pumps-017")?.expected[name]?.value as number;

describe("a duty of two pumps, the second stated by itself", () => {
  const typed = bypass({}, { otherPumps: [other(CURVE)] });
  const cells = cellsOf(typed);

  it("runs at 3504 gpm, each at 49 ft and 121.8 % of best efficiency flow", () => {
    near(number(cells, "operatingFlow"), expected("flow_total"), 5e-4);
    near(number(cells, "stationStates.0.head"), expected("head"), 5e-4);
    near(number(cells, "stationStates.1.bestFlowPercent"), 121.7575, 5e-4);
    expect(number(cells, "stationStates.0.flow")).toBeCloseTo(number(cells, "stationStates.1.flow"), 6);
    expect(stateOf(dutyRead(typed), "region", /^A|over best efficiency flow.*B, as stated/)).toBe("check");
  });

  // By hand: N_s = n √1439 / 56.49^0.75 = 1.841 n; up to N_s 4500 70 to 120 % (ANSI/HI 9.6.3), above 80 to 115 %. House choice of the last.
  it.each([
    ["1750", [70, 120, 10]],
    ["3500", [80, 115, 30]],
  ])("holds the second to the region of its own curve, which the sheet works out: at %s rpm", (speed, limits) => {
    const fast = bypass({}, { otherPumps: [other({ ...CURVE, speed })] });
    const [, [least, most, , continuous] = []] = cellsOf(fast).get(
      "otherPump1Region",
    ) as readonly (readonly number[])[];
    expect([least, most, continuous]).toEqual(limits);
    const said = judged(dutyRead(fast), "region", /over best efficiency flow.*B, as stated/);
    expect(said.map(({ text }) => text).join("\n")).toContain(`${most} %`);
  });

  it("is the pair of pumps alike, to what the points of its curves leave", () => {
    const alike = cellsOf(bypass({ pumpsRunning: "2" }));
    near(number(cells, "operatingFlow"), number(alike, "operatingFlow"), 1e-5);
    near(number(cells, "totalHead"), number(alike, "totalHead"), 1e-12);
    near(number(cells, "headAtDuty"), number(alike, "headAtDuty"), 1e-4);
    near(number(cells, "bestFlowPercent"), number(alike, "bestFlowPercent"), 1e-5);
    near(number(cells, "greatestPower"), number(alike, "greatestPower"), 1e-9);
  });

  // s1-shares-001: 20.05 ft at 1500 gpm; the losses of the hose of 0.347 ft grow with the square of 1752/1500.
  it("has the NPSH of its own flow through its own hose", () => {
    near(number(cells, "stationNpsh.1.npshAvailable"), 20.051 - 0.3466 * ((1752.09 / 1500) ** 2 - 1), 5e-4);
  });

  it("gives the power of both, and the efficiency of both together", () => {
    const both = number(cells, "stationStates.0.shaftPower") + number(cells, "stationStates.1.shaftPower");
    near(number(cells, "operatingPower"), both, 1e-9);
    near(number(cells, "operatingEfficiency"), number(cells, "stationStates.0.efficiency"), 1e-6);
    near(number(cells, "powerOfOne"), both / 2, 1e-6);
  });

  it("judges the one left alone as running off its curve", () => {
    expect(stateOf(dutyRead(typed), "head", /one pump alone/)).toBe("fail");
  });

  // At a grade of 66 ft over the source some 1439 × √(66/56) ≈ 1560 gpm pass back through the idle second pump, at whose
  // flow the first has no more than 54 ft: nothing reaches the outlet.
  it("fails where one stops and all that the other gives flows back through it", () => {
    const open = { otherPumps: [other(CURVE, { checkValve: "no" })] };
    expect(stateOf(dutyRead(bypass({ deliveryLevel: "654", flow: "500" }, open)), "region", /nothing goes on/)).toBe(
      "fail",
    );
  });

  // 3000 gpm of two: total head 42.66 ft (s1-shares-001) against 55.1525 ft of the curve at 1500 gpm (PCHIP of SciPy).
  it("holds the station at the flow asked against total head", () => {
    const own = number(cells, "totalHead") - 24 - number(cells, "commonAtDuty.0.lost");
    near(number(cells, "commonAtDuty.0.lost"), 17.258, 5e-4);
    near(number(cells, "headAtDuty") - own, 55.1525 - 0.3466 - 1.0545, 1e-4);
  });
});

describe("a station of unlike pumps", () => {
  const weak = pumpText(
    [
      ["0", "40", "0", "6"],
      ["500", "36", "65 %", "7"],
      ["1000", "25", "60 %", "9"],
    ],
    { name: "weak" },
  );

  it("says by name what is held shut, and fails the head", () => {
    // 52 ft to lift: more than the 40 ft of the weak one at shutoff.
    const high = dutyRead(bypass({ deliveryLevel: "640" }, { otherPumps: [other(weak, { name: "weak" })] }));
    const cells = workOut(dutyPlan(high)).cells;
    expect(cells.get("stationStates.1.does")).toBe("held shut");
    expect(judged(high, "head", /weak, as stated/i).map(({ state, text }) => [state, /held shut/.test(text)])).toEqual([
      ["fail", true],
    ]);
    expect(stateOf(high, "npsh")).toBe("open");
  });

  it("counts a higher source as less to lift, for head and for NPSH", () => {
    const at = (level: string): WorkedPlan["cells"] =>
      cellsOf(bypass({ deliveryLevel: "620" }, { otherPumps: [other(CURVE, { level })] }));
    const [same, higher] = [at(""), at("3")];
    expect(number(higher, "stationStates.1.flow")).toBeGreaterThan(number(same, "stationStates.1.flow"));
    expect(number(higher, "stationStates.0.flow")).toBeLessThan(number(same, "stationStates.0.flow"));
    const drop = number(higher, "stationNpsh.1.npshAvailable") - number(same, "stationNpsh.1.npshAvailable");
    expect(drop).toBeGreaterThan(2.8);
    expect(drop).toBeLessThan(3);
  });

  it("adds heads in series, whatever stands where", () => {
    const typed = bypass(
      { deliveryLevel: "690", arrangement: "series", flow: "1500" },
      { otherPumps: [other(CURVE, { level: "50" })] },
    );
    const cells = cellsOf(typed);
    const heads = number(cells, "stationStates.0.head") + number(cells, "stationStates.1.head");
    near(heads, number(cells, "operatingHead"), 1e-9);
    expect(cells.get("stationNpsh.1.npshAvailable")).toBe("not given");
  });

  it("waits where a further pump cannot be read, and says so at its box", () => {
    const { duty, findings, isComplete } = decodeDuty(bypass({}, { otherPumps: [other(CURVE, { speedRatio: "9" })] }));
    expect([duty.pump, duty.pumpState, isComplete]).toEqual([undefined, "unreadable", false]);
    expect(findings.get("otherPumps.0.speedRatio")?.map(({ code }) => code)).toEqual(["out-of-range"]);
    const twice = decodeDuty(bypass({}, { otherPumps: [other(CURVE, { name: "a" })] }));
    expect(twice.findings.get("otherPumps.0.name")?.map(({ code }) => code)).toEqual(["pump-named-twice"]);
    const blank = decodeDuty(bypass({}, { otherPumps: [EMPTY_OTHER_PUMP] }));
    expect([blank.isComplete, blank.duty.otherPumps]).toEqual([true, []]);
  });

  it("is saved and comes back, and stands on the sheet", () => {
    const typed = bypass({}, { otherPumps: [other(weak, { name: "weak", checkValve: "no", flangeClass: "150" })] });
    const back = loadDuty(saveDuty(typed));
    expect(back.ok && back.value).toEqual(typed);
    const texts = JSON.stringify(sheetsOf(typed).duty);
    for (const words of ["Further pump 1", "What each pump does", "weak"]) expect(texts).toContain(words);
  });

  it("is one kind of pump where none is added: the answer of before", () => {
    const cells = cellsOf(bypass({}, { otherPumps: [] }));
    expect(cells.has("stationStates.0.flow")).toBe(false);
  });
});

describe("when one of several pumps stops", () => {
  const alike = bypass({ pumpsRunning: "2" });

  // Case s2-pumps-011: at the end of its curve the one left is still 6.85 ft too strong.
  it("runs the one left off its curve, with the head left there", () => {
    const cells = cellsOf(alike);
    expect(cells.get("pumpStopsShown.0.verdict")).toBe("runs off its curve");
    near(number(cells, "pumpStopsShown.0.headLeft"), 6.84937, 2e-3);
    expect(judged(dutyRead(alike), "region", /1 of 2 stopped/i).map(({ state }) => state)).toEqual(["fail"]);
  });

  it("is worked out for each of unlike pumps by name", () => {
    const cells = cellsOf(bypass({ deliveryLevel: "640" }, { otherPumps: [other(CURVE)] }));
    expect(cells.get("pumpStopsShown.0.verdict")).toBe("runs");
    expect(number(cells, "pumpStopsShown.0.flow")).toBeCloseTo(number(cells, "pumpStopsShown.1.flow"), 6);
    // Backwards through the stopped one some rated flow or less: the header stands near its rated head.
    expect(number(cells, "pumpStopsShown.0.flowBack")).toBeGreaterThan(500);
  });

  it("asks for a check valve in the rows that are each pump's own", () => {
    const rows = alike.dischargeLine;
    const withValve = [{ ...rows[0], fittings: "1 swing check" }, rows[1]] as DutyText["dischargeLine"];
    const common = [rows[0], { ...rows[1], fittings: "1 swing check, 1 exit" }] as DutyText["dischargeLine"];
    const said = (dischargeLine: DutyText["dischargeLine"], pumps = "2") =>
      judged(
        dutyRead({ ...alike, dischargeLine, fields: { ...alike.fields, pumpsRunning: pumps } }),
        "head",
        /check valve of each/i,
      ).length;
    expect([said(rows), said(common), said(withValve), said(rows, "1")]).toEqual([1, 1, 0, 0]);
    const without = bypass({}, { otherPumps: [other(CURVE, { checkValve: "no" })] });
    expect(judged(dutyRead(without), "head", /no check valve of its own/).map(({ state }) => state)).toEqual(["check"]);
  });
});

// Case s2-pumps-016 as a duty: two stages alike on 90 m of lift, the second at 45 m, SG 1.03.
describe("a second stage at mid height of a 90 m lift", () => {
  const found = (name: string): number =>
    publishedCases("s2-pumps").find(({ id }) => id === "s2-pumps-016")?.expected[name]?.value as number;
  const curve = pumpText(
    Array.from({ length: 41 }, (_, i) => [String(10 * i), String(64 - 0.00028 * (10 * i) ** 2)]),
    { name: "stage" },
  );
  const pipe = "ID 202.7 mm rough 0.045 mm";
  const mine = (stages: string, change: Partial<DutyText> = {}): DutyText =>
    dutyText(
      {
        liquid: "1028.146 kg/m3, 1 cP, pv 2 kPa",
        flow: "220",
        sourceLevel: "0",
        pumpLevel: "0",
        deliveryLevel: "90",
        pumpsRunning: "2",
        arrangement: "series",
        stages,
      },
      {
        unitSet: "METRIC",
        suctionLine: [{ pipe, length: "0.000001", fittings: "" }],
        dischargeLine: [
          { pipe, length: "300", fittings: "K 1.5" },
          { pipe, length: "300", fittings: "K 1" },
        ],
        pump: curve,
        ...change,
      },
    );
  const placed = mine("2: level 45 m, after row 1");
  const cells = cellsOf(placed);
  const velocityHead = (1.9407 ** 2 / 2 / 9.80665) * ((1028.146 * 9.80665) / 1000);

  it("runs at 225.46 m³/h, with 0.5 kPa of vacuum before the second but for the velocity head", () => {
    near(number(cells, "operatingFlow"), found("flow"), 5e-4);
    const inlet = number(cells, "boostersShown.1.inletPressure") * 100 + velocityHead;
    expect(Math.abs(inlet - found("booster_inlet_pressure"))).toBeLessThanOrEqual(0.06);
    const outlet = number(cells, "boostersShown.1.outletPressure") * 100 + velocityHead;
    expect(Math.abs(outlet - found("booster_outlet_pressure"))).toBeLessThanOrEqual(0.06);
  });

  it("fails the vacuum, and passes what keeps 0.3 bar", () => {
    const state = (stages: string) => stateOf(dutyRead(mine(stages, PRESSURES)), "pressure", /inlet of the booster/i);
    expect([
      state("2: level 45 m, after row 1"),
      state("2: level 42.9 m, after row 1"),
      state("2: level 41.6 m, after row 1"),
    ]).toEqual(["fail", "check", "pass"]);
  });
  const PRESSURES = {};

  // By hand: −0.5 kPa at the inlet, 101.325 kPa of air and 2 kPa of vapour at 1028.1 kg/m³ leave 9.77 m.
  it.each([
    ["10.5", "fail"],
    ["9.5", "check"],
    ["4", "pass"],
  ])("needs %s m of NPSH for a verdict of %s", (npshRequired, state) => {
    const points = curve.points.map((point) => ({ ...point, npshRequired }));
    const typed = mine("2: level 45 m, after row 1", { pump: { ...curve, points } });
    near(number(cellsOf(typed), "boostersShown.1.npshAvailable"), (101.325 - 0.5 - 2) / (1.028146 * 9.80665), 2e-3);
    expect(stateOf(dutyRead(typed), "npsh", /booster, stage 2/)).toBe(state);
  });

  it("leaves the NPSH of the second open where its curve gives none", () => {
    const known = { ...curve, points: curve.points.map((point) => ({ ...point, npshRequired: "4" })) };
    const single = mine("2: level 45 m, after row 1", { pump: known, otherPumps: [other(curve, { name: "second" })] });
    const typed = { ...single, fields: { ...single.fields, pumpsRunning: "1" } };
    expect(stateOf(dutyRead(typed), "npsh", /booster, stage 2/)).toBe("open");
  });

  it("runs the same wherever the second stands, alike or entered as a further pump", () => {
    const low = cellsOf(mine(""));
    expect(number(low, "operatingFlow")).toBe(number(cells, "operatingFlow"));
    expect(low.has("boostersShown.1.inletPressure")).toBe(false);
    const single = mine("2: level 45 m, after row 1", { otherPumps: [other(curve, { name: "second" })] });
    const unlike = cellsOf({ ...single, fields: { ...single.fields, pumpsRunning: "1" } });
    near(number(unlike, "operatingFlow"), number(cells, "operatingFlow"), 1e-6);
    near(number(unlike, "boostersShown.1.outletPressure"), number(cells, "boostersShown.1.outletPressure"), 1e-5);
  });
});

// By hand: the further pump gives 300 ft at shutoff, 5 % more by grade 2B, and 12 ft of lift leave nothing at its suction.
describe("the flanges of a further pump", () => {
  const strong = pumpText(
    [
      ["0", "300"],
      ["1000", "250"],
      ["2500", "60"],
    ],
    { name: "strong" },
  );
  const typed = (flangeClass: string): DutyText =>
    bypass(
      { casingMaterial: "ductile iron", flangeClass: "125", acceptanceGrade: "2B", deliveryLevel: "700" },
      { otherPumps: [other(strong, { name: "strong", flangeClass, dischargeSize: "NPS 10" })] },
    );

  it("are compared with its own maximum pressure, and the line against the strongest pump", () => {
    const cells = cellsOf(typed("150"));
    const pressure = number(cells, "otherNozzles.1.greatest");
    near(pressure, (300 * 1.05 * 998.2 * 9.80665 * 0.3048) / 6894.757, 3e-3);
    near(number(cells, "greatestHead"), 300, 1e-9);
    expect(stateOf(dutyRead(typed("150")), "pressure", /strong, discharge flange/i)).toBe("pass");
  });

  // By hand: at 1.4 times its speed 588 ft and 5 %, 267 psi; ductile iron of Class 150 holds 250 psi.
  it("fail where its class is too low", () => {
    const high = typed("150");
    const taller = { ...high, otherPumps: [{ ...(high.otherPumps?.[0] as OtherPumpText), speedRatio: "1.4" }] };
    expect(stateOf(dutyRead(taller), "pressure", /strong, discharge flange/i)).toBe("fail");
  });
});

it("calculates the same in a spreadsheet, and follows a further pump's speed there", async () => {
  const weaker = pumpText(
    CURVE.points.map(({ flow, head, efficiency, npshRequired }) => [
      String(0.6 * Number(flow)),
      head,
      efficiency,
      npshRequired,
    ]),
    { name: "B" },
  );
  const typed = bypass({ deliveryLevel: "640" }, { otherPumps: [other(weaker, { level: "2" })] });
  const grid = headlessGrid();
  const plan = dutyPlan(dutyRead(typed));
  const set = layOut(plan, workOut(plan));
  const names = await grid.host.addSheets(set);
  const name = quotedSheetName(names[0] ?? "");
  const formulas = set
    .sheets(names)
    .flatMap((sheet) => sheet.cells.map((cell) => ({ ...cell, at: `${quotedSheetName(sheet.name)}!${cell.at}` })))
    .filter(({ f, spill }) => f !== undefined && spill === undefined);
  const shown = await grid.host.read(formulas.map(({ at }) => at));
  for (const [i, { at, cached }] of formulas.entries()) {
    const found = shown[i]?.[0]?.[0] ?? "";
    if (typeof cached === "number") expect(found, at).toBeCloseTo(cached, 6);
    else if (typeof cached === "string") expect(found, at).toBe(cached);
  }
  await grid.host.write({ [`${name}!other_pump1_speed_ratio`]: 0.95 });
  const slower = cellsOf({ ...typed, otherPumps: [other(weaker, { level: "2", speedRatio: "0.95" })] });
  const found = (await grid.host.read([`${name}!operating_flow`]))[0]?.[0]?.[0];
  expect(found).toBeCloseTo(number(slower, "operatingFlow"), 6);
  grid.dispose();
});
