import { describe, expect, it } from "vitest";
import { dutyPlan } from "../../../shared/calc-sheet/duty-plan.ts";
import { tableCell } from "../../../shared/calc-sheet/expression.ts";
import { workOut } from "../../../shared/calc-sheet/work-out.ts";
import { isCellError, isRange } from "../../../shared/cells/cell.ts";
import type { Duty } from "../../../shared/duty/duty.ts";
import type { DutyText } from "../../../shared/duty/duty-text.ts";
import { risingWater } from "../../../shared/package/rising-water.ts";
import { shownSection } from "../../../shared/package/shown-section.ts";
import { dutyOf, dutyRead, dutyText, type Fields, QUARRY } from "../../support/duty-of.ts";
import { sheetsOf } from "../../support/laid-out.ts";
import { longestChain } from "../../support/longest-chain.ts";
import { remarksIn } from "../../support/section-remarks.ts";

/** The worked example of the published cases, O-P04: 6 in, 5 m up and 6 m level, 60 L, 0.0236 m³/s, 10 kPa. */
const typed = (fields: Fields = {}, pipe = "ID 152.4 mm rough 0.045 mm"): DutyText =>
  dutyText(
    {
      flow: "20",
      pumpLevel: "5",
      deliveryLevel: "20",
      liquid: "998.2 kg/m3, 1 cSt, pv 2.3 kPa",
      airPump: "0.0236 m3/s, blank-off 10 kPa(a)",
      casingVolume: "60",
      ...fields,
    },
    { unitSet: "SI", suctionLine: [{ pipe, length: "11", fittings: "" }] },
  );

const duty = (fields: Fields = {}): Duty => dutyRead(typed(fields));

const cellsOf = (of: Duty) => workOut(dutyPlan(of)).cells;

describe("priming on the sheet", () => {
  const cells = cellsOf(duty());

  it("has lift, volume and time of the worked example", () => {
    // By hand: (101.325 − 10)/9.789 = 9.329 m; 7.62 m in practice; 260.7 L; 10.17 s, then 18.17 s.
    expect(cells.get("liftByBlankOff")).toBeCloseTo(9.329, 2);
    expect(cells.get("liftByPractice")).toBeCloseTo(7.62, 2);
    expect(cells.get("greatestPrimingLift")).toBeCloseTo(7.62, 2);
    expect(cells.get("liftRule")).toBe("practice");
    expect(cells.get("liftVerdict")).toBe("within the limit");
    expect(cells.get("airVolume")).toBeCloseTo(260.7, 1);
    expect(cells.get("riseTime")).toBeCloseTo(10.17, 1);
    expect(cells.get("primeTime")).toBeCloseTo(18.17, 1);
    expect(cells.get(tableCell("primeCourse", 20, "time"))).toBeCloseTo(cells.get("primeTime") as number, 9);
  });

  it.each([
    ["7.59", "within the limit"],
    ["7.63", "BEYOND THE MAXIMUM LIFT"],
  ])("holds a lift of %s m against 7.62 m", (pumpLevel, verdict) => {
    expect(cellsOf(duty({ pumpLevel })).get("liftVerdict")).toBe(verdict);
  });

  it("takes the lift by NPSH from the section on NPSH, where NPSHR is stated", () => {
    const known = cellsOf(duty({ npshRequired: "6", npshMargin: "1" }));
    /*
     * By hand: (101.325 − 2.3)/9.789 = 10.116 m; less 6 and 1; less friction of 11 m of 152.4 mm at 1.096 m/s,
     * Re 167 000, f 0.0181: 0.0181 × 72.2 × 0.0613 = 0.080 m: 3.04 m.
     */
    expect(Math.abs((known.get("liftByNpsh") as number) - 3.04)).toBeLessThan(0.02);
    expect(known.get("liftByNpsh")).toBeCloseTo(known.get("greatestLift") as number, 12);
    expect([known.get("liftRule"), known.get("liftVerdict")]).toEqual(["NPSH", "BEYOND THE MAXIMUM LIFT"]);
    expect(cells.has("liftByNpsh")).toBe(false);
    // A pressure on the source leaves the sheet without a greatest lift by NPSH.
    const pressed = duty({ npshRequired: "6", npshMargin: "1", sourcePressure: "-5" });
    expect(cellsOf(pressed).has("liftByNpsh")).toBe(false);
    expect(remarksIn(pressed, "priming")).toContain("open to the air");
    expect(remarksIn(duty(), "priming")).not.toContain("open to the air");
  });

  it("keeps lifts and verdict where it never primes", () => {
    const never = cellsOf(duty({ pumpLevel: "7", airPump: "0.0236 m3/s, blank-off 40 kPa(a)" }));
    // By hand, as O-P05: (101.325 − 40)/9.789 = 6.26 m.
    expect(never.get("greatestPrimingLift")).toBeCloseTo(6.265, 2);
    expect([never.get("liftRule"), never.get("liftVerdict")]).toEqual(["blank-off", "BEYOND THE MAXIMUM LIFT"]);
    expect(never.get("primeTime")).toBe("none: the lift is above the maximum");
    expect(never.get("airVolume")).toMatchObject({ error: "#VALUE!" });
  });

  it("works out the eductor where nozzle and pressure are both stated", () => {
    const eductor = cellsOf(duty({ eductorNozzle: "6.35", motivePressure: "689.476" }));
    // Trade table, from memory: 104 ft³/min = 49.1 L/s. Common practice: 104/5 hp = 15.5 kW, 104/4 hp = 19.4 kW.
    expect(Math.abs((eductor.get("motiveAir") as number) - 49.1)).toBeLessThan(0.7);
    expect(Math.abs((eductor.get("eductorPowerLeast") as number) - 15.5)).toBeLessThan(0.3);
    expect(Math.abs((eductor.get("eductorPowerMost") as number) - 19.4)).toBeLessThan(0.3);
    // Common practice: 0.2 to 0.5 of the motive air, 9.8 to 24.5 L/s.
    expect(Math.abs((eductor.get("airDrawnLeast") as number) - 9.8)).toBeLessThan(0.2);
    expect(Math.abs((eductor.get("airDrawnMost") as number) - 24.5)).toBeLessThan(0.4);
    // 25 inHg = 84.66 kPa = 846.6 mbar.
    expect(eductor.get("eductorVacuum")).toBeCloseTo(846.6, 0);
    expect(cellsOf(duty({ eductorNozzle: "6.35" })).has("motiveAir")).toBe(false);
    expect(cellsOf(duty({ motivePressure: "700" })).has("motiveAir")).toBe(false);
  });

  it("chains no more than three of our functions and shows no error", () => {
    const whole = duty({ npshRequired: "2", eductorNozzle: "6.35", motivePressure: "700" });
    expect(longestChain(dutyPlan(whole))).toBeLessThanOrEqual(3);
    const inError = [...cellsOf(whole)].filter(([, cell]) =>
      isRange(cell) ? cell.flat().some(isCellError) : isCellError(cell),
    );
    expect(inError).toEqual([]);
  });

  it("is drawn in the pane alone: the sheet has its figures", () => {
    const titles = sheetsOf(typed()).duty.charts?.map(({ title }) => title) ?? [];
    expect(titles.filter((title) => title.startsWith("Water in the suction line"))).toEqual([]);
    expect(risingWater(duty())).toBeDefined();
  });

  it("is left out where the pump stands at its liquid or below", () => {
    expect(shownSection(duty({ pumpLevel: "0" }), "Priming")).toBeUndefined();
    expect(risingWater(duty({ pumpLevel: "0" }))).toBeUndefined();
  });
});

