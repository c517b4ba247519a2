import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { dutyPlan } from "../../shared/calc-sheet/duty-plan.ts";
import { workOut } from "../../shared/calc-sheet/work-out.ts";
import { isCellError } from "../../shared/cells/cell.ts";
import type { DutyText } from "../../shared/duty/duty-text.ts";
import { SAMPLE_DUTIES } from "../../shared/duty/samples.ts";
import { addressOf, boxOf } from "../../shared/ports/a1.ts";
import { quotedSheetName } from "../../shared/ports/sheet-name.ts";
import type { SheetSpec } from "../../shared/ports/sheet-spec.ts";
import { gridSnapshot } from "../../workbench/grid-snapshot.ts";
import { headlessGrid } from "../../workbench/headless.ts";
import { dutyRead, dutyText, QUARRY } from "../support/duty-of.ts";
import { setOfDuty, together } from "../support/laid-out.ts";

const grid = headlessGrid();
const EQUALS_TEXT = dutyText({ project: "=1+1" }, QUARRY);
/** A slurry and a price in percentages that a bare number up to 1 would make fractions. */
const SMALL_SHARES = dutyText(
  { solids: "0.9 %", fines: "0.5 %", directCost: "1000", overhead: "1", contingency: "", margin: "1" },
  (SAMPLE_DUTIES.find(({ duty }) => duty.fields.medianSize) ?? { duty: QUARRY }).duty,
);
/** A line of so many runs that it stands on several pages, its heads between them. */
const LONG_LINE = dutyText(
  {},
  { dischargeLine: Array.from({ length: 60 }, (_, i) => ({ pipe: "8in sch40", length: `${10 + i}`, fittings: "" })) },
);
/** The duties of all tests, their sheets added and calculated at once; each test has one of its own to change. */
const DUTIES = [
  ...SAMPLE_DUTIES.map(({ duty }) => duty),
  QUARRY,
  QUARRY,
  QUARRY,
  QUARRY,
  EQUALS_TEXT,
  SMALL_SHARES,
  LONG_LINE,
];
const set = together(DUTIES.map((duty, i) => setOfDuty(dutyText({ item: `${i + 1}` }, duty))));
let sheets: readonly (readonly SheetSpec[])[] = [];
const own = (i: number): readonly SheetSpec[] => sheets[SAMPLE_DUTIES.length + i] ?? [];
const nameOf = (i: number): string => own(i)[0]?.name ?? "";
beforeAll(async () => {
  sheets = set.each(await grid.host.addSheets(set));
});
afterAll(() => grid.dispose());

/** Reads every formula cell of written sheets and holds it against what was worked out in memory. */
async function compare(specs: readonly SheetSpec[]): Promise<{ readonly formulas: number; readonly worst: number }> {
  const formulas = specs.flatMap(({ name, cells }) =>
    cells.flatMap((cell) => (cell.f === undefined ? [] : [{ ...cell, on: quotedSheetName(name) }])),
  );
  const refs = formulas.map(({ on, at, spill }) => `${on}!${spill ?? at}`);
  const shown = await grid.host.read(refs);
  let worst = 0;
  formulas.forEach(({ at, cached }, i) => {
    const wanted = (Array.isArray(cached) ? cached : [[cached]]) as readonly (readonly unknown[])[];
    wanted.forEach((row, r) => {
      row.forEach((cell, c) => {
        const found = shown[i]?.[r]?.[c];
        if (typeof cell === "number") {
          expect(found, `${at} row ${r} column ${c}`).toBeTypeOf("number");
          const scale = Math.max(1, Math.abs(cell));
          worst = Math.max(worst, Math.abs((found as number) - cell) / scale);
        } else {
          expect(found ?? "", at).toEqual(cell ?? "");
        }
      });
    });
  });
  return { formulas: formulas.length, worst };
}

