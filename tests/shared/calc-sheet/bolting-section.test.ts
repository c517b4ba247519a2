import { describe, expect, it } from "vitest";
import { dutyPlan } from "../../../shared/calc-sheet/duty-plan.ts";
import { dutySheet } from "../../../shared/calc-sheet/duty-sheet.ts";
import { tableCell } from "../../../shared/calc-sheet/expression.ts";
import type { CalcSheetPlan } from "../../../shared/calc-sheet/plan.ts";
import { workOut } from "../../../shared/calc-sheet/work-out.ts";
import { isCellError, isRange } from "../../../shared/cells/cell.ts";
import type { Duty } from "../../../shared/duty/duty.ts";
import { type DutyText, EMPTY_PUMP } from "../../../shared/duty/duty-text.ts";
import { shownSection } from "../../../shared/package/shown-section.ts";
import { dutyRead, dutyText, type Fields, pumpText } from "../../support/duty-of.ts";
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
   * NPS 8 in ductile iron with fibre, eight B7 studs of 3/4 in: half of 42 ksi × 0.3345 in² = 7024.5 lb a bolt, T = 0.2 ×
   * 0.75 × 7024.5/12 = 87.81 lbf·ft; the gasket alone needs 40 738.7 lb (hand calculation, flange-joint.test.ts), and at
   * this pressure of some 136 psi more than the pressure does.
   */
  it("takes load and torque at the greatest pressure of the sheet", () => {
    const cells = cellsOf(duty({}));
    expect(cells.get("suctionTorque")).toBeCloseTo(87.806, 2);
    expect(rowOf(cells, "jointTable", 0, ["needed", "bolts", "load", "stress", "greatest"])).toEqual(
      [40_738.7, "8 × 3/4 in, A193 B7", 7024.5, 21, 31.5].map((cell) =>
        typeof cell === "number" ? expect.closeTo(cell, 0) : cell,
      ),
    );
    expect(cells.get("suctionBoltStress")).toBe("within bounds");
    // Of the record in full: load to hold the pressure, H + 2 b π G m P with b 0.353553, G 9.912893, m 2.75.
    const pressure = cells.get("greatestPressure") as number;
    const joint = cells.get("suctionJoint") as readonly (readonly number[])[];
    const holds = (Math.PI / 4) * 9.912893 ** 2 * pressure + 2 * 0.353553 * Math.PI * 9.912893 * 2.75 * pressure;
    expect(pressure).toBeGreaterThan(130);
    expect(joint[1]?.[2]).toBeCloseTo(holds, 0);
  });

  it("marks bolts that would have to be pulled too hard", () => {
    // Spiral wound in ductile iron of NPS 6, Class 300: twelve of 3/4 in for 84 152 lb, 20.96 ksi; A307 B takes half of 25.
    const cells = cellsOf(duty({ flangeClass: "300", gasket: "spiral wound", boltGrade: "A307 B" }));
    expect(cells.get("dischargeBoltStress")).toBe("TOO HIGH");
    expect(cells.get(tableCell("jointTable", 1, "neededStress"))).toBeCloseTo(84_152 / (12 * 0.3345) / 1000, 2);
  });

  it("leaves lengths to the drawing where grey iron has its own, and sends to a full-face gasket", () => {
    const grey = duty({ casingMaterial: "grey iron", flangeClass: "125", boltGrade: "A307 B" });
    const cells = cellsOf(grey);
    expect(rowOf(cells, "flangeTable", 0, DIMENSIONS)).toEqual(
      [13.5, "8 × 3/4 in", 11.75, "by drawing", "by drawing", 11, 8.62].map(near),
    );
    const remarks = remarksIn(grey, SECTION);
    for (const said of ["full-face soft gasket", "low strength such as A307 B", "drilling of Class 150"]) {
      expect(remarks).toContain(said);
    }
  });

  it("states no input twice on one sheet", () => {
    const keys = dutyPlan(duty({})).items.flatMap((item) => (item.kind === "input" ? [item.key] : []));
    expect(keys.filter((key, i) => keys.indexOf(key) !== i)).toEqual([]);
    expect(keys).toEqual(expect.arrayContaining(["suctionFlange", "dischargeFlange", "gasket", "boltGrade"]));
  });

  it("has no error in any cell, chains no more than three functions and lays out", () => {
    const plan = dutyPlan(duty({}));
    const inError = [...workOut(plan).cells].filter(([, cell]) =>
      isRange(cell) ? cell.flat().some(isCellError) : isCellError(cell),
    );
    expect(inError).toEqual([]);
    expect(longestChain(plan)).toBeLessThanOrEqual(3);
    const sheet = dutySheet(typed({}));
    if (!sheet.ok) throw new Error(JSON.stringify(sheet.findings));
    const formulas = sheet.value.cells.flatMap(({ f }) => (f === undefined ? [] : [f]));
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

  it("is all but a word on PN flanges", () => {
    const pn = duty({ flangeClass: "PN16" });
    expect(kindsOf(pn).filter((kind) => kind !== "input")).toEqual(["statement"]);
    expect(saidIn(pn)).toContain("dimensions of PN flanges are not held here");
  });

  it("is the torque without a gasket or a pump, and the sheet says which", () => {
    expect(saidIn(duty({ gasket: "" }))).toContain("No gasket is stated");
    expect(cellsOf(duty({ gasket: "" })).get("suctionTorque")).toBeUndefined();
    const alone = duty({}, { pump: EMPTY_PUMP });
    expect(saidIn(alone)).toContain("No pump is chosen");
    expect(cellsOf(alone).get(tableCell("flangeTable", 0, "outside"))).toBeCloseTo(13.5, 9);
  });
});

describe("the tables in the pane", () => {
  it("are those of the sheet, with units and four figures", () => {
    const tables = shownSection(duty({}), SECTION)?.tables ?? [];
    expect(tables.map(({ heading }) => heading)).toEqual([
      "flange; lengths for two like ones",
      "bolting at greatest pressure",
    ]);
    expect(tables[0]?.columns.slice(0, 3)).toEqual(["flange OD, in", "bolts", "bolt circle, in"]);
    expect(tables[0]?.rows[0]).toEqual({
      label: "Suction flange",
      cells: ["13.5", "8 × 3/4 in", "11.75", "4.25", "3.5", "11", "8.62"],
    });
    expect(tables.flatMap(({ faults }) => faults)).toEqual([]);
  });

  it("show a dash where there is no answer, and say why once", () => {
    const grey = duty({ casingMaterial: "grey iron", flangeClass: "125", boltGrade: "A307 B", suctionFlange: "1/2" });
    const [table] = shownSection(grey, SECTION)?.tables ?? [];
    expect(table?.rows[0]?.cells.slice(0, 3)).toEqual(["–", "–", "–"]);
    expect(table?.rows[1]?.cells[0]).toBe("11");
    expect(table?.faults).toEqual([expect.stringContaining("NPS 1/2 is not in ASME B16.1")]);
  });
});

function near(cell: number | string): unknown {
  return typeof cell === "number" ? expect.closeTo(cell, 9) : cell;
}
