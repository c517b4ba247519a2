import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { type SheetSet, setOf } from "../../shared/ports/sheet-set.ts";
import type { SheetSpec } from "../../shared/ports/sheet-spec.ts";
import { gridSnapshot } from "../../workbench/grid-snapshot.ts";
import { type HeadlessGrid, headlessGrid } from "../../workbench/headless.ts";
import { WIDE_PNG } from "../support/pictures.ts";

const duty: SheetSpec = {
  name: "Duty",
  columns: [30, 12, 10],
  rowHeights: { 1: 24 },
  styles: {
    title: { bold: true, size: 14, color: "#1F3A5F" },
    input: { fill: "#FFF9E5", numFmt: "0.00", unlocked: true, border: { bottom: "thin" } },
  },
  cells: [
    { at: "A1", v: "Duty", style: "title" },
    { at: "A2", v: "Static head, m" },
    { at: "B2", v: 14.5, style: "input" },
    { at: "A3", v: "Friction head, m" },
    { at: "B3", v: 1 / 3, style: "input" },
    { at: "A4", v: "Total head, m" },
    { at: "B4", f: "staticHead+frictionHead" },
    { at: "A5", v: "=B2+B3" },
    { at: "A6", v: "007" },
    { at: "A7", v: "TRUE" },
    { at: "A8", v: true },
    { at: "B9", f: "SEQUENCE(2,2,B2)", spill: "B9:C10" },
    { at: "B12", f: "SUM(B9#)" },
  ],
  merges: ["A1:C1"],
  names: { staticHead: "B2", frictionHead: "B3", totalHead: "B4", table: "B9:C10" },
  lists: [{ ref: "C2", items: ["m", "ft"], help: "Unit of the head.", strict: true }],
  rules: [{ ref: "B4", when: "totalHead>10", style: { fill: "#FDE8E8" } }],
  freezeRows: 1,
};

