import { describe, expect, it } from "vitest";
import { dutyPlan } from "../../../shared/calc-sheet/duty-plan.ts";
import { tableCell } from "../../../shared/calc-sheet/expression.ts";
import type { CalcSheetPlan } from "../../../shared/calc-sheet/plan.ts";
import { workOut } from "../../../shared/calc-sheet/work-out.ts";
import { isCellError, isRange } from "../../../shared/cells/cell.ts";
import type { Duty } from "../../../shared/duty/duty.ts";
import { type DutyText, EMPTY_PUMP } from "../../../shared/duty/duty-text.ts";
import { shownSection } from "../../../shared/package/shown-section.ts";
import { dutyRead, dutyText, type Fields, pumpText } from "../../support/duty-of.ts";
import { sheetsOf } from "../../support/laid-out.ts";
import { longestChain } from "../../support/longest-chain.ts";
import { remarksIn } from "../../support/section-remarks.ts";

const SECTION = "bolting";
const STATED: Fields = {
  deliveryLevel: "230",
  flangeClass: "150",
  suctionFlange: "8",
  dischargeFlange: "6",
  gasket: "fibre 1/16 in",
};
const PUMP = pumpText([
  ["0", "300"],
  ["500", "280"],
  ["1000", "200"],
]);

const typed = (fields: Fields, change: Partial<DutyText> = {}): DutyText =>
  dutyText({ ...STATED, ...fields }, { pump: PUMP, ...change });

const duty = (fields: Fields, change: Partial<DutyText> = {}): Duty => dutyRead(typed(fields, change));

function cellsOf(of: Duty): ReturnType<typeof workOut>["cells"] {
  return workOut(dutyPlan(of)).cells;
}

/** The items of the section, as far as the next heading. */
function itemsOf({ items }: CalcSheetPlan): CalcSheetPlan["items"] {
  const start = items.findIndex((item) => item.kind === "section" && item.id === SECTION);
  const after = start < 0 ? [] : items.slice(start + 1);
  const end = after.findIndex(({ kind }) => kind === "section");
  return end < 0 ? after : after.slice(0, end);
}

const rowOf = (cells: ReturnType<typeof cellsOf>, table: string, row: number, columns: readonly string[]) =>
  columns.map((column) => cells.get(tableCell(table, row, column)));

const DIMENSIONS = ["outside", "bolts", "circle", "stud", "machineBolt", "gasketOutside", "gasketInside"];

