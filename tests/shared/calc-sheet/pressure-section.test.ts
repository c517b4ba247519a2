import { describe, expect, it } from "vitest";
import { dutyPlan } from "../../../shared/calc-sheet/duty-plan.ts";
import { tableCell } from "../../../shared/calc-sheet/expression.ts";
import { rangeName } from "../../../shared/calc-sheet/layout/range-name.ts";
import { layOut } from "../../../shared/calc-sheet/layout.ts";
import { pressureSection } from "../../../shared/calc-sheet/sections/pressure.ts";
import { workOut } from "../../../shared/calc-sheet/work-out.ts";
import { isCellError, isRange } from "../../../shared/cells/cell.ts";
import type { Duty } from "../../../shared/duty/duty.ts";
import type { PumpText } from "../../../shared/duty/duty-text.ts";
import { shownSection } from "../../../shared/package/shown-section.ts";
import { quotedSheetName } from "../../../shared/ports/sheet-name.ts";
import { headlessGrid } from "../../../workbench/headless.ts";
import { dutyOf, type Fields, STRAIGHT_PUMP } from "../../support/duty-of.ts";
import { laidOut } from "../../support/laid-out.ts";
import { longestChain } from "../../support/longest-chain.ts";

/*
 * Hand calculations. Water at 20 °C, 998.206 kg/m³ (IAPWS-IF97): 998.206 × 9.80665 × 0.3048 / 6894.757 = 0.432751 psi a
 * foot. Acceptance grade 2B, so 5 % on 300 ft of shutoff head: 315 ft, 136.317 psi a stage. The pump stands 2 ft below
 * the datum.
 */
const PSI_A_FOOT = 0.432751;
const STAGE = 136.317;

const duty = (fields: Fields, pump: Partial<PumpText> = {}): Duty =>
  dutyOf({ acceptanceGrade: "2B", arrangement: "series", ...fields }, { pump: { ...STRAIGHT_PUMP, ...pump } });

function cellsOf(of: Duty): ReturnType<typeof workOut>["cells"] {
  return workOut(dutyPlan(of)).cells;
}

function statementsOf(of: Duty): string {
  return dutyPlan(of)
    .items.flatMap((item) => (item.kind === "statement" ? [item.text] : []))
    .join("\n");
}

const THREE = { pumpsRunning: "3" };

