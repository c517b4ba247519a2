import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Cell } from "../../shared/cells/cell.ts";
import { SAMPLE_DUTIES } from "../../shared/duty/samples.ts";
import type { SheetSpec } from "../../shared/ports/sheet-spec.ts";
import { patchedWorkbook } from "../../shared/xlsx/patch/patch-workbook.ts";
import { replaceWorkbook, sheetsOfFile } from "../../workbench/files.ts";
import type { LiveChart } from "../../workbench/grid-charts.ts";
import { gridSnapshot } from "../../workbench/grid-snapshot.ts";
import { type HeadlessGrid, headlessGrid } from "../../workbench/headless.ts";
import { putBack, workbookCopy } from "../../workbench/keep/workbook-copy.ts";
import { followedFile, openedFile } from "../../workbench/opened-file.ts";
import { SAMPLE_SHEETS } from "../../workbench/sample-workbook.ts";
import { differences } from "../shared/xlsx/part-differences.ts";
import { setOfDuty } from "../support/laid-out.ts";

const SMALL = (SAMPLE_DUTIES[1] as (typeof SAMPLE_DUTIES)[number]).duty;

let grid: HeadlessGrid;
beforeAll(() => {
  grid = headlessGrid();
});
afterAll(() => grid.dispose());

/** Another start of the page: what the grid's own modules hold is not shared with the first. */
function startedAgain(options?: Parameters<typeof headlessGrid>[0]): HeadlessGrid {
  const { cache } = createRequire(import.meta.url);
  for (const module of Object.keys(cache)) if (/@univerjs|@wendellhu/.test(module)) delete cache[module];
  return headlessGrid(options);
}

/** What a storage of the browser would give back. */
const stored = <T>(thing: T): T => structuredClone(thing);
const shown = ({ host, ...rest }: HeadlessGrid): readonly SheetSpec[] => gridSnapshot(rest, host);

const one = async ({ host }: HeadlessGrid, reference: string): Promise<Cell> =>
  (await host.read([reference]))[0]?.[0]?.[0] ?? null;

/** Cells and other things of the sheets that are not the same, each once. */
function differing(before: readonly SheetSpec[], after: readonly SheetSpec[]): readonly string[] {
  const things = (sheets: readonly SheetSpec[]): ReadonlySet<string> =>
    new Set(
      sheets.flatMap(({ cells, ...others }) => [
        ...cells.map((cell) => `${others.name} ${JSON.stringify(cell)}`),
        ...Object.entries(others).map((thing) => `${others.name} ${JSON.stringify(thing)}`),
      ]),
    );
  const [was, is] = [things(before), things(after)];
  return [
    ...[...was].filter((each) => !is.has(each)).map((each) => `was: ${each}`),
    ...[...is].filter((each) => !was.has(each)).map((each) => `is: ${each}`),
  ];
}

describe("a workbook that comes back into another start of the grid", () => {
  it("is the same in every cell, look, list, rule, name, chart, record and sheet hidden, and works on", async () => {
    await replaceWorkbook(grid, grid.host, { sheets: SAMPLE_SHEETS, hidden: [SAMPLE_SHEETS.at(-1)?.name ?? ""] });
    const [duty = ""] = await grid.host.addSheets(setOfDuty(SMALL));
    await grid.host.write({ "'Duty notes'!B8": 1100, [`'${duty}'!flow`]: 1300 });
    const before = shown(grid);
    const drawn: string[] = [];
    const draw = ({ spec }: LiveChart): void => void drawn.push(spec().title);
    const again = startedAgain({ charts: { draw, show: () => undefined } });
    await putBack(again, again.host, stored(workbookCopy(grid, grid.host)));

    expect(differing(before, shown(again))).toEqual([]);
    expect(again.host.records()).toEqual(grid.host.records());
    expect(again.host.records().length).toBeGreaterThan(0);
    const sheets = again.api.getActiveWorkbook()?.getSheets() ?? [];
    expect(sheets.filter((sheet) => sheet.isSheetHidden()).map((sheet) => sheet.getSheetName())).toEqual([
      SAMPLE_SHEETS.at(-1)?.name,
    ]);
    expect(drawn).toEqual(before.flatMap(({ charts = [] }) => charts.map(({ title }) => title)));

    // A cell changed there calculates, and what is added gets looks and names of its own.
    const velocity = await one(again, "'Duty notes'!B22");
    await again.host.write({ "'Duty notes'!B8": 550 });
    expect(await one(again, "'Duty notes'!B22")).toBeCloseTo(Number(velocity) / 2, 9);
    const another: SheetSpec = {
      name: "Another",
      columns: [],
      styles: { loud: { bold: true, fill: "#AA0000" } },
      cells: [{ at: "A1", v: 1, style: "loud" }],
      names: { here: "A1" },
    };
    await again.host.addSheets({ wanted: ["Another"], sheets: () => [another] });
    const now = shown(again);
    const added = now.at(-1);
    expect(added?.styles[added.cells[0]?.style ?? ""]).toMatchObject({ bold: true, fill: "#AA0000" });
    expect(added?.names).toEqual({ here: "A1" });
    expect(now.map(({ styles }) => styles).slice(0, -1)).toEqual(before.map(({ styles }) => styles));
    expect(now.map(({ names }) => names).slice(0, -1)).toEqual(before.map(({ names }) => names));
    again.dispose();
  });

  it("still stands before the file that was opened: its edits go into it, and what cannot is known", async () => {
    const name = "exceljs-mixed.xlsx";
    const bytes = new Uint8Array(readFileSync(new URL(`../shared/xlsx/workbooks/${name}`, import.meta.url)));
    const content = sheetsOfFile(bytes);
    if (!content.ok) throw new Error(content.why);
    await replaceWorkbook(grid, grid.host, content);
    const file = openedFile(grid, grid.host, bytes, content.sheets);
    await grid.host.write({ "Data!B2": 99 });
    const again = startedAgain();
    await putBack(again, again.host, stored(workbookCopy(grid, grid.host)));
    const followed = followedFile(again, again.host, stored(file.opening), stored(file.steps()));

    const { sheets, ...state } = followed.state();
    expect(state).toEqual({ broken: [], beyond: [], isChanged: true });
    const { parts, cells, around } = differences(bytes, patchedWorkbook(followed.bytes, sheets, again.host.records()));
    expect({ parts, around }).toEqual({ parts: ["xl/worksheets/sheet1.xml"], around: [] });
    expect(cells.map(({ at }) => at)).toEqual(["B2", "B5"]);
    expect(followed.unanswered).toEqual(file.unanswered);

    // What was done to the rows before, and what is done after.
    grid.api.getActiveWorkbook()?.getSheetByName("Data")?.deleteRows(1, 1);
    const third = startedAgain();
    await putBack(third, third.host, stored(workbookCopy(grid, grid.host)));
    const broken = followedFile(third, third.host, stored(file.opening), stored(file.steps()));
    expect(broken.state().broken).toEqual(["rows deleted on Data"]);
    third.api.getActiveWorkbook()?.getSheetByName("Table")?.insertColumns(0, 1);
    expect(broken.state().broken).toEqual(["rows deleted on Data", "columns inserted on Table"]);
    file.close();
    for (const one of [again, third]) one.dispose();
  });
});
