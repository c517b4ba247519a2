import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { CellSpec, SheetSpec } from "../../shared/ports/sheet-spec.ts";
import { readWorkbook } from "../../shared/xlsx/read-workbook.ts";
import { toSheetSpec } from "../../shared/xlsx/to-sheet-spec.ts";
import { type Download, fileOfWorkbook, replaceWorkbook, sheetsOfFile, type Wait } from "../../workbench/files.ts";
import { gridSnapshot } from "../../workbench/grid-snapshot.ts";
import { type HeadlessGrid, headlessGrid } from "../../workbench/headless.ts";

const PIPE = "8in sch40";
const spec: SheetSpec = {
  name: "It's a duty",
  columns: [30, 12.5, 10],
  rowHeights: { 1: 24 },
  styles: {
    title: { bold: true, italic: true, size: 14, color: "#1F3A5F", align: "center", valign: "middle" },
    input: { fill: "#FFF9E5", numFmt: "0.00", unlocked: true, border: { bottom: "thin", top: "medium" } },
    note: { wrap: true, indent: 2 },
  },
  cells: [
    { at: "A1", v: "Duty", style: "title" },
    { at: "B2", v: 14.5, style: "input" },
    { at: "A2", v: "=not a formula", style: "note" },
    { at: "A3", v: "007" },
    { at: "A4", v: true },
    { at: "B4", f: "B2*2", style: "input" },
    { at: "B5", f: "1/0" },
    { at: "B6", f: `DUTY.VELOCITY(B2,"no such pipe")` },
    { at: "A7", v: 100 },
    { at: "A8", v: 200 },
    { at: "B7", f: `DUTY.VELOCITY(A7:A8,"${PIPE}")`, spill: "B7:B8" },
    { at: "B8", style: "input" },
    { at: "C1", style: "input" },
  ],
  merges: ["A10:C10"],
  names: { flow: "B2", flows: "A7:A8" },
  lists: [
    { ref: "C2", items: ["m", "ft"], help: "Unit of the head.", strict: true },
    { ref: "C3", items: { from: "A7:A8" }, asks: true },
  ],
  rules: [{ ref: "B4", when: "$B$4>10", style: { fill: "#FDE8E8", color: "#A4161A", bold: true } }],
  charts: [
    {
      at: "E1:J12",
      title: "Velocity",
      xTitle: "Flow, US gpm",
      yTitle: "Velocity, ft/s",
      series: [{ name: "Velocity", x: "A7:A8", y: "B7:B8", dashed: true }],
    },
  ],
  print: { area: "A1:C10", orientation: "landscape" },
  freezeRows: 1,
  gridlines: false,
};

const patient: Wait = async (_words, until) => {
  await until;
  return true;
};