describe("the grid as a sheet host", () => {
  let grid: HeadlessGrid;
  beforeEach(() => {
    grid = headlessGrid({ entries: [] });
  });
  afterEach(() => grid.dispose());

  it("adds a sheet and reads it back exactly", async () => {
    expect(await grid.host.addSheets(setOf(duty))).toEqual(["Duty"]);
    expect(await grid.host.sheetNames()).toEqual(["Sheet1", "Duty"]);
    const [totals, spilled, sum, texts] = await grid.host.read(["Duty!B2:B4", "Duty!B9:C10", "Duty!B12", "Duty!A5:A8"]);
    expect(totals).toEqual([[14.5], [1 / 3], [14.5 + 1 / 3]]);
    expect(spilled).toEqual([
      [14.5, 15.5],
      [16.5, 17.5],
    ]);
    expect(sum).toEqual([[64]]);
    expect(texts).toEqual([["=B2+B3"], ["007"], ["TRUE"], [true]]);
  });

  it("gives a second sheet of the same name the next free one, with names of its own", async () => {
    await grid.host.addSheets(setOf(duty));
    expect(await grid.host.addSheets(setOf(duty))).toEqual(["Duty (2)"]);
    await grid.host.write({ "'Duty (2)'!staticHead": 20 });
    expect(await grid.host.read(["Duty!totalHead", "'Duty (2)'!totalHead", "'duty (2)'!STATICHEAD"])).toEqual([
      [[14.5 + 1 / 3]],
      [[20 + 1 / 3]],
      [[20]],
    ]);
  });

  it("calculates with the names of another sheet, ranges among them, and after rows are inserted there", async () => {
    const other: SheetSpec = {
      name: "Workings",
      columns: [],
      styles: {},
      names: { doubled: "A1" },
      cells: [
        { at: "A1", f: "Duty!staticHead*2" },
        { at: "A2", f: "SUM(Duty!table)+doubled" },
      ],
    };
    await grid.host.addSheets(setOf(duty, other));
    expect(await grid.host.read(["Workings!A1:A2"])).toEqual([[[29], [64 + 29]]]);
    grid.api.getActiveWorkbook()?.getSheetByName("Duty")?.insertRowsBefore(1, 2);
    await grid.host.write({ "Duty!staticHead": 1 });
    expect(await grid.host.read(["Workings!A1:A2"])).toEqual([[[2], [10 + 2]]]);
  });

  it("keeps names on their cells when rows are inserted, on that sheet alone", async () => {
    await grid.host.addSheets(setOf(duty));
    await grid.host.addSheets(setOf(duty));
    const sheet = grid.api.getActiveWorkbook()?.getSheetByName("Duty");
    sheet?.insertRowsBefore(1, 2);
    await grid.host.write({ "Duty!staticHead": 3, "'Duty (2)'!staticHead": 4 });
    expect(await grid.host.read(["Duty!staticHead", "Duty!B4", "Duty!totalHead", "'Duty (2)'!B2"])).toEqual([
      [[3]],
      [[3]],
      [[3 + 1 / 3]],
      [[4]],
    ]);
  });

  it("keeps text as text when rows are inserted above it", async () => {
    const texts = ["=B2+B3", "2", "TRUE", "1e3"].flatMap((v, i) => [
      { at: `A${i + 1}`, v },
      { at: `B${i + 1}`, f: `ISTEXT(A${i + 1})` },
    ]);
    await grid.host.addSheets(setOf({ name: "Duty", columns: [], styles: {}, cells: texts }));
    grid.api.getActiveWorkbook()?.getSheetByName("Duty")?.insertRowsBefore(0, 1);
    expect((await grid.host.read(["Duty!A2:B5"]))[0]).toEqual([
      ["=B2+B3", true],
      ["2", true],
      ["TRUE", true],
      ["1e3", true],
    ]);
  });

  it("writes text as text, and nothing as nothing", async () => {
    await grid.host.addSheets(setOf(duty));
    await grid.host.write({ "Duty!C5": "=1+1", "Duty!C6": "+3", "Duty!B3": null, "Duty!B2": false });
    expect(await grid.host.read(["Duty!C5:C6", "Duty!B2:B3"])).toEqual([
      [["=1+1"], ["+3"]],
      [[false], [null]],
    ]);
  });

  it("writes over a formula", async () => {
    await grid.host.addSheets(setOf(duty));
    await grid.host.write({ "Duty!B4": 9 });
    await grid.host.write({ "Duty!B2": 100 });
    expect(await grid.host.read(["Duty!B4"])).toEqual([[[9]]]);
  });

  it("refuses a reference without a known sheet, and a write to more than one cell, without writing any", async () => {
    await grid.host.addSheets(setOf(duty));
    await expect(grid.host.read(["B2"])).rejects.toThrow("no sheet in the reference");
    await expect(grid.host.read(["Elsewhere!B2"])).rejects.toThrow("no sheet is called Elsewhere");
    await expect(grid.host.write({ "Duty!B2": 1, "Duty!table": 2 })).rejects.toThrow("not a single cell");
    expect(await grid.host.read(["Duty!B2"])).toEqual([[[14.5]]]);
  });

  it("reads errors as errors, and a typed #N/A text as text", async () => {
    const errors: SheetSpec = {
      name: "Errors",
      columns: [10],
      styles: {},
      cells: [
        { at: "A1", f: "1/0" },
        { at: "A2", f: "NOSUCHFUNCTION(1)" },
      ],
    };
    await grid.host.addSheets(setOf(errors));
    expect(await grid.host.read(["Errors!A1:A2"])).toEqual([[[{ error: "#DIV/0!" }], [{ error: "#NAME?" }]]]);
  });

  it("adds sheets that refer to one another, under the names they get", async () => {
    await grid.host.addSheets(setOf({ name: "Data", columns: [], styles: {}, cells: [{ at: "A1", v: 1 }] }));
    const set: SheetSet = {
      wanted: ["Sum", "Data"],
      sheets: ([sum = "", data = ""]) => [
        { name: sum, columns: [], styles: {}, cells: [{ at: "A1", f: `'${data}'!A1*2&"Data!A1"` }] },
        { name: data, columns: [], styles: {}, cells: [{ at: "A1", v: 21 }] },
      ],
    };
    expect(await grid.host.addSheets(set)).toEqual(["Sum (2)", "Data (2)"]);
    expect(await grid.host.read(["'Sum (2)'!A1"])).toEqual([[["42Data!A1"]]]);
    expect(grid.api.getActiveWorkbook()?.getActiveSheet().getSheetName()).toBe("Sum (2)");
  });

  it("leaves nothing of a sheet that it refuses before writing", async () => {
    const faulty: SheetSpec = { ...duty, cells: [...duty.cells, { at: "nowhere", v: 1 }] };
    await expect(grid.host.addSheets(setOf(faulty))).rejects.toThrow("not a cell address");
    expect(await grid.host.sheetNames()).toEqual(["Sheet1"]);
  });

  it("takes all sheets back when a later one fails", async () => {
    const faulty: SheetSpec = { ...duty, rules: [{ ref: "nowhere", when: "TRUE", style: {} }] };
    await expect(grid.host.addSheets(setOf(duty, faulty))).rejects.toThrow("not a cell address");
    expect(await grid.host.sheetNames()).toEqual(["Sheet1"]);
    expect(await grid.host.addSheets(setOf(duty))).toEqual(["Duty"]);
    expect(await grid.host.read(["Duty!totalHead"])).toEqual([[[14.5 + 1 / 3]]]);
  });

  it("takes the sheet back when its chart cannot be drawn", async () => {
    const failing = headlessGrid({
      entries: [],
      charts: {
        draw: () => {
          throw new Error("no room for the chart");
        },
        show: () => undefined,
      },
    });
    const charts = [
      { at: "E1:H9", title: "", xTitle: "", yTitle: "", series: [{ name: "", x: "B9:B10", y: "C9:C10" }] },
    ];
    await expect(failing.host.addSheets(setOf({ ...duty, charts }))).rejects.toThrow("no room");
    expect(await failing.host.sheetNames()).toEqual(["Sheet1"]);
    failing.dispose();
  });

  it("keeps a picture with its cells, shows it once, and writes it to the file again", async () => {
    const shown: string[] = [];
    const showing = headlessGrid({
      entries: [],
      charts: { draw: () => undefined, show: ({ at, altText }) => shown.push(`${altText} ${at}`) },
    });
    const picture = {
      at: "E2:F3",
      type: "png",
      base64: WIDE_PNG,
      widthPx: 120,
      heightPx: 48,
      altText: "Logo",
    } as const;
    await showing.host.addSheets(setOf({ ...duty, pictures: [picture] }));
    expect(shown).toEqual(["Logo E2:F3"]);
    showing.api.getActiveWorkbook()?.getSheetByName("Duty")?.insertRowsBefore(0, 3);
    const [sheet] = gridSnapshot(showing, showing.host).filter(({ name }) => name === "Duty");
    expect(sheet?.pictures).toEqual([{ ...picture, at: "E5:F6" }]);
    expect(Object.keys(sheet?.names ?? {})).toEqual(Object.keys(duty.names ?? {}));
    showing.dispose();
  });

  it("tells of edits and recalculations until unsubscribed", async () => {
    await grid.host.addSheets(setOf(duty));
    let calls = 0;
    const stop = grid.host.onCalculated(() => {
      calls += 1;
    });
    await grid.host.write({ "Duty!B2": 5 });
    expect(calls).toBeGreaterThan(0);
    stop();
    const before = calls;
    await grid.host.write({ "Duty!B2": 6 });
    expect(calls).toBe(before);
  });
});