describe("a calc sheet in the workbench grid", () => {
  it.each(SAMPLE_DUTIES.map(({ name }, i) => ({ name, i })))(
    "calculates every formula to what the pane shows: $name",
    async ({ i }) => {
      const { formulas, worst } = await compare(sheets[i] ?? []);
      expect(formulas).toBeGreaterThan(30);
      expect(worst).toBeLessThan(1e-12);
    },
  );

  it("is written out again with its formulas by their names", () => {
    const out = new Map(gridSnapshot(grid, grid.host).map((sheet) => [sheet.name, sheet]));
    let named = 0;
    for (const { name, cells, rules = [], names = {} } of sheets.flat()) {
      const cellsOut = new Map(out.get(name)?.cells.map((cell) => [cell.at, cell.f]));
      for (const { at, f } of cells) if (f !== undefined) expect(cellsOut.get(at), `${name}!${at}`).toBe(f);
      expect(out.get(name)?.rules?.map(({ when }) => when)).toEqual(rules.map(({ when }) => when));
      named += Object.keys(names).length;
    }
    expect(named).toBeGreaterThan(500);
  });

  it("hands percentages of 1 % and less on as what they are", async () => {
    expect((await compare(own(5))).worst).toBeLessThan(1e-12);
    const estimate = quotedSheetName(own(5)[1]?.name ?? "");
    const [[[price]]] = (await grid.host.read([`${estimate}!selling_price`])) as [[[number]]];
    // By hand: 1000 × 1.01 / 0.99.
    expect(price).toBeCloseTo(1020.20202, 5);
  });

  it("reads a line through where its heads are said again on the next page", async () => {
    const [sheet] = own(6);
    const { top, bottom } = boxOf(sheet?.names?.["discharge_line"] ?? "");
    expect((sheet?.print?.breaks ?? []).some((end) => end > top && end < bottom)).toBe(true);
    const { formulas, worst } = await compare(own(6));
    expect(formulas).toBeGreaterThan(200);
    expect(worst).toBeLessThan(1e-12);
  });

  it("follows every change of an input cell", async () => {
    const name = nameOf(0);
    const at = (key: string): string => `${quotedSheetName(name)}!${key}`;
    await grid.host.write({ [at("flow")]: 900, [at("source_level")]: 99, [at("temperature")]: 100 });
    const changed: DutyText = {
      ...QUARRY,
      fields: { ...QUARRY.fields, flow: "900", sourceLevel: "99", temperature: "100", curveFlow: "1800" },
    };
    const read = dutyRead(changed);
    const { cells } = workOut(dutyPlan(read));
    const keys = {
      total_head: "totalHead",
      npsh_available: "npshAvailable",
      total_head_with_margin: "ratedHead",
      density: "density",
    };
    for (const [sheetName, key] of Object.entries(keys)) {
      const [[[found]]] = (await grid.host.read([at(sheetName)])) as [[[number]]];
      expect(Math.abs(found / (cells.get(key) as number) - 1), key).toBeLessThan(1e-12);
    }
  });

  it("follows every change of the selected pump, its curve and its range", async () => {
    const [spec] = own(1);
    const name = nameOf(1);
    const at = (key: string): string => `${quotedSheetName(name)}!${key}`;
    const curve = boxOf(spec?.names?.["pump_curve"] as string);
    // The third point of the curve: its head.
    const head = addressOf(curve.top + 3, curve.left + 1);
    await grid.host.write({
      [at("speed_ratio")]: 0.98,
      [at("trim_ratio")]: 0.97,
      [at("pumps_running")]: 1,
      [at("least_static_head")]: 72,
      [at("aged_roughness")]: 0.02,
      [at("head_tolerance_upper")]: 3,
      [at(head)]: 130.5,
    });
    const pump = QUARRY.pump as NonNullable<DutyText["pump"]>;
    const changed: DutyText = {
      ...QUARRY,
      fields: { ...QUARRY.fields, leastStaticHead: "72", agedRoughness: "0.02" },
      pump: {
        ...pump,
        speedRatio: "0.98",
        trimRatio: "0.97",
        points: pump.points.map((point, i) => (i === 2 ? { ...point, head: "130.5" } : point)),
      },
    };
    const read = dutyRead(changed);
    const { items, ...rest } = dutyPlan(read);
    const { cells } = workOut({
      ...rest,
      items: items.map((item) =>
        item.kind === "input" && item.key === "headToleranceUpper" ? { ...item, value: 3 } : item,
      ),
    });
    const keys = {
      operating_flow: "operatingFlow",
      operating_head: "operatingHead",
      operating_efficiency: "operatingEfficiency",
      operating_power: "operatingPower",
      operating_npsh_margin: "operatingNpshMargin",
      percent_of_best_flow: "bestFlowPercent",
      head_over_duty: "headOverDuty",
      greatest_power: "greatestPower",
      region_least_flow: "regionLeastFlow",
      region_greatest_flow: "regionGreatestFlow",
      region_npsh_margin: "regionNpshMargin",
      accepted_head_most: "acceptedHeadMost",
    };
    for (const [sheetName, key] of Object.entries(keys)) {
      const [[[found]]] = (await grid.host.read([at(sheetName)])) as [[[number]]];
      expect(Math.abs(found - (cells.get(key) as number)), key).toBeLessThan(1e-10);
    }
  });

  it("says in the cells where the pump can no longer meet the system, and recovers", async () => {
    const name = nameOf(2);
    const at = (key: string): string => `${quotedSheetName(name)}!${key}`;
    const read = async (key: string) => (await grid.host.read([at(key)]))[0]?.[0]?.[0];
    const before = await read("operating_flow");
    await grid.host.write({ [at("speed_ratio")]: 0.5 });
    expect(isCellError(await read("operating_flow"))).toBe(true);
    expect(isCellError(await read("region_greatest_flow"))).toBe(true);
    await grid.host.write({ [at("speed_ratio")]: 0.96 });
    expect(await read("operating_flow")).toBe(before);
  });

  it("shows an error where an input cannot be read, and recovers", async () => {
    const name = nameOf(3);
    const at = (key: string): string => `${quotedSheetName(name)}!${key}`;
    const read = async (key: string) => (await grid.host.read([at(key)]))[0]?.[0]?.[0];
    const before = await read("total_head");
    await grid.host.write({ [at("liquid")]: "treacle" });
    expect(isCellError(await read("total_head"))).toBe(true);
    await grid.host.write({ [at("liquid")]: "water" });
    expect(await read("total_head")).toBe(before);
  });

  it("keeps the title-block text that begins with = as text", async () => {
    const name = nameOf(4);
    const cell = own(4)[0]?.cells.find(({ v }) => v === "=1+1");
    const [[[found]]] = (await grid.host.read([`${quotedSheetName(name)}!${cell?.at}`])) as [[[unknown]]];
    expect(found).toBe("=1+1");
  });
});
