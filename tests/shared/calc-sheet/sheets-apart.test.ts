import { describe, expect, it } from "vitest";
import { layOut } from "../../../shared/calc-sheet/layout.ts";
import { workOut } from "../../../shared/calc-sheet/work-out.ts";
import { SAMPLE_DUTIES } from "../../../shared/duty/samples.ts";
import { boxOf } from "../../../shared/ports/a1.ts";
import { quotedSheetName } from "../../../shared/ports/sheet-name.ts";
import type { SheetSpec } from "../../../shared/ports/sheet-spec.ts";
import { dutyText, QUARRY } from "../../support/duty-of.ts";
import { sheetsOf } from "../../support/laid-out.ts";

/** Every box of the estimate, so that all of it is worked out. */
const PRICES = {
  currency: "USD",
  runningHours: "2000",
  tariff: "0.12",
  fuelPrice: "3.90 per US gal",
  directCost: "46001",
  overhead: "12",
  contingency: "5",
  margin: "21.5731",
  yearlyUpkeep: "1234",
  years: "15",
  discountRate: "5",
} as const;
const NO_PRICES = Object.fromEntries(Object.keys(PRICES).map((key) => [key, ""]));

const DUTIES = [
  ...SAMPLE_DUTIES.map(({ name, duty }) => ({ name, duty })),
  ...SAMPLE_DUTIES.map(({ name, duty }) => ({ name: `${name}, priced`, duty: dutyText(PRICES, duty) })),
  { name: "prices of no use", duty: dutyText({ ...NO_PRICES, directCost: "46001", years: "15" }, QUARRY) },
].map(({ name, duty }) => ({ name, sheets: sheetsOf(duty) }));

const PRICED = sheetsOf(dutyText(PRICES, QUARRY));

/** What formulas, rules and charts of a sheet say of other cells. */
function formulasOf({ cells, rules = [], charts = [] }: SheetSpec): readonly string[] {
  return [
    ...cells.flatMap(({ f }) => (f === undefined ? [] : [f])),
    ...rules.map(({ when }) => when),
    ...charts.flatMap(({ series }) => series.flatMap(({ x, y }) => [x, y])),
  ];
}

describe("the sheets of a duty", () => {
  it.each(DUTIES)("rest on one another, but none on the estimate: $name", ({ sheets }) => {
    const { duty, estimate, workings } = sheets;
    const mentions = (sheet: SheetSpec, other: SheetSpec): number =>
      formulasOf(sheet).filter((text) => text.includes(`${quotedSheetName(other.name)}!`)).length;
    expect(mentions(duty, workings)).toBeGreaterThan(20);
    expect(mentions(workings, duty)).toBeGreaterThan(5);
    if (estimate === undefined) return;
    expect(mentions(duty, estimate)).toBe(0);
    expect(mentions(workings, estimate)).toBe(0);
  });

  it("draw the workings on the page", () => {
    const ranges = (PRICED.duty.charts ?? []).flatMap(({ series }) => series.flatMap(({ x, y }) => [x, y]));
    expect(ranges.some((range) => range.startsWith(quotedSheetName(PRICED.workings.name)))).toBe(true);
  });

  it.each(DUTIES)("name every cell that they rest on: $name", ({ sheets }) => {
    for (const { cells } of sheets.all) expect(cells.filter(({ f }) => f?.includes("NA()"))).toEqual([]);
  });

  it.each(DUTIES)("have no working figure on a row of the page: $name", ({ sheets: { duty, estimate } }) => {
    for (const sheet of [duty, estimate]) {
      if (sheet === undefined) continue;
      const { bottom, right } = boxOf(sheet.print?.area ?? "A1");
      const beside = sheet.cells.filter(({ at, spill }) => {
        const box = boxOf(spill ?? at);
        return box.top <= bottom && box.right > right;
      });
      expect(beside).toEqual([]);
    }
    expect(duty.cells.filter(({ spill }) => spill !== undefined)).toEqual([]);
    expect(duty.cells.filter(({ style }) => style?.startsWith("working"))).toEqual([]);
  });

  it("have an estimate only where something of it is stated", () => {
    const without = sheetsOf(dutyText(NO_PRICES, QUARRY));
    expect(without.all).toHaveLength(2);
    expect(without.estimate).toBeUndefined();
    for (const [key, text] of Object.entries(PRICES)) {
      const { estimate } = sheetsOf(dutyText({ ...NO_PRICES, [key]: text }, QUARRY));
      // Neither says what anything costs.
      expect(estimate === undefined, key).toBe(key === "currency" || key === "runningHours");
    }
  });

  it("say nothing of cost and price but on the estimate", () => {
    const { duty, estimate, workings } = PRICED;
    const texts = (sheet: SheetSpec | undefined): string => JSON.stringify(sheet);
    for (const words of [
      "46001",
      "21.5731",
      "1234",
      "Selling price",
      "Profit",
      "Overhead",
      "Direct cost",
      "DUTY.SELLINGPRICE",
    ]) {
      expect(texts(estimate), words).toContain(words);
      expect(texts(duty), words).not.toContain(words);
      expect(texts(workings), words).not.toContain(words);
    }
    const unused = sheetsOf(dutyText({ ...NO_PRICES, directCost: "46001" }, QUARRY));
    expect(texts(unused.estimate)).toContain("46001");
    expect(texts(unused.duty)).not.toContain("46001");
  });

  it("say on the estimate that it is internal, on every page of it and nowhere else", () => {
    const { duty, estimate, workings } = PRICED;
    expect(estimate?.print?.footer).toContain("Internal: not for issue");
    for (const { print } of [duty, workings]) expect(print?.footer).not.toContain("Internal");
  });
});

describe("the names of the sheets of a duty", () => {
  const named = (item: string, project = ""): readonly string[] =>
    sheetsOf(dutyText({ ...PRICES, item, project }, QUARRY)).all.map(({ name }) => name);

  it.each([
    ["P-101", ["Duty P-101", "P-101 estimate", "P-101 workings"]],
    ["P-101A/B", ["Duty P-101A B", "P-101A B estimate", "P-101A B workings"]],
    ["'P-101'", ["Duty P-101", "P-101 estimate", "P-101 workings"]],
    ["", ["Duty", "Estimate", "Workings"]],
    ["[]:*?/\\", ["Duty", "Estimate", "Workings"]],
    ["History", ["Duty History", "History estimate", "History workings"]],
    ["Dewatering pump set number 4", ["Duty Dewatering pump", "Dewatering pump estimate", "Dewatering pump workings"]],
    ["A".repeat(40), [`Duty ${"A".repeat(18)}`, `${"A".repeat(18)} estimate`, `${"A".repeat(18)} workings`]],
  ])("are made of the item %s", (item, names) => {
    expect(named(item)).toEqual(names);
  });

  it("are made of the project where there is no item", () => {
    expect(named("", "Quarry north")).toEqual(["Duty Quarry north", "Quarry north estimate", "Quarry north workings"]);
  });

  it("stand in the formulas as the host gave them", () => {
    const { plan, worked } = (() => {
      const items = [{ kind: "text", key: "project", label: "a", text: "b" }] as const;
      const made = { tag: "P-1", title: "t", unitSet: "SI", items } as const;
      return { plan: made, worked: workOut(made) };
    })();
    const set = layOut(plan, worked);
    expect(set.wanted).toEqual(["Duty P-1"]);
    expect(set.sheets(["Duty P-1 (2)"]).map(({ name }) => name)).toEqual(["Duty P-1 (2)"]);
  });
});