describe("the stage table of pressure and flanges", () => {
  const three = duty({ greatestSuctionPressure: "5", flangeClass: "300", ...THREE });
  const cells = cellsOf(three);
  const column = (of: string, from = cells): readonly unknown[] =>
    Array.from({ length: 6 }, (_, row) => from.get(tableCell("nozzles", row, of)));

  it("adds the stages up from the first suction: 5, 141.32, 277.63, 413.95 psi", () => {
    const psi = [5, 5 + STAGE, 5 + STAGE, 5 + 2 * STAGE, 5 + 2 * STAGE, 5 + 3 * STAGE];
    expect(column("running")).toEqual(psi.map((each) => expect.closeTo(each, 2)));
  });

  it("stands the column from the delivery level on every nozzle: 102 ft, 44.14 psi", () => {
    expect(column("standing")).toEqual(Array(6).fill(expect.closeTo(102 * PSI_A_FOOT, 2)));
    // The first suction is the one nozzle where it is the greater.
    expect(column("greatest")[0]).toBeCloseTo(102 * PSI_A_FOOT, 2);
    expect(column("greatest")[1]).toBeCloseTo(5 + STAGE, 2);
  });

  it("takes the standing level where one is stated, and the delivery pressure over it", () => {
    // 202 ft and 30 psi: 117.42 psi.
    const stated = cellsOf(duty({ standingLevel: "200", deliveryPressure: "30" }));
    expect(stated.get(tableCell("nozzles", 0, "greatest"))).toBeCloseTo(30 + 202 * PSI_A_FOOT, 2);
    // 102 ft and 30 psi: 74.14 psi.
    const level = cellsOf(duty({ deliveryPressure: "30" }));
    expect(level.get(tableCell("nozzles", 0, "greatest"))).toBeCloseTo(30 + 102 * PSI_A_FOOT, 2);
  });

  it("finds the class of each nozzle and the first that needs the next", () => {
    // ASME B16.42, ductile iron to 100 °F: Class 150 holds 250 psi, Class 300 holds 640 psi.
    const low = cellsOf(duty({ greatestSuctionPressure: "5", flangeClass: "150", ...THREE }));
    expect(column("class", low)).toEqual([
      "Class 150",
      "Class 150",
      "Class 150",
      "Class 300, the first",
      "Class 300",
      "Class 300",
    ]);
    expect(low.get("firstToNeed")).toBe("Stage 2 discharge: first to need Class 300.");
    expect(low.get("classNeeded")).toBe("Class 300");
    // Within the class offered, 300, no nozzle needs another.
    expect(cells.get("firstToNeed")).toBe("None.");
    expect(cells.get("classRating")).toBeCloseTo(640, 9);
    // 1.5 × 640 = 960 psi, rounded up to the next 25 psi.
    expect(cells.get("testPressure")).toBeCloseTo(975, 6);
    expect(cells.get("greatestPressure")).toBeCloseTo(5 + 3 * STAGE, 2);
  });

  it("needs no class to be offered", () => {
    const none = cellsOf(duty({ greatestSuctionPressure: "5", ...THREE }));
    expect(column("class", none)[3]).toBe("Class 300, the first");
    expect(none.get("firstToNeed")).toBe("Stage 2 discharge: first to need Class 300.");
    expect(none.get("surgeVerdict")).toBeUndefined();
    expect(none.get("surgeTotal")).toBeGreaterThan(0);
  });

  it("has two rows for one pump, or for pumps side by side", () => {
    for (const station of [{}, { pumpsRunning: "3", arrangement: "parallel" }] satisfies Fields[]) {
      const one = dutyPlan(duty(station)).items.find((item) => item.kind === "table" && item.key === "nozzles");
      expect(one?.kind === "table" && one.rows.map(({ label }) => label)).toEqual(["Suction", "Discharge"]);
    }
  });
});

describe("the maximum head of one pump", () => {
  it.each([
    ["as it runs", {}, {}, 300],
    // 0.9² × 0.95² × 300 ft
    ["turned down and trimmed", {}, { speedRatio: "0.9", trimRatio: "0.95" }, 219.3075],
    // (1958/1780)² = 1.21
    ["at a maximum speed", { greatestSpeed: "1958" }, {}, 363],
    // Running at 1602 rpm, 243 ft; (1780/1602)² brings back 300.
    ["at full speed again", { greatestSpeed: "1780" }, { speedRatio: "0.9" }, 300],
    // 1.1² × (14.7/14)² × 300
    ["with the largest impeller too", { greatestSpeed: "1958", greatestImpeller: "14.7" }, {}, 400.2075],
    // (14/13.3)² × 0.95² × 300
    ["with the full impeller again", { greatestImpeller: "14" }, { trimRatio: "0.95" }, 300],
    ["never below that as it runs", { greatestSpeed: "1500", greatestImpeller: "12" }, {}, 300],
    ["as it runs where its own speed is not known", { greatestSpeed: "1958" }, { speed: "" }, 300],
  ] as const)("%s", (_, fields, pump, feet) => {
    expect(cellsOf(duty(fields, pump)).get("greatestHead")).toBeCloseTo(feet, 6);
  });

  it("prints each ratio", () => {
    const cells = cellsOf(duty({ greatestSpeed: "1958", greatestImpeller: "14.7" }));
    expect(cells.get("topOfCurve")).toBeCloseTo(300, 9);
    expect(cells.get("greatestSpeedRatio")).toBeCloseTo(1.1, 9);
    expect(cells.get("greatestTrimRatio")).toBeCloseTo(1.05, 9);
  });

  it("is no lower figure where what raises it cannot be read", () => {
    const read = duty({ greatestSpeed: "1958" });
    const unread: Duty = { ...read, greatestSpeed: undefined, state: { ...read.state, greatestSpeed: "unreadable" } };
    const raised = (of: Duty): boolean =>
      pressureSection.items(of).some((item) => item.kind === "result" && item.key === "greatestSpeedRatio");
    expect([raised(read), raised(unread), raised(duty({}))]).toEqual([true, true, false]);
  });

  it("is the peak of a drooping curve, wherever the curve is read", () => {
    const points = [
      ["0", "300"],
      ["130", "312"],
      ["1000", "200"],
    ].map(([flow = "", head = ""]) => ({ flow, head, efficiency: "", npshRequired: "" }));
    expect(cellsOf(duty({}, { points })).get("greatestHead")).toBeCloseTo(312, 9);
  });

  it("says what it does not count", () => {
    expect(statementsOf(duty({ greatestSpeed: "1958" }, { speed: "" }))).toContain(
      "A maximum speed is stated, but not the speed its curve was drawn at, so it is NOT counted",
    );
    expect(statementsOf(duty({ greatestImpeller: "15" }, { impellerDiameter: "" }))).toContain(
      "A maximum impeller diameter is stated, but not the impeller diameter",
    );
    expect(statementsOf(duty({ greatestSpeed: "1500" }))).toContain("The maximum speed stated is below the speed run");
    expect(statementsOf(duty({ greatestSpeed: "1780", greatestImpeller: "14" }))).not.toMatch(
      /maximum (speed|impeller)/,
    );
    const points = STRAIGHT_PUMP.points.slice(1);
    expect(statementsOf(duty({}, { points }))).toContain("the true pressures are HIGHER");
    expect(statementsOf(duty({}))).not.toContain("HIGHER");
  });
});