describe("a snapshot of the grid", () => {
  let grid: HeadlessGrid;
  beforeEach(async () => {
    grid = headlessGrid();
    await replaceWorkbook(grid, grid.host, { sheets: [spec] });
  });
  afterEach(() => grid.dispose());

  const cellsByAddress = (sheet: SheetSpec | undefined): Map<string, CellSpec> =>
    new Map(sheet?.cells.map((cell) => [cell.at, cell]));
  const styleAt = (sheet: SheetSpec | undefined, at: string): unknown =>
    sheet?.styles[cellsByAddress(sheet).get(at)?.style ?? ""];

  it("has what the sheet was added with", () => {
    const [sheet, ...others] = gridSnapshot(grid, grid.host);
    expect(others).toEqual([]);
    const { styles: _, cells: __, columns, ...rest } = spec;
    expect(sheet).toMatchObject(rest);
    expect(sheet?.columns.length).toBe(3);
    for (const [i, width] of columns.entries()) expect(sheet?.columns[i]).toBeCloseTo(width, 0);
    for (const { at, style } of spec.cells) {
      if (style !== undefined) expect(styleAt(sheet, at)).toEqual(spec.styles[style]);
    }
  });

  it("has values, formulas and their answers, errors with words, spills whole", () => {
    const cells = cellsByAddress(gridSnapshot(grid, grid.host)[0]);
    expect(cells.get("A2")).toMatchObject({ v: "=not a formula" });
    expect(cells.get("A3")).toMatchObject({ v: "007" });
    expect(cells.get("A4")).toMatchObject({ v: true });
    expect(cells.get("B4")).toMatchObject({ f: "B2*2", cached: 29 });
    expect(cells.get("B5")).toMatchObject({ f: "1/0", cached: { error: "#DIV/0!" } });
    expect(cells.get("B6")?.cached).toMatchObject({ error: "#N/A", message: expect.stringContaining("no such pipe") });
    expect(cells.get("B7")).toMatchObject({ spill: "B7:B8", cached: [[expect.any(Number)], [expect.any(Number)]] });
    expect(cells.get("B8")?.v).toBeUndefined();
  });

  it("has the user's edits, and ranges moved by an inserted row", async () => {
    await grid.host.write({ "'It''s a duty'!flow": 20 });
    grid.api.getActiveWorkbook()?.getActiveSheet().insertRowsBefore(5, 1);
    await grid.host.settled();
    const sheet = gridSnapshot(grid, grid.host)[0];
    const cells = cellsByAddress(sheet);
    expect(cells.get("B2")).toMatchObject({ v: 20 });
    expect(cells.get("B4")).toMatchObject({ cached: 40 });
    expect(cells.get("B8")).toMatchObject({ f: `DUTY.VELOCITY(A8:A9,"${PIPE}")`, spill: "B8:B9" });
    expect(sheet?.names).toEqual({ flow: "B2", flows: "A8:A9" });
    expect(sheet?.charts?.[0]?.series[0]).toMatchObject({ x: "A8:A9", y: "B8:B9" });
    expect(sheet?.merges).toEqual(["A11:C11"]);
  });

  it("comes back the same through a file", async () => {
    const before = gridSnapshot(grid, grid.host);
    const { bytes } = (await fileOfWorkbook(grid, grid.host, patient)) as Download;
    const outcome = readWorkbook(bytes);
    if (!outcome.ok) throw new Error(outcome.refusal.message);
    expect(outcome.workbook.sheets.map(toSheetSpec)[0]?.cells.find(({ at }) => at === "B7")?.f).toBe(
      `DUTY.VELOCITY(A7:A8,"${PIPE}")`,
    );
    const opened = sheetsOfFile(bytes);
    if (!opened.ok) throw new Error(opened.why);
    await replaceWorkbook(grid, grid.host, opened);
    const after = gridSnapshot(grid, grid.host);
    const contents = (sheets: readonly SheetSpec[]) =>
      sheets.map(({ name, cells, merges, names, lists, rules }) => ({
        name,
        merges,
        names,
        lists,
        rules,
        cells: cells
          .filter(({ v, f }) => v !== undefined || f !== undefined)
          .map(({ style: _, ...cell }) => cell)
          .sort((a, b) => a.at.localeCompare(b.at)),
      }));
    expect(contents(after)).toEqual(contents(before));
    for (const at of ["A1", "B2", "A2"]) expect(styleAt(after[0], at)).toMatchObject(styleAt(before[0], at) as object);
  });

  it("refuses bytes that are no workbook, in one sentence", () => {
    const opened = sheetsOfFile(new TextEncoder().encode("no workbook"));
    expect(opened).toMatchObject({ ok: false, why: expect.stringMatching(/\.$/) });
  });

  it("brings the present workbook back when another cannot take its place", async () => {
    const faulty: SheetSpec = { ...spec, name: "Other", rules: [{ ref: "?", when: "TRUE", style: {} }] };
    await expect(replaceWorkbook(grid, grid.host, { sheets: [faulty] })).rejects.toThrow("not a cell address");
    expect(await grid.host.sheetNames()).toEqual(["It's a duty"]);
    expect(await grid.host.read(["'It''s a duty'!flow", "'It''s a duty'!B4"])).toEqual([[[14.5]], [[29]]]);
  });
});
