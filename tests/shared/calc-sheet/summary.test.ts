import { describe, expect, it } from "vitest";
import { dutyPlan } from "../../../shared/calc-sheet/duty-plan.ts";
import { rangeName } from "../../../shared/calc-sheet/layout/range-name.ts";
import type { BlocksItem, LinesItem, PlanItem } from "../../../shared/calc-sheet/plan.ts";
import { workOut } from "../../../shared/calc-sheet/work-out.ts";
import type { DutyText } from "../../../shared/duty/duty-text.ts";
import { SAMPLE_DUTIES } from "../../../shared/duty/samples.ts";
import { workedDuty } from "../../../shared/package/worked-duty.ts";
import type { CellSpec, SheetSpec } from "../../../shared/ports/sheet-spec.ts";
import { dutyOf, dutyRead, dutyText, pumpText, QUARRY } from "../../support/duty-of.ts";
import { laidOut, sheetsOf } from "../../support/laid-out.ts";

/** The small duty with a pump of four points, so that the package has something to say. */
const PUMPED = dutyText(
  {},
  {
    pump: pumpText([
      ["0 gpm", "160 ft", "", "6 ft"],
      ["400 gpm", "150 ft", "65", "7 ft"],
      ["700 gpm", "130 ft", "78", "9 ft"],
      ["1000 gpm", "95 ft", "70", "14 ft"],
    ]),
  },
);

function blocksOf(items: readonly PlanItem[]): BlocksItem {
  return items.find((item): item is BlocksItem => item.kind === "blocks") as BlocksItem;
}

function packageOf(items: readonly PlanItem[]): LinesItem {
  return items.find((item): item is LinesItem => item.kind === "lines") as LinesItem;
}

function rowOf(at: string): number {
  return Number(/\d+$/.exec(at)?.[0]);
}

/** The cell of a name on the sheet. */
function named({ names = {}, cells }: SheetSpec, name: string): CellSpec {
  const at = names[name];
  const found = cells.find((cell) => cell.at === at);
  if (found === undefined) throw new Error(`no cell is called ${name}`);
  return found;
}

/** A name or an address, or a plain sum of some. */
const ONE = /(\w+!|'[^']+'!)?(\$[A-Z]+\$\d+|[a-z][a-z_]*)/.source;
const REFERENCES = new RegExp(`^${ONE}(\\+${ONE})*$`);

const SHEETS: readonly (readonly [string, DutyText])[] = [
  ...SAMPLE_DUTIES.map(({ duty }, i) => [`sample ${i + 1}`, duty] as const),
  ["head and suction only", dutyText()],
  ["a pump without a speed", PUMPED],
];

describe.each(SHEETS)("the summary of %s", (_, typed) => {
  const { plan, worked } = workedDuty(dutyRead(typed));
  const { duty: sheet } = laidOut(plan, worked);
  const basis = sheet.cells.find(({ v, style }) => v === "Basis" && style === "section") as CellSpec;
  const breaks = sheet.print?.breaks ?? [];
  const ends = breaks.filter((row) => row < rowOf(basis.at));
  const [first = Number.POSITIVE_INFINITY] = breaks;

  it("holds every verdict on its first page", () => {
    const verdicts = plan.items.flatMap((item) => (item.kind === "verdicts" ? item.rows : []));
    expect(verdicts.length).toBeGreaterThan(2);
    for (const { key } of verdicts) {
      const { at, f, cached } = named(sheet, rangeName(key));
      expect(rowOf(at)).toBeLessThanOrEqual(first);
      expect(f).toBeDefined();
      expect(cached).toMatch(/FAIL|open|check|pass/);
    }
  });

  it("repeats cells of the calculation, by reference, and never calls a function", () => {
    const rows = plan.items.flatMap((item) => (item.kind === "blocks" ? item.blocks.flatMap((one) => one.rows) : []));
    expect(rows.length).toBeGreaterThan(15);
    for (const { key, expression } of rows) {
      const { f = "", cached } = named(sheet, rangeName(key));
      expect(f).toMatch(REFERENCES);
      if (expression.op === "value") expect(cached).toEqual(worked.cells.get(expression.key));
    }
    const inSummary = sheet.cells.filter(({ at }) => rowOf(at) < rowOf(basis.at));
    expect(inSummary.filter(({ f }) => f?.includes("DUTY."))).toEqual([]);
  });

  it("stands on two pages at most, and the calculation follows where they end", () => {
    expect(ends.length).toBeLessThanOrEqual(2);
    const heads = sheet.cells.find(({ style }) => style === "columnHead") as CellSpec;
    // The heads of the columns, the gap and the first heading.
    expect(rowOf(basis.at) - rowOf(heads.at)).toBe(2);
  });

  it("draws its first chart on page 1", () => {
    const [chart] = sheet.charts ?? [];
    expect(rowOf(chart?.at.split(":")[1] ?? "")).toBeLessThanOrEqual(first);
    expect(chart?.series.length).toBeGreaterThan(1);
  });
});

