import { numfmt } from "@univerjs/core";
import { describe, expect, it } from "vitest";
import { dutyPlan, fieldsNotUsed } from "../../../shared/calc-sheet/duty-plan.ts";
import { tableCell } from "../../../shared/calc-sheet/expression.ts";
import type { CalcSheetPlan } from "../../../shared/calc-sheet/plan.ts";
import { workOut } from "../../../shared/calc-sheet/work-out.ts";
import { type Argument, isCellError, isRange } from "../../../shared/cells/cell.ts";
import { decodeDuty } from "../../../shared/duty/decode.ts";
import type { Duty } from "../../../shared/duty/duty.ts";
import type { DutyText } from "../../../shared/duty/duty-text.ts";
import type { FieldKey } from "../../../shared/duty/fields.ts";
import { SAMPLE_DUTIES } from "../../../shared/duty/samples.ts";
import { costParts } from "../../../shared/package/cost-parts.ts";
import { type ShownSection, shownSection } from "../../../shared/package/shown-section.ts";
import { dutyRead, dutyText, type Fields, STRAIGHT_PUMP } from "../../support/duty-of.ts";
import { laidOut, sheetsOf } from "../../support/laid-out.ts";
import { longestChain } from "../../support/longest-chain.ts";
import { remarksOf } from "../../support/section-remarks.ts";

/** A line so wide that the pump meets the static head at 500 gpm, 280 ft and 68 %. */
const typed = (fields: Fields, change: Partial<DutyText> = {}): DutyText =>
  dutyText(
    { flow: "500 gpm", deliveryLevel: "280 ft", ...fields },
    {
      suctionLine: [{ pipe: "24in STD", length: "20 ft", fittings: "" }],
      dischargeLine: [{ pipe: "24in STD", length: "100 ft", fittings: "1 gate" }],
      pump: STRAIGHT_PUMP,
      ...change,
    },
  );

const duty = (fields: Fields = {}, change: Partial<DutyText> = {}): Duty => dutyRead(typed(fields, change));

function cellsOf(of: Duty): ReadonlyMap<string, Argument> {
  return workOut(dutyPlan(of)).cells;
}

const figure = (cells: ReadonlyMap<string, Argument>, key: string): number => {
  const found = cells.get(key);
  if (typeof found !== "number") throw new Error(`${key} is ${JSON.stringify(found)}`);
  return found;
};

function section(of: Duty): ShownSection {
  const shown = shownSection(of, "estimate");
  if (shown === undefined) throw new Error("no such section");
  return shown;
}

const LIFE = { firstCost: "40000", yearlyUpkeep: "6000", years: "15", discountRate: "5" } as const;
const MOTOR = { driver: "motor", runningHours: "4000", tariff: "0.12" } as const;
const ENGINE = {
  driver: "engine",
  runningHours: "2000",
  fuelPrice: "3.90 per US gal",
  specificConsumption: "0.38 lb/hp-h",
} as const;
const PRICED = { directCost: "10000", overhead: "10", contingency: "5", margin: "20" } as const;

