import { describe, expect, it } from "vitest";
import { MARGINS, PAPER_POINTS } from "../../shared/ports/paper.ts";
import { setOf } from "../../shared/ports/sheet-set.ts";
import type { PrintSpec, StyleSpec } from "../../shared/ports/sheet-spec.ts";
import { headlessGrid } from "../../workbench/headless.ts";
import { pagesMarkup } from "../../workbench/print/page-markup.ts";
import { pagesOf } from "../../workbench/print/pages.ts";
import { seenSheet } from "../../workbench/print/seen-sheet.tsx";
import type { SeenCell, SheetToPrint } from "../../workbench/print/sheet-to-print.ts";

const PX = 96 / 72;
const FACTS = { file: "Book", date: "2026-03-09", time: "10:15", letters: 1 };

/** A sheet of rows 20 px high and columns 100 px wide, with a text in each cell of column A, and what is laid over. */
function sheetOf(rows: number, print?: PrintSpec, over: Partial<SheetToPrint> = {}): SheetToPrint {
  return {
    name: "Data",
    print,
    used: { top: 0, left: 0, bottom: rows - 1, right: 2 },
    widthOf: () => 100,
    heightOf: () => 20,
    cellAt: (row, column) => (column === 0 && row < rows ? cell(`row ${row + 1}.`) : undefined),
    merges: [],
    drawings: [],
    ...over,
  };
}

function cell(text: string, style: StyleSpec = {}, kind: SeenCell["kind"] = "text"): SeenCell {
  return { text, kind, style };
}

/** Rows of 20 px that an upright page holds inside its margins. */
function fullAt(paper: "A4" | "Letter"): number {
  return Math.floor((PAPER_POINTS[paper].height * PX - (MARGINS.top + MARGINS.bottom) * 96) / 20);
}

/** Each page's rows, 1-based, as "1-53". */
function stretches(sheet: SheetToPrint): readonly string[] {
  return pagesOf(sheet, "A4").rows.map((rows) => {
    const parts: number[][] = [];
    for (const row of rows) {
      const last = parts.at(-1);
      if (last !== undefined && last[1] === row) last[1] = row + 1;
      else parts.push([row + 1, row + 1]);
    }
    return parts.map(([first, last]) => `${first}-${last}`).join(" ");
  });
}

describe("a sheet on its pages", () => {
  it("fills pages to their end where it says nothing itself", () => {
    const pages = pagesOf(sheetOf(120), "Letter");
    expect([pages.paper, pages.isLandscape, pages.scale]).toEqual(["Letter", false, 1]);
    expect([pages.width, pages.height]).toEqual([816, 1056]);
    const full = fullAt("Letter");
    expect(pages.rows.map(({ length }) => length)).toEqual([full, full, 120 - 2 * full]);
  });

  it("ends pages where the sheet says, and where one is full all the same", () => {
    const print: PrintSpec = { area: "A1:C100", orientation: "portrait", scale: 100, breaks: [10, 30] };
    const last = 30 + fullAt("A4");
    expect(stretches(sheetOf(120, print))).toEqual(["1-10", "11-30", `31-${last}`, `${last + 1}-100`]);
  });

  it("repeats its head on every page after, and keeps room for it", () => {
    const print: PrintSpec = { area: "A1:C100", orientation: "portrait", titleRows: "2:3", breaks: [40] };
    const last = 40 + fullAt("A4") - 2;
    expect(stretches(sheetOf(120, print))).toEqual(["1-40", `2-3 41-${last}`, `2-3 ${last + 1}-100`]);
  });

  it("brings all columns on the page, upright or across", () => {
    const wide = { widthOf: () => 500 };
    const print: PrintSpec = { area: "A1:C9", orientation: "landscape", paper: "Letter", scale: 90 };
    const { scale, width, height } = pagesOf(sheetOf(9, print, wide), "A4");
    expect([width, height]).toEqual([1056, 816]);
    expect(scale).toBeCloseTo(((11 - MARGINS.left - MARGINS.right) * 96) / 1500, 9);
    const upright = pagesOf(sheetOf(9, { ...print, orientation: "portrait", paper: "A4" }, wide), "Letter");
    expect(upright.scale).toBeCloseTo((PAPER_POINTS.A4.width * PX - (MARGINS.left + MARGINS.right) * 96) / 1500, 9);
  });

  it("cuts no chart", () => {
    const at = { top: 40, left: 0, bottom: 60, right: 2 };
    const sheet = sheetOf(100, undefined, { drawings: [{ at, markup: () => "<svg></svg>" }] });
    expect(stretches(sheet)).toEqual(["1-40", `41-${40 + fullAt("A4")}`, `${41 + fullAt("A4")}-100`]);
    const pages = pagesMarkup(sheet, pagesOf(sheet, "A4"), FACTS).split("<section").slice(1);
    expect(pages.map((page) => page.includes("<svg>"))).toEqual([false, true, false]);
  });

  it("prints every cell of its area once, and none beside it", () => {
    const print: PrintSpec = { area: "A5:B100", orientation: "portrait", breaks: [33] };
    const sheet = sheetOf(120, print);
    const markup = pagesMarkup(sheet, pagesOf(sheet, "A4"), FACTS);
    const printed = [...markup.matchAll(/row (\d+)\./g)].map(([, row]) => Number(row));
    expect(printed).toEqual(Array.from({ length: 96 }, (_, i) => i + 5));
  });

  it("says page, pages, sheet and file in its margins, and texts as texts", () => {
    const print: PrintSpec = {
      area: "A1:C60",
      orientation: "portrait",
      header: "&L&8 R&&D <b>&R&F",
      footer: "&A&Rpage &P of &N",
    };
    const sheet = sheetOf(60, print, { cellAt: (row) => (row === 0 ? cell('<i>"&') : undefined) });
    const pages = pagesMarkup(sheet, pagesOf(sheet, "A4"), FACTS).split("<section").slice(1);
    expect(pages).toHaveLength(2);
    expect(pages[0]).toContain('<span style="font-size:8pt">R&#38;D &#60;b&#62;</span>');
    expect(pages[0]).toContain(">Book</span>");
    expect(pages[1]).toContain(">Data</span>");
    expect(pages[1]).toContain(">page 2 of 2</span>");
    expect(pages[0]).toContain("&#60;i&#62;&#34;&#38;");
    expect(pages.join("")).not.toMatch(/<[bi]>/);
  });

  it("lets a text run on over empty cells, no further, and no figure at all", () => {
    const cells = [cell("a long text"), undefined, cell("end")];
    const wide = sheetOf(1, undefined, { cellAt: (_, column) => cells[column] });
    expect(pagesMarkup(wide, pagesOf(wide, "A4"), FACTS)).toContain('<span style="width:200px">a long text</span>');
    const figure = sheetOf(1, undefined, {
      cellAt: (_, column) => (column === 0 ? cell("1,200", {}, "number") : undefined),
    });
    const markup = pagesMarkup(figure, pagesOf(figure, "A4"), FACTS);
    expect(markup).toContain('<span style="">1,200</span>');
    expect(markup).toContain("text-align:right");
  });

  it("sets letters smaller that are wider than those the sheet was made for, in its margins too", () => {
    const print: PrintSpec = { area: "A1:C1", orientation: "portrait", header: "&8 Data" };
    const sheet = sheetOf(1, print, { cellAt: () => cell("text", { size: 20 }) });
    const markup = pagesMarkup(sheet, pagesOf(sheet, "A4"), { ...FACTS, letters: 0.75 });
    expect(markup).toContain("font-size:15pt");
    expect(markup).toContain('<span style="font-size:6pt">Data</span>');
  });

  it("draws a merged stretch as one cell, at the scale of the page", () => {
    const merges = [{ top: 0, left: 0, bottom: 0, right: 2 }];
    const print: PrintSpec = { area: "A1:C1", orientation: "portrait", scale: 50 };
    const sheet = sheetOf(1, print, {
      merges,
      cellAt: (_, column) => cell(column === 0 ? "whole" : "hidden", { size: 14 }),
    });
    const markup = pagesMarkup(sheet, pagesOf(sheet, "A4"), FACTS);
    expect(markup).toContain("left:0px;top:0px;width:150px;height:10px");
    expect(markup).toContain("font-size:7pt");
    expect(markup).not.toContain("hidden");
  });
});