describe("what the pressures are compared with", () => {
  it("says plainly where the trade figure and the standard disagree", () => {
    // 120 + 136.32 = 256.32 psi: over the 250 of ASME B16.42, under the trade's 260.
    const between = cellsOf(duty({ greatestSuctionPressure: "120", flangeClass: "150" }));
    expect(between.get("tradeFigure")).toBe(
      "260 psig for Class 150, 680 psig for Class 300; the standard decides. Discharge: DISAGREES: it would pass Class 150, the standard does not.",
    );
    // 130 + 136.32 = 266.32 psi of cast steel, which holds 285 cold.
    const steel = cellsOf(duty({ greatestSuctionPressure: "130", flangeClass: "150", casingMaterial: "WCB" }));
    expect(steel.get("tradeFigure")).toContain("it would not pass Class 150, the standard does");
    expect(cellsOf(duty({ flangeClass: "150" })).get("tradeFigure")).toContain("It agrees at every nozzle.");
  });

  it("shows surge apart, with a verdict of its own", () => {
    const cells = cellsOf(duty({ greatestSuctionPressure: "5", flangeClass: "150" }));
    const surge = cells.get("surgePressure") as number;
    /*
     * 600 US gpm in 8 in schedule 40 (bore 7.981 in, wall 0.322 in): 3.848 ft/s. Water K 2.19 GPa, steel 207 GPa: 1318
     * m/s. Joukowsky: 998.2 × 1318 × 1.1728 m/s = 1.543 MPa, 223.8 psi.
     */
    expect(Math.abs(surge / 223.8 - 1)).toBeLessThan(0.01);
    expect(cells.get("surgeTotal")).toBeCloseTo(5 + STAGE + surge, 2);
    expect(cells.get("surgeVerdict")).toBe("needs a surge study");
    expect(cells.get("classNeeded")).toBe("Class 150");
    const higher = cellsOf(duty({ greatestSuctionPressure: "5", flangeClass: "300" }));
    expect(higher.get("surgeVerdict")).toBe("within the rating");
  });
});

/** Brackets open at once. */
function nestingOf(formula: string): number {
  let open = 0;
  let most = 0;
  for (const letter of formula) {
    if (letter === "(") open += 1;
    if (letter === ")") open -= 1;
    most = Math.max(most, open);
  }
  return most;
}

const shallow = [
  ["0", "16"],
  ["500", "14"],
  ["1000", "9"],
].map(([flow = "", head = ""]) => ({ flow, head, efficiency: "", npshRequired: "" }));