describe("quantities on the sheet", () => {
  it("are those of the lines, with bolting where a class is stated", () => {
    const [pipes, pieces] = section(duty({ flangeClass: "150" })).tables;
    // ASME B36.10M, NPS 24 STD: 94.62 lb/ft; 5 % for cutting, common practice.
    expect(pipes?.rows.map(({ label, cells }) => [label, ...cells.slice(0, 3)])).toEqual([
      ["Suction: pipe", "20.0", "24in STD", "21.0"],
      ["Discharge: pipe", "100.0", "24in STD", "105.0"],
    ]);
    expect(Number(pipes?.rows[1]?.cells[3]?.replace(",", ""))).toBeCloseTo(9462, -2);
    // By hand: two nozzles and a gate make 4 joints; ASME B16.5, NPS 24 Class 150: 20 bolts of 1-1/4 in each.
    expect(pieces?.rows.map(({ label, cells }) => [label, cells[0], cells[2]])).toEqual([
      // 100 ft in pieces of 20 ft: 5.
      ["Discharge: butt weld", "4", "4"],
      ["Discharge: gate", "1", "1"],
      ["Both lines: flanged joint", "4", "4"],
      ["Both lines: stud", "80", "88"],
      ["Both lines: nut", "160", "176"],
      ["Both lines: gasket", "4", "5"],
    ]);
  });

  it("state the class once, here only where no section above does", () => {
    const { pump: _, ...unchosen } = typed({ flangeClass: "150" });
    for (const text of [typed({ flangeClass: "150" }), unchosen]) {
      const stated = dutyPlan(dutyRead(text)).items.filter(
        (item) => item.kind === "input" && item.key === "flangeClass",
      );
      expect(stated).toHaveLength(1);
    }
  });

  it("sum the mass of all pipe, and of none where one is not known", () => {
    const cells = cellsOf(duty());
    // 120 ft of NPS 24 STD at 94.62 lb/ft; water 0.3405 × 23.25² = 184.1 lb/ft.
    expect(figure(cells, "pipeMassEmpty") / (120 * 94.62)).toBeCloseTo(1, 2);
    expect(figure(cells, "pipeMassFull") / (120 * (94.62 + 184.1))).toBeCloseTo(1, 2);
    const hose = duty({}, { suctionLine: [{ pipe: "8in suction hose", length: "20 ft", fittings: "" }] });
    expect(cellsOf(hose).has("pipeMassEmpty")).toBe(false);
    expect(section(hose).tables[0]?.rows[0]?.cells.slice(3)).toEqual(["not known", "not known"]);
    expect(remarksOf(section(hose))).toMatch(/mass of “8in suction hose” is not known/);
  });

  it("say CHANGED beside a row that the lines no longer give", () => {
    const plan = dutyPlan(duty());
    const longer = withFittings(plan, "1 gate, 1 swing check");
    const { cells } = workOut(longer);
    const numbers = [0, 1, 2, 3].map((row) => cells.get(tableCell("pieceQuantities", row, "number")));
    expect(numbers).toContain("CHANGED");
    expect(workOut(plan).cells.get(tableCell("pieceQuantities", 0, "number"))).not.toBe("CHANGED");
  });

  it("follow a changed length without being written again", () => {
    const plan = dutyPlan(duty());
    const items = plan.items.map((item) =>
      item.kind === "line" && item.key === "dischargeLine"
        ? { ...item, rows: item.rows.map((row) => ({ ...row, length: 90 })) }
        : item,
    );
    const { cells } = workOut({ ...plan, items });
    expect(cells.get(tableCell("pipeQuantities", 1, "length"))).toBe(90);
    // 5 % for cutting.
    expect(cells.get(tableCell("pipeQuantities", 1, "order"))).toBeCloseTo(94.5, 9);
  });
});