describe("the summary", () => {
  it("moves with its inputs: a level raised is in the head to select for, and in the level", () => {
    const at = (deliveryLevel: string) => {
      const plan = dutyPlan(dutyOf({ deliveryLevel, frictionMargin: "0" }));
      const { cells } = workOut(plan);
      return (label: string): unknown =>
        cells.get(
          blocksOf(plan.items)
            .blocks.flatMap(({ rows }) => rows)
            .find((row) => row.label === label)?.key ?? "",
        );
    };
    const [low, high] = [at("100 ft"), at("130 ft")];
    expect(low("Delivery level")).toBe(100);
    expect(high("Delivery level")).toBe(130);
    expect(Number(high("Head to select for")) - Number(low("Head to select for"))).toBeCloseTo(30, 9);
  });

  it("says the losses as the sum of the four lines of the build-up", () => {
    const { plan, worked } = workedDuty(dutyRead(QUARRY));
    const of = (key: string): number => Number(worked.cells.get(key));
    const parts = ["suctionPipe", "suctionFittings", "dischargePipe", "dischargeFittings"].map(of);
    expect(of("summaryLosses")).toBeCloseTo(
      parts.reduce((sum, one) => sum + one, 0),
      9,
    );
    expect(blocksOf(plan.items).blocks.map(({ heading }) => heading)).toEqual([
      "Duty",
      "System",
      "Pump at the operating point",
    ]);
  });

  it("shows of a slurry the equivalent water head beside the head to select for", () => {
    const sand = SAMPLE_DUTIES.find(({ duty }) => duty.fields.solidsGravity !== "") as (typeof SAMPLE_DUTIES)[number];
    const rows = blocksOf(dutyPlan(dutyRead(sand.duty)).items).blocks.flatMap((one) => one.rows);
    const labels = rows.map(({ label }) => label);
    expect(labels.indexOf("Equivalent water head")).toBe(labels.indexOf("Head to select for") + 1);
    expect(labels).toContain("SG as pumped");
  });

  it("is the same duty to US and SI readers", () => {
    const us = dutyOf({ flow: "600 gpm", deliveryLevel: "100 ft" });
    const si = dutyRead({ ...dutyText({ flow: "600 gpm", deliveryLevel: "100 ft" }), unitSet: "SI" });
    const figure = (duty: typeof us, label: string): number => {
      const { plan, worked } = workedDuty(duty);
      const row = blocksOf(plan.items)
        .blocks.flatMap(({ rows }) => rows)
        .find((one) => one.label === label);
      return Number(worked.cells.get(row?.key ?? ""));
    };
    // 1 ft is 0.3048 m exactly.
    expect(figure(us, "Total dynamic head") * 0.3048).toBeCloseTo(figure(si, "Total dynamic head"), 6);
    // 231 in³ a minute is 1 US gpm; 1 in is 25.4 mm exactly; SI readers have L/s.
    expect((figure(us, "Flow") * 231 * 0.0254 ** 3 * 1000) / 60).toBeCloseTo(figure(si, "Flow"), 6);
  });

  it("asks a pump for flow, head and NPSH where none is chosen", () => {
    const [, , asked] = blocksOf(dutyPlan(dutyOf()).items).blocks;
    expect(asked?.heading).toBe("Asked of the pump");
    expect(asked?.rows.map(({ label }) => label)).toEqual(["Flow", "Head", "NPSH available", "Suction lift (flooded)"]);
  });
});

describe("the package in four lines", () => {
  const said = (typed: DutyText): readonly (readonly [string, unknown])[] => {
    const { plan, worked } = workedDuty(dutyRead(typed));
    return packageOf(plan.items).rows.map(({ key, label }) => [label, worked.cells.get(key)] as const);
  };

  it("says what each part waits for where it is not worked out", () => {
    const lines = Object.fromEntries(said(PUMPED));
    expect(lines["Driver"]).toMatch(/^motor, /);
    expect(lines["Priming"]).toMatch(/flooded/);
    expect(lines["Materials"]).toMatch(/^not worked out: state the pH/);
  });

  it("is left out where no pump is selected", () => {
    expect(packageOf(dutyPlan(dutyOf()).items)).toBeUndefined();
  });

  it("says sizes, class, driver, priming and materials of the quarry's pump, each in the reader's units", () => {
    const lines = Object.fromEntries(said(QUARRY));
    expect(lines["Sizes and class"]).toMatch(
      /^nominal sizes: suction 8, discharge 6; class offered: 150; needed: Class 150 at [\d.]+ psig$/,
    );
    expect(lines["Driver"]).toMatch(/^engine, 75 hp rated, [\d.]+ hp on site; needed [\d.]+ hp$/);
    expect(lines["Priming"]).toMatch(/; time to prime [\d.]+ s$/);
    expect(lines["Materials"]).toMatch(/^casing ductile iron; .*ductile iron$/);
  });

  it("is live: the formula joins cells", () => {
    const driver = named(sheetsOf(QUARRY).duty, "package_driver");
    expect(driver.f).toContain("engine_rating");
    expect(driver.f).not.toContain("DUTY.");
  });
});