describe("the maximum lift of a selected pump with NPSHR on its curve", () => {
  const raisedTo = (pumpLevel: string, airPump = "50 cfm"): ReadonlyMap<string, unknown> => {
    return cellsOf(dutyOf({ npshRequired: "", pumpLevel, airPump }, QUARRY));
  };

  it("leaves the pump raised to it just the NPSH margin required", () => {
    const lift = raisedTo(QUARRY.fields.pumpLevel).get("liftByNpsh") as number;
    expect(lift).toBeGreaterThan(12);
    // A check by the whole calculation again, with the pump so high over the source.
    const raised = raisedTo(String(Number(QUARRY.fields.sourceLevel) + lift));
    expect(raised.get("operatingNpshMargin")).toBeCloseTo(Number(QUARRY.fields.npshMargin), 6);
    expect(raised.get("liftByNpsh")).toBeCloseTo(lift, 6);
  });

  it("rules where it is the minimum, and not where another is", () => {
    const cold = raisedTo(QUARRY.fields.pumpLevel);
    expect([cold.get("liftRule"), cold.get("greatestPrimingLift")]).toEqual(["NPSH", cold.get("liftByNpsh")]);
    // By hand: 13 inHg of vacuum hold 13 × 1.133 ft = 14.7 ft of water at sea level, less than NPSH leaves.
    const poor = raisedTo(QUARRY.fields.pumpLevel, "50 cfm, blank-off 13 inHg");
    expect([poor.get("liftRule"), poor.get("greatestPrimingLift")]).toEqual(["blank-off", poor.get("liftByBlankOff")]);
    expect(poor.get("liftByBlankOff")).toBeLessThan(14.75);
  });
});

describe("the rising water of the pane", () => {
  it("is the worked example in metres and seconds", () => {
    const water = risingWater(duty({ npshRequired: "3", npshMargin: "1" }));
    expect(water?.lift).toBeCloseTo(5, 12);
    expect(water?.byBlankOff).toBeCloseTo(9.329, 2);
    expect(water?.byPractice).toBeCloseTo(7.62, 2);
    expect(water?.greatest).toBe(water?.byNpsh);
    expect(water?.course?.riseTime).toBeCloseTo(10.17, 1);
    expect(water?.course?.total).toBeCloseTo(18.17, 1);
    expect(water?.course?.rising.map(({ height }) => height)).toEqual(
      Array.from({ length: 17 }, (_, i) => expect.closeTo((5 * i) / 16, 9)),
    );
  });

  it("has no course where it never primes, and nothing at all where no lift can be worked out", () => {
    const never = risingWater(duty({ pumpLevel: "7", airPump: "20 L/s, blank-off 40 kPa(a)" }));
    expect(never?.course).toBeUndefined();
    expect(never?.byBlankOff).toBeCloseTo(6.265, 2);
    expect(risingWater(duty({ airPump: "20 L/s, leak 20 L/s" }))).toBeUndefined();
  });
});