describe("energy on the sheet", () => {
  // By hand: 500 × 280 / (3960 × 0.68) = 51.99 hp = 38.77 kW; 10 CFR 431, 100 hp, 4 poles: 95.4 %; × 4000 h / 0.954 =
  // 162 550 kWh; at 0.12.
  it("is that of the operating point, with the motor's efficiency", () => {
    const cells = cellsOf(duty(MOTOR));
    expect(figure(cells, "operatingPower")).toBeCloseTo(51.99, 1);
    expect(figure(cells, "efficiencyTaken")).toBeCloseTo(95.4, 9);
    expect(figure(cells, "energyOfYear") / 162_550).toBeCloseTo(1, 3);
    expect(figure(cells, "runningCost") / 19_506).toBeCloseTo(1, 3);
  });

  it("is the same in every unit set", () => {
    const inUS = figure(cellsOf(duty(MOTOR)), "runningCost");
    for (const unitSet of ["SI", "METRIC"] as const) {
      // Motors of the IEC list differ, so the efficiency is left out of the comparison.
      const cells = cellsOf(duty(MOTOR, { unitSet }));
      const us = inUS * 0.954;
      expect((figure(cells, "runningCost") * figure(cells, "efficiencyTaken")) / 100 / us).toBeCloseTo(1, 6);
    }
  });

  it("takes 93 % where no motor is held", () => {
    const unknown = cellsOf(duty(MOTOR, { pump: { ...STRAIGHT_PUMP, speed: "" } }));
    expect(unknown.get("efficiencyTaken")).toBe(93);
    // NEMA motors are listed for 60 Hz; 400 V is met at 50 Hz.
    const elsewhere = duty({ ...MOTOR, supplyVoltage: "400" }, { pump: { ...STRAIGHT_PUMP, speed: "1480 rpm" } });
    expect(cellsOf(elsewhere).get("efficiencyTaken")).toBe(93);
  });

  // By hand: 51.99 hp × 0.38 lb/hp-h / 7.0102 lb/US gal = 2.818 US gal/h; 2000 h: 5636 US gal; at 3.90: 21 982.
  it("is fuel where an engine drives", () => {
    const cells = cellsOf(duty(ENGINE));
    expect(figure(cells, "fuelOfYear") / 5636).toBeCloseTo(1, 3);
    expect(figure(cells, "runningCost") / 21_982).toBeCloseTo(1, 3);
    expect(cells.get("fuelPrice")).toBeCloseTo(3.9, 12);
  });

  it.each(["SI", "METRIC"] as const)("prices fuel by the litre in %s, and comes to the same money", (unitSet) => {
    const cells = cellsOf(duty(ENGINE, { unitSet }));
    // NIST SP 811: 3.785411784 L a US gallon.
    expect(figure(cells, "fuelPrice")).toBeCloseTo(3.9 / 3.785411784, 9);
    expect(figure(cells, "runningCost") / 21_982).toBeCloseTo(1, 3);
    const volume = unitSet === "SI" ? 5636 * 3.785411784 : 5.636 * 3.785411784;
    expect(figure(cells, "fuelOfYear") / volume).toBeCloseTo(1, 3);
    expect(dutyPlan(duty(ENGINE, { unitSet })).items).toContainEqual(
      expect.objectContaining({ key: "fuelPrice", label: "Fuel price per L" }),
    );
  });

  it("counts an engine for each pump", () => {
    // Two in parallel meet the same static head at twice the flow.
    const two = cellsOf(duty({ ...ENGINE, flow: "1000 gpm", pumpsRunning: "2" }));
    expect(figure(two, "runningCost") / (2 * 21_982)).toBeCloseTo(1, 3);
  });

  it("is nothing without hours, and not priced without a price", () => {
    const { runningHours: _, ...rest } = MOTOR;
    const without = duty(rest);
    expect(cellsOf(without).has("energyOfYear")).toBe(false);
    expect(remarksOf(section(without))).toMatch(/they need a selected pump.*and the hours/);
    const unpriced = cellsOf(duty({ driver: "motor", runningHours: "4000" }));
    expect(unpriced.has("energyOfYear")).toBe(true);
    expect(unpriced.has("runningCost")).toBe(false);
    expect(remarksOf(section(duty()))).not.toMatch(/Energy and fuel/);
  });

  it("does not price what the driver does not take", () => {
    expect(cellsOf(duty({ ...ENGINE, fuelPrice: "", tariff: "0.12" })).has("runningCost")).toBe(false);
    expect(cellsOf(duty({ ...MOTOR, tariff: "", fuelPrice: "1 per L" })).has("runningCost")).toBe(false);
  });
});

describe("the price on the sheet", () => {
  it("is rolled up line by line", () => {
    const cells = cellsOf(duty(PRICED));
    // By hand: 1000; 5 % of 11 000; 11 550; / 0.8; a margin of 20 % is a markup of 25 %.
    expect(cells.get("overheadCost")).toBeCloseTo(1000, 9);
    expect(cells.get("contingencyCost")).toBeCloseTo(550, 9);
    expect(cells.get("packageCost")).toBeCloseTo(11_550, 9);
    expect(cells.get("sellingPrice")).toBeCloseTo(14_437.5, 9);
    expect(cells.get("profitOnPrice")).toBeCloseTo(2887.5, 9);
    expect(cells.get("markupOnCost")).toBeCloseTo(25, 9);
  });

  it("reads as an estimate does, pane and sheet alike: whole from 1,000 on, with two decimals under it", () => {
    const priced = duty({ ...PRICED, ...MOTOR, ...LIFE, firstCost: "950" });
    const texts = new Map(section(priced).figures.map(({ label, text }) => [label, text]));
    expect(["Overhead", "Contingency", "Cost", "Selling price"].map((label) => texts.get(label))).toEqual([
      "1,000",
      "550.00",
      "11,550",
      "14,438",
    ]);
    const [parts] = section(priced).tables.filter(({ heading }) => heading === "present value by item");
    expect(parts?.rows[0]?.cells[0]).toBe("950.00");
    const { estimate } = sheetsOf(typed({ ...PRICED, ...MOTOR, ...LIFE, firstCost: "950", tariff: "0.1" }));
    const shownAt = (label: string, column: string): string | undefined => {
      const row = estimate?.cells.find(({ v }) => v === label)?.at.replace(/^[A-Z]+/, "");
      const cell = estimate?.cells.find(({ at }) => at === `${column}${row}`);
      const value = cell?.v ?? cell?.cached;
      const format = estimate?.styles[cell?.style ?? ""]?.numFmt;
      return typeof value === "number" && format !== undefined ? numfmt.format(format, value) : undefined;
    };
    expect(
      ["Profit", "Selling price", "Initial cost to the buyer", "Price of a kWh"].map((label) => shownAt(label, "C")),
    ).toEqual(["2,888", "14,438", "950.00", "0.10"]);
  });

  it("adds no overhead and no contingency that is not stated", () => {
    const cells = cellsOf(duty({ directCost: "10000", margin: "20" }));
    expect(cells.get("sellingPrice")).toBeCloseTo(12_500, 9);
    expect(cells.has("overheadCost")).toBe(false);
  });

  it("grows with the margin", () => {
    const at = (margin: string): number => figure(cellsOf(duty({ ...PRICED, margin })), "sellingPrice");
    expect(at("10")).toBeLessThan(at("20"));
    expect(at("20")).toBeLessThan(at("90"));
  });

  it("is none without a margin or a direct cost, and says so", () => {
    for (const fields of [{ directCost: "10000" }, { margin: "20" }, { overhead: "10" }]) {
      expect(cellsOf(duty(fields)).has("sellingPrice")).toBe(false);
      expect(remarksOf(section(duty(fields)))).toMatch(/needs a direct cost and a margin/);
    }
    expect(remarksOf(section(duty()))).not.toMatch(/selling price/);
  });

  it("names the currency beside every amount of money", () => {
    const labels = section(duty({ ...PRICED, ...MOTOR, ...LIFE, currency: "EUR" })).figures.map(({ label }) => label);
    expect(labels).toEqual(expect.arrayContaining(["Selling price, EUR", "Life-cycle cost, EUR", "Overhead, EUR"]));
  });

  it.each([
    ["nothing", {}, true],
    ["a job named like it", { project: "Pumps, EUR" }, true],
    ["a direct cost", { directCost: "10000" }, false],
    ["a price", PRICED, false],
    ["a tariff", MOTOR, false],
    ["a fuel price", ENGINE, false],
  ] as const)("is told as not used beside no amount of money: %s", (_, fields, isTold) => {
    const read = duty({ ...fields, currency: "EUR" });
    const told = fieldsNotUsed(read, dutyPlan(read).items).map(({ key }) => key);
    expect(told.includes("currency")).toBe(isTold);
  });
});