it("is seen as the grid has it now: edits, moved rows, the head repeated and pages ended where they moved to, charts", async () => {
  const grid = headlessGrid();
  const series = [{ name: "Head", x: "A5:A6", y: "B5:B6" }];
  await grid.host.addSheets(
    setOf({
      name: "Duty",
      columns: [10, 10, 10],
      rowHeights: { 1: 30 },
      styles: { bold: { bold: true } },
      cells: [
        { at: "A1", v: "Title", style: "bold" },
        { at: "A5", v: 1 },
        { at: "A6", v: 2 },
        { at: "B5", f: "A5*10" },
        { at: "B6", f: "A6*10" },
        { at: "A7", v: true },
      ],
      charts: [{ at: "A8:C20", title: "Head", xTitle: "Flow", yTitle: "Head", series }],
      print: { area: "A1:C20", orientation: "portrait", titleRows: "2:3", breaks: [4], footer: "&P" },
    }),
  );
  await grid.host.write({ "Duty!A5": 7 });
  grid.api.getActiveWorkbook()?.getActiveSheet().insertRowsBefore(1, 2);
  await grid.host.settled();
  const sheet = seenSheet(grid, grid.host);
  expect(sheet.print).toEqual({ area: "A1:C22", orientation: "portrait", titleRows: "4:5", breaks: [6], footer: "&P" });
  expect(sheet.cellAt(0, 0)).toEqual({ text: "Title", kind: "text", style: { bold: true } });
  expect([sheet.cellAt(6, 0)?.text, sheet.cellAt(6, 1)?.text, sheet.cellAt(8, 0)?.text]).toEqual(["7", "70", "TRUE"]);
  expect([sheet.heightOf(0), sheet.used.bottom]).toEqual([40, 21]);
  expect(sheet.drawings.map(({ at }) => [at.top, at.bottom])).toEqual([[9, 21]]);
  expect(sheet.drawings[0]?.markup(300, 200)).toMatch(/data-series="Head"><path d="M[\d.]+,[\d.]+L[\d.]+,[\d.]+"/);
  expect(pagesOf(sheet, "A4").rows.map((rows) => rows.map((row) => row + 1).join())).toEqual([
    "1,2,3,4,5,6",
    "4,5,7,8,9,10,11,12,13,14,15,16,17,18,19,20,21,22",
  ]);
  grid.dispose();
});