describe("flanges and bolting on the sheet", () => {
  it("has the dimensions of ASME B16.5 for both flanges", () => {
    const cells = cellsOf(duty({}));
    // Class 150, NPS 8 and 6: diameters and bolts read in a data book, lengths and gasket from memory.
    expect(rowOf(cells, "flangeTable", 0, DIMENSIONS)).toEqual(
      [13.5, "8 × 3/4 in", 11.75, 4.25, 3.5, 11, 8.62].map(near),
    );
    expect(rowOf(cells, "flangeTable", 1, DIMENSIONS)).toEqual([11, "8 × 3/4 in", 9.5, 4, 3.25, 8.75, 6.62].map(near));
  });

  it("says inch bolts in inches to a metric reader too", () => {
    // Class 300, NPS 8: twelve of 7/8 in, 381 mm across; NPS 12: sixteen of 1-1/8 in (ASME B16.5).
    const metric = duty(
      { flangeClass: "300", suctionFlange: "DN300", dischargeFlange: "200", flow: "40", deliveryLevel: "70" },
      { unitSet: "SI" },
    );
    const cells = cellsOf(metric);
    expect(cells.get(tableCell("flangeTable", 1, "bolts"))).toBe("12 × 7/8 in");
    expect(cells.get(tableCell("flangeTable", 0, "bolts"))).toBe("16 × 1-1/8 in");
    expect(cells.get(tableCell("flangeTable", 1, "outside"))).toBeCloseTo(380, 0);
  });

  /*
   * NPS 8 in ductile iron with fibre, eight B7 studs of 3/4 in: the gasket alone needs 40 738.7 lb (hand calculation,
   * flange-joint.test.ts), at some 136 psi more than the pressure does, at test too; over 0.7 and 8 × 0.3345 in² 21.748 ksi:
   * 7274.8 lb a bolt, T = 0.2 × 0.75 × 7274.8/12 = 90.935 lbf·ft. The low side holds 40 738.7/137.735 = 295.8 psi.
   */
  it("takes load and torque at the maximum pressure of the sheet, and what the low side seals to", () => {
    const cells = cellsOf(duty({ nutFactor: "0.2" }));
    const pressure = cells.get("greatestPressure") as number;
    expect(pressure).toBeGreaterThan(130);
    expect(cells.get("jointTestPressure")).toBeCloseTo(1.5 * pressure, 9);
    expect(cells.get("dischargeSealsTo") as number).toBeGreaterThan(1.5 * pressure);
    expect(cells.get("suctionTorque")).toBeCloseTo(90.935, 2);
    expect(cells.get("suctionSealsTo")).toBeCloseTo(295.8, 1);
    expect(cells.get("suctionJointVerdict")).toBe("seals, test included");
    expect(rowOf(cells, "jointTable", 0, ["needed", "testLoad", "bolts", "load", "stress", "greatest"])).toEqual(
      [40_738.7, 40_738.7, "8 × 3/4 in, A193 B7", 7274.8, 21.75, 31.5].map((cell) =>
        typeof cell === "number" ? expect.closeTo(cell, 0) : cell,
      ),
    );
    // Load to hold the pressure of the nozzle, H + 2 b π G m P with b 0.353553, G 9.912893, m 2.75.
    const joint = cells.get("dischargeJoint") as readonly (readonly number[])[];
    // NPS 6: b 0.342783, G 7.814435.
    const holds = (Math.PI / 4) * 7.814435 ** 2 * pressure + 2 * 0.342783 * Math.PI * 7.814435 * 2.75 * pressure;
    expect(joint[1]?.[2]).toBeCloseTo(holds, 0);
  });

  it("takes the test of the package, where its weakest part is known", () => {
    // 1.5 × 250 psi, the casing and the cold rating of Class 150 in ductile iron (ASME B16.42).
    const cells = cellsOf(duty({ casingWorkingPressure: "250" }));
    expect(cells.get("jointTestPressure")).toBeCloseTo(375, 6);
  });

  it("gives grey iron no torque for a ring and B7, and says what would do", () => {
    const grey = duty({ casingMaterial: "grey iron", flangeClass: "125", boltGrade: "B7", nutFactor: "0.2" });
    const cells = cellsOf(grey);
    expect(cells.get("dischargeTorque")).toBe("none: grey iron, ring gasket, A193 B7 bolts");
    expect(cells.get("dischargeJointVerdict")).toBe("NO TORQUE");
    expect(rowOf(cells, "jointTable", 1, ["load", "stress", "greatest", "reference"])).toEqual(["–", "–", "–", "–"]);
    expect(remarksIn(grey, SECTION)).toContain("full-face gasket between flat faces");
    expect(rowOf(cells, "flangeTable", 0, DIMENSIONS)).toEqual(
      [13.5, "8 × 3/4 in", 11.75, "by drawing", "by drawing", 11, 8.62].map(near),
    );
  });

  it("gives no torque where the class fails", () => {
    // Two in series of 300 ft make some 265 psi, above the 250 psi of Class 150 in ductile iron.
    const cells = cellsOf(duty({ arrangement: "series", pumpsRunning: "2" }));
    expect(cells.get("dischargeTorque")).toBe("none: the class does not hold the pressure");
  });

  it("has metric bolts for a PN", () => {
    const pn = duty({ flangeClass: "PN16", suctionFlange: "DN200", dischargeFlange: "DN150" });
    const cells = cellsOf(pn);
    // EN 1092-2, PN 16: DN 200 twelve of M20, DN 150 eight of M20.
    expect(cells.get(tableCell("flangeTable", 0, "bolts"))).toBe("12 × M20");
    expect(cells.get(tableCell("jointTable", 1, "bolts"))).toBe("8 × M20, A193 B7");
    expect(cells.get("suctionTorque")).toBeGreaterThan(0);
  });

  it("states no input twice on one sheet", () => {
    const keys = dutyPlan(duty({})).items.flatMap((item) => (item.kind === "input" ? [item.key] : []));
    expect(keys.filter((key, i) => keys.indexOf(key) !== i)).toEqual([]);
    expect(keys).toEqual(expect.arrayContaining(["suctionFlange", "dischargeFlange", "gasket", "gasketShape"]));
  });

  it("has no error in any cell, chains no more than three functions and lays out", () => {
    const plan = dutyPlan(duty({}));
    const inError = [...workOut(plan).cells].filter(([, cell]) =>
      isRange(cell) ? cell.flat().some(isCellError) : isCellError(cell),
    );
    expect(inError).toEqual([]);
    expect(longestChain(plan)).toBeLessThanOrEqual(3);
    const formulas = sheetsOf(typed({})).workings.cells.flatMap(({ f }) => (f === undefined ? [] : [f]));
    const called = (name: string): number => formulas.filter((f) => f.startsWith(`DUTY.${name}(`)).length;
    expect([called("FLANGEDIMENSIONS"), called("BOLTTORQUE")]).toEqual([2, 2]);
  });
});