describe("the life-cycle cost on the sheet", () => {
  // Interest tables, 5 % over 15 years: 10.3797. By hand: 40 000 + 10.3797 × (19 506 + 6000) = 304 745.
  it("is first cost and all yearly cost brought to the start", () => {
    const cells = cellsOf(duty({ ...MOTOR, ...LIFE }));
    expect(cells.get("presentValueFactor")).toBeCloseTo(10.3797, 4);
    expect(figure(cells, "lifeCycleCost") / 304_745).toBeCloseTo(1, 3);
    const parts = costParts(duty({ ...MOTOR, ...LIFE }));
    expect(parts?.parts.map(({ name }) => name)).toEqual(["First cost", "Electricity", "Upkeep"]);
    const sum = parts?.parts.reduce((total, { cost }) => total + cost, 0) ?? 0;
    expect(sum).toBeCloseTo(figure(cells, "lifeCycleCost"), 6);
    expect(parts?.parts[2]?.cost).toBeCloseTo(6 * 10_379.7, 0);
    const shares = [0, 1, 2, 3].map((row) => figure(cells, tableCell("lifeCycle", row, "share")));
    expect((shares[0] ?? 0) + (shares[1] ?? 0) + (shares[2] ?? 0)).toBeCloseTo(100, 9);
    expect(shares[3]).toBeCloseTo(100, 9);
  });

  it("takes the selling price where no first cost is stated, and the stated one where it is", () => {
    const { firstCost: _, ...life } = LIFE;
    expect(cellsOf(duty({ ...MOTOR, ...life, ...PRICED })).get("firstCost")).toBeCloseTo(14_437.5, 9);
    expect(cellsOf(duty({ ...MOTOR, ...LIFE, ...PRICED })).get("firstCost")).toBe(40_000);
  });

  it("grows with the price of energy, which 20 % up and down bracket it", () => {
    const at = (tariff: string) => cellsOf(duty({ ...MOTOR, ...LIFE, tariff }));
    expect(figure(at("0.13"), "lifeCycleCost")).toBeGreaterThan(figure(at("0.12"), "lifeCycleCost"));
    const cells = at("0.12");
    const swing = (row: number, of: string): number => figure(cells, tableCell("sensitivity", row, of));
    expect(swing(0, "whole")).toBeCloseTo(figure(at("0.096"), "lifeCycleCost"), 6);
    expect(swing(1, "whole")).toBeCloseTo(figure(at("0.144"), "lifeCycleCost"), 6);
    expect(swing(0, "running")).toBeCloseTo(0.8 * figure(cells, "runningCost"), 9);
    expect(swing(1, "running")).toBeCloseTo(1.2 * figure(cells, "runningCost"), 9);
    expect(swing(0, "whole")).toBeLessThan(figure(cells, "lifeCycleCost"));
    expect(swing(1, "whole")).toBeGreaterThan(figure(cells, "lifeCycleCost"));
  });

  it.each(["firstCost", "years", "discountRate"] as const)("is none without %s, and says what it needs", (key) => {
    const of = duty({ ...MOTOR, ...LIFE, [key]: "" });
    expect(cellsOf(of).has("lifeCycleCost")).toBe(false);
    expect(costParts(of)).toBeUndefined();
    expect(remarksOf(section(of))).toMatch(/No life-cycle cost is worked out: it needs/);
  });

  it("is none without energy", () => {
    expect(cellsOf(duty(LIFE)).has("lifeCycleCost")).toBe(false);
  });
});