describe("the verdicts of a duty without a pump", () => {
  const { plan, worked } = workedDuty(dutyOf());
  const rows = plan.items.flatMap((item) => (item.kind === "verdicts" ? item.rows : []));

  it("say once what waits for the pump, and count each of them", () => {
    const [first, ...others] = rows;
    expect(first?.label).toBe("Head, NPSH, Operating region, Pressure, Pipe and hose, Bolting, Driver");
    expect(worked.cells.get(`${first?.key}.0.text`)).toBe("Open: no pump is selected.");
    expect(others.map(({ label }) => label)).toEqual(["Priming", "Materials"]);
    expect(worked.cells.get("verdictCount")).toBe("8 open, 1 pass");
  });
});

describe("page 2", () => {
  it("lists what people must act on, each without its source", () => {
    const { plan, worked } = workedDuty(dutyRead(QUARRY));
    const { duty: sheet } = laidOut(plan, worked);
    const limits = sheet.cells.filter(({ cached }) => typeof cached === "string" && cached.startsWith("Limit, "));
    // Once on page 2 and once in the list of all.
    expect(limits).toHaveLength(2);
    expect(limits[0]?.cached).toBe(limits[1]?.cached);
    expect(limits[0]?.cached).toContain("Limit, Suction flange bolting: Where the tightening comes out low");
    expect(limits[0]?.cached).not.toContain("[");
  });

  it("says so where nothing is to be acted on", () => {
    const cells = sheetsOf(dutyText()).duty.cells.map(({ cached }) => cached);
    expect(cells).toContain("No limit is broken or near, no danger found by the calls.");
  });

  it("merges into page 1 where little is to be said", () => {
    const { print, cells } = sheetsOf(dutyText()).duty;
    const basis = cells.find(({ v }) => v === "Basis");
    const before = print?.breaks?.filter((row) => row < rowOf(basis?.at ?? "A1"));
    // No break, or the one before the calculation.
    expect(before?.length).toBeLessThanOrEqual(1);
  });

  it("holds what is excluded, in the estimator's words", () => {
    const { cells } = sheetsOf(dutyText({ exclusions: "civil works\ncables" })).duty;
    expect(cells.map(({ v }) => v)).toContain("civil works\ncables");
    expect(sheetsOf(dutyText()).duty.cells.map(({ v }) => v)).not.toContain("Excluded");
  });

  it("has the states and cases in short, each figure that of the calculation", () => {
    const { worked } = workedDuty(dutyRead(QUARRY));
    const [short, whole] = ["summaryStates", "dutyRegion"].map(
      (table) => (column: string) => worked.cells.get(`${table}.1.${column}`),
    );
    for (const column of ["flow", "head", "npshMargin"]) {
      expect(short?.(column)).toEqual(whole?.(column));
      expect(short?.(column)).toBeDefined();
    }
    expect(short?.("place")).toBe("preferred region: inside");
    expect(whole?.("place")).toBe("inside");
  });
});

describe("the charts", () => {
  const charts = sheetsOf(QUARRY).duty.charts ?? [];

  it("tell their lines and points apart without colour", () => {
    for (const { series } of charts) {
      const looks = series.map(({ pointsOnly, marker, dashed = false, dotted = false, thin = false }) =>
        JSON.stringify(pointsOnly ? ["point", marker] : ["line", dashed, dotted, thin]),
      );
      expect(new Set(looks).size).toBe(looks.length);
    }
  });

  it("frame the preferred region from zero head to that at no flow", () => {
    const { worked } = workedDuty(dutyRead(QUARRY));
    const at = (row: number, of: string): number => Number(worked.cells.get(`preferredRegion.${row}.${of}`));
    expect([0, 1, 2, 3].map((row) => at(row, "head") === 0)).toEqual([true, false, false, true]);
    // The operating point lies at its share of best efficiency flow between the ends.
    const share = Number(worked.cells.get("bestFlowPercent"));
    const flow = Number(worked.cells.get("operatingFlow"));
    expect(at(0, "flow")).toBeCloseTo((flow / share) * Number(worked.cells.get("regionBand.0.least")), 6);
    expect(at(2, "flow")).toBeCloseTo((flow / share) * Number(worked.cells.get("regionBand.0.most")), 6);
  });

  it("end the system soon after the pump's curve does", () => {
    const [head] = charts;
    const rows = (range: string): number => {
      const [, from, to] = /(\d+):[A-Z]+(\d+)$/.exec(range) ?? [];
      return Number(to) - Number(from) + 1;
    };
    const system = head?.series.find(({ name }) => name === "system, as stated");
    // 24 even steps reach 1.2 times the end of the curve, so 21 of them 1.05 times.
    expect(rows(system?.x ?? "")).toBe(22);
  });
});