describe("what the section leaves out", () => {
  const kindsOf = (of: Duty): readonly string[] => itemsOf(dutyPlan(of)).map(({ kind }) => kind);
  const saidIn = (of: Duty): string =>
    itemsOf(dutyPlan(of))
      .flatMap((item) => (item.kind === "statement" ? [item.text] : []))
      .join("\n");

  it.each([
    ["without a size", { suctionFlange: "", dischargeFlange: "" }],
    ["without a class", { flangeClass: "" }],
  ])("is the whole of it %s", (_, fields) => {
    expect(kindsOf(duty(fields))).toEqual([]);
    expect(shownSection(duty(fields), SECTION)).toBeUndefined();
  });

  it("is the flange whose size is not stated", () => {
    const cells = cellsOf(duty({ suctionFlange: "" }));
    expect(cells.get("suctionTorque")).toBeUndefined();
    expect(cells.get(tableCell("flangeTable", 0, "circle"))).toBeCloseTo(9.5, 9);
  });

  it("is the torque without a gasket or a pump, and the sheet says which", () => {
    expect(saidIn(duty({ gasket: "" }))).toContain("No gasket is stated");
    expect(cellsOf(duty({ gasket: "" })).get("suctionTorque")).toBeUndefined();
    const alone = duty({}, { pump: EMPTY_PUMP });
    expect(saidIn(alone)).toContain("No pump is selected");
    expect(cellsOf(alone).get(tableCell("flangeTable", 0, "outside"))).toBeCloseTo(13.5, 9);
  });
});

describe("the tables in the pane", () => {
  it("are those of the sheet, with units", () => {
    const tables = shownSection(duty({}), SECTION)?.tables ?? [];
    expect(tables.map(({ heading }) => heading)).toEqual([
      "flange; bolt lengths for two identical flanges",
      "bolting at maximum pressure",
    ]);
    expect(tables[0]?.columns.slice(0, 3)).toEqual(["flange OD, in", "bolts", "bolt circle, in"]);
    expect(tables[0]?.rows[0]).toEqual({
      label: "Suction flange",
      cells: ["13.50", "8 × 3/4 in", "11.75", "4.25", "3.50", "11.00", "8.62"],
    });
    expect(tables.flatMap(({ faults }) => faults)).toEqual([]);
  });

  it("show a dash where there is no answer, and say why once", () => {
    const grey = duty({ casingMaterial: "grey iron", flangeClass: "125", boltGrade: "A307 B", suctionFlange: "1/2" });
    const [table] = shownSection(grey, SECTION)?.tables ?? [];
    expect(table?.rows[0]?.cells.slice(0, 3)).toEqual(["–", "–", "–"]);
    expect(table?.rows[1]?.cells[0]).toBe("11.00");
    expect(table?.faults).toEqual([expect.stringContaining("NPS 1/2 is not in ASME B16.1")]);
  });
});

function near(cell: number | string): unknown {
  return typeof cell === "number" ? expect.closeTo(cell, 9) : cell;
}