describe("the section as a whole", () => {
  const WHOLE = {
    flangeClass: "150",
    greatestSpeed: "1958",
    greatestImpeller: "15",
    standingLevel: "120",
    suctionFlange: "10",
    dischargeFlange: "8",
    casingWorkingPressure: "400",
    otherPart: "suction hose",
    otherPartPressure: "150",
    acceptanceGrade: "2B",
    pumpsRunning: "6",
  } as const;
  const whole = duty(WHOLE);

  it("has no error in any cell of its own", () => {
    const own =
      /^(nozzle|series|maximum|class|suction|casing|package|tolerance|other|trade|surge|first|topOf|testPressure)/;
    const inError = [...cellsOf(whole)].filter(
      ([key, cell]) => own.test(key) && (isRange(cell) ? cell.flat().some(isCellError) : isCellError(cell)),
    );
    expect(inError).toEqual([]);
  });

  it("chains no more than three of our functions, and can be laid out", () => {
    const plan = dutyPlan(whole);
    expect(longestChain(plan)).toBeLessThanOrEqual(3);
    expect(laidOut(plan, workOut(plan)).duty.cells.length).toBeGreaterThan(0);
  });

  it("keeps its formulas shallow, however many pumps there are: Excel nests no more than 64 deep", () => {
    const plan = dutyPlan(duty({ flangeClass: "150", pumpsRunning: "40" }, { points: shallow }));
    const worked = workOut(plan);
    const deepest = laidOut(plan, worked)
      .all.flatMap(({ cells }) => cells)
      .map(({ f }) => nestingOf(f ?? ""));
    expect(Math.max(...deepest)).toBeLessThan(20);
    // 40 pumps of 16 ft at 1.05 × 0.432751 psi a foot: 250 psi stand at 34.4 pumps.
    expect(worked.cells.get("firstToNeed")).toBe("Stage 35 discharge: first to need Class 300.");
  });

  // The source stands 2 ft over the pump.
  it("counts the tolerance of the grade: the first discharge at 300 × 1.21 × (15/14)² × 1.05 ft", () => {
    const feet = 300 * 1.21 * (15 / 14) ** 2 * 1.05;
    expect(cellsOf(whole).get(tableCell("nozzles", 1, "running"))).toBeCloseTo(2 * PSI_A_FOOT + feet * PSI_A_FOOT, 1);
  });

  it("calculates the same in a spreadsheet, and follows a change of its inputs there", async () => {
    const grid = headlessGrid();
    const plan = dutyPlan(whole);
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
    const change = { greatestSpeed: "2100", standingLevel: "900", casingMaterial: "WCB", otherPart: "hose" } as const;
    const named = Object.entries(change).map(([key, typed]) => {
      return [`${name}!${rangeName(key)}`, Number.isNaN(Number(typed)) ? typed : Number(typed)] as const;
    });
    await grid.host.write(Object.fromEntries(named));
    const wanted = cellsOf(duty({ ...WHOLE, ...change }));
    for (const [cell, key] of [
      ["greatest_head", "greatestHead"],
      ["greatest_pressure", "greatestPressure"],
      ["class_needed", "classNeeded"],
      ["class_rating", "classRating"],
      ["package_test_pressure", "packageTest"],
      ["discharge_pressure_with_surge", "surgeTotal"],
    ] as const) {
      const found = (await grid.host.read([`${name}!${cell}`]))[0]?.[0]?.[0];
      const should = wanted.get(key);
      if (typeof should === "number") expect(found, key).toBeCloseTo(should, 6);
      else expect(found, key).toBe(should);
    }
    grid.dispose();
  });

  it("tells the pane why where a material has no rating at the temperature", () => {
    const hot = duty({
      casingMaterial: "grey iron",
      flangeClass: "125 NPS 16",
      temperature: "200",
      liquid: "ethylene glycol 40 %",
    });
    expect(shownSection(hot, "pressure")).toBeDefined();
    const conflict = duty({ casingMaterial: "grey iron", flangeClass: "125 NPS 16", dischargeFlange: "8" });
    const shown = shownSection(conflict, "pressure");
    expect(shown?.figures.find(({ label }) => label === "Rating of the class offered")?.text).toContain(
      "differ; give one",
    );
  });
});