describe("what is stated of costs", () => {
  it.each<[FieldKey, string, string]>([
    ["runningHours", "0", "out-of-range"],
    ["runningHours", "8785", "out-of-range"],
    ["tariff", "-1", "out-of-range"],
    ["fuelPrice", "-1 per L", "out-of-range"],
    ["fuelPrice", "3.90", "unit-missing"],
    ["directCost", "-1", "out-of-range"],
    ["overhead", "0.12", "percent-as-fraction"],
    ["overhead", "501", "out-of-range"],
    ["contingency", "0.05", "percent-as-fraction"],
    ["contingency", "0,05", "percent-as-fraction"],
    ["margin", "100", "out-of-range"],
    ["margin", "0.2", "percent-as-fraction"],
    ["firstCost", "-1", "out-of-range"],
    ["yearlyUpkeep", "-1", "out-of-range"],
    ["years", "0", "out-of-range"],
    ["years", "201", "out-of-range"],
    ["discountRate", "0.05", "percent-as-fraction"],
    ["discountRate", "-100", "out-of-range"],
    ["discountRate", "101", "out-of-range"],
  ])("refuses %s of %s", (key, text, code) => {
    const { isComplete, findings } = decodeDuty(typed({ [key]: text }));
    expect(isComplete).toBe(false);
    expect(findings.get(key)?.map((finding) => finding.code)).toEqual([code]);
  });

  it.each<[FieldKey, string]>([
    ["runningHours", "8784"],
    ["tariff", "0"],
    ["overhead", "0"],
    ["overhead", "0.5 %"],
    ["margin", "99.9"],
    ["years", "200"],
    ["discountRate", "-2"],
    ["discountRate", "0"],
  ])("takes %s of %s", (key, text) => {
    expect(decodeDuty(typed({ [key]: text })).isComplete).toBe(true);
  });
});

describe("the whole sheet with its costs", () => {
  const whole = [
    duty({ ...MOTOR, ...LIFE, ...PRICED, currency: "USD", flangeClass: "150" }),
    duty({ ...ENGINE, ...LIFE, engineRating: "120" }),
    duty({ ...ENGINE, ...LIFE }, { unitSet: "METRIC" }),
    ...SAMPLE_DUTIES.map((sample) => dutyRead(sample.duty)),
  ];

  it.each(whole)("has no error and chains of three at most (%#)", (of) => {
    const plan = dutyPlan(of);
    const worked = workOut(plan);
    expect(longestChain(plan)).toBeLessThanOrEqual(3);
    const start = plan.items.findIndex((item) => item.kind === "section" && item.text === "Quantities and energy");
    const keys = plan.items.slice(start).flatMap((item) => ("key" in item ? [item.key] : []));
    for (const [key, cell] of worked.cells) {
      if (!keys.some((own) => key === own || key.startsWith(`${own}.`))) continue;
      expect(!isRange(cell) && isCellError(cell), `${key} ${JSON.stringify(cell)}`).toBe(false);
      expect(cell, key).not.toBe("CHANGED");
    }
    expect(() => laidOut(plan, worked)).not.toThrow();
  });
});

/** The same plan with other fittings in the discharge line, as a reader may type them on the sheet. */
function withFittings(plan: CalcSheetPlan, fittings: string): CalcSheetPlan {
  const items = plan.items.map((item) =>
    item.kind === "line" && item.key === "dischargeLine"
      ? { ...item, rows: item.rows.map((row) => ({ ...row, fittings })) }
      : item,
  );
  return { ...plan, items };
}
