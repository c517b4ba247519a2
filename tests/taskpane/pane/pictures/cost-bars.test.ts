import { describe, expect, it } from "vitest";
import type { CostParts } from "../../../../shared/package/cost-parts.ts";
import type { ShownTable } from "../../../../shared/package/shown-section.ts";
import { costBars, costBarsWords } from "../../../../taskpane/pane/pictures/cost-bars.ts";
import { sheetTableView } from "../../../../taskpane/pane/views/package/sheet-table.ts";
import { type Bar, barsOf, markup } from "../../../support/markup.ts";

// Amounts made up for the test; sums by hand.
const COSTS: CostParts = {
  currency: "USD",
  parts: [
    { name: "First cost", cost: 50_000 },
    { name: "Electricity", cost: 120_000 },
    { name: "Upkeep", cost: 30_000 },
  ],
  whole: 200_000,
};

describe("the bars of the life-cycle cost in words", () => {
  it("say every part, its share and the whole", () => {
    expect(costBarsWords(COSTS)).toBe(
      "Life-cycle cost 200,000, in USD: First cost 50,000, 25 %; Electricity 120,000, 60 %; Upkeep 30,000, 15 %.",
    );
  });

  it("do without a currency", () => {
    expect(costBarsWords({ ...COSTS, currency: "" })).toMatch(/^Life-cycle cost 200,000: First/);
  });
});

describe.each([296, 450])("the bars of the life-cycle cost drawn %d px wide", (width) => {
  it("carry on where the last one ended, the whole from zero, clear of the figures", () => {
    const bars = barsOf(markup(costBars(COSTS, width)));
    expect(bars.map(({ kind }) => kind)).toEqual(["part", "part", "part", "total"]);
    const [first, energy, upkeep, whole] = bars as [Bar, Bar, Bar, Bar];
    expect(energy.x).toBeCloseTo(first.x + first.width, 6);
    expect(upkeep.x).toBeCloseTo(energy.x + energy.width, 6);
    expect(whole.x).toBe(first.x);
    expect(whole.width).toBeCloseTo(first.width + energy.width + upkeep.width, 6);
    expect(energy.width / first.width).toBeCloseTo(2.4, 6);
    // "200,000 · 100 %" is 15 letters of some 7 px.
    expect(whole.x + whole.width).toBeLessThan(width - 15 * 7);
    expect(whole.width).toBeGreaterThan(width / 4);
  });

  it("is one picture with its story in words", () => {
    const text = markup(costBars(COSTS, width));
    expect(text).toContain('role="img"');
    expect(text).toContain(`aria-label="${costBarsWords(COSTS)}"`);
    expect(text).toContain("over its years, in USD.");
  });
});

describe("a printed table in the pane", () => {
  const row = (label: string) => ({ label, cells: ["1", "8in sch40", "2", "3", "4"] });
  const table: ShownTable = {
    heading: "pipe",
    columns: ["length", "size", "to order", "mass", "full"],
    rows: ["a", "b", "c", "d"].map(row),
    faults: ["no such pipe"],
  };

  it("has its labels above its figures where rows and columns are many", () => {
    const text = markup(sheetTableView(table)).replace(/\s+/g, " ");
    expect(text).toContain('<th scope="rowgroup" colspan=4>a: 8in sch40</th>');
    expect([...text.matchAll(/<th scope="col">([^<]+)/g)].map(([, name]) => name)).toEqual([
      "length",
      "to order",
      "mass",
      "full",
    ]);
    // Where letters are large each figure stands after its heading.
    const heads = [...text.matchAll(/<td data-head="?(length|to order|mass|full)"?>\d<\/td>/g)].map(([, head]) => head);
    expect(heads).toHaveLength(16);
    expect(heads.slice(0, 4)).toEqual(["length", "to order", "mass", "full"]);
    expect(text).toContain('<p class="fault">no such pipe</p>');
  });

  it("is turned where its rows are few", () => {
    const text = markup(sheetTableView({ ...table, rows: table.rows.slice(0, 3) }));
    expect(text).not.toContain("rowgroup");
    expect([...text.matchAll(/<th scope="col">(\w+)/g)].map(([, name]) => name)).toEqual(["a", "b", "c"]);
  });

  it("stands as it is where its columns are few", () => {
    const narrow = {
      ...table,
      columns: ["number", "size"],
      rows: table.rows.map((of) => ({ ...of, cells: ["1", "x"] })),
    };
    const text = markup(sheetTableView(narrow));
    expect([...text.matchAll(/<th scope="row">(\w+)/g)].map(([, name]) => name)).toEqual(["a", "b", "c", "d"]);
  });
});
